import { shownUnit } from '../../units/shownUnits';
import type { Dimension, Unit } from '../../units/unitTable';
import { FieldFrame, type FieldProps } from './FieldFrame';
import { fieldText, inForce, quoted, readQuantity, type SiRange } from './fieldText';
import { useDraft, type Reading } from './useDraft';

interface ReadingsFieldProps extends FieldProps {
  readonly dimension: Dimension;
  /** The usual unit, for readings that name none. */
  readonly unit: Unit;
  /** Of each reading. */
  readonly range: SiRange;
  readonly most: number;
  readonly valuesSi: readonly number[];
  readonly onCommit: (valuesSi: readonly number[]) => void;
}

/** Several readings of one quantity on a line, apart by a blank or a semicolon: `31; 28,5; 30.2`, `3,1 kgf 3,3 kgf`. */
export function ReadingsField(props: ReadingsFieldProps) {
  const { valuesSi, onCommit } = props;
  const unit = shownUnit(props.unit);
  const print = (values: readonly number[]): string =>
    values.map((value, i) => fieldText(value, unit, i === values.length - 1)).join('; ');
  const draft = useDraft<readonly number[]>({
    value: valuesSi,
    print,
    read: (text) => readReadings(text, props, unit, print(valuesSi)),
    isSame: (a, b) => a.length === b.length && a.every((value, i) => Object.is(value, b[i])),
    onCommit,
    onDone: props.onDone,
    error: props.error,
    typedFor: props.typedFor,
    label: props.label,
  });
  return (
    <FieldFrame kind="line" field={props} problem={draft.problem ?? props.error ?? null}>
      {(control) => (
        <input
          {...control}
          type="text"
          className="field-input"
          value={draft.text}
          autoComplete="off"
          spellCheck={false}
          onChange={(event) => {
            draft.type(event.target.value);
          }}
          onFocus={draft.enter}
          onBlur={draft.leave}
          onKeyDown={draft.onKeyDown}
        />
      )}
    </FieldFrame>
  );
}

type Rule = Pick<ReadingsFieldProps, 'dimension' | 'range' | 'most'>;

function readReadings(
  text: string,
  { dimension, range, most }: Rule,
  unit: Unit,
  lastGood: string,
): Reading<readonly number[]> {
  // A blank parts two readings where a number follows it, so that "3.1 kgf" stays one.
  const parts = text.split(/[;\n\t]|\s+(?=[-+\u2212.,\d])/).filter((part) => part.trim() !== '');
  if (parts.length === 0) return { ok: false, message: `This may not be empty${inForce(quoted(lastGood))}.` };
  if (parts.length > most)
    return { ok: false, message: `At most ${most} readings are taken${inForce(quoted(lastGood))}.` };
  const values: number[] = [];
  for (const part of parts) {
    const rule = { dimension, unit, range, isWhole: false, isRequired: true, lastGoodSi: null };
    const reading = readQuantity(part, rule);
    if (!reading.ok)
      return { ok: false, message: reading.message.replace(/\.$/, inForce(quoted(lastGood)) + '.') };
    if (reading.value !== null) values.push(reading.value);
  }
  return { ok: true, value: values };
}
