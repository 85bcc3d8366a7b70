import { counted, refusal, type EditAnswer } from '../edit/answer';
import { judged } from '../edit/judge';
import { freshIds } from '../edit/lists';
import { limits } from '../file/limits';
import type { Project, ProjectFitting, ProjectZone } from '../file/schema';
import type { SurveyRow } from './readSurvey';

/** The rows of a survey that go in. */
function goodRows(rows: readonly SurveyRow[]): readonly SurveyRow[] {
  return rows.filter(({ state }) => state === 'good');
}

/** Names of the zones that an import makes, each once. */
export function newZoneNames(rows: readonly SurveyRow[]): readonly string[] {
  const names = new Map<string, string>();
  for (const { built } of goodRows(rows)) {
    const name = built?.newZoneName ?? null;
    if (name !== null && !names.has(fold(name))) names.set(fold(name), name);
  }
  return [...names.values()];
}

function fold(name: string): string {
  return name.normalize('NFC').toLowerCase();
}

/**
 * Puts the good rows into the project as one edit: new ones after the last of their zone, replaced ones where they stand,
 * zones that are not there made. Refused as a whole, in words, where the project has no room.
 */
export function importSurvey(project: Project, rows: readonly SurveyRow[]): EditAnswer {
  const good = goodRows(rows);
  const added = good.filter(({ decision }) => decision !== 'replace');
  const room = limits.fittings - project.fittings.length;
  if (added.length > room) return refusal('fittings', noRoom(project.fittings.length, added.length, room));
  const zones = withNewZones(project.zones, newZoneNames(rows));
  const zoneIds = new Map(zones.map(({ id, name }) => [fold(name), id]));
  const newIds = freshIds(project.fittings, 'f', added.length);
  const replaced = new Map(
    good.flatMap((row) =>
      row.decision === 'replace' && row.namesake !== null
        ? [[row.namesake.id, fittingOf(row, row.namesake.id, zoneIds)] as const]
        : [],
    ),
  );
  const kept = project.fittings.map((fitting) => replaced.get(fitting.id) ?? fitting);
  const fittings = inZones(
    kept,
    added.map((row, i) => fittingOf(row, newIds[i] ?? '', zoneIds)),
    zones,
  );
  return judged(
    project,
    { zones: zones.length === project.zones.length ? project.zones : zones, fittings },
    { newIds },
  );
}

function noRoom(held: number, wanted: number, room: number): string {
  const rest = room > 0 ? `; there is room for ${counted(room, 'row')}` : '';
  return `a project holds at most ${limits.fittings} fittings: this one has ${held}, and ${counted(wanted, 'row')} would be added${rest}. Drop some rows, or bring the rest into another project`;
}

function withNewZones(zones: readonly ProjectZone[], names: readonly string[]): readonly ProjectZone[] {
  const ids = freshIds(zones, 'z', names.length);
  return [...zones, ...names.map((name, i) => ({ id: ids[i] ?? '', name }))];
}

function fittingOf({ built }: SurveyRow, id: string, zoneIds: ReadonlyMap<string, string>): ProjectFitting {
  if (built === null) throw new RangeError('Only a good row has a fitting.');
  const zoneId = built.newZoneName === null ? built.fitting.zoneId : zoneIds.get(fold(built.newZoneName));
  return { ...built.fitting, id, zoneId: zoneId ?? built.fitting.zoneId };
}

/** Each new one after the last of its zone; those of a zone that has none at the end. */
function inZones(
  kept: readonly ProjectFitting[],
  added: readonly ProjectFitting[],
  zones: readonly ProjectZone[],
): readonly ProjectFitting[] {
  if (added.length === 0) return kept;
  const newOf = new Map(zones.map(({ id }) => [id, added.filter(({ zoneId }) => zoneId === id)]));
  const lastOf = new Map(kept.map(({ zoneId }, i) => [zoneId, i]));
  const placed = kept.flatMap((fitting, i) => [
    fitting,
    ...(lastOf.get(fitting.zoneId) === i ? (newOf.get(fitting.zoneId) ?? []) : []),
  ]);
  return [...placed, ...zones.flatMap(({ id }) => (lastOf.has(id) ? [] : (newOf.get(id) ?? [])))];
}
