import { emptyFairing, finiteFairing } from '../section/fairing';
import type { FairingSurface } from '../section/fairingAligned';
import { isOutsideFairingTable } from '../section/fairingBand';
import { fairingRowsAt } from '../section/fairingRows';

/** A sleeve that turns freely about a tube. Places along the chord are metres behind the nose. */
export interface TurningFairing {
  readonly chordM: number;
  readonly thicknessM: number;
  readonly lengthM: number;
  readonly pivotM: number;
  /** Of everything that turns, balance weight included. */
  readonly massKg: number;
  readonly massCentreM: number;
  /** Where a balance weight could sit. */
  readonly balancePlaceM: number;
  /** What it may be off the wind by, as typed: friction, salt, gusts. Either side; above nothing. */
  readonly residualRad: number;
  /** Free play along the tube at each end. */
  readonly endClearanceM: number;
  /** Angle of the tube from upright, in any direction. */
  readonly leanRad: number;
  /** Of the air square to the tube. */
  readonly speedMs: number;
  readonly densityKgM3: number;
  readonly kinematicViscosityM2S: number;
  readonly surface: FairingSurface;
}

export type TurningProblem = 'not-a-number' | 'not-positive' | 'place-off-the-chord' | 'angle-out-of-range';

/**
 * `moving-part` always: it can jam. `does-not-follow`: the pivot lies behind the aerodynamic centre, the fairing turns across the
 * wind; `may-not-follow`: it lies within that centre's range. `may-flutter`: the mass centre lies behind the pivot.
 * `hangs-off`: at this wind its own weight turns it farther than the typed residual. `ends-may-jam`: less clearance than a
 * sleeve and a tube of other materials may need; `outside-table` as of every fairing.
 */
export interface TurningNotice {
  readonly code:
    | 'moving-part'
    | 'does-not-follow'
    | 'may-not-follow'
    | 'may-flutter'
    | 'hangs-off'
    | 'ends-may-jam'
    | 'outside-table';
  readonly values: Readonly<Record<string, number>>;
}

/** The working of a turning fairing; null where nothing turns it into the wind. */
export interface TurningTrace {
  readonly chordM: number;
  readonly thicknessM: number;
  readonly lengthM: number;
  readonly pivotM: number;
  readonly massKg: number;
  readonly massCentreM: number;
  readonly balancePlaceM: number;
  readonly residualRad: number;
  readonly endClearanceM: number;
  readonly leanRad: number;
  readonly speedMs: number;
  readonly densityKgM3: number;
  readonly chordReynolds: number;
  readonly dynamicPressurePa: number;
  readonly aerodynamicCentreM: number;
  readonly aerodynamicCentreLowM: number;
  readonly aerodynamicCentreHighM: number;
  readonly followShare: number;
  readonly followShareLow: number;
  readonly residualLift: number;
  readonly turningMomentNm: number;
  readonly weightMomentNm: number;
  readonly hangAngleRad: number | null;
  readonly balanceMassKg: number | null;
  readonly neededClearanceM: number;
}

export type TurningResult =
  | { readonly kind: 'turning'; readonly trace: TurningTrace; readonly notices: readonly TurningNotice[] }
  | { readonly kind: 'problem'; readonly problem: TurningProblem };

/**
 * Aerodynamic centre behind the nose over the chord: a quarter for a thin section; thick sections and low Reynolds numbers
 * move it by a few hundredths, forwards where the layer separates near the tail. Range assumed. Source: thin-aerofoil.
 */
const aerodynamicCentre = { low: 0.2, best: 0.25, high: 0.27 } as const;
/** Aluminium against carbon over 40 K. Source: aluminium-expansion. */
const expansionShare = 23e-6 * 40;
const standardGravity = 9.80665;
/** Residuals beyond this are stalled: the fairing does not turn with the wind any more. */
const largestResidualRad = Math.PI / 12;

/**
 * Does a sleeve on a pivot turn into the wind, and stay there? The air turns it by M = q c L C_L (x_a - x_p), with C_L at the
 * typed residual error: friction below M is what that residual allows. Its weight, on a tube that leans, turns it by
 * m g sin(lean) (x_m - x_p) at most; where that is all, it hangs off the wind by residual x weight / M. A balance weight
 * m (x_m - x_p) / (x_p - x_b) at x_b brings the mass centre onto the pivot.
 *
 * Valid below the stall and in steady wind. Warns of flutter by the rule for control surfaces (mass centre behind the
 * pivot), and predicts no flutter speed. Follows at once: nothing is said of gusts beyond the typed residual.
 *
 * Example: chord 0.2 m, pivot at 0.03 m: 0.02 m, or a tenth of the chord, ahead of the aerodynamic centre at 0.05 m.
 * Errors: tagged. Source: thin-aerofoil, turning-practice, sheldahl-klimas-1981.
 */
