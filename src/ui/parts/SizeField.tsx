import type { ProjectDimension } from '../../project/file/schema';
import { formatQuantity } from '../../units/print';
import { DimensionField } from '../fields/DimensionField';
import type { PartFields } from './partFields';

interface SizeFieldProps<Key extends string, Shape extends Readonly<Record<Key, ProjectDimension>>> {
  readonly part: PartFields<Shape>;
  readonly size: Key;
  readonly label: string;
  readonly unit: 'mm' | 'm';
  /** What is edited, for the name of the step; the key of the size where it says it. */
  readonly words?: string;
  readonly describe?: string;
}

/** One size of a shape, with how it was obtained. */
export function SizeField<Key extends string, Shape extends Readonly<Record<Key, ProjectDimension>>>(
  props: SizeFieldProps<Key, Shape>,
) {
  const { part, size, label, unit, words = size, describe } = props;
  return (
    <DimensionField
      label={label}
      unit={unit}
      value={part.value[size]}
      describe={doubtOf(part.value[size], unit) ?? describe}
      onCommit={(next) => {
        part.onChange(size, words, { ...part.value, [size]: next });
      }}
      {...part.at(size)}
    />
  );
}

/** Common practice, no source: no bar, rope, section or sphere on a yacht is wider than this, m. */
const widestM = 2;

/** What is told in millimetres is the width of something slender: the file takes more, and most often the unit is wrong. */
function doubtOf({ m }: ProjectDimension, unit: 'mm' | 'm'): string | undefined {
  if (unit !== 'mm' || m <= widestM) return undefined;
  return `${formatQuantity(m, 'm')} is very wide for this: is the unit right?`;
}
