import { airOf, type Air } from '../air/air';
import { boatToTrack, tackSign, toTrack, trackToHeading, type BoatToTrack } from '../frames/boatToTrack';
import { boatVector, trackVector, type BoatVector, type TrackVector } from '../vector/vector3';
import { speedAt10From, windProfile, windSpeedMs, type WindProfile } from '../wind/windProfile';
import type { InstrumentWindInput, SailingCondition, TrueWindInput } from './sailingCondition';

/** A condition solved: everything that the wind at any point needs, computed once. */
export interface SailingState {
  readonly rotation: BoatToTrack;
  /** +1 on starboard tack, -1 on port tack. */
  readonly tackSign: 1 | -1;
  readonly boatSpeedMs: number;
  readonly riseM: number;
  readonly profile: WindProfile;
  /** True wind angle from the course, rad, 0 to pi, on the tack's side. */
  readonly trueWindAngleRad: number;
  /** Unit vector of the true wind's flow (towards), in the track's frame; its third component is zero. */
  readonly flowX: number;
  readonly flowY: number;
  readonly air: Air;
  readonly centreOfLateralResistance: BoatVector;
  readonly condition: SailingCondition;
}

export interface SolvedTrueWind {
  readonly speedAt10Ms: number;
  readonly angleFromCourseRad: number;
}

/** Solves a condition. An instrument reading is turned into the true wind at 10 m first. */
export function solveCondition(condition: SailingCondition): SailingState {
  const solved = trueWindOf(condition);
  return stateWithWind(condition, solved, airOf(condition.air));
}

/** The state of a condition whose true wind and air are already known: the doubts pass changed ones in. */
export function stateWithWind(condition: SailingCondition, wind: SolvedTrueWind, air: Air): SailingState {
  const sign = tackSign(condition.tack);
  return {
    rotation: boatToTrack(condition.heelRad, condition.leewayRad, condition.tack),
    tackSign: sign,
    boatSpeedMs: condition.boatSpeedMs,
    riseM: condition.riseM,
    profile: windProfile(condition.windLaw, wind.speedAt10Ms),
    trueWindAngleRad: wind.angleFromCourseRad,
    flowX: -Math.cos(wind.angleFromCourseRad),
    flowY: sign * Math.sin(wind.angleFromCourseRad),
    air,
    centreOfLateralResistance: condition.centreOfLateralResistance,
    condition,
  };
}

/** True wind at 10 m, however the condition gave it. */
export function trueWindOf(condition: SailingCondition): SolvedTrueWind {
  return condition.wind.kind === 'true'
    ? fromTrueWind(condition, condition.wind)
    : fromInstruments(condition, condition.wind);
}

function fromTrueWind(condition: SailingCondition, wind: TrueWindInput): SolvedTrueWind {
  return {
    speedAt10Ms: speedAt10From(condition.windLaw, wind.speedMs, wind.heightM),
    angleFromCourseRad: wind.angleFromCourseRad,
  };
}

/**
 * The reading lies in the boat's x-y plane, and the air moves horizontally, so the horizontal apparent wind has the
 * reading's fore-and-aft part and its athwartships part divided by cos(heel). Adding the boat's velocity leaves the
 * true wind at the instrument's height, and the wind law leads down to 10 m. Exact; needs |heel| < 90 deg.
 */
function fromInstruments(condition: SailingCondition, reading: InstrumentWindInput): SolvedTrueWind {
  const acrossInPlane = reading.speedMs * Math.sin(reading.angleFromBowRad);
  return fromApparent(
    condition,
    reading.speedMs * Math.cos(reading.angleFromBowRad),
    acrossInPlane / Math.cos(condition.heelRad),
    reading.heightUpMastM * Math.cos(condition.heelRad) + condition.riseM,
  );
}

/**
 * True wind at 10 m with which the boat meets a horizontal apparent wind at a height above the water.
 * @param aheadMs its part from ahead, along the bow.
 * @param abeamMs its part from the tack's side.
 */
