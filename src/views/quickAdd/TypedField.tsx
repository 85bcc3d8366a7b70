import { useState } from 'react';
import type { QuickField } from '../../project/survey/quickEntry';
import { restIn, typeIn } from '../../state/typedTexts';
import { FieldFrame } from '../../ui/fields/FieldFrame';
import { useKeptText } from '../../ui/fields/useKeptText';
import { fieldLabel, typedForField } from './quickFields';

interface TypedFieldProps {
  readonly field: QuickField;
  readonly id: string;
  /** Why what stands in it cannot be taken. */
  readonly error: string | undefined;
  /** Add was pressed: from now on an empty field is wrong too. */
  readonly isAsked: boolean;
  /** Nothing is lacking any more: Enter adds. */
  readonly isLast: boolean;
  readonly describe: string | undefined;
}

/** A field whose text counts only once it is added, and is kept until then. It complains when it is left. */
export function TypedField({ field, id, error, isAsked, isLast, describe }: TypedFieldProps) {
  const label = fieldLabel(field);
  const typedFor = typedForField(field);
  const [text, setText] = useKeptText(typedFor, label);
  const [isLeft, setIsLeft] = useState(false);
  const isShown = isAsked || (isLeft && text.trim() !== '');
  const isName = field === 'name';
  return (
    <FieldFrame
      kind="line"
      field={{ label, id, describe, typedFor }}
      problem={isShown ? (error ?? null) : null}
    >
      {(control) => (
        <input
          {...control}
          type="text"
          className={isName ? 'field-input' : 'field-input field-number'}
          value={text}
          inputMode={isName ? 'text' : field === 'count' ? 'numeric' : 'decimal'}
          enterKeyHint={isLast ? 'done' : 'next'}
          autoComplete="off"
          autoCapitalize={isName ? 'sentences' : 'off'}
          spellCheck={isName}
          onChange={(event) => {
            setText(event.target.value);
            typeIn(typedFor);
          }}
          onBlur={() => {
            setIsLeft(true);
            restIn(typedFor);
          }}
        />
      )}
    </FieldFrame>
  );
}
