import type { Quantity } from '../quantity';
import { toBoat } from '../frames/boatToTrack';
import type { SailingState } from '../condition/sailingState';
import { plainZero } from '../numerics/plainZero';
import { trackVector, type TrackVector } from '../vector/vector3';
import { changeOf } from './change';

/** Force and moment summed in the track's frame about the boat's origin, and the two powers that belong to them. */
export interface Sums {
  fx: number;
  fy: number;
  fz: number;
  mx: number;
  my: number;
  mz: number;
  /** Sum of F . (free apparent wind), W. */
  airPower: number;
  /** Sum of F . (true wind), W. */
  windPower: number;
}

export function zeroSums(): Sums {
  return { fx: 0, fy: 0, fz: 0, mx: 0, my: 0, mz: 0, airPower: 0, windPower: 0 };
}

/** Sets sums that are used again back to nothing. */
export function clearSums(sums: Sums): void {
  sums.fx = 0;
  sums.fy = 0;
  sums.fz = 0;
  sums.mx = 0;
  sums.my = 0;
  sums.mz = 0;
  sums.airPower = 0;
  sums.windPower = 0;
}

/** Adds `factor` times `part` into `into`. */
export function addSums(into: Sums, part: Sums, factor: number): void {
  into.fx += factor * part.fx;
  into.fy += factor * part.fy;
  into.fz += factor * part.fz;
  into.mx += factor * part.mx;
  into.my += factor * part.my;
  into.mz += factor * part.mz;
  into.airPower += factor * part.airPower;
  into.windPower += factor * part.windPower;
}

/** What a fitting, a zone or the boat does, in one flat object. Every entry is a sum: parts add up to totals. */
export interface Outcome {
  readonly dragAgainstTrackN: number;
  readonly sideForceN: number;
  readonly verticalForceN: number;
  readonly heelingMomentNm: number;
  readonly airPowerW: number;
  readonly trackPowerW: number;
  readonly windPowerW: number;
  /** Track power plus what side force and heel cost; equal to track power where no price was given. */
  readonly fullPriceW: number;
  readonly forceTrackXN: number;
  readonly forceTrackYN: number;
  readonly forceTrackZN: number;
  readonly forceBoatXN: number;
  readonly forceBoatYN: number;
  readonly forceBoatZN: number;
  readonly momentTrackXNm: number;
  readonly momentTrackYNm: number;
  readonly momentTrackZNm: number;
  readonly momentBoatXNm: number;
  readonly momentBoatYNm: number;
  readonly momentBoatZNm: number;
}

export type OutcomeKey = keyof Outcome;

type MutableOutcome = Record<OutcomeKey, number>;

/** Symbols, units and equations of the outcome, for every screen, table and page that prints one. */
export const outcomeQuantities = {
  dragAgainstTrackN: { symbol: 'D', label: 'force against the track', unit: 'N', equation: '-F_X' },
  sideForceN: {
    symbol: 'S',
    label: 'side force, positive to leeward',
    unit: 'N',
    equation: 'F_Y on starboard tack, -F_Y on port tack',
  },
  verticalForceN: { symbol: 'F_Z', label: 'vertical force, positive up', unit: 'N', equation: 'F_Z' },
  heelingMomentNm: {
    symbol: 'M_h',
    label: 'heeling moment about the centre of lateral resistance, positive to leeward',
    unit: 'N m',
    equation: '-(M_x - (r_c x F)_x) on starboard tack, mirrored on port tack',
  },
  airPowerW: { symbol: 'P_a', label: 'air power', unit: 'W', equation: 'sum F . u' },
  trackPowerW: { symbol: 'P_t', label: 'track power', unit: 'W', equation: '-F . v = D V' },
  windPowerW: {
    symbol: 'P_w',
    label: 'power of the true wind on the fitting',
    unit: 'W',
    equation: 'sum F . w = P_a - P_t',
  },
  fullPriceW: { symbol: 'P_f', label: 'full price', unit: 'W', equation: 'P_t + V (k_s S + k_h M_h)' },
  forceTrackXN: { symbol: 'F_X', label: 'force along the track, forward', unit: 'N', equation: 'sum dF' },
  forceTrackYN: { symbol: 'F_Y', label: 'force across the track, to port', unit: 'N', equation: 'sum dF' },
  forceTrackZN: { symbol: 'F_Z', label: 'force upwards', unit: 'N', equation: 'sum dF' },
  forceBoatXN: { symbol: 'F_x', label: "force along the boat's axis, forward", unit: 'N', equation: 'R^T F' },
  forceBoatYN: { symbol: 'F_y', label: 'force across the boat, to port', unit: 'N', equation: 'R^T F' },
  forceBoatZN: { symbol: 'F_z', label: 'force along the mast, up', unit: 'N', equation: 'R^T F' },
  momentTrackXNm: {
    symbol: 'M_X',
    label: "moment about the track's axis, at the boat's origin",
    unit: 'N m',
    equation: 'sum r x dF',
  },
  momentTrackYNm: {
    symbol: 'M_Y',
    label: "moment about the axis across the track, at the boat's origin",
    unit: 'N m',
    equation: 'sum r x dF',
  },
  momentTrackZNm: {
    symbol: 'M_Z',
    label: "moment about the vertical, at the boat's origin",
    unit: 'N m',
    equation: 'sum r x dF',
  },
  momentBoatXNm: {
    symbol: 'M_x',
    label: "moment about the boat's x axis, at her origin",
    unit: 'N m',
    equation: 'R^T M',
  },
  momentBoatYNm: {
    symbol: 'M_y',
    label: "moment about the boat's y axis, at her origin",
    unit: 'N m',
    equation: 'R^T M',
  },
  momentBoatZNm: {
    symbol: 'M_z',
    label: "moment about the boat's z axis, at her origin",
    unit: 'N m',
    equation: 'R^T M',
  },
} as const satisfies Record<OutcomeKey, Quantity>;

