import { smoothStep } from '../numerics/smoothStep';

/** Half-widths, as fractions of the force square to the axis, 30 deg off the axis and along it (assumed). */
const at30Deg = 0.2;
const alongAxis = 0.5;

/**
 * Half-width of the doubt in the cross-flow principle, as a fraction of the force square to the axis. The principle is
 * measured down to 45 deg between wind and axis and fair to 30 (from memory: Van Atta 1968, Ramberg 1983): nothing
 * down to 45 deg, 20 % at 30 deg, half along the axis. Assumed; source: cross-flow.
 * @param inclinationCosine |u_n| / |u|: 1 when the wind is square to the axis.
 */
export function crossFlowDoubt(inclinationCosine: number): number {
  if (inclinationCosine >= Math.SQRT1_2) return 0;
  const to30 = at30Deg * (1 - smoothStep(0.5, Math.SQRT1_2, inclinationCosine));
  return to30 + (alongAxis - at30Deg) * (1 - smoothStep(0, 0.5, inclinationCosine));
}
