import { describe, expect, it } from 'vitest';
import { doubtChange, type DoubtChange } from '../../src/physics/doubt/doubtChange';
import { rangesOf } from '../../src/physics/doubt/doubts';
import { zeroChange } from './zeroChange';
import { zeroOutcome } from '../../src/physics/fitting/outcome';
import { resultOf } from '../../src/physics/ledger/ledgerSums';

function doubt(trackPowerW: number): DoubtChange {
  return doubtChange('ends', { ...zeroChange(), trackPowerW }, zeroChange());
}

describe('the comparison of results whose doubts are worked out when they are read', () => {
  it('tells two results apart by their doubts alone, however deep they lie', () => {
    const [small, large, twin] = [1, 2, 1].map((watts) => resultOf(zeroOutcome, () => [doubt(watts)]));
    expect(small).toEqual(twin);
    expect(small).not.toEqual(large);
    expect({ rows: [small] }).toEqual({ rows: [twin] });
    expect({ rows: [small] }).not.toEqual({ rows: [large] });
  });

  it('tells two ranges apart, and a range from a plain object with other ends', () => {
    const [small, large] = [1, 2].map((watts) => rangesOf(zeroOutcome, [doubt(watts)]));
    expect(small).not.toEqual(large);
    const { item, air, all } = rangesOf(zeroOutcome, [doubt(1)]);
    expect(small).toEqual({ item, air, all });
    expect(small).not.toEqual({ item: large?.item, air, all });
  });
});
