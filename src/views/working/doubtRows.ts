import { doubtGroup, doubtScope, type DoubtGroup, type DoubtScope } from '../../physics/doubt/doubtSource';
import type { DoubtChange } from '../../physics/doubt/doubtChange';
import type { ProjectFitting } from '../../project/file/schema';
import { doubtLabel } from '../../project/wording/doubtLabel';
import { columnDecimals, formatValue } from '../../units/print';

/** One source of doubt: what it changes in track power at its high and at its low state. */
export interface DoubtRow {
  readonly id: string;
  readonly label: string;
  readonly scope: DoubtScope;
  readonly group: DoubtGroup;
  readonly up: string;
  readonly down: string;
}

/** The doubts that change the track power by something that can be printed, the largest first; those of the air stand last. */
export function doubtRows(doubts: readonly DoubtChange[], fittings: readonly ProjectFitting[]): DoubtRow[] {
  const counted = doubts.filter((doubt) => sizeOf(doubt) > 0).sort(byGroupThenSize);
  const decimals = columnDecimals(
    counted.flatMap(({ up, down }) => [up.trackPowerW, down.trackPowerW]),
    'W',
  );
  return counted.flatMap(({ id, up, down }): DoubtRow[] => {
    const [upText, downText] = [signed(up.trackPowerW, decimals), signed(down.trackPowerW, decimals)];
    if (!/[1-9]/.test(upText + downText)) return [];
    return [
      {
        id,
        label: doubtLabel(id, fittings),
        scope: doubtScope(id),
        group: doubtGroup(id),
        up: upText,
        down: downText,
      },
    ];
  });
}

function byGroupThenSize(a: DoubtChange, b: DoubtChange): number {
  const [groupA, groupB] = [doubtGroup(a.id), doubtGroup(b.id)];
  if (groupA !== groupB) return groupA === 'air' ? 1 : -1;
  return sizeOf(b) - sizeOf(a);
}

function sizeOf({ up, down }: DoubtChange): number {
  return Math.max(Math.abs(up.trackPowerW), Math.abs(down.trackPowerW));
}

function signed(changeW: number, decimals: number): string {
  const text = formatValue(changeW, 'W', { decimals });
  return changeW > 0 && /[1-9]/.test(text) ? `+${text}` : text;
}
