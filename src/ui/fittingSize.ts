import { magnitude } from '../physics/vector/vector3';
import { deckLineOf, membersOf } from '../project/core/fittingToPhysics';
import type { ProjectBoat, ProjectFitting } from '../project/file/schema';
import { formatQuantity, formatRange, formatValue, printUnit } from '../units/print';

/** A fitting's size in a few signs: "14 × Ø 25 mm × 0.61 m", "0.75 × 0.48 × 0.26 m", "0.084 m²". */
export function fittingSize(fitting: ProjectFitting, boat: ProjectBoat): string {
  const members = membersOf(fitting.placement, deckLineOf(boat));
  const count = members.length > 1 ? `${formatValue(members.length, '1', { decimals: 0 })} × ` : '';
  const { shape } = fitting;
  if (shape.kind === 'measuredArea') return count + formatQuantity(shape.dragAreaM2.best, 'm2');
  if (shape.kind === 'bluffBody') {
    const sides = [shape.length, shape.width, shape.height].map(({ m }) => formatValue(m, 'm'));
    return `${count}${sides.join(' × ')} ${printUnit('m')}`;
  }
  const lengthsM = members.map(({ start, end }) =>
    magnitude([end[0] - start[0], end[1] - start[1], end[2] - start[2]]),
  );
  return `${count}Ø ${formatQuantity(shape.diameter.m, 'mm')} × ${lengthText(lengthsM)}`;
}

/** One length where the members of a row agree to the printed figures, else from the shortest to the longest. */
function lengthText(lengthsM: readonly number[]): string {
  const shortest = Math.min(...lengthsM);
  const longest = Math.max(...lengthsM);
  const isOne = formatValue(shortest, 'm') === formatValue(longest, 'm');
  return isOne ? formatQuantity(longest, 'm') : formatRange(shortest, longest, 'm');
}
