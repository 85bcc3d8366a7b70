import type { ProjectTypedCoefficient } from '../../project/file/schema';
import { CheckField } from '../fields/CheckField';
import { RangedField } from '../fields/RangedField';
import { TextField } from '../fields/TextField';
import type { PartFields } from './partFields';
import './parts.css';
import { SourceField } from './SourceField';

interface CoefficientFieldsProps extends PartFields<ProjectTypedCoefficient | null> {
  /** "drag coefficient", or that of one axis of a body. */
  readonly words: string;
  /** What the fields begin with when the model's own coefficient is overruled. */
  readonly start: ProjectTypedCoefficient;
}

const range = { fromSi: 0, toSi: 100 };

/** A coefficient typed in place of the model's: its 90 % range, the area that it is about, and where it comes from. */
export function CoefficientFields({ value, at, onChange, words, start }: CoefficientFieldsProps) {
  return (
    <>
      <CheckField
        label={`Type the ${words}`}
        value={value !== null}
        onCommit={(isTyped) => {
          onChange('typed', words, isTyped ? start : null);
        }}
        {...at('typed')}
      />
      {value !== null && (
        <div className="field-part">
          <RangedField
            label={capital(words)}
            dimension="none"
            unit="1"
            range={range}
            value={value}
            onCommit={(next) => {
              onChange('', words, { ...value, ...next });
            }}
            {...at('')}
          />
          <TextField
            label="On the area"
            kind="name"
            value={value.areaBase}
            onCommit={(areaBase) => {
              onChange('areaBase', words, { ...value, areaBase });
            }}
            {...at('areaBase')}
          />
          <SourceField
            value={value.source}
            onCommit={(source) => {
              onChange('source', words, { ...value, source });
            }}
            {...at('source')}
          />
        </div>
      )}
    </>
  );
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
