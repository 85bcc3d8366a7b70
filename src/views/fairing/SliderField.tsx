import type { FieldTie } from '../../ui/useFormEdit';
import type { SiRange } from '../../ui/fields/fieldText';
import { QuantityField } from '../../ui/fields/QuantityField';
import { formatQuantity } from '../../units/print';
import type { Dimension, Unit } from '../../units/unitTable';

interface SliderFieldProps {
  readonly label: string;
  readonly dimension: Dimension;
  readonly unit: Unit;
  readonly valueSi: number;
  /** What may be typed. */
  readonly range: SiRange;
  /** What the slider reaches: the usual stretch. */
  readonly reach: SiRange;
  readonly stepSi: number;
  readonly isWhole?: boolean;
  readonly describe?: string | undefined;
  readonly tie: Partial<FieldTie>;
  readonly onCommit: (valueSi: number) => void;
}

/** A quantity to type or to slide: the slider reaches the usual stretch, the field takes all that is accepted. */
export function SliderField(props: SliderFieldProps) {
  const { label, dimension, unit, valueSi, range, reach, stepSi, isWhole = false, describe, tie } = props;
  const steps = Math.round((reach.toSi - reach.fromSi) / stepSi);
  const place = Math.min(Math.max(Math.round((valueSi - reach.fromSi) / stepSi), 0), steps);
  return (
    <div className="bench-slider">
      <QuantityField
        label={label}
        dimension={dimension}
        unit={unit}
        range={range}
        isWhole={isWhole}
        valueSi={valueSi}
        describe={describe}
        onCommit={props.onCommit}
        {...tie}
      />
      <input
        type="range"
        aria-label={`${label}, slider`}
        aria-valuetext={formatQuantity(valueSi, unit)}
        min={0}
        max={steps}
        step={1}
        value={place}
        onChange={(event) => {
          props.onCommit(tidy(reach.fromSi + Number(event.target.value) * stepSi));
        }}
      />
    </div>
  );
}

/** Without the last bits that adding steps leaves: an address holds the number. */
function tidy(value: number): number {
  return Number(value.toPrecision(9));
}
