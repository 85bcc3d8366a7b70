import { TextField } from '../fields/TextField';
import type { FieldTie } from '../useFormEdit';
import './parts.css';

interface SourceFieldProps extends FieldTie {
  readonly label?: string;
  readonly value: string;
  readonly onCommit: (source: string) => void;
}

/** Where a number comes from: as wide as the form, because a source is a sentence. */
export function SourceField({ label = 'Source', ...rest }: SourceFieldProps) {
  return (
    <div className="field-wide">
      <TextField {...rest} label={label} kind="source" />
    </div>
  );
}
