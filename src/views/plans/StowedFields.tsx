import type { Project, ProjectFitting, ProjectStowed } from '../../project/file/schema';
import { CheckField } from '../../ui/fields/CheckField';
import { RangedField } from '../../ui/fields/RangedField';
import { TextField } from '../../ui/fields/TextField';
import type { ChangeOf } from './ChangeFields';
import { placeOf } from './fittingPlace';
import { PointFields } from './PointFields';
import type { ItemEditor } from './usePlanEdits';

interface StowedFieldsProps {
  readonly change: ChangeOf<'retracted'> | ChangeOf<'stowed'>;
  readonly project: Project;
  readonly fitting: ProjectFitting | null;
  readonly editor: ItemEditor;
}

const areaRange = { fromSi: 0, toSi: 10_000 };

/** What still stands in the wind when the fitting is stowed. */
export function StowedFields({ change, project, fitting, editor }: StowedFieldsProps) {
  const { key, errorAt, done } = editor;
  const { stowed } = change;
  const set = (part: string, next: ProjectStowed | null): void => {
    editor.patch(`change.stowed${part}`, 'stowed state', { change: { kind: change.kind, stowed: next } });
  };
  return (
    <>
      <CheckField
        key={`${key}.stowed`}
        label="Stands in the wind when stowed"
        value={stowed !== null}
        describe={stowed === null ? 'Stowed, it has no drag.' : undefined}
        error={stowed === null ? errorAt('change.stowed') : undefined}
        onCommit={(has) => {
          const dragAreaM2 = { best: 0, low: 0, high: 0 };
          set('', has ? { dragAreaM2, place: placeOf(project, fitting), source: '' } : null);
        }}
        onDone={done}
      />
      {stowed !== null && (
        <>
          <RangedField
            key={`${key}.stowed.area`}
            label="Drag area when stowed"
            dimension="area"
            unit="m2"
            range={areaRange}
            value={stowed.dragAreaM2}
            error={errorAt('change.stowed.dragAreaM2')}
            onCommit={(dragAreaM2) => {
              set('.dragAreaM2', { ...stowed, dragAreaM2 });
            }}
            onDone={done}
          />
          <PointFields
            label="Place when stowed, from amidships in the waterplane"
            part="change.stowed.place"
            value={stowed.place}
            editor={editor}
            onCommit={(place) => {
              set('.place', { ...stowed, place });
            }}
          />
          <TextField
            key={`${key}.stowed.source`}
            kind="source"
            label="Source of the stowed state"
            value={stowed.source}
            error={errorAt('change.stowed.source')}
            onCommit={(source) => {
              set('.source', { ...stowed, source });
            }}
            onDone={done}
          />
        </>
      )}
    </>
  );
}
