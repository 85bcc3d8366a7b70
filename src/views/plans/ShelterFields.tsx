import type { Project, ProjectExposure, ProjectFitting } from '../../project/file/schema';
import { CheckField } from '../../ui/fields/CheckField';
import { ChoiceField } from '../../ui/fields/ChoiceField';
import { RangedField } from '../../ui/fields/RangedField';
import { TextField } from '../../ui/fields/TextField';
import { formatValue } from '../../units/print';
import type { ChangeOf } from './ChangeFields';
import type { ItemEditor } from './usePlanEdits';

interface ShelterFieldsProps {
  readonly change: ChangeOf<'sheltered'>;
  readonly project: Project;
  readonly fitting: ProjectFitting | null;
  readonly editor: ItemEditor;
}

/** No fitting's id: ids hold no colon. */
const nothing = 'no:thing';

/** How much of the wind still reaches the fitting, and behind what. */
export function ShelterFields({ change, project, fitting, editor }: ShelterFieldsProps) {
  const { exposure, exposureLeeward, shelteredByFittingId } = change;
  const choices = [
    { value: nothing, label: 'nothing named' },
    ...project.fittings
      .filter(({ id }) => id !== fitting?.id)
      .map(({ id, name }) => ({ value: id, label: name })),
  ];
  return (
    <>
      <ExposureFields
        label="Exposure"
        part="exposure"
        value={exposure}
        editor={editor}
        onCommit={(next, part) => {
          editor.patch(part, 'exposure', { change: { kind: 'sheltered', exposure: next } });
        }}
      />
      <CheckField
        key={`${editor.key}.leeward`}
        label="Another exposure on the leeward side"
        value={exposureLeeward !== null}
        onCommit={(has) => {
          editor.patch('change.exposureLeeward', 'leeward exposure', {
            change: { kind: 'sheltered', exposureLeeward: has ? exposure : null },
          });
        }}
        onDone={editor.done}
      />
      {exposureLeeward !== null && (
        <ExposureFields
          label="Exposure, leeward"
          part="exposureLeeward"
          value={exposureLeeward}
          editor={editor}
          onCommit={(next, part) => {
            editor.patch(part, 'leeward exposure', { change: { kind: 'sheltered', exposureLeeward: next } });
          }}
        />
      )}
      <ChoiceField
        key={`${editor.key}.shelter`}
        label="Sheltered by"
        value={shelteredByFittingId ?? nothing}
        choices={choices}
        error={editor.errorAt('change.shelteredByFittingId')}
        onCommit={(id) => {
          editor.patch('change.shelteredByFittingId', 'shelter', {
            change: { kind: 'sheltered', shelteredByFittingId: id === nothing ? null : id },
          });
        }}
      />
    </>
  );
}

interface ExposureFieldsProps {
  readonly label: string;
  readonly part: 'exposure' | 'exposureLeeward';
  readonly value: ProjectExposure;
  readonly editor: ItemEditor;
  readonly onCommit: (value: ProjectExposure, part: string) => void;
}

const exposureRange = { fromSi: 0, toSi: 1.5 };

function ExposureFields({ label, part, value, editor, onCommit }: ExposureFieldsProps) {
  const path = `change.${part}`;
  return (
    <>
      <RangedField
        key={`${editor.key}.${part}`}
        label={`${label}, a factor on the wind's speed`}
        dimension="none"
        unit="1"
        range={exposureRange}
        value={value}
        error={editor.errorAt(path)}
        describe={`The force goes with its square: ${formatValue(value.best ** 2, '1')} of the free wind's.`}
        onCommit={(ranged) => {
          onCommit({ ...value, ...ranged }, path);
        }}
        onDone={editor.done}
      />
      <TextField
        key={`${editor.key}.${part}.source`}
        kind="source"
        label="Source of the exposure"
        value={value.source}
        onCommit={(source) => {
          onCommit({ ...value, source }, `${path}.source`);
        }}
        onDone={editor.done}
      />
    </>
  );
}
