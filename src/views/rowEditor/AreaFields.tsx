import type { ProjectShape } from '../../project/file/schema';
import { ChoiceField, type Choice } from '../../ui/fields/ChoiceField';
import { RangedField } from '../../ui/fields/RangedField';
import { TextField } from '../../ui/fields/TextField';
import type { RowEdit } from './useRowEdit';

type Area = Extract<ProjectShape, { kind: 'measuredArea' }>;

export const dragAreaRange = { fromSi: 0, toSi: 10_000 };

const provenanceChoices: readonly Choice<Area['provenance']['kind']>[] = [
  { value: 'pull-test', label: 'pull test' },
  { value: 'tunnel', label: 'wind tunnel' },
  { value: 'paper', label: 'published paper' },
  { value: 'estimate', label: 'estimate' },
];

/** A drag area that somebody measured: coefficient times area, whichever way the wind blows. */
export function AreaFields({ row, shape }: { readonly row: RowEdit; readonly shape: Area }) {
  return (
    <>
      <RangedField
        label="Drag area"
        dimension="area"
        unit="m2"
        range={dragAreaRange}
        value={shape.dragAreaM2}
        onCommit={(dragAreaM2) => {
          row.patch('shape.dragAreaM2', 'drag area', { shape: { kind: 'measuredArea', dragAreaM2 } });
        }}
        {...row.at('shape.dragAreaM2')}
      />
      <ChoiceField
        label="Obtained by"
        choices={provenanceChoices}
        value={shape.provenance.kind}
        onCommit={(kind) => {
          // The source stays: the patch would replace a part whose kind changes.
          const provenance = { kind, source: shape.provenance.source };
          row.patch('shape.provenance', 'origin', { shape: { kind: 'measuredArea', provenance } });
        }}
        {...row.at('shape.provenance')}
      />
      <TextField
        label="Source"
        kind="source"
        value={shape.provenance.source}
        onCommit={(source) => {
          row.patch('shape.source', 'source', { shape: { kind: 'measuredArea', provenance: { source } } });
        }}
        {...row.at('shape.source')}
      />
    </>
  );
}
