import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkEnvelope } from '../../src/project/envelope/checkEnvelope';
import type { EnvelopeSlipId } from '../../src/project/envelope/envelopeCheck';
import type { EnvelopeTexts } from '../../src/project/envelope/envelopeTexts';
import { readEnvelope } from '../../src/project/envelope/readEnvelope';
import { estimates, sumsOf, textsOf, wattsOf, type Estimate, type Wrong } from './envelopeEstimates';

function check(texts: EnvelopeTexts) {
  const { numbers, problems } = readEnvelope(texts);
  expect(problems).toEqual({});
  return checkEnvelope(numbers);
}

describe('right estimates, rounded as people write', () => {
  it('raise no slip and nothing that does not follow', () => {
    fc.assert(
      fc.property(estimates, (estimate) => {
        const texts = textsOf(estimate, sumsOf(estimate));
        const { mismatches, slips } = check(texts);
        expect([mismatches, slips], JSON.stringify(texts)).toEqual([[], []]);
      }),
      { numRuns: 1000 },
    );
  });
});

/** Slips of one factor, planted where the sum was done. */
const planted: readonly (readonly [EnvelopeSlipId, (estimate: Estimate) => Wrong])[] = [
  ['knotsForMs', ({ speedUnit }) => ({ speed: speedUnit === 'kn' ? 3600 / 1852 : 1852 / 3600 })],
  ['kmhForMs', () => ({ speed: 3.6 })],
  ['radiusForDiameter', () => ({ area: 0.5 })],
  ['diameterForRadius', () => ({ area: 2 })],
  ['wettedArea', () => ({ area: Math.PI })],
  ['countForgotten', ({ count }) => ({ area: 1 / count })],
  ['halfForgotten', () => ({ pressure: 2 })],
  ['millimetresAsCentimetres', () => ({ area: 10 })],
];

/** A speed in knots is not taken for one in km/h. */
function isPossible(id: EnvelopeSlipId, unit: string): boolean {
  return !(id === 'knotsForMs' && unit === 'km/h') && !(id === 'kmhForMs' && unit === 'kn');
}

describe('a slip planted in otherwise right numbers', () => {
  it.each(planted)('%s is named', (id, wrongOf) => {
    const several = estimates.filter(({ count, speedUnit }) => count > 1 && isPossible(id, speedUnit));
    fc.assert(
      fc.property(several, (estimate) => {
        const texts = textsOf(estimate, sumsOf(estimate, wrongOf(estimate)));
        const { mismatches, slips } = check(texts);
        expect(mismatches.length, JSON.stringify(texts)).toBeGreaterThan(0);
        expect(
          slips.map((slip) => slip.id),
          JSON.stringify(texts),
        ).toContain(id);
      }),
      { numRuns: 100 },
    );
  });

  it('otherHorsepower is named, watts and the other horsepower side by side', () => {
    fc.assert(
      fc.property(estimates, fc.constantFrom('hp', 'PS'), (estimate, kind) => {
        const sums = sumsOf(estimate);
        const watts = kind === 'hp' ? wattsOf.PS : wattsOf.hp;
        const texts = {
          ...textsOf({ ...estimate, shown: { ...estimate.shown, density: true } }, sums),
          power: `${sums.powerW.toFixed(3)} W`,
          horsepower: `${(sums.powerW / watts).toFixed(6)} ${kind}`,
        };
        fc.pre(sums.powerW > 10);
        expect(
          check(texts).slips.map((slip) => slip.id),
          JSON.stringify(texts),
        ).toContain('otherHorsepower');
      }),
      { numRuns: 300 },
    );
  });

  it('of 3 % in a power of three figures is noticed', () => {
    fc.assert(
      fc.property(estimates, fc.constantFrom(1.03, 0.97), (estimate, factor) => {
        const exact: Estimate = {
          ...estimate,
          wentOnRounded: false,
          horsepower: null,
          figures: [3, 3, 3],
          shown: { area: false, force: false, density: true },
        };
        const sums = sumsOf(exact);
        // In kilowatts a zero at the end stands behind the point, where it counts.
        const power = `${((sums.powerW * factor) / 1000).toPrecision(3)} kW`;
        fc.pre(!/^\d+0 /.test(power));
        const texts = { ...textsOf(exact, sums), power };
        expect(
          check(texts).mismatches.map(({ fieldId }) => fieldId),
          JSON.stringify(texts),
        ).toEqual(['power']);
      }),
      { numRuns: 300 },
    );
  });
});
