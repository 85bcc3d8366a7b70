import { FieldFrame, type FieldProps } from './FieldFrame';

export interface Choice<Value extends string> {
  readonly value: Value;
  readonly label: string;
}

interface ChoiceFieldProps<Value extends string> extends FieldProps {
  readonly value: Value;
  readonly choices: readonly Choice<Value>[];
  readonly onCommit: (value: Value) => void;
}

/** One of a few, as the browser's own list. */
export function ChoiceField<Value extends string>(props: ChoiceFieldProps<Value>) {
  const { value, choices, onCommit, onDone, error, readOnly = false } = props;
  return (
    <FieldFrame kind="choice" field={props} problem={error ?? null}>
      {(control) => (
        <select
          {...control}
          className="field-input"
          value={value}
          disabled={readOnly}
          onChange={(event) => {
            const chosen = choices.find((choice) => choice.value === event.target.value);
            if (chosen === undefined || chosen.value === value) return;
            onCommit(chosen.value);
            onDone?.();
          }}
        >
          {choices.map((choice) => (
            <option key={choice.value} value={choice.value}>
              {choice.label}
            </option>
          ))}
        </select>
      )}
    </FieldFrame>
  );
}