export function turningFairingOf(input: TurningFairing): TurningResult {
  const problem = turningProblem(input);
  if (problem !== null) return { kind: 'problem', problem };
  const trace = traceOf(input);
  return { kind: 'turning', trace, notices: noticesOf(trace) };
}

function turningProblem(input: TurningFairing): TurningProblem | null {
  const numbers = Object.values(input).filter((value) => typeof value === 'number');
  if (!numbers.every(Number.isFinite)) return 'not-a-number';
  const { chordM, thicknessM, lengthM, massKg, speedMs, densityKgM3, kinematicViscosityM2S } = input;
  const positive = [chordM, thicknessM, lengthM, massKg, speedMs, densityKgM3, kinematicViscosityM2S];
  if (!positive.every((value) => value > 0) || input.endClearanceM < 0) return 'not-positive';
  const places = [input.pivotM, input.massCentreM];
  if (!places.every((place) => place >= 0 && place <= chordM)) return 'place-off-the-chord';
  const isSmall = input.residualRad > 0 && input.residualRad <= largestResidualRad;
  return isSmall && Math.abs(input.leanRad) <= Math.PI / 2 ? null : 'angle-out-of-range';
}

function traceOf(input: TurningFairing): TurningTrace {
  const { surface, kinematicViscosityM2S, ...given } = input;
  const { chordM, lengthM, pivotM, massKg, massCentreM, balancePlaceM } = input;
  const chordReynolds = (input.speedMs * chordM) / kinematicViscosityM2S;
  const dynamicPressurePa = 0.5 * input.densityKgM3 * input.speedMs ** 2;
  const aerodynamicCentreM = aerodynamicCentre.best * chordM;
  const aerodynamicCentreLowM = aerodynamicCentre.low * chordM;
  const residualLift = liftAt(input, chordReynolds, surface);
  const turningMomentNm = dynamicPressurePa * chordM * lengthM * residualLift * (aerodynamicCentreM - pivotM);
  const weightMomentNm =
    massKg * standardGravity * Math.sin(Math.abs(input.leanRad)) * Math.abs(massCentreM - pivotM);
  const isTurned = turningMomentNm > 0;
  const isBehind = massCentreM > pivotM && balancePlaceM < pivotM;
  return {
    ...given,
    chordReynolds,
    dynamicPressurePa,
    aerodynamicCentreM,
    aerodynamicCentreLowM,
    aerodynamicCentreHighM: aerodynamicCentre.high * chordM,
    followShare: (aerodynamicCentreM - pivotM) / chordM,
    followShareLow: (aerodynamicCentreLowM - pivotM) / chordM,
    residualLift,
    turningMomentNm,
    weightMomentNm,
    hangAngleRad: isTurned ? (input.residualRad * weightMomentNm) / turningMomentNm : null,
    balanceMassKg: isBehind ? (massKg * (massCentreM - pivotM)) / (pivotM - balancePlaceM) : null,
    neededClearanceM: expansionShare * lengthM,
  };
}

/** Lift coefficient on chord x length at the residual error, both ends free. */
function liftAt(input: TurningFairing, chordReynolds: number, surface: FairingSurface): number {
  const { chordM, thicknessM, lengthM, residualRad } = input;
  const ratio = thicknessM / chordM;
  const out = emptyFairing();
  const rows = fairingRowsAt(ratio);
  return finiteFairing(rows, ratio, chordReynolds, residualRad, lengthM / chordM, surface, out, false).lift;
}

function noticesOf(trace: TurningTrace): TurningNotice[] {
  const { pivotM, aerodynamicCentreM, aerodynamicCentreLowM, massCentreM, hangAngleRad } = trace;
  const { residualRad, endClearanceM, neededClearanceM, chordReynolds, chordM, thicknessM } = trace;
  const found: (TurningNotice | false)[] = [
    { code: 'moving-part', values: {} },
    pivotM >= aerodynamicCentreM && { code: 'does-not-follow', values: { pivotM, aerodynamicCentreM } },
    pivotM >= aerodynamicCentreLowM &&
      pivotM < aerodynamicCentreM && {
        code: 'may-not-follow',
        values: { pivotM, aerodynamicCentreLowM, aerodynamicCentreM },
      },
    massCentreM > pivotM && { code: 'may-flutter', values: { massCentreM, pivotM } },
    hangAngleRad !== null &&
      hangAngleRad > residualRad && { code: 'hangs-off', values: { hangAngleRad, residualRad } },
    endClearanceM < neededClearanceM && {
      code: 'ends-may-jam',
      values: { endClearanceM, neededClearanceM },
    },
    isOutsideFairingTable(thicknessM / chordM, chordReynolds) && {
      code: 'outside-table',
      values: { thicknessRatio: thicknessM / chordM, chordReynolds },
    },
  ];
  return found.filter((notice) => notice !== false);
}
