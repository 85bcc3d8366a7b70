import type { ProjectTypedCoefficient } from '../../project/file/schema';
import { CheckField } from '../../ui/fields/CheckField';
import { RangedField } from '../../ui/fields/RangedField';
import { TextField } from '../../ui/fields/TextField';
import type { RowEdit } from './useRowEdit';

interface CoefficientFieldsProps {
  readonly row: RowEdit;
  readonly field: string;
  /** "drag coefficient", or that of one axis of a body. */
  readonly words: string;
  readonly value: ProjectTypedCoefficient | null;
  /** What the fields begin with when the model's own coefficient is overruled. */
  readonly start: ProjectTypedCoefficient;
  readonly onCommit: (value: ProjectTypedCoefficient | null) => void;
}

const range = { fromSi: 0, toSi: 100 };

/** A coefficient typed in place of the model's: its 90 % range, the area that it is about, and where it comes from. */
export function CoefficientFields({ row, field, words, value, start, onCommit }: CoefficientFieldsProps) {
  return (
    <>
      <CheckField
        label={`Type the ${words}`}
        value={value !== null}
        onCommit={(isTyped) => {
          onCommit(isTyped ? start : null);
        }}
        {...row.at(`${field}.typed`)}
      />
      {value !== null && (
        <div className="edit-part">
          <RangedField
            label={capital(words)}
            dimension="none"
            unit="1"
            range={range}
            value={value}
            onCommit={(next) => {
              onCommit({ ...value, ...next });
            }}
            {...row.at(field)}
          />
          <TextField
            label="On the area"
            kind="name"
            value={value.areaBase}
            onCommit={(areaBase) => {
              onCommit({ ...value, areaBase });
            }}
            {...row.at(`${field}.areaBase`)}
          />
          <TextField
            label="Source"
            kind="source"
            value={value.source}
            onCommit={(source) => {
              onCommit({ ...value, source });
            }}
            {...row.at(`${field}.source`)}
          />
        </div>
      )}
    </>
  );
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
