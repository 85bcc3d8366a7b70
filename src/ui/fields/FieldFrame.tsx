import { useEffect, useId, type ReactNode } from 'react';
import { useTypedTexts, wantField } from '../../state/typedTexts';
import './fields.css';

/** What every field has in common. */
export interface FieldProps {
  readonly label: string;
  /** For a table cell, whose head says it: the label is there for those who listen. */
  readonly labelHidden?: boolean;
  /** A complaint from the project's own checks, shown like the field's own. */
  readonly error?: string | undefined;
  /** One sentence that explains the field, under it. */
  readonly describe?: string | undefined;
  readonly readOnly?: boolean;
  readonly id?: string;
  /** An edit has come to its end: Enter, or the field was left. */
  readonly onDone?: () => void;
  /**
   * What text in the field is typed for, such as "fitting/f3.shape.diameter": text that is not a value yet is kept for it
   * and is there again when the field comes back.
   */
  readonly typedFor?: string | undefined;
}

/** What a frame hands to its control. */
interface ControlProps {
  readonly id: string;
  readonly 'aria-invalid': true | undefined;
  readonly 'aria-describedby': string | undefined;
}

interface FieldFrameProps {
  readonly kind: 'line' | 'choice' | 'check' | 'note';
  readonly field: FieldProps;
  readonly problem: string | null;
  readonly children: (control: ControlProps) => ReactNode;
}

/** Label, control on its line, and under them the sentence that helps or complains. */
export function FieldFrame({ kind, field, problem, children }: FieldFrameProps) {
  const { label, labelHidden = false, describe, readOnly = false } = field;
  const ownId = useId();
  const id = field.id ?? ownId;
  useWantedFocus(id, field.typedFor);
  const isWrong = problem !== null;
  const describedBy = [
    ...(isWrong ? [`${id}-problem`] : []),
    ...(describe === undefined ? [] : [`${id}-describe`]),
  ].join(' ');
  const classes = ['field', `field-${kind}`, isWrong && 'field-wrong', readOnly && 'field-fixed'];
  return (
    <div className={classes.filter(Boolean).join(' ')}>
      <label htmlFor={id} className={labelHidden ? 'visually-hidden' : 'field-label'}>
        {label}
      </label>
      {children({
        id,
        'aria-invalid': isWrong ? true : undefined,
        'aria-describedby': describedBy === '' ? undefined : describedBy,
      })}
      <div className="field-problem" id={`${id}-problem`} aria-live="polite">
        {problem}
      </div>
      {describe !== undefined && (
        <div className={labelHidden ? 'visually-hidden' : 'field-describe'} id={`${id}-describe`}>
          {describe}
        </div>
      )}
    </div>
  );
}

/** Takes the focus when a line elsewhere asks for the field, opening what it is folded into. */
function useWantedFocus(id: string, typedFor: string | undefined): void {
  const isWanted = useTypedTexts(({ wanted }) => typedFor !== undefined && wanted === typedFor);
  useEffect(() => {
    if (!isWanted) return;
    const control = document.getElementById(id);
    const folded = control?.closest('details') ?? null;
    if (folded !== null) folded.open = true;
    control?.focus();
    wantField(null);
  }, [id, isWanted]);
}
