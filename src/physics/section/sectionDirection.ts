import { boatVector, dot, magnitude, type BoatVector, type Vector3 } from '../vector/vector3';

/**
 * Where the nose of a section points. Fixed: an angle from the reference direction, rad, positive turning the nose to
 * port. Turning with the wind: each of `pieces` equal pieces takes one angle; it may be off by `residualRad` to either
 * side, and `offRad` says by how much it is: 0 for the best value, the residual for its doubt.
 */
export type SectionDirection =
  | { readonly kind: 'fixed'; readonly angleRad: number }
  | {
      readonly kind: 'turning';
      readonly pieces: number;
      readonly residualRad: number;
      readonly offRad: number;
    };

/** A member nearer to the boat's x axis than this takes up, not forward, as its reference direction. */
const leastAngleToForwardRad = (15 * Math.PI) / 180;
/** Below this a turn about the axis moves the nose neither to port nor to starboard, and positive turns it up. */
const noSideways = 1e-9;

/**
 * The nose of a fixed section, a unit vector of the boat square to the member's axis: forward made square to the axis
 * (up, within 15 deg of forward), turned by the angle so that a positive one goes to port. Swapping the end points
 * changes nothing; a mirrored member has the mirrored nose. Zero for a member without length.
 */
export function noseInBoat(
  start: BoatVector,
  end: BoatVector,
  angleRad: number,
  isMirrored: boolean,
): BoatVector {
  if (isMirrored) return mirrored(noseInBoat(mirrored(start), mirrored(end), angleRad, false));
  const along: Vector3 = [end[0] - start[0], end[1] - start[1], end[2] - start[2]];
  const lengthM = magnitude(along);
  if (lengthM === 0) return boatVector(0, 0, 0);
  const axis: Vector3 = [along[0] / lengthM, along[1] / lengthM, along[2] / lengthM];
  const isNearForward = Math.abs(axis[0]) > Math.cos(leastAngleToForwardRad);
  const nose = squareTo(axis, isNearForward ? [0, 0, 1] : [1, 0, 0]);
  const side = towardsPort(axis, nose);
  const sine = side * Math.sin(angleRad);
  const cosine = Math.cos(angleRad);
  const turned = cross(axis, nose);
  return boatVector(
    cosine * nose[0] + sine * turned[0],
    cosine * nose[1] + sine * turned[1],
    cosine * nose[2] + sine * turned[2],
  );
}

function mirrored(v: BoatVector): BoatVector {
  return boatVector(v[0], -v[1], v[2]);
}

function squareTo(axis: Vector3, reference: Vector3): Vector3 {
  const along = dot(axis, reference);
  const square: Vector3 = [
    reference[0] - along * axis[0],
    reference[1] - along * axis[1],
    reference[2] - along * axis[2],
  ];
  const size = magnitude(square);
  return [square[0] / size, square[1] / size, square[2] / size];
}

/** +1 where a right-handed turn about the axis moves the nose to port (else up), -1 where the other way round. */
function towardsPort(axis: Vector3, nose: Vector3): 1 | -1 {
  const turned = cross(axis, nose);
  const side = Math.abs(turned[1]) > noSideways ? turned[1] : turned[2];
  return side < 0 ? -1 : 1;
}

function cross(a: Vector3, b: Vector3): Vector3 {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}
