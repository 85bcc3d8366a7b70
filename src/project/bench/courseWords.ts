import { excludesZero } from '../../physics/doubt/doubts';
import { quantityIn, rangeIn } from '../../units/printIn';
import type { Unit } from '../../units/unitTable';
import { currencies, type BenchConditionRow, type Currency, type Measures } from './benchTypes';

/** Watts or newtons below this are none: rounding, not a win. */
const least = 1e-9;

/**
 * Where a candidate wins, where it loses and what that comes to over the course, in one currency. Wins and losses are
 * those of the best values; where a range spans zero, of a condition or of the whole, that is said.
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
  const otherWay = isOpen(saving[measure]) ? '; within the doubts it may be the other way round' : '';
  return `${winText(wins, losses)}${openText(rows, measure)} ${whole}${otherWay}.`;
}

function isOpen(saving: Measures[Currency]): boolean {
  return saving.low !== saving.high && !excludesZero(saving);
}

/** The conditions whose win or loss the doubts may turn round. */
function openText(rows: readonly BenchConditionRow[], measure: Currency): string {
  const decided = rows.filter(({ saving }) => Math.abs(saving[measure].best) > least);
  const open = decided.filter(({ saving }) => isOpen(saving[measure])).map(({ name }) => name);
  if (open.length === 0) return '';
  const isAll = open.length > 1 && open.length === rows.length;
  return ` The doubts leave it open in ${isAll ? 'every condition' : listed(open)}.`;
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
