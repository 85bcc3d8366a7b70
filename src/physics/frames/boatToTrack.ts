import {
  boatVector,
  headingVector,
  trackVector,
  type BoatVector,
  type HeadingVector,
  type TrackVector,
  type Vector3,
} from '../vector/vector3';

/** The side the true wind comes from. */
export type Tack = 'port' | 'starboard';

/** +1 on starboard tack, -1 on port tack: the sign that mirrors heel, leeway and the wind. */
export function tackSign(tack: Tack): 1 | -1 {
  return tack === 'starboard' ? 1 : -1;
}

/**
 * Rotation from the boat's frame to the track's, three rows.
 *
 * Heel f turns about x and puts the leeward side down for positive heel (starboard tack: y_H = y cos f + z sin f,
 * z_H = -y sin f + z cos f); leeway l turns about the vertical and puts the course to leeward of the bow
 * (X_T = x cos l + y_H sin l, Y_T = -x sin l + y_H cos l). Port tack is the mirror image: both angles change sign.
 */
export interface BoatToTrack {
  readonly rowX: Vector3;
  readonly rowY: Vector3;
  readonly rowZ: Vector3;
  /** Signed heel and leeway, rad: positive on starboard tack when the inputs are positive. */
  readonly signedHeelRad: number;
  readonly signedLeewayRad: number;
}

export function boatToTrack(heelRad: number, leewayRad: number, tack: Tack): BoatToTrack {
  const sign = tackSign(tack);
  const signedHeelRad = sign * heelRad;
  const signedLeewayRad = sign * leewayRad;
  const cosHeel = Math.cos(signedHeelRad);
  const sinHeel = Math.sin(signedHeelRad);
  const cosLeeway = Math.cos(signedLeewayRad);
  const sinLeeway = Math.sin(signedLeewayRad);
  return {
    rowX: [cosLeeway, sinLeeway * cosHeel, sinLeeway * sinHeel],
    rowY: [-sinLeeway, cosLeeway * cosHeel, cosLeeway * sinHeel],
    rowZ: [0, -sinHeel, cosHeel],
    signedHeelRad,
    signedLeewayRad,
  };
}

/** A boat-frame vector written in the track's frame. */
export function toTrack(rotation: BoatToTrack, v: BoatVector): TrackVector {
  const { rowX, rowY, rowZ } = rotation;
  return trackVector(
    rowX[0] * v[0] + rowX[1] * v[1] + rowX[2] * v[2],
    rowY[0] * v[0] + rowY[1] * v[1] + rowY[2] * v[2],
    rowZ[0] * v[0] + rowZ[1] * v[1] + rowZ[2] * v[2],
  );
}

/** A track-frame vector written in the boat's frame (the transposed rotation). */
export function toBoat(rotation: BoatToTrack, v: TrackVector): BoatVector {
  const { rowX, rowY, rowZ } = rotation;
  return boatVector(
    rowX[0] * v[0] + rowY[0] * v[1] + rowZ[0] * v[2],
    rowX[1] * v[0] + rowY[1] * v[1] + rowZ[1] * v[2],
    rowX[2] * v[0] + rowY[2] * v[1] + rowZ[2] * v[2],
  );
}

/** A track-frame vector written in the heading's frame: the leeway turned back. */
export function trackToHeading(rotation: BoatToTrack, v: TrackVector): HeadingVector {
  const c = Math.cos(rotation.signedLeewayRad);
  const s = Math.sin(rotation.signedLeewayRad);
  return headingVector(c * v[0] - s * v[1], s * v[0] + c * v[1], v[2]);
}

/** A heading-frame vector written in the track's frame. */
export function headingToTrack(rotation: BoatToTrack, v: HeadingVector): TrackVector {
  const c = Math.cos(rotation.signedLeewayRad);
  const s = Math.sin(rotation.signedLeewayRad);
  return trackVector(c * v[0] + s * v[1], -s * v[0] + c * v[1], v[2]);
}
