import type { Finish } from '../../physics/section/roughness';
import type { ProjectSurface } from '../../project/file/schema';
import { ChoiceField, type Choice } from '../fields/ChoiceField';
import { QuantityField } from '../fields/QuantityField';
import type { PartFields } from './partFields';

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

const roughnessRange = { fromSi: 0, toSi: 0.1 };

/** How rough a bar is: smooth, a finish of the handbook, or a roughness of one's own. */
export function SurfaceFields({ value, at, onChange }: PartFields<ProjectSurface>) {
  return (
    <>
      <ChoiceField
        label="Surface"
        choices={surfaceChoices}
        value={value.kind === 'finish' ? value.finish : value.kind}
        onCommit={(choice) => {
          onChange('surface', 'surface', surfaceOf(choice));
        }}
        {...at('surface')}
      />
      {value.kind === 'roughness' && (
        <QuantityField
          label="Roughness"
          dimension="length"
          unit="mm"
          range={roughnessRange}
          valueSi={value.roughnessM}
          onCommit={(roughnessM) => {
            onChange('roughness', 'roughness', { kind: 'roughness', roughnessM });
          }}
          {...at('roughness')}
        />
      )}
    </>
  );
}

function surfaceOf(choice: string): ProjectSurface {
  if (choice === 'roughness') return { kind: 'roughness', roughnessM: startRoughnessM };
  return choice in finishNames ? { kind: 'finish', finish: choice as Finish } : { kind: 'smooth' };
}
