import { freeboardAt, type DeckLine } from '../../physics/placement/deckLine';
import type { Basis } from '../../physics/fitting/fittingInput';
import type { ZoneKind } from '../catalogue/catalogueEntry';
import { neat } from '../edit/neat';
import type { ProjectBoat, ProjectPlacement, ProjectPoint } from '../file/schema';
import { stationsIn, zonePlaces, zoneStretch } from '../survey/zoneStretch';
import type { SurveyLies, SurveySide } from './surveyWords';

/** Where something stands, as a survey says it. */
export interface SurveyPlace {
  readonly aftOfStemM: number;
  readonly aboveDeckM: number;
  readonly side: SurveySide;
  readonly lies: SurveyLies;
  /** Of a bar; 0 for what stands at a point. */
  readonly lengthM: number;
  readonly count: number;
  /** Of a row; null for the usual spacing. */
  readonly lastAftOfStemM: number | null;
}

type Taped = Extract<ProjectPlacement, { kind: 'taped' }>;
type EndPoints = Extract<ProjectPlacement, { kind: 'endPoints' }>;

/** So far in from the deck edge stands what is on one side, m, until somebody says otherwise (common practice, no source). */
export const inboardM = 0.05;

/** Between the members of a row whose last one was not taped, m (common practice, no source). */
export const rowSpacingM = { decks: 2, elsewhere: 0.3 } as const;

/** The place that a zone gives to what was not taped: several are spread over its stretch, as the quick entry does. */
export function defaultPlace(kind: ZoneKind, boat: ProjectBoat, count: number): Omit<SurveyPlace, 'lengthM'> {
  const stretch = zoneStretch(boat, kind);
  const { fromAftM, toAftM } = stationsIn(stretch, count);
  return {
    aftOfStemM: fromAftM,
    aboveDeckM: stretch.standsAboveDeckM,
    side: zonePlaces[kind].side,
    lies: 'upright',
    count,
    lastAftOfStemM: count < 2 ? null : toAftM,
  };
}

/** What a survey would say of a placement. Places in between, such as a lean of 10°, come out as the nearest word. */
export function placeOf(placement: ProjectPlacement, line: DeckLine): SurveyPlace {
  return placement.kind === 'taped' ? placeOfTaped(placement) : placeOfEnds(placement, line);
}

function placeOfTaped(placement: Taped): SurveyPlace {
  const { aftOfStemM, aboveDeckM, lengthM, row, pair, side } = placement;
  return {
    aftOfStemM,
    aboveDeckM,
    lengthM,
    side: pair ? 'both' : side,
    lies: liesOfTaped(placement),
    count: row?.count ?? 1,
    lastAftOfStemM: row?.lastAftOfStemM ?? null,
  };
}

function liesOfTaped({ leanAftDeg, leanOutDeg }: Taped): SurveyLies {
  const isOver = (deg: number): boolean => Math.abs(deg) > 45 && Math.abs(deg) < 135;
  if (isOver(leanAftDeg)) return 'fore and aft';
  return isOver(leanOutDeg) ? 'athwart' : 'upright';
}

function placeOfEnds({ start, end, row, pair }: EndPoints, line: DeckLine): SurveyPlace {
  const aftOfStemM = neat(line.stemXM - start.xM);
  return {
    aftOfStemM,
    aboveDeckM: neat(start.zM - freeboardAt(line, aftOfStemM)),
    lengthM: neat(Math.hypot(end.xM - start.xM, end.yM - start.yM, end.zM - start.zM)),
    side: pair ? 'both' : sideOf(start.yM + end.yM),
    lies: liesOfEnds(start, end),
    count: row?.count ?? 1,
    lastAftOfStemM: row === null ? null : neat(line.stemXM - row.lastStart.xM),
  };
}

function sideOf(yM: number): SurveySide {
  if (Math.abs(yM) < 1e-6) return 'centreline';
  return yM > 0 ? 'port' : 'starboard';
}

function liesOfEnds(start: ProjectPoint, end: ProjectPoint): SurveyLies {
  const [x, y, z] = [end.xM - start.xM, end.yM - start.yM, end.zM - start.zM].map(Math.abs);
  if ((z ?? 0) >= Math.max(x ?? 0, y ?? 0)) return 'upright';
  return (x ?? 0) >= (y ?? 0) ? 'fore and aft' : 'athwart';
}

/** What of a row is laid out where its last one was not taped: the usual spacing, never beyond the stern. */
export function usualLastM(place: SurveyPlace, kind: ZoneKind, boat: ProjectBoat): number {
  const spacingM = kind === 'decks' ? rowSpacingM.decks : rowSpacingM.elsewhere;
  const lastM = place.aftOfStemM + (place.count - 1) * spacingM;
  return neat(Math.max(Math.min(lastM, boat.lengthM), place.aftOfStemM));
}

/**
 * A taped placement from what a survey says. What it cannot say (how far in, an odd lean) is taken from the placement
 * before, where there is one that still fits.
 * @param lastAftOfStemM of a row's last member; without meaning for a single one.
 */
export function tapedFrom(
  place: SurveyPlace,
  lastAftOfStemM: number,
  basis: Basis,
  before: ProjectPlacement | null = null,
): Taped {
  const old = before?.kind === 'taped' ? before : null;
  const athwart = athwartOf(place, old);
  return {
    kind: 'taped',
    aftOfStemM: place.aftOfStemM,
    side: place.side === 'both' ? (old?.pair === true ? old.side : 'starboard') : place.side,
    athwart,
    aboveDeckM: place.aboveDeckM,
    lengthM: place.lengthM,
    ...leansOf(place, old),
    basis,
    row:
      place.count < 2
        ? null
        : {
            count: place.count,
            lastAftOfStemM,
            lastAthwartM: old?.row?.lastAthwartM ?? athwart.inboardOrOutM,
          },
    pair: place.side === 'both',
  };
}

/** True where the placement before stands on the same side and lies the same way. */
function stillFits(place: SurveyPlace, old: Taped): boolean {
  const { side, lies } = placeOfTaped(old);
  return side === place.side && lies === place.lies;
}

function athwartOf(place: SurveyPlace, old: Taped | null): Taped['athwart'] {
  if (old !== null && stillFits(place, old)) return old.athwart;
  if (place.side !== 'centreline') return { from: 'deck-edge', inboardOrOutM: inboardM };
  // A bar across the boat is as long on the one side as on the other; "out" is to port.
  const outM = place.lies === 'athwart' ? -place.lengthM / 2 + 0 : 0;
  return { from: 'centreline', inboardOrOutM: outM };
}

/** A bar across that starts at the deck edge points inboard. */
function leansOf(place: SurveyPlace, old: Taped | null): Pick<Taped, 'leanAftDeg' | 'leanOutDeg'> {
  if (old !== null && stillFits(place, old)) {
    return { leanAftDeg: old.leanAftDeg, leanOutDeg: old.leanOutDeg };
  }
  if (place.lies === 'fore and aft') return { leanAftDeg: 90, leanOutDeg: 0 };
  if (place.lies === 'upright') return { leanAftDeg: 0, leanOutDeg: 0 };
  return { leanAftDeg: 0, leanOutDeg: place.side === 'centreline' ? 90 : -90 };
}
