import { describe, expect, it } from 'vitest';
import { zeroResult } from '../../../src/physics/ledger/ledgerSums';
import type { LedgerRow } from '../../../src/project/ledger/ledgerTypes';
import { tailOf } from '../../../src/views/ledger/tail';

/** Rows of which only the track power counts here. */
function rows(...powersW: readonly number[]): LedgerRow[] {
  return powersW.map((trackPowerW) => {
    const side = { ...zeroResult, outcome: { ...zeroResult.outcome, trackPowerW } };
    return { before: side, after: { ...side, outcome: { ...side.outcome, trackPowerW: 2 * trackPowerW } } };
  }) as unknown as LedgerRow[];
}

describe('the tail of a group', () => {
  it('is the longest run at the end that stays under a twentieth of the total', () => {
    expect(tailOf(rows(50, 30, 2, 1.5, 1), 100, 'both')).toEqual({ from: 2, share: 0.045 });
    expect(tailOf(rows(50, 30, 3, 1.5, 1), 100, 'both')).toEqual({ from: 3, share: 0.025 });
  });

  it('is none for one row, for all rows, and for a boat that is pushed along', () => {
    expect(tailOf(rows(50, 30, 6, 4), 100, 'both')).toBeNull();
    expect(tailOf(rows(2, 1, 1), 100, 'both')).toBeNull();
    expect(tailOf(rows(50, 2, 1), 0, 'both')).toBeNull();
    expect(tailOf(rows(50, 2, 1), -100, 'both')).toBeNull();
  });

  it('is judged in the state that is shown', () => {
    expect(tailOf(rows(50, 2, 1), 100, 'before')).toEqual({ from: 1, share: 0.03 });
    expect(tailOf(rows(50, 2, 1), 100, 'after')).toBeNull();
  });
});
