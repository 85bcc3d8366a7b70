import { cubicTable, valueAt } from '../numerics/cubicTable';
import { smoothStep } from '../numerics/smoothStep';
import { fairingRange } from './fairingTable';

/**
 * Doubt of the section table over incidence, degrees: [incidence, pressure drag low, high, lift low state, high state,
 * degrees by which the stall may come later or earlier].
 *
 * The states belong together: the low one has the clean surface and the late stall (less drag, more lift below the
 * stall), the high one the thick boundary layer and the early stall. After the stall the force is square to the chord, so
 * drag and lift go up and down together.
 *
 * - Below the stall: measured lift slopes are 0.097 to 0.107 per degree where the table has 0.110 (NACA 0012 tripped,
 *   0015), 0.109 to 0.115 smooth: high state 12 % less lift, low state 8 % more. Near the peak the table is low (0012: 1.30 measured at 12 deg, Re 1.8e6, and 1.44 at
 *   14 deg, Re 6e6): low state up to 12 % more. What incidence adds to drag: 20 to 25 % less, 15 % more (assumed).
 * - Stall: 2 deg either way (assumed; at Re 6e6 NACA 0012 was measured to stall 1 to 2 deg later than the table says).
 * - After the stall to 60 deg other tunnels give less (remarked by a later data set), and Viterna and Corrigan's equations for a
 *   piece of ten chords 0.60 to 0.81 of this table: drag down to 0.66, lift to 0.7 (assumed).
 * - Square to the wind: a plate in two dimensions 1.98 to 2.2, NACA 0012 2.08, the table 1.8: to 1.22.
 * - Tail into the wind: half to one and a half times (0012 measured at about twice its drag nose first, table four times).
 * Source: sheldahl-klimas-1981, critzos-1955, ladson-1988, abbott-doenhoff, viterna-corrigan.
 */
export const fairingBandNodes: readonly (readonly [
  incidenceDeg: number,
  pressureLow: number,
  pressureHigh: number,
  liftLowState: number,
  liftHighState: number,
  stallShiftDeg: number,
])[] = [
  [0, 0.8, 1.15, 1.08, 0.88, 0],
  [6, 0.8, 1.15, 1.09, 0.88, 2],
  [15, 0.75, 1.15, 1.12, 0.92, 2],
  [30, 0.66, 1.15, 0.7, 1.15, 2],
  [45, 0.66, 1.15, 0.7, 1.15, 0],
  [60, 0.75, 1.15, 0.75, 1.15, 0],
  [90, 0.9, 1.22, 0.9, 1.22, 0],
  [135, 0.75, 1.2, 0.75, 1.2, 0],
  [160, 0.6, 1.3, 0.75, 1.2, 0],
  [180, 0.5, 1.5, 0.75, 1.2, 0],
];

/** Column numbers of `fairingBandAt`. */
export const bandColumn = {
  pressureLow: 0,
  pressureHigh: 1,
  liftLow: 2,
  liftHigh: 3,
  stallShift: 4,
} as const;

const columnCount = 5;
const bandByDegree = tabulateBand();

function tabulateBand(): Float64Array {
  const curve = cubicTable(
    fairingBandNodes.map(([degrees]) => degrees),
    fairingBandNodes.map(([, ...columns]) => columns),
  );
  return Float64Array.from({ length: 182 * columnCount }, (_, i) =>
    valueAt(curve, i % columnCount, Math.floor(i / columnCount)),
  );
}

/** A column of the band at an incidence of 0 to 180 deg. */
export function fairingBandAt(column: number, degrees: number): number {
  const at = Math.floor(degrees);
  const first = bandByDegree[at * columnCount + column]!;
  return first + (degrees - at) * (bandByDegree[(at + 1) * columnCount + column]! - first);
}

/** True outside what the table covers: nearest values, wider band, and a notice. */
export function isOutsideFairingTable(thicknessRatio: number, chordReynolds: number): boolean {
  const { thicknessFrom, thicknessTo, reynoldsFrom, reynoldsTo } = fairingRange;
  return (
    thicknessRatio < thicknessFrom ||
    thicknessRatio > thicknessTo ||
    chordReynolds < reynoldsFrom ||
    chordReynolds > reynoldsTo
  );
}

/** Outside the table the band is half as wide again; reached a factor of 1.25 beyond its edge, so that nothing jumps. */
const widerOutside = 0.5;
const fullyOutside = Math.log(1.25);

/** Factor on the distance of low and high from best: 1 inside the table, 1.5 outside. */
export function bandWidening(thicknessRatio: number, chordReynolds: number): number {
  const { thicknessFrom, thicknessTo, reynoldsFrom, reynoldsTo } = fairingRange;
  const beyond = Math.max(
    Math.log(Math.max(thicknessRatio, thicknessTo) / thicknessTo),
    Math.log(thicknessFrom / Math.min(thicknessRatio, thicknessFrom)),
    Math.log(Math.max(chordReynolds, reynoldsTo) / reynoldsTo),
    Math.log(reynoldsFrom / Math.max(Math.min(chordReynolds, reynoldsFrom), 1)),
  );
  return 1 + widerOutside * smoothStep(0, fullyOutside, beyond);
}
