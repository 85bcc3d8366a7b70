import { halfThickness } from '../section/fairingOutline';

const steps = 400;

/**
 * Largest radius, m, of a circle about a place on the chord that stays inside a fairing's outer outline: the room for
 * a tube, its clearance and the skin. From 401 places crowded towards the nose, to a part in a thousand of the thickness.
 * Example: chord 0.4 m, thickness 0.1 m: 0.05 m about the thickest place, 0.12 m behind the nose.
 * Source: naca-four-digit.
 */
export function roomAboutPivotM(chordM: number, thicknessM: number, pivotM: number): number {
  let least = Infinity;
  for (let i = 0; i <= steps; i += 1) {
    const share = (1 - Math.cos((Math.PI * i) / steps)) / 2;
    const halfM = chordM * halfThickness(thicknessM / chordM, share);
    least = Math.min(least, Math.hypot(share * chordM - pivotM, halfM));
  }
  return least;
}
