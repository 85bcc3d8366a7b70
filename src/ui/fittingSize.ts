import { magnitude } from '../physics/vector/vector3';
import { deckLineOf, membersOf } from '../project/core/fittingToPhysics';
import type { ProjectBoat, ProjectFitting, ProjectShape } from '../project/file/schema';
import { isMember, isSection, type ProjectMember } from '../project/file/shapeKinds';
import { formatQuantity, formatRange, formatValue, printUnit } from '../units/print';

/**
 * A fitting's size in a few signs: "14 × Ø 25 mm × 0.61 m", "120 × 30 mm × 0.61 m", "0.75 × 0.48 × 0.26 m", "0.084 m²".
 */
export function fittingSize(fitting: ProjectFitting, boat: ProjectBoat): string {
  const members = membersOf(fitting.placement, deckLineOf(boat));
  const count = members.length > 1 ? `${formatValue(members.length, '1', { decimals: 0 })} × ` : '';
  const { shape } = fitting;
  if (!isMember(shape)) return count + bodySize(shape);
  const lengthsM = members.map(({ start, end }) =>
    magnitude([end[0] - start[0], end[1] - start[1], end[2] - start[2]]),
  );
  return `${count}${acrossText(shape)} × ${lengthText(lengthsM)}`;
}

function bodySize(shape: Exclude<ProjectShape, ProjectMember>): string {
  switch (shape.kind) {
    case 'measuredArea':
      return formatQuantity(shape.dragAreaM2.best, 'm2');
    case 'sphere':
      return `Ø ${formatQuantity(shape.diameter.m, 'm')}`;
    case 'net':
      return sidesText([shape.width.m, shape.height.m]);
    case 'bluffBody':
      return sidesText([shape.length.m, shape.width.m, shape.height.m]);
  }
}

function sidesText(sidesM: readonly number[]): string {
  return `${sidesM.map((m) => formatValue(m, 'm')).join(' × ')} ${printUnit('m')}`;
}

/** Across a member's axis: its diameter, or chord by thickness. */
function acrossText(shape: ProjectMember): string {
  if (!isSection(shape)) return `Ø ${formatQuantity(shape.diameter.m, 'mm')}`;
  return `${formatValue(shape.chord.m, 'mm')} × ${formatQuantity(shape.thickness.m, 'mm')}`;
}

/** One length where the members of a row agree to the printed figures, else from the shortest to the longest. */
function lengthText(lengthsM: readonly number[]): string {
  const shortest = Math.min(...lengthsM);
  const longest = Math.max(...lengthsM);
  const isOne = formatValue(shortest, 'm') === formatValue(longest, 'm');
  return isOne ? formatQuantity(longest, 'm') : formatRange(shortest, longest, 'm');
}
