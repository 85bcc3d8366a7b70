import type { LedgerRow } from '../../project/ledger/ledgerTypes';
import type { LedgerGroup } from '../../project/ledger/ledgerGroups';
import type { RowSetting } from './rowSetting';
import { tailOf } from './tail';

/** What stands in a line of the ledger. */
export type LineContent =
  | { readonly kind: 'head'; readonly group: LedgerGroup }
  | { readonly kind: 'tail'; readonly share: number }
  | { readonly kind: 'row' | 'excluded'; readonly row: LedgerRow };

/** A line with its place, px from the top of the first. */
export type LedgerLine = LineContent & {
  readonly key: string;
  /** Counted from 1 and from the head of the table, as `aria-rowindex` is. */
  readonly rowIndex: number;
  readonly topPx: number;
  readonly heightPx: number;
};

export interface GroupLines {
  readonly id: string;
  readonly lines: readonly LedgerLine[];
}

export const tailHeightPx = 17;

/**
 * All lines of the ledger, group by group.
 * @param totalW track power of the whole ledger in the state that is shown, W.
 */
export function ledgerLines(
  groups: readonly LedgerGroup[],
  { shown, rowHeightPx }: Pick<RowSetting, 'shown' | 'rowHeightPx'>,
  totalW: number,
): GroupLines[] {
  let rowIndex = 1;
  let topPx = 0;
  const placed = (content: LineContent): LedgerLine => {
    const heightPx = heightOf(content, rowHeightPx);
    const line = { ...content, key: keyOf(content), rowIndex: rowIndex + 1, topPx, heightPx };
    rowIndex += 1;
    topPx += heightPx;
    return line;
  };
  return groups.map((group) => ({
    id: group.id,
    lines: contentsOf(group, tailOf(group.rows, totalW, shown)).map(placed),
  }));
}

/** A head has the line above it on top. */
function heightOf({ kind }: LineContent, rowHeightPx: number): number {
  if (kind === 'tail') return tailHeightPx;
  return kind === 'head' ? rowHeightPx + 1 : rowHeightPx;
}

function contentsOf(group: LedgerGroup, tail: ReturnType<typeof tailOf>): LineContent[] {
  const rows = group.rows.map((row): LineContent => ({ kind: 'row', row }));
  const excluded = group.excluded.map((row): LineContent => ({ kind: 'excluded', row }));
  if (tail !== null) rows.splice(tail.from, 0, { kind: 'tail', share: tail.share });
  return [{ kind: 'head', group }, ...rows, ...excluded];
}

function keyOf(content: LineContent): string {
  return 'row' in content ? content.row.fittingId : content.kind;
}

/** The head of the table counts too. */
export function rowCountOf(groups: readonly GroupLines[]): number {
  return groups.reduce((count, { lines }) => count + lines.length, 1);
}

/** A stretch of the lines, px from the top of the first. */
export interface Stretch {
  readonly fromPx: number;
  readonly toPx: number;
}

/** Lines that are not drawn, in one. */
export interface Gap {
  readonly kind: 'gap';
  readonly key: string;
  readonly heightPx: number;
}

/**
 * What of a group is drawn: the lines that reach into the stretch, those of the rows that are always kept, and gaps as
 * high as what lies between them.
 * @param stretch null where all is drawn.
 */
export function drawnParts(
  lines: readonly LedgerLine[],
  stretch: Stretch | null,
  keptIds: ReadonlySet<string>,
): readonly (LedgerLine | Gap)[] {
  if (stretch === null) return lines;
  const parts: (LedgerLine | Gap)[] = [];
  let gap = null as Gap | null;
  for (const line of lines) {
    if (reachesInto(line, stretch) || keptIds.has(line.key)) {
      if (gap !== null) parts.push(gap);
      parts.push(line);
      gap = null;
    } else {
      gap = {
        kind: 'gap',
        key: gap?.key ?? `gap ${line.key}`,
        heightPx: (gap?.heightPx ?? 0) + line.heightPx,
      };
    }
  }
  return gap === null ? parts : [...parts, gap];
}

function reachesInto({ topPx, heightPx }: LedgerLine, { fromPx, toPx }: Stretch): boolean {
  return topPx + heightPx > fromPx && topPx < toPx;
}
