/**
 * Three-component vectors. A vector carries the frame it is written in as a brand, because a vector in the wrong
 * frame is the commonest slip of this trade and no unit test sees it from the outside.
 *
 * - `BoatVector`: x forward, y to port, z up, fixed in the boat and turning with her (frame B).
 * - `HeadingVector`: the same x, y horizontal to port, z vertical (frame H).
 * - `TrackVector`: X along the course through the water, Y horizontal to port, Z vertical (frame T).
 */
declare const frameTag: unique symbol;

export type Vector3 = readonly [x: number, y: number, z: number];
export type BoatVector = Vector3 & { readonly [frameTag]: 'boat' };
export type HeadingVector = Vector3 & { readonly [frameTag]: 'heading' };
export type TrackVector = Vector3 & { readonly [frameTag]: 'track' };

export function boatVector(x: number, y: number, z: number): BoatVector {
  return [x, y, z] as unknown as BoatVector;
}

export function headingVector(x: number, y: number, z: number): HeadingVector {
  return [x, y, z] as unknown as HeadingVector;
}

export function trackVector(x: number, y: number, z: number): TrackVector {
  return [x, y, z] as unknown as TrackVector;
}

export function dot(a: Vector3, b: Vector3): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

export function magnitude(a: Vector3): number {
  return Math.hypot(a[0], a[1], a[2]);
}
