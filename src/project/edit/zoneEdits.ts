import type { Project } from '../file/schema';
import { pathText } from '../file/fieldErrors';
import { counted, nothingSuch, refusal, type EditAnswer } from './answer';
import { judged } from './judge';
import { freshId, withChanged, withInserted, withMoved, without } from './lists';
import { moveFittings } from './orderFittings';

/** Adds a zone right after another, or as the last. */
export function addZone(project: Project, name: string, afterId: string | null = null): EditAnswer {
  const id = freshId(project.zones, 'z');
  return judged(project, { zones: withInserted(project.zones, [{ id, name }], afterId) }, { newIds: [id] });
}

export function renameZone(project: Project, id: string, name: string): EditAnswer {
  if (!project.zones.some((zone) => zone.id === id)) return nothingSuch('zone', id);
  return judged(project, { zones: withChanged(project.zones, id, (zone) => ({ ...zone, name })) });
}

/** Moves a zone to stand before another, or last. */
export function moveZone(project: Project, id: string, beforeId: string | null): EditAnswer {
  return judged(project, { zones: withMoved(project.zones, id, beforeId) });
}

/** Deletes an empty zone; one stays, for fittings to go to. */
export function deleteZone(project: Project, id: string): EditAnswer {
  const index = project.zones.findIndex((zone) => zone.id === id);
  if (index === -1) return nothingSuch('zone', id);
  const path = pathText(['zones', index]);
  const held = project.fittings.filter(({ zoneId }) => zoneId === id).length;
  if (held > 0) return refusal(path, `holds ${counted(held, 'fitting')}; move or delete what it holds first`);
  if (project.zones.length === 1) return refusal(path, 'is the only zone; a project keeps at least one');
  return judged(project, { zones: without(project.zones, new Set([id])) });
}

/** Deletes a zone whose fittings go, in their order, to the end of another. */
export function deleteZoneInto(project: Project, id: string, intoId: string): EditAnswer {
  const into = project.zones.find((zone) => zone.id === intoId);
  if (into === undefined || intoId === id) return nothingSuch('other zone', intoId);
  const heldIds = project.fittings.filter(({ zoneId }) => zoneId === id).map((fitting) => fitting.id);
  const moved = moveFittings(project, heldIds, intoId, null);
  if ('refused' in moved) return moved;
  const deleted = deleteZone(moved.project, id);
  if ('refused' in deleted || heldIds.length === 0) return deleted;
  return { ...deleted, message: `Moved to ${into.name}: ${counted(heldIds.length, 'fitting')}.` };
}