export const outcomeKeys = Object.keys(outcomeQuantities) as readonly OutcomeKey[];

/** Turns sums into the outcome: both frames, the heeling moment, the powers and the full price. */
export function outcomeOf(sums: Sums, state: SailingState): Outcome {
  const forceTrack: TrackVector = trackVector(sums.fx, sums.fy, sums.fz);
  const momentTrack: TrackVector = trackVector(sums.mx, sums.my, sums.mz);
  const forceBoat = toBoat(state.rotation, forceTrack);
  const momentBoat = toBoat(state.rotation, momentTrack);
  const change = changeOf(sums, state);
  return {
    dragAgainstTrackN: change.dragAgainstTrackN,
    sideForceN: change.sideForceN,
    verticalForceN: sums.fz,
    heelingMomentNm: change.heelingMomentNm,
    airPowerW: change.airPowerW,
    trackPowerW: change.trackPowerW,
    windPowerW: sums.windPower,
    fullPriceW: change.fullPriceW,
    forceTrackXN: sums.fx,
    forceTrackYN: sums.fy,
    forceTrackZN: sums.fz,
    forceBoatXN: plainZero(forceBoat[0]),
    forceBoatYN: plainZero(forceBoat[1]),
    forceBoatZN: plainZero(forceBoat[2]),
    momentTrackXNm: sums.mx,
    momentTrackYNm: sums.my,
    momentTrackZNm: sums.mz,
    momentBoatXNm: plainZero(momentBoat[0]),
    momentBoatYNm: plainZero(momentBoat[1]),
    momentBoatZNm: plainZero(momentBoat[2]),
  };
}

/** A weighted sum of outcomes, entry by entry; a part without a weight counts once. */
export function sumOutcomes(
  parts: readonly { readonly outcome: Outcome; readonly weight?: number }[],
): Outcome {
  const sum = emptyOutcome();
  for (const { outcome, weight = 1 } of parts) accumulateOutcome(sum, outcome, weight);
  return sum;
}

/** Adds in place and name by name: a ledger's totals add thousands of outcomes. */
function accumulateOutcome(into: MutableOutcome, part: Outcome, weight: number): void {
  into.dragAgainstTrackN += weight * part.dragAgainstTrackN;
  into.sideForceN += weight * part.sideForceN;
  into.verticalForceN += weight * part.verticalForceN;
  into.heelingMomentNm += weight * part.heelingMomentNm;
  into.airPowerW += weight * part.airPowerW;
  into.trackPowerW += weight * part.trackPowerW;
  into.windPowerW += weight * part.windPowerW;
  into.fullPriceW += weight * part.fullPriceW;
  into.forceTrackXN += weight * part.forceTrackXN;
  into.forceTrackYN += weight * part.forceTrackYN;
  into.forceTrackZN += weight * part.forceTrackZN;
  into.forceBoatXN += weight * part.forceBoatXN;
  into.forceBoatYN += weight * part.forceBoatYN;
  into.forceBoatZN += weight * part.forceBoatZN;
  into.momentTrackXNm += weight * part.momentTrackXNm;
  into.momentTrackYNm += weight * part.momentTrackYNm;
  into.momentTrackZNm += weight * part.momentTrackZNm;
  into.momentBoatXNm += weight * part.momentBoatXNm;
  into.momentBoatYNm += weight * part.momentBoatYNm;
  into.momentBoatZNm += weight * part.momentBoatZNm;
}

function emptyOutcome(): MutableOutcome {
  return {
    dragAgainstTrackN: 0,
    sideForceN: 0,
    verticalForceN: 0,
    heelingMomentNm: 0,
    airPowerW: 0,
    trackPowerW: 0,
    windPowerW: 0,
    fullPriceW: 0,
    forceTrackXN: 0,
    forceTrackYN: 0,
    forceTrackZN: 0,
    forceBoatXN: 0,
    forceBoatYN: 0,
    forceBoatZN: 0,
    momentTrackXNm: 0,
    momentTrackYNm: 0,
    momentTrackZNm: 0,
    momentBoatXNm: 0,
    momentBoatYNm: 0,
    momentBoatZNm: 0,
  };
}

export const zeroOutcome: Outcome = emptyOutcome();