function fromApparent(
  condition: SailingCondition,
  aheadMs: number,
  abeamMs: number,
  heightM: number,
): SolvedTrueWind {
  const sign = tackSign(condition.tack);
  const leeway = boatToTrack(condition.heelRad, condition.leewayRad, condition.tack).signedLeewayRad;
  const [alongHeading, across] = [-aheadMs, sign * abeamMs];
  const apparentX = alongHeading * Math.cos(leeway) + across * Math.sin(leeway);
  const apparentY = -alongHeading * Math.sin(leeway) + across * Math.cos(leeway);
  const trueX = apparentX + condition.boatSpeedMs;
  const speedMs = Math.hypot(trueX, apparentY);
  return {
    speedAt10Ms: speedAt10From(condition.windLaw, speedMs, heightM),
    angleFromCourseRad: speedMs === 0 ? 0 : Math.atan2(sign * apparentY, -trueX),
  };
}

/**
 * The state in which the boat of a condition meets a given horizontal apparent wind at a height above the water, her speed,
 * heel, leeway and wind law staying as they are. The wind at other heights follows from the law.
 */
export function stateWithApparentWind(
  condition: SailingCondition,
  speedMs: number,
  angleFromBowRad: number,
  heightM: number,
  air: Air,
): SailingState {
  const aheadMs = speedMs * Math.cos(angleFromBowRad);
  const abeamMs = speedMs * Math.sin(angleFromBowRad);
  return stateWithWind(condition, fromApparent(condition, aheadMs, abeamMs, heightM), air);
}

/** Height above the water, m, of a point of the boat. */
export function heightAboveWaterM(state: SailingState, point: BoatVector): number {
  return toTrack(state.rotation, point)[2] + state.riseM;
}

/** True wind velocity (towards), m/s, in the track's frame at a height above the water. */
function trueWindAt(state: SailingState, heightM: number): TrackVector {
  const speed = windSpeedMs(state.profile, heightM);
  return trackVector(speed * state.flowX, speed * state.flowY, 0);
}

/** Velocity of the air past the boat, m/s, in the track's frame: true wind less boat velocity. */
export function apparentWindVelocityAt(state: SailingState, heightM: number): TrackVector {
  const wind = trueWindAt(state, heightM);
  return trackVector(wind[0] - state.boatSpeedMs, wind[1], 0);
}

export interface ApparentWind {
  readonly heightM: number;
  readonly trueWindMs: number;
  readonly speedMs: number;
  /** Where the wind comes from: from the bow, in the horizontal plane, positive on the tack's side. */
  readonly angleFromBowRad: number;
  /** The same from the course through the water; leeway larger than the angle from the bow. */
  readonly angleFromCourseRad: number;
}

/** Apparent wind at a height above the water, m. */
export function apparentWindAt(state: SailingState, heightM: number): ApparentWind {
  const velocity = apparentWindVelocityAt(state, heightM);
  const heading = trackToHeading(state.rotation, velocity);
  return {
    heightM,
    trueWindMs: windSpeedMs(state.profile, heightM),
    speedMs: Math.hypot(velocity[0], velocity[1]),
    angleFromBowRad: angleOnTack(state, heading[0], heading[1]),
    angleFromCourseRad: angleOnTack(state, velocity[0], velocity[1]),
  };
}

/** Apparent wind as an instrument up the mast reads it: in the boat's x-y plane, which heels. */
export function instrumentReadingAt(
  state: SailingState,
  heightUpMastM: number,
): { speedMs: number; angleFromBowRad: number } {
  const height = heightAboveWaterM(state, boatVector(0, 0, heightUpMastM));
  const heading = trackToHeading(state.rotation, apparentWindVelocityAt(state, height));
  const across = heading[1] * Math.cos(state.rotation.signedHeelRad);
  return { speedMs: Math.hypot(heading[0], across), angleFromBowRad: angleOnTack(state, heading[0], across) };
}

/** Angle the wind comes from, for a flow (x, y) towards: 0 from ahead, positive on the tack's side. */
function angleOnTack(state: SailingState, x: number, y: number): number {
  return x === 0 && y === 0 ? 0 : Math.atan2(state.tackSign * y, -x);
}
