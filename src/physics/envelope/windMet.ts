/** The wind that a boat meets: speed, and angle from the course. */
export interface WindMet {
  readonly speedMs: number;
  /** From the course, 0 (ahead) to pi. */
  readonly angleRad: number;
}

/**
 * The apparent wind of a true wind at one height, the law of the wind over the sea left out:
 * ahead W cos a + V_b, abeam W sin a. Source: vector-mechanics.
 * @param trueAngleRad from the course.
 */
export function metFromTrue(trueSpeedMs: number, trueAngleRad: number, boatSpeedMs: number): WindMet {
  const ahead = trueSpeedMs * Math.cos(trueAngleRad) + boatSpeedMs;
  const abeam = trueSpeedMs * Math.sin(trueAngleRad);
  return { speedMs: Math.hypot(ahead, abeam), angleRad: Math.atan2(abeam, ahead) };
}

/**
 * The true speed W with the apparent angle b: the apparent wind less the boat's own is W, so
 * V = V_b cos b + sqrt(W^2 - (V_b sin b)^2). Null when the two cannot be: that angle asks for more wind. From a true wind
 * slower than the boat two apparent winds have the angle; the stronger is taken.
 */
export function metFromTrueSpeed(
  trueSpeedMs: number,
  apparentAngleRad: number,
  boatSpeedMs: number,
): WindMet | null {
  const under = trueSpeedMs ** 2 - (boatSpeedMs * Math.sin(apparentAngleRad)) ** 2;
  if (!(under >= 0)) return null;
  const speedMs = boatSpeedMs * Math.cos(apparentAngleRad) + Math.sqrt(under);
  return speedMs >= 0 ? { speedMs, angleRad: apparentAngleRad } : null;
}

/**
 * The apparent speed V with the true angle a: W = -V_b cos a + sqrt(V^2 - (V_b sin a)^2), then as from the true wind.
 * Null when the boat's own speed alone asks for a stronger apparent wind.
 */
export function metFromTrueAngle(
  apparentSpeedMs: number,
  trueAngleRad: number,
  boatSpeedMs: number,
): WindMet | null {
  const under = apparentSpeedMs ** 2 - (boatSpeedMs * Math.sin(trueAngleRad)) ** 2;
  if (!(under >= 0)) return null;
  const trueSpeedMs = Math.sqrt(under) - boatSpeedMs * Math.cos(trueAngleRad);
  return trueSpeedMs >= 0 ? metFromTrue(trueSpeedMs, trueAngleRad, boatSpeedMs) : null;
}
