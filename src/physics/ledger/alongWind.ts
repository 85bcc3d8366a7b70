import type { Change } from '../fitting/change';

/**
 * Force along a horizontal wind, N, from the force against the track D and the side force S: F . u / |u| = D cos B + S sin B,
 * with B the angle of the wind from the course, on the tack's side. Linear in the force, so that a doubt's change goes
 * through it as well. Not additive over fittings in different winds.
 * Example: 10 N against the track in a wind from ahead is 10 N along it; in a wind from abeam it is nothing.
 */
export function dragAlongWindN(
  { dragAgainstTrackN, sideForceN }: Pick<Change, 'dragAgainstTrackN' | 'sideForceN'>,
  angleFromCourseRad: number,
): number {
  return dragAgainstTrackN * Math.cos(angleFromCourseRad) + sideForceN * Math.sin(angleFromCourseRad);
}
