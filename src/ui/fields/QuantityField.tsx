import type { KeyboardEvent } from 'react';
import { shownUnit } from '../../units/shownUnits';
import type { Dimension, Unit } from '../../units/unitTable';
import { FieldFrame, type FieldProps } from './FieldFrame';
import {
  fieldText,
  inForce,
  isSameQuantity,
  readQuantity,
  stepped,
  type QuantityRule,
  type SiRange,
} from './fieldText';
import { useDraft } from './useDraft';
import { StillInput } from './StillInput';

interface CommonProps extends FieldProps {
  readonly dimension: Dimension;
  /** The usual unit. Where the reader chose another for this kind, that one is shown, and taken for a bare number. */
  readonly unit: Unit;
  /** False where the head of a column already names the unit. */
  readonly isUnitShown?: boolean;
  readonly range: SiRange;
  readonly isWhole?: boolean;
  /** What is in force when `error` complains about the value itself; else the value. */
  readonly lastGoodSi?: number | null;
}

interface RequiredProps {
  readonly required?: true;
  readonly valueSi: number;
  readonly onCommit: (valueSi: number) => void;
}

/** A quantity that may be unknown: an emptied field is null. */
interface OptionalProps {
  readonly required: false;
  readonly valueSi: number | null;
  readonly onCommit: (valueSi: number | null) => void;
}

export type QuantityFieldProps = CommonProps & (RequiredProps | OptionalProps);

/**
 * A quantity with its unit on a line: takes `22 kn`, `11,3 m/s`, `100mm`, `1/4 in`, commits whatever can be read and lies
 * in the range, and keeps the rest as typed. Arrow keys step, with Shift ten times as far; Escape brings back the value
 * from before the edit. Give it a `key` of what is edited, so that half-typed text does not move to another row.
 */
export function QuantityField(props: QuantityFieldProps) {
  const { dimension, range, isUnitShown = true, isWhole = false, valueSi, error, readOnly } = props;
  const unit = shownUnit(props.unit);
  const lastGoodSi = props.lastGoodSi === undefined ? valueSi : props.lastGoodSi;
  const isRequired = props.required !== false;
  const rule: QuantityRule = { dimension, unit, range, isWhole, isRequired, lastGoodSi };

  const commit = (next: number | null): void => {
    if (props.required === false) props.onCommit(next);
    else if (next !== null) props.onCommit(next);
  };
  const draft = useDraft<number | null>({
    value: valueSi,
    print: (value) => fieldText(value, unit, isUnitShown),
    read: (text) => readQuantity(text, rule),
    isSame: isSameQuantity,
    onCommit: commit,
    onDone: props.onDone,
    error,
    typedFor: props.typedFor,
    label: props.label,
  });

  const step = (event: KeyboardEvent): void => {
    const direction = { ArrowUp: 1, ArrowDown: -1 }[event.key];
    if (direction === undefined || event.altKey || event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    draft.choose(stepped(valueSi, direction * (event.shiftKey ? 10 : 1), rule));
  };

  const outside = error === undefined ? null : outsideProblem(error, props.lastGoodSi, unit);
  return (
    <FieldFrame kind="line" field={props} problem={draft.problem ?? outside}>
      {(control) => (
        <StillInput
          {...control}
          type="text"
          className="field-input field-number"
          value={draft.text}
          readOnly={readOnly}
          required={isRequired}
          autoComplete="off"
          autoCapitalize="off"
          spellCheck={false}
          onChange={(event) => {
            draft.type(event.target.value);
          }}
          onFocus={draft.enter}
          onBlur={draft.leave}
          onKeyDown={(event) => {
            if (readOnly === true) return;
            step(event);
            draft.onKeyDown(event);
          }}
        />
      )}
    </FieldFrame>
  );
}

function outsideProblem(error: string, lastGoodSi: number | null | undefined, unit: Unit): string {
  if (lastGoodSi === undefined) return error;
  return error.replace(/\.$/, '') + inForce(fieldText(lastGoodSi, unit)) + '.';
}
