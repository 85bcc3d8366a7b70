import { emptyFairing, fairingCoefficients, finiteFairing } from '../../src/physics/section/fairing';
import type { FairingSurface } from '../../src/physics/section/fairingAligned';
import type { FairingCoefficients } from '../../src/physics/section/fairing';
import { fairingRowsAt, sectionDragAt, sectionLiftAt } from '../../src/physics/section/fairingRows';
import {
  fairingTable,
  type FairingRow,
  type FairingSectionTable,
} from '../../src/physics/section/fairingTable';
import { within, type Band, type PublishedCheck, type Row, type Tolerance } from './publishedCheck';

export const fairingTopic = 'Section that lifts';

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** The model in two dimensions. */
export function fairingAt(
  thicknessRatio: number,
  chordReynolds: number,
  incidenceDeg: number,
  surface: FairingSurface = 'laminar',
): FairingCoefficients {
  return fairingCoefficients(thicknessRatio, chordReynolds, radians(incidenceDeg), surface, emptyFairing());
}

/** The model for a piece of finite length. */
export function finiteFairingAt(
  thicknessRatio: number,
  chordReynolds: number,
  incidenceDeg: number,
  aspectRatio: number,
  surface: FairingSurface = 'laminar',
): FairingCoefficients {
  return finiteFairing(
    fairingRowsAt(thicknessRatio),
    thicknessRatio,
    chordReynolds,
    radians(incidenceDeg),
    aspectRatio,
    surface,
    emptyFairing(),
    true,
  );
}

export const dragBand = ({ dragLow, dragHigh }: FairingCoefficients): Band => ({
  low: dragLow,
  high: dragHigh,
});

/** Lift of the two states, whichever is the larger. */
export const liftBand = ({ lift, liftLow, liftHigh }: FairingCoefficients): Band => ({
  low: Math.min(lift, liftLow, liftHigh),
  high: Math.max(lift, liftLow, liftHigh),
});

function rowOf(thicknessRatio: number, reynolds: number): { section: FairingSectionTable; row: FairingRow } {
  const section = fairingTable.find((entry) => entry.thicknessRatio === thicknessRatio);
  const row = section?.rows.find((entry) => entry.reynolds === reynolds);
  if (section === undefined || row === undefined) throw new Error('the table has no such row');
  return { section, row };
}

/** The table itself at a whole degree up to 30. */
export function tableLift(thicknessRatio: number, reynolds: number, degree: number): number {
  return sectionLiftAt(rowOf(thicknessRatio, reynolds).row, degree);
}

export function tableDrag(thicknessRatio: number, reynolds: number, degree: number): number {
  const { section, row } = rowOf(thicknessRatio, reynolds);
  return sectionDragAt(section, row, degree);
}

/** The incidence at which a rising curve first reaches `level`, by bisection between 0 and 90 deg. */
export function incidenceWhere(curve: (degrees: number) => number, level: number): number {
  let to = 0;
  while (to < 90 && curve(to) < level) to += 0.25;
  let from = to - 0.25;
  for (let i = 0; i < 40; i += 1) {
    const middle = (from + to) / 2;
    if (curve(middle) < level) from = middle;
    else to = middle;
  }
  return to;
}

export type Common = Parameters<typeof within>[0];

/** One check with a tolerance of its own. */
export function one(common: Common, tolerance: Tolerance, reason: string, row: Row): PublishedCheck {
  const [check] = within(common, tolerance, reason, [row]);
  if (check === undefined) throw new Error('a row gives a check');
  return check;
}
