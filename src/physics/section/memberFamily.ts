import type { EndMethod } from './endEffect';

/** The air at one point of a member, seen square to its axis. */
export interface StripFlow {
  /** Speed square to the axis, m/s. */
  crossSpeedMs: number;
  /** |u_n| / |u|: 1 when the wind is square to the axis. */
  inclinationCosine: number;
  kinematicViscosityM2S: number;
  /** Length over reference width, closed ends counted in; infinite with both ends closed. */
  effectiveSlenderness: number;
  /**
   * For a section with a direction: the angle from the chord, nose to tail, to the air's part square to the axis, about
   * the axis from start to end, -pi to pi; 0 when the nose points into the wind and for sections without a direction.
   */
  incidenceRad: number;
}

/**
 * Coefficients of one strip on the family's reference width: drag along the air's part square to the axis, lift square
 * to both (positive along axis x drag direction), each with the values of the low and the high state of the coefficient.
 */
export interface StripCoefficients {
  drag: number;
  dragLow: number;
  dragHigh: number;
  lift: number;
  liftLow: number;
  liftHigh: number;
  /** Index into the family's regimes. */
  regime: number;
  reynolds: number;
  /** log10 of the Reynolds number as it counts towards the drag crisis; of `reynolds` where the family has none. */
  logCrisisReynolds: number;
}

/**
 * One family of members, prepared for one shape: what the integration along the axis needs to know. A family that turns
 * with the wind, lifts, or has its own finite-length rule fills the same fields; the integration does not change.
 */
export interface PreparedSection {
  /** True for a section with a direction, whose strips want the incidence. */
  readonly isDirected: boolean;
  /** The width that the coefficients are based on, m, times the length. */
  readonly referenceWidthM: number;
  readonly perimeterM: number;
  /** Fills `out`; the low and high states only when `withBand` asks for them. */
  strip(flow: StripFlow, out: StripCoefficients, withBand: boolean): void;
  /**
   * Factor of finite length on the two-dimensional drag, from the slenderness with its ends counted in; for a section
   * with a direction also from the incidence at the member's middle.
   */
  endFactor(
    method: EndMethod,
    effectiveSlenderness: number,
    logCrisisReynolds: number,
    incidenceRad?: number,
  ): number;
}

export function emptyStrip(): StripCoefficients {
  return {
    drag: 0,
    dragLow: 0,
    dragHigh: 0,
    lift: 0,
    liftLow: 0,
    liftHigh: 0,
    regime: 0,
    reynolds: 0,
    logCrisisReynolds: 0,
  };
}
