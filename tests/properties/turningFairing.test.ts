import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fairingCoefficients, emptyFairing } from '../../src/physics/section/fairing';
import {
  turningFairingOf,
  type TurningFairing,
  type TurningTrace,
} from '../../src/physics/strut/turningFairing';
import { between, degree } from './arbitraries';

/** Sleeves whose pivot lies ahead of every aerodynamic centre, on tubes of any lean. */
const sleeves: fc.Arbitrary<TurningFairing> = fc
  .record({
    chordM: between(0.1, 0.4),
    ratio: between(0.12, 0.25),
    lengthM: between(0.5, 5),
    pivot: between(0.05, 0.19),
    massKg: between(0.2, 5),
    massCentre: between(0, 1),
    balance: between(0, 0.04),
    residualRad: between(1 * degree, 6 * degree),
    leanRad: between(-80 * degree, 80 * degree),
    speedMs: between(6, 30),
  })
  .map(({ chordM, ratio, pivot, massCentre, balance, ...rest }) => ({
    ...rest,
    chordM,
    thicknessM: ratio * chordM,
    pivotM: pivot * chordM,
    massCentreM: massCentre * chordM,
    balancePlaceM: balance * chordM,
    endClearanceM: 0.01,
    densityKgM3: 1.2,
    kinematicViscosityM2S: 1.5e-5,
    surface: 'turbulent',
  }));

function traceOf(input: TurningFairing): TurningTrace {
  const result = turningFairingOf(input);
  if (result.kind === 'problem') throw new Error(result.problem);
  return result.trace;
}

describe('a turning fairing', () => {
  it('is turned by its lift on the arm to a quarter of its chord', () => {
    fc.assert(
      fc.property(sleeves, (input) => {
        const trace = traceOf(input);
        const forceN = 0.6 * input.speedMs ** 2 * input.chordM * input.lengthM * trace.residualLift;
        expect(trace.turningMomentNm / (forceN * (input.chordM / 4 - input.pivotM))).toBeCloseTo(1, 10);
        expect(trace.aerodynamicCentreM / input.chordM).toBeCloseTo(0.25, 12);
        expect(trace.followShare).toBeCloseTo(0.25 - input.pivotM / input.chordM, 12);
        expect(trace.chordReynolds).toBeCloseTo((input.speedMs * input.chordM) / 1.5e-5, 4);
      }),
    );
  });

  it('has less lift than in two dimensions, and nearly that when it is very long', () => {
    fc.assert(
      fc.property(sleeves, (input) => {
        const trace = traceOf(input);
        const ratio = input.thicknessM / input.chordM;
        const { lift } = fairingCoefficients(
          ratio,
          trace.chordReynolds,
          input.residualRad,
          'turbulent',
          emptyFairing(),
        );
        expect(trace.residualLift).toBeLessThan(lift);
        const long = traceOf({ ...input, lengthM: 1e6 * input.chordM });
        expect(long.residualLift / lift).toBeCloseTo(1, 4);
      }),
    );
  });

  it('hangs off, where its weight is all, so far that the air’s moment there is the weight’s', () => {
    fc.assert(
      fc.property(sleeves, (input) => {
        const trace = traceOf(input);
        const armM = Math.abs(input.massCentreM - input.pivotM);
        const weightNm = input.massKg * 9.80665 * Math.abs(Math.sin(input.leanRad)) * armM;
        expect(trace.weightMomentNm).toBeCloseTo(weightNm, 10);
        const airNmPerRad = trace.turningMomentNm / input.residualRad;
        expect((trace.hangAngleRad ?? NaN) * airNmPerRad).toBeCloseTo(weightNm, 9);
      }),
    );
  });

  it('with its balance weight has its mass centre on the pivot', () => {
    fc.assert(
      fc.property(sleeves, (input) => {
        const { balanceMassKg } = traceOf(input);
        if (input.massCentreM <= input.pivotM) {
          expect(balanceMassKg).toBeNull();
          return;
        }
        const balance = balanceMassKg ?? NaN;
        const first = input.massKg * input.massCentreM + balance * input.balancePlaceM;
        expect(first / (input.massKg + balance)).toBeCloseTo(input.pivotM, 12);
      }),
    );
  });
});

describe('figures of a turning fairing that are assumed, written a second time', () => {
  it('its aerodynamic centre lies between 0.20 and 0.27 of the chord, its residual is 15 deg at most', () => {
    fc.assert(
      fc.property(sleeves, (input) => {
        const trace = traceOf(input);
        expect(trace.aerodynamicCentreLowM / input.chordM).toBeCloseTo(0.2, 12);
        expect(trace.aerodynamicCentreHighM / input.chordM).toBeCloseTo(0.27, 12);
        expect(trace.followShareLow).toBeCloseTo(0.2 - input.pivotM / input.chordM, 12);
        expect(turningFairingOf({ ...input, residualRad: 14.99 * degree }).kind).toBe('turning');
        expect(turningFairingOf({ ...input, residualRad: 15.01 * degree }).kind).toBe('problem');
      }),
      { numRuns: 20 },
    );
  });

  it('aluminium lengthens by 23 millionths per kelvin, over 40 K', () => {
    fc.assert(
      fc.property(sleeves, (input) => {
        expect(traceOf(input).neededClearanceM / input.lengthM).toBeCloseTo(0.00092, 12);
      }),
      { numRuns: 20 },
    );
  });
});
