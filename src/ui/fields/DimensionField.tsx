import type { ProjectDimension } from '../../project/file/schema';
import type { Unit } from '../../units/unitTable';
import { ChoiceField, type Choice } from './ChoiceField';
import type { FieldProps } from './FieldFrame';
import { QuantityField } from './QuantityField';
import type { SiRange } from './fieldText';

type Basis = ProjectDimension['basis'];

/** How a length was obtained: it sets how far the length is doubted. */
const basisChoices: readonly Choice<Basis>[] = [
  { value: 'measured', label: 'measured' },
  { value: 'drawing', label: 'from a drawing' },
  { value: 'estimated', label: 'estimated' },
];

/** What the project file takes as a dimension, m. */
const fileRange: SiRange = { fromSi: 0.0001, toSi: 200 };

interface DimensionFieldProps extends FieldProps {
  readonly value: ProjectDimension;
  readonly unit: Unit;
  readonly onCommit: (value: ProjectDimension) => void;
  readonly range?: SiRange;
}

/** A length together with how it was obtained. */
export function DimensionField(props: DimensionFieldProps) {
  const { value, onCommit, range = fileRange, error, describe, id, ...rest } = props;
  return (
    <div className="field-group">
      <QuantityField
        {...rest}
        {...(id === undefined ? {} : { id })}
        dimension="length"
        range={range}
        valueSi={value.m}
        error={error}
        describe={describe}
        onCommit={(m) => {
          onCommit({ ...value, m });
        }}
      />
      <ChoiceField
        label={`${props.label}: how obtained`}
        labelHidden
        value={value.basis}
        choices={basisChoices}
        {...(props.readOnly === undefined ? {} : { readOnly: props.readOnly })}
        {...(props.onDone === undefined ? {} : { onDone: props.onDone })}
        onCommit={(basis) => {
          onCommit({ ...value, basis });
        }}
      />
    </div>
  );
}
