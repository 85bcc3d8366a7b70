import type { RowResult } from '../../physics/ledger/ledgerSums';
import { formatValue, formatValueRange } from '../../units/print';

/** What the ledger says about a row's coefficient; the working says it member by member. */
export interface CoefficientText {
  /** '' where the row has none, or where members or conditions differ in the printed figures. */
  readonly best: string;
  readonly spread: string;
  readonly regime: string;
}

const printed = { decimals: 2 };

/** Over all dry members and all chosen conditions. */
export function coefficientText(result: RowResult): CoefficientText {
  const members = result.parts.flatMap(({ trace }) => trace.members);
  const bests = new Set<string>();
  const ends: number[] = [];
  for (const { coefficientBest, coefficientLow, coefficientHigh } of members) {
    if (coefficientBest === null || coefficientLow === null || coefficientHigh === null) continue;
    bests.add(formatValue(coefficientBest, '1', printed));
    ends.push(coefficientLow, coefficientHigh);
  }
  return {
    best: bests.size === 1 ? [...bests].join('') : '',
    spread: ends.length === 0 ? '' : formatValueRange(Math.min(...ends), Math.max(...ends), '1', printed),
    regime: [...new Set(members.map(({ regime }) => regime))].join(', '),
  };
}
