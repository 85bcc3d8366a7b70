import { describe, expect, it } from 'vitest';
import type { Change } from '../../../src/physics/fitting/change';
import { zeroChange } from '../../setup/zeroChange';
import { doubtChange, type DoubtChange } from '../../../src/physics/doubt/doubtChange';
import { largestDoubts } from '../../../src/views/ledger/doubtText';

function doubt(id: string, upW: number, downW: number): DoubtChange {
  const change = (trackPowerW: number): Change => ({ ...zeroChange(), trackPowerW });
  return doubtChange(id, change(upW), change(downW));
}

function told(...doubts: readonly DoubtChange[]): string {
  return largestDoubts(doubts, 0, []);
}

describe('the largest doubts of a row', () => {
  it('are three at most, the largest first, by name', () => {
    expect(
      told(
        doubt('ends', 3, -3),
        doubt('own:pole:diameter', 20, -20),
        doubt('friction', 1, -1),
        doubt('end-table', 7, -2),
      ),
    ).toBe('diameter ±20; end effect, its table +7/−2; end effect, method ±3');
  });

  it('leave wind and density apart, however large they are', () => {
    expect(told(doubt('wind-speed', 90, -80), doubt('density', 40, -40), doubt('ends', 3, -3))).toBe(
      'end effect, method ±3',
    );
  });

  it('say which way a source can only go, whichever of its states does it', () => {
    expect(told(doubt('ends', -4, -9))).toBe('end effect, method −9');
    expect(told(doubt('ends', -4, 9))).toBe('end effect, method +9/−4');
    expect(told(doubt('ends', 5, 2))).toBe('end effect, method +5');
  });

  it('leave out what would print as zero', () => {
    expect(told(doubt('ends', 0.4, -0.4), doubt('friction', 0, 0))).toBe('');
  });
});
