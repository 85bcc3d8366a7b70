import { name, note, reason, shortText, source } from '../../project/file/fields';
import { FieldFrame, type FieldProps } from './FieldFrame';
import { inForce, quoted } from './fieldText';
import { useDraft, type Draft, type Reading } from './useDraft';
import { StillInput } from './StillInput';

/** The texts of the project file, each with the rule by which it is saved. */
const rules = { name: name(), short: shortText(), source: source(), note: note(), reason: reason() };

/** Currency names are short. */
const currencyRule = shortText(10);

type TextKind = keyof typeof rules | 'currency';

interface TextFieldProps extends FieldProps {
  readonly kind: TextKind;
  readonly value: string;
  readonly onCommit: (value: string) => void;
}

function readText(text: string, kind: TextKind, lastGood: string): Reading<string> {
  const result = (kind === 'currency' ? currencyRule : rules[kind]).safeParse(text);
  if (result.success) return { ok: true, value: result.data };
  const [issue] = result.error.issues;
  const kept = lastGood === '' ? '' : quoted(lastGood);
  return { ok: false, message: `This ${issue?.message ?? 'cannot be saved'}${inForce(kept)}.` };
}

function useTextDraft(props: TextFieldProps, endsOnEnter: boolean): Draft<string> {
  const { kind, value, onCommit, onDone, error, typedFor, label } = props;
  return useDraft({
    value,
    print: (text) => text,
    read: (text) => readText(text, kind, value),
    isSame: (a, b) => a === b,
    onCommit,
    onDone,
    error,
    endsOnEnter,
    typedFor,
    label,
  });
}

/** One line of text. A name may not be empty: the last one stays until another is there. */
export function TextField(props: TextFieldProps) {
  const draft = useTextDraft(props, true);
  return (
    <FieldFrame kind="line" field={props} problem={draft.problem ?? props.error ?? null}>
      {(control) => (
        <StillInput
          {...control}
          type="text"
          className="field-input"
          value={draft.text}
          readOnly={props.readOnly}
          required={props.kind === 'name' || props.kind === 'reason'}
          autoComplete="off"
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

/** Text of several lines; Enter starts another. */
export function NoteField({ rows = 3, ...props }: TextFieldProps & { readonly rows?: number }) {
  const draft = useTextDraft(props, false);
  return (
    <FieldFrame kind="note" field={props} problem={draft.problem ?? props.error ?? null}>
      {(control) => (
        <textarea
          {...control}
          className="field-input"
          rows={rows}
          value={draft.text}
          readOnly={props.readOnly}
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
