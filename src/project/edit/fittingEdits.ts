import type { Project, ProjectDuty, ProjectFitting } from '../file/schema';
import { nothingSuch, type EditAnswer } from './answer';
import { judged } from './judge';
import { freshId, freshIds, withChanged, withInserted } from './lists';
import { copyName } from './names';
import { patched, type Patch } from './patch';

/**
 * Adds a fitting right after another, or after the last of its zone.
 * @param parts everything but the id, which is given here.
 */
export function addFitting(
  project: Project,
  parts: Omit<ProjectFitting, 'id'>,
  afterId: string | null = null,
): EditAnswer {
  const id = freshId(project.fittings, 'f');
  const lastOfZone = project.fittings.filter(({ zoneId }) => zoneId === parts.zoneId).at(-1);
  const fittings = withInserted(project.fittings, [{ ...parts, id }], afterId ?? lastOfZone?.id ?? null);
  return judged(project, { fittings }, { newIds: [id] });
}

/** Puts a copy of each fitting right after it. No plan changes a copy. */
export function duplicateFittings(project: Project, ids: readonly string[]): EditAnswer {
  const originals = project.fittings.filter(({ id }) => ids.includes(id));
  const newIds = freshIds(project.fittings, 'f', originals.length);
  const names = project.fittings.map(({ name }) => name);
  let fittings = project.fittings;
  for (const [i, original] of originals.entries()) {
    const name = copyName(original.name, names);
    names.push(name);
    fittings = withInserted(fittings, [{ ...original, id: newIds[i] ?? '', name }], original.id);
  }
  return judged(project, { fittings }, { newIds });
}

/** Changes any fields of a fitting but its id: `{ shape: { diameter: { m: 0.05 } } }`. */
export function patchFitting(
  project: Project,
  id: string,
  patch: Patch<Omit<ProjectFitting, 'id'>>,
): EditAnswer {
  return changeFitting(project, id, (fitting) => ({
    ...patched<Omit<ProjectFitting, 'id'>>(fitting, patch),
    id,
  }));
}

/** Puts one fitting through a change. */
export function changeFitting(
  project: Project,
  id: string,
  change: (fitting: ProjectFitting) => ProjectFitting,
  message?: string,
): EditAnswer {
  if (!project.fittings.some((fitting) => fitting.id === id)) return nothingSuch('fitting', id);
  const fittings = withChanged(project.fittings, id, change);
  return judged(project, { fittings }, message === undefined ? {} : { message });
}

/** Leaves fittings out of the sums, with a reason. */
export function excludeFittings(project: Project, ids: readonly string[], reason: string): EditAnswer {
  const fittings = project.fittings.map((fitting) =>
    ids.includes(fitting.id) ? { ...fitting, excluded: { reason } } : fitting,
  );
  return judged(project, { fittings });
}

/** Takes fittings into the sums again. */
export function includeFittings(project: Project, ids: readonly string[]): EditAnswer {
  const fittings = project.fittings.map((fitting) =>
    ids.includes(fitting.id) && fitting.excluded !== null ? { ...fitting, excluded: null } : fitting,
  );
  return judged(project, { fittings });
}

/** Sets the share of one condition's time in which a fitting is in use; null goes back to the fitting's default. */
export function setDutyInCondition(
  project: Project,
  fittingId: string,
  conditionId: string,
  fraction: number | null,
): EditAnswer {
  return changeFitting(project, fittingId, (fitting) => ({
    ...fitting,
    dutyFraction: withShare(fitting.dutyFraction, conditionId, fraction),
  }));
}

/** The duty with one condition's share set, or left out with null; the others keep their places. */
export function withShare(duty: ProjectDuty, conditionId: string, fraction: number | null): ProjectDuty {
  const { byCondition } = duty;
  if (fraction === null) {
    return { ...duty, byCondition: byCondition.filter((entry) => entry.conditionId !== conditionId) };
  }
  const isListed = byCondition.some((entry) => entry.conditionId === conditionId);
  const entries = isListed
    ? byCondition.map((entry) => (entry.conditionId === conditionId ? { conditionId, fraction } : entry))
    : [...byCondition, { conditionId, fraction }];
  return { ...duty, byCondition: entries };
}
