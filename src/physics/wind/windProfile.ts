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
  /** u* / kappa and ln z0 of the log law. */
  readonly logSlopeMs: number;
  readonly logRoughness: number;
}

export const vonKarman = 0.4;
export const standardGravityMs2 = 9.80665;
export const referenceHeightM = 10;
const logReferenceHeight = Math.log(referenceHeightM);
/** Below this wind there is none to speak of and every law is uniform: the log law's roughness would vanish. */
const calmMs = 1e-6;
/** Below this height the wind of this height is used. */
export const lowestWindHeightM = 1;

/** Log law over the sea with Charnock's roughness 0.011, neutral air: the default. Source: charnock, iec-61400-3 (from memory). */
export const openSeaLogLaw: WindLaw = { kind: 'log', charnock: 0.011 };
/** Power law of IEC 61400-3, alpha 0.14. Source: iec-61400-3. */
export const iecPowerLaw = { kind: 'power', exponent: 0.14 } as const satisfies WindLaw;
/** Power law usual over the open sea, alpha 0.11 (from memory). */
export const openSeaPowerLaw: WindLaw = { kind: 'power', exponent: 0.11 };

/**
 * Friction velocity, m/s, from the wind at 10 m: u* = kappa U10 / ln(10 g / (a u*^2)), by fixed point.
 * Source: charnock. Holds for 0 < U10 up to about 60 m/s; converges in under twenty steps there.
 */
function frictionVelocityMs(speedAt10Ms: number, charnock: number): number {
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
  if (law.kind !== 'log' || speedAt10Ms < calmMs) {
    return { law, speedAt10Ms, frictionVelocityMs: 0, roughnessLengthM: 1, logSlopeMs: 0, logRoughness: 0 };
  }
  const friction = frictionVelocityMs(speedAt10Ms, law.charnock);
  const roughness = (law.charnock * friction * friction) / standardGravityMs2;
  return {
    law,
    speedAt10Ms,
    frictionVelocityMs: friction,
    roughnessLengthM: roughness,
    logSlopeMs: friction / vonKarman,
    logRoughness: Math.log(roughness),
  };
}

/** ln of the height, m, that the wind laws are entered with: 1 m or more. */
export function logWindHeight(heightM: number): number {
  return Math.log(Math.max(heightM, lowestWindHeightM));
}

/**
 * True wind speed, m/s, from the logarithm of the height (see `logWindHeight`), which members keep for each of their
 * points. Log law: (u* / kappa) (ln z - ln z0). Power law: U10 exp(alpha (ln z - ln 10)). Uniform: U10.
 */
export function windSpeedAtLogMs(profile: WindProfile, logHeight: number): number {
  const { law } = profile;
  if (law.kind === 'uniform' || profile.speedAt10Ms < calmMs) return profile.speedAt10Ms;
  if (law.kind === 'power')
    return profile.speedAt10Ms * Math.exp(law.exponent * (logHeight - logReferenceHeight));
  return profile.logSlopeMs * (logHeight - profile.logRoughness);
}

/** True wind speed, m/s, at a height above the water, m: (u* / kappa) ln(z / z0), U10 (z / 10)^alpha, or U10. */
export function windSpeedMs(profile: WindProfile, heightM: number): number {
  return windSpeedAtLogMs(profile, logWindHeight(heightM));
}

/** Strongest wind at 10 m that an inverse looks for, m/s. */
const strongestWindMs = 200;

/**
 * Wind at 10 m, m/s, that gives `speedMs` at `heightM`. Direct for the power law; by halving a bracket for the log law,
 * whose speed rises with the wind at 10 m wherever its roughness stays small against the height. A speed that no wind
 * up to 200 m/s reaches there (a gale read at 1 m) gives the bracket's end.
 */
export function speedAt10From(law: WindLaw, speedMs: number, heightM: number): number {
  if (speedMs < calmMs || law.kind === 'uniform') return Math.max(speedMs, 0);
  const logHeight = logWindHeight(heightM);
  if (law.kind === 'power') return speedMs / Math.exp(law.exponent * (logHeight - logReferenceHeight));
  if (logHeight === logReferenceHeight) return speedMs;
  const speedAt = (speedAt10Ms: number): number => windSpeedAtLogMs(windProfile(law, speedAt10Ms), logHeight);
  let low = speedMs / 2;
  let high = speedMs;
  while (speedAt(low) > speedMs) low /= 2;
  while (speedAt(high) < speedMs && high < strongestWindMs) high = Math.min(1.2 * high, strongestWindMs);
  for (let step = 0; step < 80 && high - low > 1e-15 * high; step += 1) {
    const middle = (low + high) / 2;
    if (speedAt(middle) < speedMs) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
