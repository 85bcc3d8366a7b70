import type { Basis } from '../../physics/fitting/fittingInput';
import type { ProjectPoint } from '../../project/file/schema';
import { ChoiceField, type Choice } from '../fields/ChoiceField';
import type { FieldProps } from '../fields/FieldFrame';
import { inUnit, type SiRange } from '../fields/fieldText';
import { QuantityField } from '../fields/QuantityField';
import { toSi } from '../../units/convert';

/** Every place that the file holds, m. */
const placeRange: SiRange = { fromSi: -300, toSi: 300 };

interface LengthFieldProps extends FieldProps {
  readonly valueM: number;
  readonly range?: SiRange;
  readonly onCommit: (valueM: number) => void;
}

/** A place or a length in metres, such as a tape reads. */
export function LengthField({ valueM, range = placeRange, ...rest }: LengthFieldProps) {
  return <QuantityField {...rest} dimension="length" unit="m" range={range} valueSi={valueM} />;
}

interface DegreesFieldProps extends FieldProps {
  readonly valueDeg: number;
  /** As far to the other side as `mostDeg` unless said. */
  readonly leastDeg?: number;
  readonly mostDeg: number;
  readonly onCommit: (valueDeg: number) => void;
}

/** An angle kept in degrees as the file does. */
export function DegreesField({
  valueDeg,
  mostDeg,
  leastDeg = -mostDeg,
  onCommit,
  ...rest
}: DegreesFieldProps) {
  return (
    <QuantityField
      {...rest}
      dimension="angle"
      unit="deg"
      range={{ fromSi: toSi(leastDeg, 'deg'), toSi: toSi(mostDeg, 'deg') }}
      valueSi={toSi(valueDeg, 'deg')}
      onCommit={(valueRad) => {
        onCommit(inUnit(valueRad, 'deg'));
      }}
    />
  );
}

/** Every corner radius that the file holds, m; what a side allows is said beside the field. */
const cornerRange: SiRange = { fromSi: 0, toSi: 100 };

interface CornerFieldProps extends Omit<FieldProps, 'label'> {
  readonly radiusM: number;
  readonly onCommit: (radiusM: number) => void;
}

/** How far the corners are rounded; 0 for sharp ones. */
export function CornerField({ radiusM, ...rest }: CornerFieldProps) {
  return (
    <QuantityField
      {...rest}
      label="Corner radius"
      dimension="length"
      unit="mm"
      range={cornerRange}
      valueSi={radiusM}
    />
  );
}

const axes = [
  { key: 'xM', label: 'x, forward' },
  { key: 'yM', label: 'y, to port' },
  { key: 'zM', label: 'z, up' },
] as const;

interface PointFieldProps extends Pick<FieldProps, 'label' | 'error' | 'onDone' | 'typedFor'> {
  readonly value: ProjectPoint;
  readonly onCommit: (value: ProjectPoint) => void;
}

/** A point of the boat's frame: forward of amidships, to port, above the waterplane. */
export function PointField({ label, value, onCommit, error, onDone, typedFor }: PointFieldProps) {
  return (
    <fieldset className={error === undefined ? 'field-range' : 'field-range field-range-wrong'}>
      <legend className="field-label">{label}</legend>
      <div className="field-range-parts">
        {axes.map((axis) => (
          <LengthField
            key={axis.key}
            label={axis.label}
            typedFor={typedFor === undefined ? undefined : `${typedFor}.${axis.key}`}
            valueM={value[axis.key]}
            onCommit={(valueM) => {
              onCommit({ ...value, [axis.key]: valueM });
            }}
            {...(onDone === undefined ? {} : { onDone })}
          />
        ))}
      </div>
      <div className="field-problem" aria-live="polite">
        {error}
      </div>
    </fieldset>
  );
}

const basisChoices: readonly Choice<Basis>[] = [
  { value: 'measured', label: 'measured' },
  { value: 'drawing', label: 'from a drawing' },
  { value: 'estimated', label: 'estimated' },
];

interface BasisFieldProps extends FieldProps {
  readonly value: Basis;
  readonly onCommit: (value: Basis) => void;
}

/** How a place was obtained, which sets how far it is doubted. */
export function BasisField(props: BasisFieldProps) {
  return <ChoiceField {...props} choices={basisChoices} />;
}
