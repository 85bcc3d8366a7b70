import type { EndKind } from '../../physics/section/endEffect';
import type { ProjectShape } from '../../project/file/schema';
import { ChoiceField, type Choice } from '../fields/ChoiceField';
import { DimensionField } from '../fields/DimensionField';
import { CoefficientFields } from './CoefficientFields';
import { inside, type PartFields } from './partFields';
import { SurfaceFields } from './SurfaceFields';

type Bar = Extract<ProjectShape, { kind: 'roundBar' }>;

/** A round bar: how thick and how smooth, and what its ends stand on. */
export function BarFields(bar: PartFields<Bar>) {
  const { value, at, onChange } = bar;
  const { diameter, surface, ends, friction, coefficient } = value;
  return (
    <>
      <DimensionField
        label="Diameter"
        unit="mm"
        value={diameter}
        onCommit={(next) => {
          onChange('diameter', 'diameter', { ...value, diameter: next });
        }}
        {...at('diameter')}
      />
      <SurfaceFields {...inside(bar, '', surface, (next) => ({ ...value, surface: next }))} />
      {endNames.map((label, i) => (
        <ChoiceField
          key={label}
          label={label}
          choices={endChoices}
          value={ends[i] ?? 'free'}
          onCommit={(next) => {
            onChange(`ends[${i}]`, 'ends', { ...value, ends: i === 0 ? [next, ends[1]] : [ends[0], next] });
          }}
          {...at(`ends[${i}]`)}
        />
      ))}
      <ChoiceField
        label="Skin friction along it"
        choices={frictionChoices}
        value={friction}
        onCommit={(next) => {
          onChange('friction', 'skin friction', { ...value, friction: next });
        }}
        {...at('friction')}
      />
      <CoefficientFields
        {...inside(bar, 'coefficient', coefficient, (next) => ({ ...value, coefficient: next }))}
        words="drag coefficient"
        start={startCoefficient}
      />
    </>
  );
}

/** A smooth bar across the wind below its drag crisis, until the user's own numbers are typed. */
const startCoefficient = { best: 1.2, low: 1.1, high: 1.3, areaBase: 'diameter x length', source: '' };

const endNames = ['First end', 'Other end'] as const;

const endChoices: readonly Choice<EndKind>[] = [
  { value: 'free', label: 'free in the air' },
  { value: 'surface', label: 'on a surface' },
  { value: 'joined', label: 'joined to a bar' },
];

const frictionChoices: readonly Choice<Bar['friction']>[] = [
  { value: 'model', label: 'by the model' },
  { value: 'zero', label: 'left out' },
];
