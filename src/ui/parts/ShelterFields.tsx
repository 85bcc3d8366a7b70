import type { ProjectExposure, ProjectFitting } from '../../project/file/schema';
import { CheckField } from '../fields/CheckField';
import { ChoiceField } from '../fields/ChoiceField';
import { RangedField } from '../fields/RangedField';
import { forceFactorText } from './forceFactor';
import { inside, type PartFields } from './partFields';
import { SourceField } from './SourceField';

/** How much of the wind reaches a fitting, and behind what it stands. */
export type Shelter = Pick<ProjectFitting, 'exposure' | 'exposureLeeward' | 'shelteredByFittingId'>;

/** Stands for no fitting: no id is empty. */
const nobody = '';

interface ShelterFieldsProps extends PartFields<Shelter> {
  /** What may stand before it. */
  readonly others: readonly Pick<ProjectFitting, 'id' | 'name'>[];
}

/** How much of the free apparent wind reaches the fitting, on either side, and behind what. */
export function ShelterFields({ others, ...shelter }: ShelterFieldsProps) {
  const { value, at, onChange } = shelter;
  const { exposure, exposureLeeward, shelteredByFittingId } = value;
  return (
    <>
      <ExposureFields
        {...inside(shelter, 'exposure', exposure, (next) => ({ ...value, exposure: next }))}
        label="Exposure e, wind speed over the free wind’s"
        words="exposure"
      />
      <CheckField
        label="To leeward it is another"
        value={exposureLeeward !== null}
        onCommit={(isOther) => {
          onChange('leeward', 'leeward exposure', { ...value, exposureLeeward: isOther ? exposure : null });
        }}
        {...at('leeward')}
      />
      {exposureLeeward !== null && (
        <ExposureFields
          {...inside(shelter, 'exposureLeeward', exposureLeeward, (next) => ({
            ...value,
            exposureLeeward: next,
          }))}
          label="Exposure e to leeward"
          words="leeward exposure"
        />
      )}
      <ChoiceField
        label="Sheltered by"
        choices={[
          { value: nobody, label: 'nothing named' },
          ...others.map(({ id, name }) => ({ value: id, label: name })),
        ]}
        value={shelteredByFittingId ?? nobody}
        describe="Names the fitting for the record; the exposure above says how much it shelters."
        onCommit={(id) => {
          onChange('shelter', 'shelter', { ...value, shelteredByFittingId: id === nobody ? null : id });
        }}
        {...at('shelter')}
      />
    </>
  );
}

interface ExposureFieldsProps extends PartFields<ProjectExposure> {
  readonly label: string;
  readonly words: string;
}

const exposureRange = { fromSi: 0, toSi: 1.5 };

function ExposureFields({ value, at, onChange, label, words }: ExposureFieldsProps) {
  return (
    <>
      <RangedField
        label={label}
        dimension="none"
        unit="1"
        range={exposureRange}
        value={value}
        describe={forceFactorText(value)}
        onCommit={(next) => {
          onChange('', words, { ...value, ...next });
        }}
        {...at('')}
      />
      <SourceField
        label="Source of it"
        value={value.source}
        onCommit={(source) => {
          onChange('source', words, { ...value, source });
        }}
        {...at('source')}
      />
    </>
  );
}
