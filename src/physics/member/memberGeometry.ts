import { toTrack, type BoatToTrack } from '../frames/boatToTrack';
import type { PlacedMember } from '../fitting/fittingInput';
import type { TrackVector } from '../vector/vector3';
import { lowestWindHeightM } from '../wind/windProfile';

/** A member laid in the track's frame, with the stretch of it that is above the water. */
export interface MemberGeometry {
  readonly start: TrackVector;
  readonly end: TrackVector;
  readonly lengthM: number;
  /** Unit vector from start to end; zero for a point. */
  readonly axisX: number;
  readonly axisY: number;
  readonly axisZ: number;
  readonly startHeightM: number;
  readonly endHeightM: number;
  /** Dry stretch as shares of the length, from <= to; both zero when nothing is dry. A dry point has 0 and 1. */
  readonly dryFrom: number;
  readonly dryTo: number;
  /** Share of the length where the member passes 1 m, the kink of the wind laws; dryFrom when it does not. */
  readonly kinkAt: number;
  /** Athwartships place of the middle in the boat's frame, m: which side it is on. */
  readonly middleY: number;
}

export function memberGeometry(member: PlacedMember, rotation: BoatToTrack, riseM: number): MemberGeometry {
  const start = toTrack(rotation, member.start);
  const end = toTrack(rotation, member.end);
  const dx = end[0] - start[0];
  const dy = end[1] - start[1];
  const dz = end[2] - start[2];
  const lengthM = Math.sqrt(dx * dx + dy * dy + dz * dz);
  const scale = lengthM > 0 ? 1 / lengthM : 0;
  const startHeightM = start[2] + riseM;
  const endHeightM = end[2] + riseM;
  const [dryFrom, dryTo] = dryShares(startHeightM, endHeightM);
  const crossing = (lowestWindHeightM - startHeightM) / (endHeightM - startHeightM);
  return {
    start,
    end,
    lengthM,
    axisX: dx * scale,
    axisY: dy * scale,
    axisZ: dz * scale,
    startHeightM,
    endHeightM,
    dryFrom,
    dryTo,
    kinkAt: crossing > dryFrom && crossing < dryTo ? crossing : dryFrom,
    middleY: (member.start[1] + member.end[1]) / 2,
  };
}

/** The shares of a member between which it is above the water. */
function dryShares(startHeightM: number, endHeightM: number): readonly [number, number] {
  if (startHeightM <= 0 && endHeightM <= 0) return [0, 0];
  if (startHeightM >= 0 && endHeightM >= 0) return [0, 1];
  const crossing = startHeightM / (startHeightM - endHeightM);
  return startHeightM < 0 ? [crossing, 1] : [0, crossing];
}

/** Height above the water at a share of the length, m. */
export function heightAlong(geometry: MemberGeometry, share: number): number {
  return geometry.startHeightM + share * (geometry.endHeightM - geometry.startHeightM);
}

/** The dry length in one piece, or in two at the height where the wind laws have their kink. */
export function dryStretches(geometry: MemberGeometry): readonly (readonly [from: number, to: number])[] {
  const { dryFrom, dryTo, kinkAt } = geometry;
  if (kinkAt <= dryFrom) return [[dryFrom, dryTo]];
  return [
    [dryFrom, kinkAt],
    [kinkAt, dryTo],
  ];
}
