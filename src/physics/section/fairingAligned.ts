import { smoothStep } from '../numerics/smoothStep';
import { laminarFriction, turbulentFriction } from './skinFriction';

/**
 * What the boundary layer on a fairing does. 'turbulent': from near the nose, as on anything salty, ribbed, taped or in
 * the turbulent air over a deck. 'laminar': a smooth surface in steady air, with its own transition.
 */
export type FairingSurface = 'laminar' | 'turbulent';

/** The drag formulas hold for sections, not for near-round ones; thicker than this they are held. */
const thickestFormula = 0.5;
/** The laminar formula is for chord Re 1e4 to 5e5; it fades into the table around its end. */
const laminarFadesFrom = Math.log(3e5);
const laminarFadesTo = Math.log(1e6);
/** A smooth section's best value: halfway, in the logarithm, between table and laminar formula to Re 1e5, the table from 1e6 (assumed). */
const laminarShare = 0.5;
const laminarShareFadesFrom = Math.log(1e5);
/** Edges beside the outermost source: the table is computed, and salt or ribs cost more than a smooth turbulent plate (assumed). */
const belowLowest = 0.9;
const aboveTurbulent = 1.15;

/** Profile drag at no incidence, on chord x length. */
export interface AlignedDrag {
  best: number;
  low: number;
  high: number;
}

/** Drag of a section over that of a plate, thickest point near 30 % chord: 1 + 2 t/c + 60 (t/c)^4. Source: hoerner-sections. */
export function fairingFormFactor(thicknessRatio: number): number {
  return 1 + 2 * thicknessRatio + 60 * thicknessRatio ** 4;
}

/** The same with the thickest point at 40 to 50 % chord: 1 + 1.2 t/c + 70 (t/c)^4. Source: hoerner-sections (from memory). */
export function aftFormFactor(thicknessRatio: number): number {
  return 1 + 1.2 * thicknessRatio + 70 * thicknessRatio ** 4;
}

/** Turbulent: 2 Cf (1 + 2 t/c + 60 (t/c)^4), Cf Prandtl-Schlichting. Source: hoerner-sections, fox-mcdonald. */
export function turbulentAlignedDrag(thicknessRatio: number, chordReynolds: number): number {
  const ratio = Math.min(thicknessRatio, thickestFormula);
  return 2 * turbulentFriction(chordReynolds) * fairingFormFactor(ratio);
}

/**
 * Laminar with separation near the tail: 2 Cf (1 + t/c) + (t/c)^2, Cf Blasius; on frontal area 2 Cf (1 + c/t) + t/c.
 * Chord Re 1e4 to 5e5. Source: hoerner-sections (from memory), blasius.
 */
export function laminarAlignedDrag(thicknessRatio: number, chordReynolds: number): number {
  const ratio = Math.min(thicknessRatio, thickestFormula);
  return 2 * laminarFriction(chordReynolds) * (1 + ratio) + ratio * ratio;
}

/**
 * Best, low and high of the aligned drag from the three published answers: the section table (computed, natural
 * transition), turbulent, laminar with separation. They differ by a factor of four at low Reynolds number and large
 * thickness; the band holds all three.
 * @param tableDrag the section table's value at no incidence.
 */
export function alignedDrag(
  thicknessRatio: number,
  chordReynolds: number,
  tableDrag: number,
  surface: FairingSurface,
  out: AlignedDrag,
  withBand = true,
): AlignedDrag {
  const turbulent = turbulentAlignedDrag(thicknessRatio, chordReynolds);
  if (surface === 'turbulent') out.best = turbulent;
  if (surface === 'turbulent' && !withBand) return out;
  const logReynolds = Math.log(Math.max(chordReynolds, 1));
  const laminarOverTable = Math.max(laminarAlignedDrag(thicknessRatio, chordReynolds) / tableDrag, 1);
  const laminarReach = 1 - smoothStep(laminarFadesFrom, laminarFadesTo, logReynolds);
  const smoothShare = laminarShare * (1 - smoothStep(laminarShareFadesFrom, laminarFadesTo, logReynolds));
  if (surface === 'laminar') out.best = tableDrag * laminarOverTable ** smoothShare;
  out.low = belowLowest * Math.min(tableDrag, turbulent);
  out.high = Math.max(
    tableDrag * laminarOverTable ** laminarReach,
    aboveTurbulent * turbulent,
    aboveTurbulent * tableDrag,
  );
  return out;
}
