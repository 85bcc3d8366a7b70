import { useRef } from 'react';
import type { ProjectPlacement } from '../../project/file/schema';
import { CheckField } from '../fields/CheckField';
import { ChoiceField, type Choice } from '../fields/ChoiceField';
import { NumberField } from '../fields/NumberField';
import { EndPointFields } from './EndPointFields';
import type { PartFields } from './partFields';
import { BasisField } from './smallFields';
import { TapedFields, TapedLastFields } from './TapedFields';

const kindChoices: readonly Choice<ProjectPlacement['kind']>[] = [
  { value: 'taped', label: 'as taped on deck' },
  { value: 'endPoints', label: 'by its end points' },
];

/** Most members of a row. */
const countRange = { fromSi: 1, toSi: 500 };

interface PlacementFieldsProps extends PartFields<ProjectPlacement> {
  readonly onKind: (kind: ProjectPlacement['kind']) => void;
  /** One is no row. */
  readonly onCount: (count: number) => void;
}

/** How many there are, which way they stand, and where. */
export function PlacementFields({ value, at, onChange, onKind, onCount }: PlacementFieldsProps) {
  // Typing 12 over 14 passes through 1, which is no row: where the last one stood is kept for the 12.
  const rowBefore = useRef<ProjectPlacement | null>(null);
  const setCount = (count: number): void => {
    if (count === 1 && value.row !== null) rowBefore.current = value;
    const again = value.row === null && count > 1 ? withRowOf(value, rowBefore.current, count) : null;
    if (again === null) onCount(count);
    else onChange('count', 'count', again);
  };
  return (
    <>
      <NumberField
        label="How many in a row"
        isWhole
        range={countRange}
        valueSi={value.row?.count ?? 1}
        onCommit={setCount}
        {...at('count')}
      />
      <CheckField
        label="The same on the other side"
        value={value.pair}
        onCommit={(pair) => {
          onChange('pair', 'pair', { ...value, pair });
        }}
        {...at('pair')}
      />
      <ChoiceField
        label="Place given"
        choices={kindChoices}
        value={value.kind}
        onCommit={onKind}
        {...at('kind')}
      />
      {value.kind === 'taped' ? (
        <>
          <TapedFields value={value} at={at} onChange={onChange} />
          <TapedLastFields value={value} at={at} onChange={onChange} />
        </>
      ) : (
        <EndPointFields value={value} at={at} onChange={onChange} />
      )}
      <BasisField
        label="Place obtained"
        value={value.basis}
        onCommit={(basis) => {
          onChange('basis', 'basis of the place', { ...value, basis });
        }}
        {...at('basis')}
      />
    </>
  );
}

/** The placement with the row that another of its kind had; null where that had none. */
function withRowOf(
  placement: ProjectPlacement,
  other: ProjectPlacement | null,
  count: number,
): ProjectPlacement | null {
  if (placement.kind === 'taped' && other?.kind === 'taped' && other.row !== null) {
    return { ...placement, row: { ...other.row, count } };
  }
  if (placement.kind === 'endPoints' && other?.kind === 'endPoints' && other.row !== null) {
    return { ...placement, row: { ...other.row, count } };
  }
  return null;
}
