import type { AirInput } from '../air/air';
import type { Tack } from '../frames/boatToTrack';
import type { BoatVector } from '../vector/vector3';
import type { WindLaw } from '../wind/windProfile';

/** The wind as a forecast or a polar gives it: over the water, angle from the course, 0 (ahead) to pi. */
export interface TrueWindInput {
  readonly kind: 'true';
  readonly speedMs: number;
  /** Height the speed is valid at, m above the water; 10 unless said otherwise. */
  readonly heightM: number;
  readonly angleFromCourseRad: number;
}

/**
 * The wind as the boat's instruments read it: speed and angle of the apparent wind in the boat's own x-y plane, which
 * heels with the mast, at a height up the mast measured along the mast from the waterplane.
 */
export interface InstrumentWindInput {
  readonly kind: 'instrument';
  readonly speedMs: number;
  readonly angleFromBowRad: number;
  readonly heightUpMastM: number;
}

/** One sailing condition, SI and radians. Tack is the side the true wind comes from; heel is positive to leeward. */
export interface SailingCondition {
  readonly wind: TrueWindInput | InstrumentWindInput;
  readonly tack: Tack;
  readonly boatSpeedMs: number;
  readonly heelRad: number;
  readonly leewayRad: number;
  /** Added to every height above the water: a hull flown, a boat on foils. */
  readonly riseM: number;
  readonly air: AirInput;
  readonly windLaw: WindLaw;
  /** Half-widths of the 90 % ranges: the given wind's speed (a fraction) and angle, and the density (a fraction). */
  readonly windSpeedDoubt: number;
  readonly windAngleDoubtRad: number;
  readonly densityDoubt: number;
  /** Newtons of hull drag per newton of side force; null when not given. */
  readonly hullDragPerSideForce: number | null;
  /** Newtons of drive lost per newton metre of heeling moment (1/m); counts at the heel limit only; null when not given. */
  readonly driveLostPerHeelingMomentPerM: number | null;
  readonly atHeelLimit: boolean;
  /** Total resistance of the boat in this condition, N: the yardstick; null when not given. */
  readonly totalResistanceN: number | null;
  readonly centreOfLateralResistance: BoatVector;
}

/** Centre of lateral resistance when nobody gave one: amidships, 0.4 of the draught down (common practice, no source). */
export const lateralResistanceDepthShare = 0.4;
