import { useId } from 'react';
import type { ProjectRanged } from '../../project/file/schema';
import { shownUnit } from '../../units/shownUnits';
import type { Dimension, Unit } from '../../units/unitTable';
import type { FieldProps } from './FieldFrame';
import { QuantityField } from './QuantityField';
import { fieldText, isSameQuantity, type SiRange } from './fieldText';
import { useWaitingRange } from './useWaitingRange';

interface RangedFieldProps extends Omit<FieldProps, 'id'> {
  readonly value: ProjectRanged;
  readonly dimension: Dimension;
  readonly unit: Unit;
  readonly range: SiRange;
  readonly onCommit: (value: ProjectRanged) => void;
}

const parts = ['low', 'best', 'high'] as const;

/**
 * A best value inside its 90 % range. The three are committed together once low <= best <= high, so that a range can be
 * moved up or down in any order; until then what was typed waits here and the last good one stays in force.
 */
export function RangedField(props: RangedFieldProps) {
  const { label, labelHidden = false, value, range, dimension, onCommit, error, describe } = props;
  const unit = shownUnit(props.unit);
  const [waiting, setWaiting] = useWaitingRange(props.typedFor, label);
  const id = useId();
  const shown = waiting ?? value;

  const change = (part: (typeof parts)[number], partSi: number): void => {
    const next = { ...shown, [part]: partSi };
    const isOrdered = orderProblem(next, unit) === null;
    setWaiting(isOrdered ? null : next);
    if (isOrdered && !parts.every((each) => Object.is(next[each], value[each]))) onCommit(next);
  };

  const problem = waiting === null ? error : `${orderProblem(waiting, unit) ?? ''}; ${kept(value, unit)}.`;
  return (
    <fieldset
      className={problem === undefined ? 'field-range' : 'field-range field-range-wrong'}
      aria-describedby={`${id}-problem`}
    >
      <legend className={labelHidden ? 'visually-hidden' : 'field-label'}>{label}</legend>
      <div className="field-range-parts">
        {parts.map((part) => (
          <QuantityField
            key={part}
            label={part}
            typedFor={props.typedFor === undefined ? undefined : `${props.typedFor}.${part}`}
            dimension={dimension}
            unit={unit}
            range={range}
            valueSi={shown[part]}
            {...(props.readOnly === undefined ? {} : { readOnly: props.readOnly })}
            {...(props.onDone === undefined ? {} : { onDone: props.onDone })}
            onCommit={(partSi) => {
              change(part, partSi);
            }}
          />
        ))}
      </div>
      <div className="field-problem" id={`${id}-problem`} aria-live="polite">
        {problem}
      </div>
      {describe !== undefined && <div className="field-describe">{describe}</div>}
    </fieldset>
  );
}

function orderProblem({ best, low, high }: ProjectRanged, unit: Unit): string | null {
  const text = (valueSi: number): string => fieldText(valueSi, unit);
  if (low > best && !isSameQuantity(low, best)) return `Low (${text(low)}) is above best (${text(best)})`;
  if (high < best && !isSameQuantity(high, best)) return `High (${text(high)}) is below best (${text(best)})`;
  return null;
}

function kept({ best, low, high }: ProjectRanged, unit: Unit): string {
  return `${fieldText(best, unit)} (${fieldText(low, unit)} to ${fieldText(high, unit)}) stays in force`;
}
