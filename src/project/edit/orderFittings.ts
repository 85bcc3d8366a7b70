import type { Project } from '../file/schema';
import { nothingSuch, type EditAnswer } from './answer';
import { judged } from './judge';

/**
 * Moves fittings into a zone, to stand before one of its fittings or, with null, after its last. Several keep their
 * order among themselves.
 */
export function moveFittings(
  project: Project,
  ids: readonly string[],
  zoneId: string,
  beforeId: string | null,
): EditAnswer {
  const moving = project.fittings
    .filter(({ id }) => ids.includes(id))
    .map((fitting) => (fitting.zoneId === zoneId ? fitting : { ...fitting, zoneId }));
  const rest = project.fittings.filter(({ id }) => !ids.includes(id));
  const index = placeOf(project, ids, zoneId, beforeId);
  return judged(project, { fittings: [...rest.slice(0, index), ...moving, ...rest.slice(index)] });
}

/** Where in the list without the moving ones they are to be put. */
function placeOf(project: Project, ids: readonly string[], zoneId: string, beforeId: string | null): number {
  const rest = project.fittings.filter(({ id }) => !ids.includes(id));
  const from = project.fittings.findIndex(({ id }) => id === beforeId);
  if (from !== -1) {
    const next = project.fittings.slice(from).find(({ id }) => !ids.includes(id));
    return next === undefined ? rest.length : rest.indexOf(next);
  }
  const last = rest.filter((fitting) => fitting.zoneId === zoneId).at(-1);
  return last === undefined ? rest.length : rest.indexOf(last) + 1;
}

/** One step up (-1) or down (1) in the file's order within its zone, and from a zone's edge into the next zone. */
export function shiftFitting(project: Project, id: string, step: -1 | 1): EditAnswer {
  const fitting = project.fittings.find((each) => each.id === id);
  if (fitting === undefined) return nothingSuch('fitting', id);
  const own = project.fittings.filter(({ zoneId }) => zoneId === fitting.zoneId);
  const index = own.indexOf(fitting);
  if (step === -1 && index > 0) {
    return moveFittings(project, [id], fitting.zoneId, own[index - 1]?.id ?? null);
  }
  if (step === 1 && index < own.length - 1) {
    return moveFittings(project, [id], fitting.zoneId, own[index + 2]?.id ?? null);
  }
  const zoneIndex = project.zones.findIndex((zone) => zone.id === fitting.zoneId);
  const next = project.zones[zoneIndex + step];
  if (next === undefined) return { project };
  const first = project.fittings.find(({ zoneId }) => zoneId === next.id);
  return moveFittings(project, [id], next.id, step === 1 ? (first?.id ?? null) : null);
}
