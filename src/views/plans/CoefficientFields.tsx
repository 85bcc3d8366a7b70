import type { ProjectTypedCoefficient } from '../../project/file/schema';
import { CheckField } from '../../ui/fields/CheckField';
import { RangedField } from '../../ui/fields/RangedField';
import { TextField } from '../../ui/fields/TextField';
import type { ItemEditor } from './usePlanEdits';

interface CoefficientFieldsProps {
  readonly label: string;
  readonly part: string;
  readonly value: ProjectTypedCoefficient | null;
  readonly editor: ItemEditor;
  readonly onCommit: (value: ProjectTypedCoefficient | null, part: string) => void;
}

const coefficientRange = { fromSi: 0, toSi: 100 };
/** To start from, until somebody types theirs: a drag area equal to the area seen. */
const plain: ProjectTypedCoefficient = { best: 1, low: 1, high: 1, areaBase: 'area seen', source: '' };

/** A drag coefficient of one's own with the area that it is based on and its source; else the model's. */
export function CoefficientFields({ label, part, value, editor, onCommit }: CoefficientFieldsProps) {
  const { key, errorAt, done } = editor;
  return (
    <>
      <CheckField
        key={`${key}.${part}`}
        label={label}
        value={value !== null}
        onCommit={(has) => {
          onCommit(has ? plain : null, part);
        }}
        onDone={done}
      />
      {value !== null && (
        <>
          <RangedField
            key={`${key}.${part}.range`}
            label="Drag coefficient"
            dimension="none"
            unit="1"
            range={coefficientRange}
            value={value}
            error={errorAt(part)}
            onCommit={(range) => {
              onCommit({ ...value, ...range }, part);
            }}
            onDone={done}
          />
          <TextField
            key={`${key}.${part}.base`}
            kind="name"
            label="Based on the area"
            value={value.areaBase}
            onCommit={(areaBase) => {
              onCommit({ ...value, areaBase }, `${part}.areaBase`);
            }}
            onDone={done}
          />
          <TextField
            key={`${key}.${part}.source`}
            kind="source"
            label="Source of the coefficient"
            value={value.source}
            onCommit={(source) => {
              onCommit({ ...value, source }, `${part}.source`);
            }}
            onDone={done}
          />
        </>
      )}
    </>
  );
}
