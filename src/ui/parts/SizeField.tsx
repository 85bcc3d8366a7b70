import type { ProjectDimension } from '../../project/file/schema';
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
      describe={describe}
      onCommit={(next) => {
        part.onChange(size, words, { ...part.value, [size]: next });
      }}
      {...part.at(size)}
    />
  );
}
