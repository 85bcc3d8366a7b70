import type { SailingState } from '../condition/sailingState';
import { emptyWind, windAtLog, type PointWind, type Setting } from '../fitting/localWind';
import type { SectionDirection } from '../section/sectionDirection';
import type { MemberGeometry } from './memberGeometry';

/** A unit vector of the track's frame, square to the member's axis, from tail to nose; zero where there is none. */
export interface Nose {
  x: number;
  y: number;
  z: number;
}

const scratchWind = emptyWind();

/** The nose of a member in one state of the air: its own, or against the wind that the piece turns to. */
export function fixedOrTurnedNose(
  geometry: MemberGeometry,
  direction: SectionDirection | null,
  state: SailingState,
  setting: Setting,
  out: Nose,
): void {
  if (direction?.kind === 'turning') {
    turnedNose(geometry, direction.offRad, state, setting, out);
    return;
  }
  const { nose } = geometry;
  out.x = nose[0];
  out.y = nose[1];
  out.z = nose[2];
}

/**
 * A piece takes one angle: against the mean of its points' air square to the axis, each counted with its dynamic
 * pressure (sum of |u_n| u_n), and off by `offRad` about the axis.
 */
function turnedNose(
  geometry: MemberGeometry,
  offRad: number,
  state: SailingState,
  setting: Setting,
  out: Nose,
): void {
  const { axisX, axisY, axisZ } = geometry;
  let x = 0;
  let y = 0;
  let z = 0;
  for (const { weight, logHeight } of geometry.nodes) {
    const wind = windAtLog(state, setting, logHeight, scratchWind);
    const axial = wind.localX * axisX + wind.localY * axisY;
    const normalX = wind.localX - axial * axisX;
    const normalY = wind.localY - axial * axisY;
    const normalZ = -axial * axisZ;
    const pressure = weight * Math.sqrt(normalX * normalX + normalY * normalY + normalZ * normalZ);
    x -= pressure * normalX;
    y -= pressure * normalY;
    z -= pressure * normalZ;
  }
  const size = Math.sqrt(x * x + y * y + z * z);
  const scale = size > 0 ? 1 / size : 0;
  const cosine = Math.cos(offRad) * scale;
  const sine = Math.sin(offRad) * scale;
  out.x = cosine * x + sine * (axisY * z - axisZ * y);
  out.y = cosine * y + sine * (axisZ * x - axisX * z);
  out.z = cosine * z + sine * (axisX * y - axisY * x);
}

/**
 * Incidence: the angle about the axis, from the chord (nose to tail) to the air's part square to the axis, -pi to pi;
 * 0 without such air or without a nose.
 */
export function incidenceOf(geometry: MemberGeometry, nose: Nose, wind: PointWind): number {
  const { axisX, axisY, axisZ } = geometry;
  const { localX, localY } = wind;
  const axial = localX * axisX + localY * axisY;
  const normalX = localX - axial * axisX;
  const normalY = localY - axial * axisY;
  const normalZ = -axial * axisZ;
  const along = -(nose.x * normalX + nose.y * normalY + nose.z * normalZ);
  const across =
    axisX * (nose.z * normalY - nose.y * normalZ) +
    axisY * (nose.x * normalZ - nose.z * normalX) +
    axisZ * (nose.y * normalX - nose.x * normalY);
  return along === 0 && across === 0 ? 0 : Math.atan2(across, along);
}
