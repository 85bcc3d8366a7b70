import { toTrack, type BoatToTrack } from '../frames/boatToTrack';
import type { PlacedMember } from '../fitting/fittingInput';
import { gaussLegendre } from '../numerics/gaussLegendre';
import { noseInBoat, type SectionDirection } from '../section/sectionDirection';
import { boatVector, trackVector, type BoatVector, type TrackVector } from '../vector/vector3';
import { logWindHeight, lowestWindHeightM } from '../wind/windProfile';
import { evenPoints, type PointRule } from './pointRules';

/** One Gauss point of a member: where it is, in the track's frame, and the share of the whole length it stands for. */
export interface MemberNode {
  readonly weight: number;
  readonly logHeight: number;
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** A member laid in the track's frame, with the stretch of it that is above the water. */
export interface MemberGeometry {
  readonly start: TrackVector;
  readonly end: TrackVector;
  readonly lengthM: number;
  /** Length of the whole member of which this is a piece; else the same. Finite length and friction go by it. */
  readonly wholeLengthM: number;
  /** Nose of a fixed section, a unit vector square to the axis; zero for a member without one of its own. */
  readonly nose: TrackVector;
  /** Unit vector from start to end; zero for a point. */
  readonly axisX: number;
  readonly axisY: number;
  readonly axisZ: number;
  readonly startHeightM: number;
  readonly endHeightM: number;
  /** Dry stretch as shares of the length, from <= to; both zero when nothing is dry. A dry point has 0 and 1. */
  readonly dryFrom: number;
  readonly dryTo: number;
  /** Athwartships place of the middle in the boat's frame, m: which side it is on. */
  readonly middleY: number;
  /** Gauss points of the dry stretch, in two pieces where it passes 1 m, the kink of the wind laws. */
  readonly nodes: readonly MemberNode[];
}

const noNose = trackVector(0, 0, 0);

/** The pieces of a member that turn with the wind each for itself; one for any other member. */
export function memberPieces(
  member: PlacedMember,
  rotation: BoatToTrack,
  riseM: number,
  direction: SectionDirection | null,
  points: PointRule = evenPoints,
): MemberGeometry[] {
  const count = direction?.kind === 'turning' ? direction.pieces : 1;
  const nose =
    direction?.kind === 'fixed'
      ? toTrack(
          rotation,
          noseInBoat(member.start, member.end, direction.angleRad, member.isMirrored === true),
        )
      : noNose;
  return Array.from({ length: count }, (_, i) => {
    const piece = count === 1 ? member : pieceOf(member, i / count, (i + 1) / count);
    const laid = memberGeometry(piece, rotation, riseM, points);
    return { ...laid, nose, wholeLengthM: laid.lengthM * count, middleY: middleOf(member) };
  });
}

function pieceOf({ start, end }: PlacedMember, from: number, to: number): PlacedMember {
  return { start: between(start, end, from), end: between(start, end, to) };
}

function between(a: BoatVector, b: BoatVector, share: number): BoatVector {
  return boatVector(a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1]), a[2] + share * (b[2] - a[2]));
}

function middleOf({ start, end }: PlacedMember): number {
  return (start[1] + end[1]) / 2;
}

export function memberGeometry(
  member: PlacedMember,
  rotation: BoatToTrack,
  riseM: number,
  points: PointRule = evenPoints,
): MemberGeometry {
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
  return {
    start,
    end,
    lengthM,
    wholeLengthM: lengthM,
    nose: noNose,
    axisX: dx * scale,
    axisY: dy * scale,
    axisZ: dz * scale,
    startHeightM,
    endHeightM,
    dryFrom,
    dryTo,
    middleY: middleOf(member),
    nodes: dryNodes(start, end, startHeightM, endHeightM, dryFrom, dryTo, points),
  };
}

/** The shares of a member between which it is above the water. */
function dryShares(startHeightM: number, endHeightM: number): readonly [number, number] {
  if (startHeightM <= 0 && endHeightM <= 0) return [0, 0];
  if (startHeightM >= 0 && endHeightM >= 0) return [0, 1];
  const crossing = startHeightM / (startHeightM - endHeightM);
  return startHeightM < 0 ? [crossing, 1] : [0, crossing];
}

function dryNodes(
  start: TrackVector,
  end: TrackVector,
  startHeightM: number,
  endHeightM: number,
  dryFrom: number,
  dryTo: number,
  points: PointRule,
): MemberNode[] {
  const nodes: MemberNode[] = [];
  if (dryTo <= dryFrom) return nodes;
  const kink = (lowestWindHeightM - startHeightM) / (endHeightM - startHeightM);
  const pieces = kink > dryFrom && kink < dryTo ? [dryFrom, kink, dryTo] : [dryFrom, dryTo];
  const heightAt = (share: number): number => startHeightM + share * (endHeightM - startHeightM);
  for (let piece = 0; piece + 1 < pieces.length; piece += 1) {
    const from = pieces[piece]!;
    const width = pieces[piece + 1]! - from;
    const rule = gaussLegendre(points(heightAt(from), heightAt(from + width)));
    for (let i = 0; i < rule.nodes.length; i += 1) {
      const share = from + width * rule.nodes[i]!;
      nodes.push({
        weight: width * rule.weights[i]!,
        logHeight: logWindHeight(heightAt(share)),
        x: start[0] + share * (end[0] - start[0]),
        y: start[1] + share * (end[1] - start[1]),
        z: start[2] + share * (end[2] - start[2]),
      });
    }
  }
  return nodes;
}

/** Height above the water at a share of the length, m. */
export function heightAlong(geometry: MemberGeometry, share: number): number {
  return geometry.startHeightM + share * (geometry.endHeightM - geometry.startHeightM);
}
