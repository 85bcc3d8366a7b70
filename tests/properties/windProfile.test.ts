import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  openSeaLogLaw,
  speedAt10From,
  windProfile,
  windSpeedMs,
  type WindLaw,
} from '../../src/physics/wind/windProfile';
import { anyWindLaw, between, speedFreeLaw } from './arbitraries';

const speeds = between(0.5, 40);
const heights = between(2, 40);

describe('the wind over the sea', () => {
  it('has at 10 m the speed that it was made for, by every law', () => {
    fc.assert(
      fc.property(anyWindLaw, speeds, (law, speedMs) => {
        expect(windSpeedMs(windProfile(law, speedMs), 10)).toBeCloseTo(speedMs, 9);
      }),
    );
  });

  it('by the log law solves u* = kappa U10 / ln(10 / z0) with z0 = a u*^2 / g', () => {
    fc.assert(
      fc.property(between(0.008, 0.02), speeds, heights, (charnock, speedMs, heightM) => {
        const profile = windProfile({ kind: 'log', charnock }, speedMs);
        const { frictionVelocityMs: friction, roughnessLengthM: roughness } = profile;
        expect(roughness / ((charnock * friction ** 2) / 9.80665)).toBeCloseTo(1, 12);
        expect(friction / ((0.4 * speedMs) / Math.log(10 / roughness))).toBeCloseTo(1, 12);
        const there = (friction / 0.4) * Math.log(heightM / roughness);
        expect(windSpeedMs(profile, heightM)).toBeCloseTo(there, 10);
      }),
    );
  });

  it('comes back from its speed at any height', () => {
    fc.assert(
      fc.property(anyWindLaw, speeds, heights, (law, speedMs, heightM) => {
        const there = windSpeedMs(windProfile(law, speedMs), heightM);
        expect(speedAt10From(law, there, heightM) / speedMs).toBeCloseTo(1, 11);
      }),
      { numRuns: 300 },
    );
  });

  it('is that of 1 m below 1 m, and never falls with height', () => {
    fc.assert(
      fc.property(anyWindLaw, speeds, between(0, 1), heights, (law, speedMs, lowM, heightM) => {
        const profile = windProfile(law, speedMs);
        expect(windSpeedMs(profile, lowM)).toBe(windSpeedMs(profile, 1));
        expect(windSpeedMs(profile, heightM + 1)).toBeGreaterThanOrEqual(windSpeedMs(profile, heightM));
      }),
    );
  });

  it('without a log law, or without a wind to speak of, has no friction velocity and a roughness of 1 m', () => {
    const none = { frictionVelocityMs: 0, roughnessLengthM: 1 };
    fc.assert(
      fc.property(speedFreeLaw, speeds, (law, speedMs) => {
        expect(windProfile(law, speedMs)).toMatchObject(none);
      }),
    );
    expect(windProfile(openSeaLogLaw, 0.99e-6)).toMatchObject(none);
    expect(windProfile(openSeaLogLaw, 1.01e-6).frictionVelocityMs).toBeGreaterThan(0);
    expect(windSpeedMs(windProfile({ kind: 'power', exponent: 0.14 }, 0.99e-6), 30)).toBe(0.99e-6);
  });

  it('is none, not less, where nothing or less is read', () => {
    const laws: WindLaw[] = [openSeaLogLaw, { kind: 'power', exponent: 0.14 }, { kind: 'uniform' }];
    for (const law of laws) expect([speedAt10From(law, 0, 5), speedAt10From(law, -1, 5)]).toEqual([0, 0]);
  });
});
