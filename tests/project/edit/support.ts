import type { EditAnswer, Edited } from '../../../src/project/edit/answer';
import { blankCondition, blankPlan } from '../../../src/project/file/blankParts';
import type { Project, ProjectFitting } from '../../../src/project/file/schema';
import { item, projectWith, planOf, reach, removed } from '../refit/support';
import { frozen } from './anyEdit';

/** A beat beside the reach, a course with hours of both, two zones, and a plan that removes the box. */
export const beat = blankCondition({
  id: 'beat',
  name: 'Beat',
  wind: { kind: 'true', speedMs: 9, heightM: 10, angleFromCourseDeg: 42 },
  boatSpeedMs: 6,
  heelDeg: 22,
});

export function boat(changes: Partial<Project> = {}): Project {
  return frozen(
    projectWith(planOf(item('box-off', 'box', removed)), {
      zones: [
        { id: 'deck', name: 'Deck' },
        { id: 'rig', name: 'Rig' },
      ],
      conditions: [reach, beat],
      profile: {
        name: 'Course',
        entries: [
          { conditionId: 'reach', hours: 2 },
          { conditionId: 'beat', hours: 3 },
        ],
      },
      ...changes,
    }),
  );
}

export const emptyPlan = blankPlan({ id: 'empty', name: 'Empty' });

/** The answer of an edit that has to succeed. */
export function done(answer: EditAnswer): Edited {
  if ('refused' in answer) throw new Error(`${answer.refused.path}: ${answer.refused.message}`);
  return answer;
}

export function after(answer: EditAnswer): Project {
  return done(answer).project;
}

export function fittingOf(project: Project, id: string): ProjectFitting {
  const fitting = project.fittings.find((each) => each.id === id);
  if (fitting === undefined) throw new Error(`no fitting ${id}`);
  return fitting;
}

export function idsOf(list: readonly { readonly id: string }[]): string[] {
  return list.map(({ id }) => id);
}
