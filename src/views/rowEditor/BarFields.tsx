import type { EndKind } from '../../physics/section/endEffect';
import type { Finish } from '../../physics/section/roughness';
import type { ProjectShape, ProjectSurface } from '../../project/file/schema';
import { ChoiceField, type Choice } from '../../ui/fields/ChoiceField';
import { DimensionField } from '../../ui/fields/DimensionField';
import { QuantityField } from '../../ui/fields/QuantityField';
import { CoefficientFields } from './CoefficientFields';
import type { RowEdit } from './useRowEdit';

type Bar = Extract<ProjectShape, { kind: 'roundBar' }>;

/** A round bar: what is around it, and what its ends stand on. */
export function BarFields({ row, shape }: { readonly row: RowEdit; readonly shape: Bar }) {
  const set = (field: string, words: string, part: Partial<Bar>): void => {
    row.patch(`shape.${field}`, words, { shape: { kind: 'roundBar', ...part } });
  };
  return (
    <>
      <DimensionField
        label="Diameter"
        unit="mm"
        value={shape.diameter}
        onCommit={(diameter) => {
          set('diameter', 'diameter', { diameter });
        }}
        {...row.at('shape.diameter')}
      />
      <SurfaceFields row={row} surface={shape.surface} />
      {shape.ends.map((end, i) => (
        <ChoiceField
          key={endNames[i]}
          label={endNames[i] ?? ''}
          choices={endChoices}
          value={end}
          onCommit={(next) => {
            set(`ends[${i}]`, 'ends', { ends: i === 0 ? [next, shape.ends[1]] : [shape.ends[0], next] });
          }}
          {...row.at(`shape.ends[${i}]`)}
        />
      ))}
      <ChoiceField
        label="Skin friction along it"
        choices={frictionChoices}
        value={shape.friction}
        onCommit={(friction) => {
          set('friction', 'skin friction', { friction });
        }}
        {...row.at('shape.friction')}
      />
      <CoefficientFields
        row={row}
        field="shape.coefficient"
        words="drag coefficient"
        value={shape.coefficient}
        start={startCoefficient}
        onCommit={(coefficient) => {
          set('coefficient', 'drag coefficient', { coefficient });
        }}
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

const finishNames: Readonly<Record<Finish, string>> = {
  glass: 'glass',
  polishedMetal: 'polished metal',
  finePaint: 'fine paint',
  sprayPaint: 'spray paint',
  brightSteel: 'bright steel',
  castIron: 'cast iron',
  galvanisedSteel: 'galvanised steel',
  smoothConcrete: 'smooth concrete',
  planedWood: 'planed wood',
  roughConcrete: 'rough concrete',
  roughSawnWood: 'rough sawn wood',
  rust: 'rust',
  brickwork: 'brickwork',
};

const surfaceChoices: readonly Choice<string>[] = [
  { value: 'smooth', label: 'smooth' },
  ...Object.entries(finishNames).map(([value, label]) => ({ value, label })),
  { value: 'roughness', label: 'typed roughness' },
];

/** A fifth of a millimetre: stranded wire, the usual case of a roughness of one's own. */
const startRoughnessM = 0.0002;

function SurfaceFields({ row, surface }: { readonly row: RowEdit; readonly surface: ProjectSurface }) {
  const setSurface = (next: ProjectSurface): void => {
    row.patch('shape.surface', 'surface', { shape: { kind: 'roundBar', surface: next } });
  };
  return (
    <>
      <ChoiceField
        label="Surface"
        choices={surfaceChoices}
        value={surface.kind === 'finish' ? surface.finish : surface.kind}
        onCommit={(choice) => {
          setSurface(surfaceOf(choice));
        }}
        {...row.at('shape.surface')}
      />
      {surface.kind === 'roughness' && (
        <QuantityField
          label="Roughness"
          dimension="length"
          unit="mm"
          range={{ fromSi: 0, toSi: 0.1 }}
          valueSi={surface.roughnessM}
          onCommit={(roughnessM) => {
            row.patch('shape.roughness', 'roughness', {
              shape: { kind: 'roundBar', surface: { kind: 'roughness', roughnessM } },
            });
          }}
          {...row.at('shape.roughness')}
        />
      )}
    </>
  );
}

function surfaceOf(choice: string): ProjectSurface {
  if (choice === 'roughness') return { kind: 'roughness', roughnessM: startRoughnessM };
  return choice in finishNames ? { kind: 'finish', finish: choice as Finish } : { kind: 'smooth' };
}
