import { describe, expect, it } from 'vitest';
import { zeroResult, zeroSaving } from '../../../src/physics/ledger/ledgerSums';
import type { LedgerRow } from '../../../src/project/ledger/ledgerTypes';
import type { LedgerGroup } from '../../../src/project/ledger/ledgerGroups';
import { drawnParts, ledgerLines, rowCountOf } from '../../../src/views/ledger/ledgerLines';

const setting = { shown: 'both', rowHeightPx: 28 } as const;

/** Only name and power count here. */
function row(fittingId: string, trackPowerW: number): LedgerRow {
  const before = { ...zeroResult, outcome: { ...zeroResult.outcome, trackPowerW } };
  return { fittingId, before, after: before } as unknown as LedgerRow;
}

function group(id: string, rows: readonly LedgerRow[], excluded: readonly LedgerRow[] = []): LedgerGroup {
  const sum = { before: zeroResult, after: zeroResult, saving: zeroSaving };
  return { id, name: id, pushingElsewhere: 0, rows, sum, excluded };
}

const bow = group('bow', [row('a', 90), row('b', 1), row('c', 1)], [row('x', 5)]);
const stern = group('stern', [row('d', 50)]);
const lines = ledgerLines([bow, stern], setting, 142);
const keysOf = (parts: readonly { readonly key: string }[]) => parts.map(({ key }) => key);
const none: ReadonlySet<string> = new Set();

describe('the lines of the ledger', () => {
  it('stand head, rows, tail and what is left out, numbered on from the head of the table', () => {
    expect(lines.map(({ lines: own }) => keysOf(own))).toEqual([
      ['head', 'a', 'tail', 'b', 'c', 'x'],
      ['head', 'd'],
    ]);
    expect(lines.flatMap(({ lines: own }) => own.map(({ rowIndex }) => rowIndex))).toEqual([
      2, 3, 4, 5, 6, 7, 8, 9,
    ]);
    expect(rowCountOf(lines)).toBe(9);
  });

  it('stand under each other without a gap', () => {
    let nextPx = 0;
    for (const { topPx, heightPx } of lines.flatMap(({ lines: own }) => own)) {
      expect(topPx).toBe(nextPx);
      nextPx += heightPx;
    }
    expect(nextPx).toBe(29 + 28 + 17 + 3 * 28 + 29 + 28);
  });
});

describe('what is drawn of a group', () => {
  const [first] = lines;
  const own = first?.lines ?? [];

  it('is all of it where no stretch is given', () => {
    expect(drawnParts(own, null, none)).toBe(own);
  });

  it('is what reaches into the stretch, with gaps as high as what does not', () => {
    const parts = drawnParts(own, { fromPx: 30, toPx: 58 }, none);
    expect(keysOf(parts)).toEqual(['gap head', 'a', 'tail', 'gap b']);
    expect(parts.reduce((sum, { heightPx }) => sum + heightPx, 0)).toBe(158);
  });

  it('is a single gap for a group out of sight, but for the rows that are kept', () => {
    const away = { fromPx: 1000, toPx: 1200 };
    expect(keysOf(drawnParts(own, away, none))).toEqual(['gap head']);
    expect(keysOf(drawnParts(own, away, new Set(['b'])))).toEqual(['gap head', 'b', 'gap c']);
  });
});
