import { blankCondition } from '../file/blankParts';
import type {
  Project,
  ProjectCondition,
  ProjectDuty,
  ProjectFitting,
  ProjectPlan,
  ProjectProfile,
  RefitItem,
} from '../file/schema';
import { pathText } from '../file/fieldErrors';
import { counted, nothingSuch, refusal, type EditAnswer } from './answer';
import { judged } from './judge';
import { freshId, withChanged, withInserted, withMoved, without } from './lists';
import { copyName, newName } from './names';
import { patched, type Patch } from './patch';

/** A condition to start from: 10 m/s of true wind 90 degrees from the course at 10 m, and 5 m/s of boat speed. */
export function plainCondition(project: Project): Omit<ProjectCondition, 'id'> {
  return blankCondition({
    id: '',
    name: newName(
      'Condition',
      project.conditions.map(({ name }) => name),
    ),
    wind: { kind: 'true', speedMs: 10, heightM: 10, angleFromCourseDeg: 90 },
    boatSpeedMs: 5,
  });
}

/** Adds a condition right after another, or as the last. */
export function addCondition(
  project: Project,
  parts: Omit<ProjectCondition, 'id'>,
  afterId: string | null = null,
): EditAnswer {
  const id = freshId(project.conditions, 'c');
  const conditions = withInserted(project.conditions, [{ ...parts, id }], afterId);
  return judged(project, { conditions }, { newIds: [id] });
}

/** Puts a copy of a condition right after it. Fittings with a duty of their own in the original keep it in the copy. */
export function duplicateCondition(project: Project, id: string): EditAnswer {
  const original = project.conditions.find((condition) => condition.id === id);
  if (original === undefined) return nothingSuch('condition', id);
  const copyId = freshId(project.conditions, 'c');
  const name = copyName(
    original.name,
    project.conditions.map((condition) => condition.name),
  );
  const conditions = withInserted(project.conditions, [{ ...original, id: copyId, name }], id);
  const dutyCopied = (duty: ProjectDuty): ProjectDuty => {
    const entry = duty.byCondition.find(({ conditionId }) => conditionId === id);
    if (entry === undefined) return duty;
    return { ...duty, byCondition: [...duty.byCondition, { ...entry, conditionId: copyId }] };
  };
  return judged(project, { conditions, ...withDuties(project, dutyCopied) }, { newIds: [copyId] });
}

/** Changes any fields of a condition but its id. */
export function patchCondition(
  project: Project,
  id: string,
  patch: Patch<Omit<ProjectCondition, 'id'>>,
): EditAnswer {
  if (!project.conditions.some((condition) => condition.id === id)) return nothingSuch('condition', id);
  const conditions = withChanged(project.conditions, id, (condition) => ({
    ...patched<Omit<ProjectCondition, 'id'>>(condition, patch),
    id,
  }));
  return judged(project, { conditions });
}

/** Moves a condition to stand before another, or last. */
export function moveCondition(project: Project, id: string, beforeId: string | null): EditAnswer {
  return judged(project, { conditions: withMoved(project.conditions, id, beforeId) });
}

/** Deletes a condition with its hours in the profile and the duties that name it; one stays. */
export function deleteCondition(project: Project, id: string): EditAnswer {
  const index = project.conditions.findIndex((condition) => condition.id === id);
  if (index === -1) return nothingSuch('condition', id);
  if (project.conditions.length === 1) {
    return refusal(pathText(['conditions', index]), 'is the only condition; a ledger needs at least one');
  }
  let dutyCount = 0;
  const dutyCleaned = (duty: ProjectDuty): ProjectDuty => {
    const byCondition = duty.byCondition.filter(({ conditionId }) => conditionId !== id);
    if (byCondition.length === duty.byCondition.length) return duty;
    dutyCount += 1;
    return { ...duty, byCondition };
  };
  const duties = withDuties(project, dutyCleaned);
  const profile = withoutHours(project.profile, id);
  const conditions = without(project.conditions, new Set([id]));
  const message = lossText(project.profile, profile, dutyCount);
  return judged(project, { conditions, ...duties, profile }, message === '' ? {} : { message });
}

function lossText(before: ProjectProfile | null, after: ProjectProfile | null, dutyCount: number): string {
  const lost: string[] = [];
  if (before !== null && after === null) lost.push('the course profile, which has no hours left');
  else if (before !== after) lost.push('its hours in the course profile');
  if (dutyCount > 0) lost.push(counted(dutyCount, 'duty given for it', 'duties given for it'));
  return lost.length === 0 ? '' : `Deleted with it: ${lost.join(', ')}.`;
}

/** The profile without a condition; null when no hours are left in it. */
export function withoutHours(profile: ProjectProfile | null, conditionId: string): ProjectProfile | null {
  if (profile === null) return null;
  const entries = profile.entries.filter((entry) => entry.conditionId !== conditionId);
  if (entries.length === profile.entries.length) return profile;
  return entries.some(({ hours }) => hours > 0) ? { ...profile, entries } : null;
}

/** Fittings and plans with every duty put through a change; what it leaves alone keeps its identity. */
function withDuties(
  { fittings, plans }: Project,
  change: (duty: ProjectDuty) => ProjectDuty,
): Pick<Project, 'fittings' | 'plans'> {
  const ofFitting = (fitting: ProjectFitting): ProjectFitting => {
    const dutyFraction = change(fitting.dutyFraction);
    return dutyFraction === fitting.dutyFraction ? fitting : { ...fitting, dutyFraction };
  };
  const ofItem = (item: RefitItem): RefitItem => {
    if (item.change.kind !== 'retracted') return item;
    const dutyFraction = change(item.change.dutyFraction);
    return dutyFraction === item.change.dutyFraction
      ? item
      : { ...item, change: { ...item.change, dutyFraction } };
  };
  const ofPlan = (plan: ProjectPlan): ProjectPlan => {
    const items = plan.items.map(ofItem);
    return items.every((item, i) => item === plan.items[i]) ? plan : { ...plan, items };
  };
  return { fittings: fittings.map(ofFitting), plans: plans.map(ofPlan) };
}
