import type { LedgerRow } from '../../project/ledger/ledgerTypes';
import type { Shown } from '../../state/appStore';

/** Rows that together stay below this share of the total are told as one. */
const tailShare = 0.05;

/** The rows at the end of a group that hardly matter: from which one on, and their share of the total. */
export interface Tail {
  readonly from: number;
  readonly share: number;
}

/**
 * The longest run of rows at a group's end that stays under a twentieth of the total. Null when it is fewer than two
 * rows, or all of them: the sum of the group says that already.
 * @param rows the costliest first.
 * @param totalW of the whole ledger, in the state that is shown.
 */
export function tailOf(rows: readonly LedgerRow[], totalW: number, shown: Shown): Tail | null {
  if (!(totalW > 0)) return null;
  let sumW = 0;
  let from = rows.length;
  for (const row of [...rows].reverse()) {
    const next = sumW + trackPowerW(row, shown);
    if (next >= tailShare * totalW) break;
    sumW = next;
    from -= 1;
  }
  return from === 0 || rows.length - from < 2 || sumW <= 0 ? null : { from, share: sumW / totalW };
}

function trackPowerW({ before, after }: LedgerRow, shown: Shown): number {
  return (shown === 'after' ? after : before).outcome.trackPowerW;
}
