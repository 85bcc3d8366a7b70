import {
  candidateMaterials,
  massModels,
  type MassModel,
  type ThinnerRoundCandidate,
} from '../../project/bench/candidates';
import { ChoiceField } from '../../ui/fields/ChoiceField';
import { QuantityField } from '../../ui/fields/QuantityField';
import type { Directed, KindFieldsProps } from './kindFields';
import { SliderField } from './SliderField';

const startModels: Readonly<Record<MassModel['kind'], MassModel>> = {
  none: { kind: 'none' },
  // Two layers of light glass and a filler, or thin sheet: common practice, no source.
  skin: { kind: 'skin', arealDensityKgM2: 1.5 },
  wall: { kind: 'wall', material: 'aluminium6082', wallM: 0.0025 },
};

/** What the mass is worked out from. */
export function MassFields({ candidate, tie, onChange }: KindFieldsProps<Directed | ThinnerRoundCandidate>) {
  const { mass } = candidate;
  const weighBy = (next: MassModel): void => {
    onChange({ ...candidate, mass: next });
  };
  return (
    <>
      <ChoiceField
        label="Mass"
        choices={massModels.map(({ id, label }) => ({ value: id, label }))}
        value={mass.kind}
        onCommit={(kind) => {
          weighBy(startModels[kind]);
        }}
        {...tie('mass.kind')}
      />
      {mass.kind === 'skin' && (
        <QuantityField
          label="Skin, mass per area"
          dimension="arealDensity"
          unit="kg/m2"
          range={{ fromSi: 0.01, toSi: 500 }}
          valueSi={mass.arealDensityKgM2}
          onCommit={(arealDensityKgM2) => {
            weighBy({ ...mass, arealDensityKgM2 });
          }}
          {...tie('mass.arealDensityKgM2')}
        />
      )}
      {mass.kind === 'wall' && (
        <>
          <ChoiceField
            label="Material"
            choices={candidateMaterials.map(({ id, label }) => ({ value: id, label }))}
            value={mass.material}
            onCommit={(material) => {
              weighBy({ ...mass, material });
            }}
            {...tie('mass.material')}
          />
          <SliderField
            label="Wall"
            dimension="length"
            unit="mm"
            valueSi={mass.wallM}
            range={{ fromSi: 0.0001, toSi: 0.5 }}
            reach={{ fromSi: 0.0005, toSi: 0.0105 }}
            stepSi={0.0001}
            tie={tie('mass.wallM')}
            onCommit={(wallM) => {
              weighBy({ ...mass, wallM });
            }}
          />
        </>
      )}
    </>
  );
}
