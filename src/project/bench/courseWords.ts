import { excludesZero } from '../../physics/doubt/doubts';
import { quantityIn, rangeIn } from '../../units/printIn';
import type { Unit } from '../../units/unitTable';
import { currencies, type BenchConditionRow, type Currency, type Measures } from './benchTypes';

/** Watts or newtons below this are none: rounding, not a win. */
const least = 1e-9;

/**
 * Where a candidate wins, where it loses and what that comes to over the course, in one currency. Wins and losses are those of the best values; where the range of the whole spans zero
 * that is said.
 * @param unit in which the whole is printed.
 */
export function courseWords(
  rows: readonly BenchConditionRow[],
  saving: Measures,
  measure: Currency,
  unit: Unit,
): string {
  const label = currencies.find(({ id }) => id === measure)?.label ?? '';
  const wins = rows.filter((row) => row.saving[measure].best > least).map(({ name }) => name);
  const losses = rows.filter((row) => row.saving[measure].best < -least).map(({ name }) => name);
  const { best, low, high } = saving[measure];
  const verb = best >= 0 ? 'saves' : 'costs';
  const range = best >= 0 ? rangeIn(low, high, unit) : rangeIn(-high, -low, unit);
  const whole =
    Math.abs(best) <= least
      ? `Over the course it changes no ${label}`
      : `Over the course it ${verb} ${quantityIn(Math.abs(best), unit)} of ${label} (${range})`;
  const isOpen = low !== high && !excludesZero(saving[measure]);
  return `${winText(wins, losses)} ${whole}${isOpen ? '; within the doubts it may be the other way round' : ''}.`;
}

function winText(wins: readonly string[], losses: readonly string[]): string {
  if (wins.length === 0 && losses.length === 0) return 'It makes no difference in any condition.';
  if (losses.length === 0) return 'It loses in no condition.';
  if (wins.length === 0) return 'It wins in no condition.';
  return `It wins in ${listed(wins)} and loses in ${listed(losses)}.`;
}

const mostNamed = 4;

function listed(names: readonly string[]): string {
  if (names.length <= mostNamed) return names.join(', ');
  return `${names.slice(0, mostNamed - 1).join(', ')} and ${names.length - mostNamed + 1} more conditions`;
}
