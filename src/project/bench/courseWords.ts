import { excludesZero } from '../../physics/doubt/doubts';
import { quantityIn, rangeIn } from '../../units/printIn';
import { currencies, type BenchConditionRow, type Measures } from './benchTypes';

/** Watts below this are none: rounding, not a win. */
const leastW = 1e-9;

/**
 * Where a candidate wins, where it loses and what that comes to over the course, in full price where a price is given and
 * in track power otherwise. Wins and losses are those of the best values; where the range of the whole spans zero
 * that is said.
 */
export function courseWords(
  rows: readonly BenchConditionRow[],
  saving: Measures,
  hasFullPrice: boolean,
): string {
  const measure = hasFullPrice ? 'fullPriceW' : 'trackPowerW';
  const label = currencies.find(({ id }) => id === measure)?.label ?? '';
  const wins = rows.filter((row) => row.saving[measure].best > leastW).map(({ name }) => name);
  const losses = rows.filter((row) => row.saving[measure].best < -leastW).map(({ name }) => name);
  const { best, low, high } = saving[measure];
  const verb = best >= 0 ? 'saves' : 'costs';
  const range = best >= 0 ? rangeIn(low, high, 'W') : rangeIn(-high, -low, 'W');
  const whole =
    Math.abs(best) <= leastW
      ? `Over the course it changes no ${label}`
      : `Over the course it ${verb} ${quantityIn(Math.abs(best), 'W')} of ${label} (${range})`;
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
