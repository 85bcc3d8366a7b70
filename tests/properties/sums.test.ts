import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { doubtChange, type DoubtChange } from '../../src/physics/doubt/doubtChange';
import { differenceOfDoubts, endsOfDifference, rangesOf } from '../../src/physics/doubt/doubts';
import {
  dragForceN,
  dynamicPressurePa,
  powerW,
  reynoldsNumber,
  speedFromForceMs,
  speedFromPowerMs,
} from '../../src/physics/envelope/envelopeArithmetic';
import { dragInUniformWind, withoutEnds } from '../../src/physics/envelope/uniformWind';
import type { Shape } from '../../src/physics/fitting/fittingInput';
import { doubtedKeys, type Change } from '../../src/physics/fitting/change';
import { zeroChange } from '../setup/zeroChange';
import { zeroOutcome } from '../../src/physics/fitting/outcome';
import {
  addSavings,
  orderIsSafe,
  resultOf,
  savingOf,
  totalOf,
  totalWith,
  type Result,
} from '../../src/physics/ledger/ledgerSums';
import { fluid } from '../published/support';
import { between, changes } from './arbitraries';

const fewer = { numRuns: 30 };

const ids = ['wind-speed', 'ends', 'coefficient:roundBar:dip', 'own:a:length', 'own:b:length'] as const;
const doubts: fc.Arbitrary<DoubtChange[]> = fc
  .uniqueArray(fc.constantFrom(...ids), { maxLength: 5 })
  .chain((chosen) =>
    fc.tuple(
      ...chosen.map((id) => fc.tuple(changes, changes).map(([up, down]) => doubtChange(id, up, down))),
    ),
  );
const results: fc.Arbitrary<Result> = fc
  .tuple(changes, doubts)
  .map(([outcome, own]) => resultOf({ ...zeroOutcome, ...outcome }, () => own));

function entryOf(list: readonly DoubtChange[], id: string, side: 'up' | 'down', key: keyof Change): number {
  return list.find((doubt) => doubt.id === id)?.[side][key] ?? 0;
}

/** The same sources with the same changes, those of nothing left out. */
function expectSameDoubts(actual: readonly DoubtChange[], expected: (id: string) => DoubtChange): void {
  for (const id of ids) {
    for (const side of ['up', 'down'] as const) {
      for (const key of doubtedKeys) {
        expect(entryOf(actual, id, side, key)).toBeCloseTo(expected(id)[side][key], 9);
      }
    }
  }
}

function combined(id: string, parts: readonly (readonly [readonly DoubtChange[], number])[]): DoubtChange {
  const sum = (side: 'up' | 'down'): Change => ({
    ...zeroChange(),
    ...Object.fromEntries(
      doubtedKeys.map((key) => [
        key,
        parts.reduce((all, [list, weight]) => all + weight * entryOf(list, id, side, key), 0),
      ]),
    ),
  });
  return doubtChange(id, sum('up'), sum('down'));
}

