/**
 * Speed of the true wind against height over the sea. The wind does not veer with height. Below 1 m the wind of 1 m
 * is used: none of these laws holds among the waves.
 */
export type WindLaw =
  | { readonly kind: 'log'; readonly charnock: number }
  | { readonly kind: 'power'; readonly exponent: number }
  | { readonly kind: 'uniform' };

export interface WindProfile {
  readonly law: WindLaw;
  readonly speedAt10Ms: number;
  /** Friction velocity and roughness length of the log law; zero and one for the other laws. */
  readonly frictionVelocityMs: number;
  readonly roughnessLengthM: number;
}

export const vonKarman = 0.4;
export const standardGravityMs2 = 9.80665;
export const referenceHeightM = 10;
/** Below this height the wind of this height is used. */
export const lowestWindHeightM = 1;

/** Log law over the sea with Charnock's roughness 0.011, neutral air: the default. Source: charnock, iec-61400-3 (from memory). */
export const openSeaLogLaw: WindLaw = { kind: 'log', charnock: 0.011 };
/** Power law of IEC 61400-3, alpha 0.14. Source: iec-61400-3. */
export const iecPowerLaw: WindLaw = { kind: 'power', exponent: 0.14 };
/** Power law usual over the open sea, alpha 0.11 (from memory). */
export const openSeaPowerLaw: WindLaw = { kind: 'power', exponent: 0.11 };

/**
 * Friction velocity, m/s, from the wind at 10 m: u* = kappa U10 / ln(10 g / (a u*^2)), by fixed point.
 * Source: charnock. Holds for 0 < U10 up to about 60 m/s; converges in under twenty steps there.
 */
export function frictionVelocityMs(speedAt10Ms: number, charnock: number): number {
  if (speedAt10Ms <= 0) return 0;
  let friction = 0.035 * speedAt10Ms;
  for (let step = 0; step < 60; step += 1) {
    const roughness = (charnock * friction * friction) / standardGravityMs2;
    const next = (vonKarman * speedAt10Ms) / Math.log(referenceHeightM / roughness);
    if (Math.abs(next - friction) <= 1e-14 * next) return next;
    friction = next;
  }
  return friction;
}

/** Profile that has `speedAt10Ms` at 10 m. */
export function windProfile(law: WindLaw, speedAt10Ms: number): WindProfile {
  if (law.kind !== 'log' || speedAt10Ms <= 0) {
    return { law, speedAt10Ms, frictionVelocityMs: 0, roughnessLengthM: 1 };
  }
  const friction = frictionVelocityMs(speedAt10Ms, law.charnock);
  const roughness = (law.charnock * friction * friction) / standardGravityMs2;
  return { law, speedAt10Ms, frictionVelocityMs: friction, roughnessLengthM: roughness };
}

/**
 * True wind speed, m/s, at a height above the water, m.
 * Log law: (u* / kappa) ln(z / z0). Power law: U10 (z / 10)^alpha. Uniform: U10.
 */
export function windSpeedMs(profile: WindProfile, heightM: number): number {
  const { law } = profile;
  if (law.kind === 'uniform' || profile.speedAt10Ms <= 0) return profile.speedAt10Ms;
  const height = Math.max(heightM, lowestWindHeightM);
  if (law.kind === 'power') return profile.speedAt10Ms * (height / referenceHeightM) ** law.exponent;
  return (profile.frictionVelocityMs / vonKarman) * Math.log(height / profile.roughnessLengthM);
}

/** Wind at 10 m, m/s, that gives `speedMs` at `heightM`: direct for the power law, by secant steps for the log law. */
export function speedAt10From(law: WindLaw, speedMs: number, heightM: number): number {
  if (speedMs <= 0 || law.kind === 'uniform') return Math.max(speedMs, 0);
  const height = Math.max(heightM, lowestWindHeightM);
  if (law.kind === 'power') return speedMs / (height / referenceHeightM) ** law.exponent;
  let speedAt10Ms = speedMs;
  for (let step = 0; step < 60; step += 1) {
    const ratio = speedMs / windSpeedMs(windProfile(law, speedAt10Ms), height);
    speedAt10Ms *= ratio;
    if (Math.abs(ratio - 1) < 1e-14) break;
  }
  return speedAt10Ms;
}
