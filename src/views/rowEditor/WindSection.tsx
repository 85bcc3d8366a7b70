import type { Project, ProjectExposure } from '../../project/file/schema';
import { CheckField } from '../../ui/fields/CheckField';
import { ChoiceField } from '../../ui/fields/ChoiceField';
import { RangedField } from '../../ui/fields/RangedField';
import { TextField } from '../../ui/fields/TextField';
import { forceFactorText } from './forceFactor';
import { Section } from './Section';
import { DegreesField } from './smallFields';
import type { RowEdit } from './useRowEdit';

/** Stands for no fitting: no id is empty. */
const nobody = '';

/** How much of the free apparent wind reaches the fitting, and from where. */
export function WindSection({ row, project }: { readonly row: RowEdit; readonly project: Project }) {
  const { id, exposure, exposureLeeward, localTurn, shelteredByFittingId } = row.fitting;
  const others = project.fittings.filter((other) => other.id !== id);
  return (
    <Section head="Wind that reaches it">
      <ExposureFields
        row={row}
        field="exposure"
        label="Exposure e, wind speed over the free wind’s"
        value={exposure}
        onCommit={(next) => {
          row.patch('exposure', 'exposure', { exposure: next });
        }}
      />
      <CheckField
        label="To leeward it is another"
        value={exposureLeeward !== null}
        onCommit={(isOther) => {
          row.patch('leeward', 'leeward exposure', { exposureLeeward: isOther ? exposure : null });
        }}
        {...row.at('leeward')}
      />
      {exposureLeeward !== null && (
        <ExposureFields
          row={row}
          field="exposureLeeward"
          label="Exposure e to leeward"
          value={exposureLeeward}
          onCommit={(next) => {
            row.patch('exposureLeeward', 'leeward exposure', { exposureLeeward: next });
          }}
        />
      )}
      <DegreesField
        label="Local turn of the wind"
        valueDeg={localTurn.deg}
        mostDeg={90}
        onCommit={(deg) => {
          row.patch('localTurn.deg', 'local turn', { localTurn: { deg } });
        }}
        {...row.at('localTurn.deg')}
      />
      {(localTurn.deg !== 0 || localTurn.source !== '') && (
        <TextField
          label="Source of the turn"
          kind="source"
          value={localTurn.source}
          onCommit={(source) => {
            row.patch('localTurn.source', 'source of the turn', { localTurn: { source } });
          }}
          {...row.at('localTurn.source')}
        />
      )}
      <ChoiceField
        label="Sheltered by"
        choices={[
          { value: nobody, label: 'nothing named' },
          ...others.map((other) => ({ value: other.id, label: other.name })),
        ]}
        value={shelteredByFittingId ?? nobody}
        describe="Names the fitting for the record; the exposure above says how much it shelters."
        onCommit={(next) => {
          row.patch('shelter', 'shelter', { shelteredByFittingId: next === nobody ? null : next });
        }}
        {...row.at('shelter')}
      />
    </Section>
  );
}

interface ExposureFieldsProps {
  readonly row: RowEdit;
  readonly field: string;
  readonly label: string;
  readonly value: ProjectExposure;
  readonly onCommit: (value: ProjectExposure) => void;
}

const exposureRange = { fromSi: 0, toSi: 1.5 };

function ExposureFields({ row, field, label, value, onCommit }: ExposureFieldsProps) {
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
          onCommit({ ...value, ...next });
        }}
        {...row.at(field)}
      />
      <TextField
        label="Source of it"
        kind="source"
        value={value.source}
        onCommit={(source) => {
          onCommit({ ...value, source });
        }}
        {...row.at(`${field}.source`)}
      />
    </>
  );
}