describe('results', () => {
  it('differ source by source, so that what both share cancels', () => {
    fc.assert(
      fc.property(doubts, doubts, (a, b) => {
        expectSameDoubts(differenceOfDoubts(a, b), (id) =>
          combined(id, [
            [a, 1],
            [b, -1],
          ]),
        );
        const ranges = rangesOf(zeroChange(), differenceOfDoubts(a, b)).all;
        for (const key of doubtedKeys) {
          const { low, high } = endsOfDifference(a, b, key);
          expect(low).toBeCloseTo(ranges[key].low, 9);
          expect(high).toBeCloseTo(ranges[key].high, 9);
        }
      }),
      fewer,
    );
  });

  it('make the same total with one in another’s place as added up anew', () => {
    fc.assert(
      fc.property(results, results, results, (kept, removed, added) => {
        const replaced = totalWith(totalOf([kept, removed]), removed, added);
        const anew = totalOf([kept, added]);
        for (const key of doubtedKeys) expect(replaced.outcome[key]).toBeCloseTo(anew.outcome[key], 9);
        expectSameDoubts(replaced.doubts, (id) => combined(id, [[anew.doubts, 1]]));
      }),
      fewer,
    );
  });

  it('save before less after, and savings add or are taken off with their doubts', () => {
    fc.assert(
      fc.property(results, results, results, between(-2, 2), (a, b, c, factor) => {
        const [first, second] = [savingOf(a, b), savingOf(b, c)];
        const sum = addSavings(first, second, factor);
        for (const key of doubtedKeys) {
          expect(first.change[key]).toBeCloseTo(a.outcome[key] - b.outcome[key], 9);
          expect(sum.change[key]).toBeCloseTo(first.change[key] + factor * second.change[key], 9);
        }
        expectSameDoubts(sum.doubts, (id) =>
          combined(id, [
            [first.doubts, 1],
            [second.doubts, factor],
          ]),
        );
      }),
      fewer,
    );
  });

  it('are in a safe order where the range of their saving leaves zero out', () => {
    fc.assert(
      fc.property(results, results, (a, b) => {
        const { ranges } = savingOf(a, b);
        for (const key of doubtedKeys) {
          const { low, high } = ranges.all[key];
          const isClear = Math.min(Math.abs(low), Math.abs(high)) > 1e-6;
          if (isClear) expect(orderIsSafe(a, b, key)).toBe(low > 0 || high < 0);
        }
      }),
    );
  });
});

describe('the sums on an envelope', () => {
  it('undo each other: a speed comes back from its force and from its power', () => {
    fc.assert(
      fc.property(between(0.9, 1.4), between(1, 40), between(0.01, 5), (density, speedMs, areaM2) => {
        const force = dragForceN(dynamicPressurePa(density, speedMs), areaM2);
        expect(force / (0.5 * density * speedMs * speedMs * areaM2)).toBeCloseTo(1, 12);
        expect(speedFromForceMs(force, density, areaM2)).toBeCloseTo(speedMs, 9);
        expect(speedFromPowerMs(powerW(force, speedMs), density, areaM2)).toBeCloseTo(speedMs, 9);
        expect(reynoldsNumber(speedMs, areaM2, 1.5e-5) * 1.5e-5).toBeCloseTo(speedMs * areaM2, 9);
      }),
    );
  });

  it('give one shape in an even wind rho/2 V^2 Cd A, and its range by its own doubts alone', () => {
    const size = (valueM: number) => ({ valueM, basis: 'estimated' as const, doubtId: 'own:shape:size' });
    const bar: Shape = {
      kind: 'roundBar',
      diameter: size(0.1),
      roughnessM: 0,
      coefficient: { best: 0.9, low: 0.8, high: 1.2, areaBase: 'd L', source: '' },
      coefficientDoubtId: 'coefficient:shape',
      friction: false,
      ends: ['free', 'free'],
    };
    fc.assert(
      fc.property(between(1, 30), between(0.5, 5), (speedMs, lengthM) => {
        const air = fluid(1.2, 1.5e-5);
        const drag = dragInUniformWind(withoutEnds({ shape: bar, lengthM }), speedMs, air);
        const perCoefficient = 0.6 * speedMs ** 2 * 0.1 * lengthM;
        expect(drag.forceN.best / perCoefficient).toBeCloseTo(0.9, 10);
        expect(drag.forceN.low / perCoefficient).toBeCloseTo(0.8, 10);
        expect(drag.forceN.high / perCoefficient).toBeCloseTo(1.2, 10);
        expect(drag.reynolds).toBeCloseTo((speedMs * 0.1) / 1.5e-5, 4);
        expect(dragInUniformWind({ shape: bar, lengthM }, speedMs, air).forceN.best).toBeLessThan(
          drag.forceN.best,
        );
      }),
    );
  });
});
