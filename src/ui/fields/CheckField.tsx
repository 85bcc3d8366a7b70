import { FieldFrame, type FieldProps } from './FieldFrame';
import { StillInput } from './StillInput';

interface CheckFieldProps extends FieldProps {
  readonly value: boolean;
  readonly onCommit: (value: boolean) => void;
}

/** Yes or no. */
export function CheckField(props: CheckFieldProps) {
  const { value, onCommit, onDone, error, readOnly = false } = props;
  return (
    <FieldFrame kind="check" field={props} problem={error ?? null}>
      {(control) => (
        <StillInput
          {...control}
          type="checkbox"
          className="field-box"
          checked={value}
          disabled={readOnly}
          onChange={(event) => {
            onCommit(event.target.checked);
            onDone?.();
          }}
        />
      )}
    </FieldFrame>
  );
}
