import type { ProjectShape } from '../../project/file/schema';
import { ChoiceField, type Choice } from '../fields/ChoiceField';
import { RangedField } from '../fields/RangedField';
import type { PartFields } from './partFields';
import { PullTestFields } from './PullTestFields';
import { SourceField } from './SourceField';

type Area = Extract<ProjectShape, { kind: 'measuredArea' }>;

export const dragAreaRange = { fromSi: 0, toSi: 10_000 };

const provenanceChoices: readonly Choice<Area['provenance']['kind']>[] = [
  { value: 'pull-test', label: 'pull test' },
  { value: 'tunnel', label: 'wind tunnel' },
  { value: 'paper', label: 'published paper' },
  { value: 'estimate', label: 'estimate' },
];

/** A drag area that somebody measured: coefficient times area, whichever way the wind blows. */
export function AreaFields({ value, at, onChange }: PartFields<Area>) {
  const { dragAreaM2, provenance } = value;
  return (
    <>
      <RangedField
        label="Drag area"
        dimension="area"
        unit="m2"
        range={dragAreaRange}
        value={dragAreaM2}
        readOnly={value.pullTest !== null}
        onCommit={(next) => {
          onChange('dragAreaM2', 'drag area', { ...value, dragAreaM2: next });
        }}
        {...at('dragAreaM2')}
      />
      <PullTestFields value={value} at={at} onChange={onChange} />
      <ChoiceField
        label="Obtained by"
        choices={provenanceChoices}
        value={provenance.kind}
        onCommit={(kind) => {
          onChange('provenance', 'origin', { ...value, provenance: { ...provenance, kind } });
        }}
        {...at('provenance')}
      />
      <SourceField
        value={provenance.source}
        onCommit={(source) => {
          onChange('source', 'source', { ...value, provenance: { ...provenance, source } });
        }}
        {...at('source')}
      />
    </>
  );
}
