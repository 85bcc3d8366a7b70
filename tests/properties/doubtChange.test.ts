import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { doubtChange, type DoubtChange } from '../../src/physics/doubt/doubtChange';
import { sumDoubts } from '../../src/physics/doubt/doubts';
import { doubtedKeys } from '../../src/physics/fitting/change';
import { zeroChange } from '../setup/zeroChange';
import { between, changes } from './arbitraries';

/** More than stand in one stretch of numbers. */
const many = 700;

function read({ id, up, down }: DoubtChange) {
  return { id, up, down };
}

describe('a doubt among many', () => {
  it('gives back the changes it was made of, entry by entry too', () => {
    fc.assert(
      fc.property(changes, changes, (up, down) => {
        const doubt = doubtChange('ends', up, down);
        expect(read(doubt)).toEqual({ id: 'ends', up, down });
        for (const key of doubtedKeys) {
          expect(doubt.upIn(key)).toBe(up[key]);
          expect(doubt.downIn(key)).toBe(down[key]);
        }
      }),
    );
  });

  it('keeps them while hundreds of others are made and added to', () => {
    const made = Array.from({ length: many }, (_, i) => {
      const up = { ...zeroChange(), dragAgainstTrackN: i, fullPriceW: i + 0.25 };
      return doubtChange(`own:${i}:length`, up, { ...zeroChange(), dragAgainstTrackN: -i, fullPriceW: -i });
    });
    for (const [i, doubt] of made.entries()) {
      expect([doubt.upIn('dragAgainstTrackN'), doubt.upIn('fullPriceW')]).toEqual([i, i + 0.25]);
      expect([doubt.downIn('dragAgainstTrackN'), doubt.downIn('fullPriceW')]).toEqual([
        i === 0 ? -0 : -i,
        -i,
      ]);
      if (i % 3 === 0) doubt.add(doubtChange('ends', doubt.down, doubt.up), 1);
    }
    const untouched = made.filter((_, i) => i % 3 !== 0);
    expect(untouched.every(({ id, up }) => id === `own:${up.dragAgainstTrackN}:length`)).toBe(true);
  });

  it('is left alone by sums that it goes into, however often', () => {
    fc.assert(
      fc.property(changes, changes, between(-2, 2), (up, down, weight) => {
        const doubt = doubtChange('ends', up, down);
        const parts = [{ doubts: [doubt] }, { doubts: [doubt], weight }, { doubts: [doubt] }];
        const [first] = sumDoubts(parts);
        const [again] = sumDoubts(parts);
        expect(read(doubt)).toEqual({ id: 'ends', up, down });
        expect(first?.up).toEqual(again?.up);
        for (const key of doubtedKeys) {
          expect(first?.downIn(key)).toBeCloseTo((2 + weight) * down[key], 9);
        }
      }),
    );
  });
});
