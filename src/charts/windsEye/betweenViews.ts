import { boatVector, magnitude, type BoatVector } from '../../physics/vector/vector3';
import type { PictureView } from './viewOf';

/** Between two views, for a boat that turns and heels from one to the other; `share` from 0 to 1. */
export function betweenViews(from: PictureView, to: PictureView, share: number): PictureView {
  const eased = share * share * (3 - 2 * share);
  return {
    kind: to.kind,
    right: mixed(from.right, to.right, eased),
    up: mixed(from.up, to.up, eased),
    away: mixed(from.away, to.away, eased),
    riseM: from.riseM + eased * (to.riseM - from.riseM),
  };
}

/** Opposite directions have no way between them: the second is taken. */
function mixed(a: BoatVector, b: BoatVector, share: number): BoatVector {
  const sum = [
    a[0] + share * (b[0] - a[0]),
    a[1] + share * (b[1] - a[1]),
    a[2] + share * (b[2] - a[2]),
  ] as const;
  const size = magnitude(sum);
  return size < 1e-6 ? b : boatVector(sum[0] / size, sum[1] / size, sum[2] / size);
}
