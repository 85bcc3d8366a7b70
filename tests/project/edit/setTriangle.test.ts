import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { setTriangle } from '../../../src/project/edit/setTriangle';
import { openProject } from '../../../src/project/file/openProject';
import type { Project } from '../../../src/project/file/schema';
import { solveProjectCondition, type ConditionSummary } from '../../../src/project/ledger/conditionSummary';
import { toSi } from '../../../src/units/convert';

function demo(): Project {
  const opened = openProject(readFileSync('demo-data/quillamoor.windtoll.json', 'utf8'));
  if (!opened.ok) throw new Error(JSON.stringify(opened.errors));
  return opened.project;
}

function summaryOf(project: Project, id: string): ConditionSummary {
  const condition = project.conditions.find((each) => each.id === id);
  if (condition === undefined) throw new Error(`no condition ${id}`);
  return solveProjectCondition(project, condition).summary;
}

function edited(project: Project, id: string, sides: Parameters<typeof setTriangle>[2]): Project {
  const answer = setTriangle(project, id, sides);
  if ('refused' in answer) throw new Error(answer.refused.message);
  return answer.project;
}

const sides = {
  trueWindAt10Ms: toSi(25, 'kn'),
  trueWindAngleRad: toSi(70, 'deg'),
  boatSpeedMs: toSi(12, 'kn'),
};

describe('the sides of a wind triangle', () => {
  const project = demo();
  it.each(project.conditions.map(({ id, wind }) => ({ id, kind: wind.kind })))(
    'are what $id ($kind) solves to afterwards, and its wind stays given that way',
    ({ id, kind }) => {
      const after = summaryOf(edited(project, id, sides), id);
      expect(after.trueWindAt10Ms).toBeCloseTo(sides.trueWindAt10Ms, 4);
      expect(after.trueWindAngleRad).toBeCloseTo(sides.trueWindAngleRad, 5);
      expect(after.condition.boatSpeedMs).toBeCloseTo(sides.boatSpeedMs, 12);
      expect(after.condition.wind.kind).toBe(kind);
    },
  );

  it('are turned into the wind at the height at which it is given', () => {
    const [first] = project.conditions;
    if (first?.wind.kind !== 'true') throw new Error('no true wind');
    const low = {
      ...project,
      conditions: [{ ...first, wind: { ...first.wind, heightM: 3 } }, ...project.conditions.slice(1)],
    };
    const { condition, trueWindAt10Ms } = summaryOf(edited(low, first.id, sides), first.id);
    expect(condition.wind.speedMs).toBeLessThan(0.95 * sides.trueWindAt10Ms);
    expect(trueWindAt10Ms).toBeCloseTo(sides.trueWindAt10Ms, 9);
  });

  it('change nothing where they are what the condition has', () => {
    const { trueWindAt10Ms, trueWindAngleRad, condition } = summaryOf(project, 'upwind');
    const { boatSpeedMs } = condition;
    expect(edited(project, 'upwind', { trueWindAt10Ms, trueWindAngleRad, boatSpeedMs })).toBe(project);
  });

  it('are refused where there is no such condition', () => {
    expect(setTriangle(project, 'nowhere', sides)).toEqual({
      refused: { path: '', message: 'there is no condition with the id "nowhere"' },
    });
  });
});
