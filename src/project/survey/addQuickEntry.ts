import { formatQuantity, formatRange } from '../../units/print';
import { refusal, type EditAnswer } from '../edit/answer';
import { addFitting } from '../edit/fittingEdits';
import { newName } from '../edit/names';
import { addZone } from '../edit/zoneEdits';
import { blankFitting } from '../file/blankParts';
import type { Project, ProjectFitting, ProjectPlacement, ProjectZone } from '../file/schema';
import type { QuickEntry, QuickField, QuickLie, QuickSide } from './quickEntry';
import { isQuickBar, quickShape } from './quickShapes';
import { stationsIn, zoneKindOf, zoneStretch, type ZoneStretch } from './zoneStretch';

/** What stands at the deck's edge stands a little inside it, m (common practice, no source). */
const fromEdgeM = 0.03;

const placeNote = 'Quick entry: the place along the boat is estimated from the zone.';

/**
 * Adds what was entered as one fitting, after the last of its zone. A project without zones gets one; a name that is
 * taken gets a number.
 */
export function addQuickEntry(project: Project, entry: QuickEntry): EditAnswer {
  const zoned = project.zones.length > 0 ? { project } : addZone(project, 'Deck');
  if ('refused' in zoned) return zoned;
  const zone = quickZone(zoned.project, entry.zoneId);
  if (zone === undefined) return refusal('zones', 'there is no zone to add to');
  return addFitting(zoned.project, quickFitting(zoned.project, zone, entry));
}

/** The zone of that id; where it is gone, as in another project, the first. */
export function quickZone({ zones }: Pick<Project, 'zones'>, zoneId: string): ProjectZone | undefined {
  return zones.find(({ id }) => id === zoneId) ?? zones[0];
}

function quickFitting({ boat, fittings }: Project, zone: ProjectZone, entry: QuickEntry): ProjectFitting {
  const stretch = zoneStretch(boat, zoneKindOf(zone));
  const isOnDeck = entry.lie === 'upright' && stretch.standsAboveDeckM === 0 && (entry.heightM ?? 0) === 0;
  return blankFitting({
    id: 'new',
    name: newName(
      entry.name,
      fittings.map(({ name }) => name),
    ),
    zoneId: zone.id,
    note: placeNote,
    shape: quickShape(entry.shape, entry.sizesM, entry.basis, isOnDeck),
    placement: quickPlacement(stretch, entry),
  });
}

/** One stands in the middle of its zone's stretch; several stand equally spaced from its one end to the other. */
function quickPlacement(stretch: ZoneStretch, entry: QuickEntry): ProjectPlacement {
  const { side, count, lengthM } = entry;
  // A body has no way to lie.
  const lie = isQuickBar(entry.shape) ? entry.lie : 'upright';
  const { fromAftM, toAftM } = stationsIn(stretch, count);
  // A member that lies along the boat is taped from its forward end.
  const forwardM = lie === 'along' ? lengthM / 2 : 0;
  const athwart = quickAthwart(side, lie, lengthM);
  return {
    kind: 'taped',
    aftOfStemM: fromAftM - forwardM,
    side: side === 'both' ? 'starboard' : side,
    athwart,
    aboveDeckM: entry.heightM ?? stretch.standsAboveDeckM + halfHeightM(entry),
    lengthM,
    leanAftDeg: lie === 'along' ? 90 : 0,
    leanOutDeg: lie === 'across' ? (side === 'centreline' ? 90 : -90) : 0,
    basis: 'estimated',
    row: count < 2 ? null : { count, lastAftOfStemM: toAftM - forwardM, lastAthwartM: athwart.inboardOrOutM },
    pair: side === 'both',
  };
}

/** On the centreline a member that lies across reaches as far to port as to starboard; at the edge it lies inboard. */
function quickAthwart(side: QuickSide, lie: QuickLie, lengthM: number) {
  if (side !== 'centreline') return { from: 'deck-edge', inboardOrOutM: fromEdgeM } as const;
  return { from: 'centreline', inboardOrOutM: lie === 'across' ? -lengthM / 2 : 0 } as const;
}

/** The place of a ball is its middle, that of a box its foot: a ball that stands on something has its place above it, m. */
function halfHeightM({ shape, sizesM }: QuickEntry): number {
  return shape === 'ball' ? (sizesM.diameter ?? 0) / 2 : 0;
}

/** Where an entry will stand, as a sentence for the form: nobody is to take it for taped. */
export function quickPlaceText({ boat }: Project, zone: ProjectZone | undefined, count: number): string {
  const { fromAftM, toAftM } = stationsIn(zoneStretch(boat, zoneKindOf(zone)), count);
  const isOnePlace = fromAftM === toAftM;
  const where = isOnePlace ? formatQuantity(fromAftM, 'm') : formatRange(fromAftM, toAftM, 'm');
  const what = count < 2 ? 'It is put' : isOnePlace ? 'All are put' : 'They are spread equally';
  return `${what} ${where} aft of the stem, estimated from the zone: tape it later and type it in the row.`;
}

/** The field that a refusal of the project's own rules is about; null for none of the form's. */
export function quickFieldOfPath(path: string): QuickField | null {
  const last = path.split('.').at(-1) ?? '';
  if (last === 'name') return 'name';
  if (last === 'aboveDeckM') return 'height';
  if (last === 'lengthM') return 'length';
  return last === 'count' ? 'count' : null;
}
