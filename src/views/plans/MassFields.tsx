import { placeOf } from './fittingPlace';
import type { Project, ProjectFitting } from '../../project/file/schema';
import { CheckField } from '../../ui/fields/CheckField';
import { QuantityField } from '../../ui/fields/QuantityField';
import { PointFields } from './PointFields';
import type { ItemEditor } from './usePlanEdits';

interface MassFieldsProps {
  readonly project: Project;
  readonly fitting: ProjectFitting | null;
  readonly editor: ItemEditor;
}

const massRange = { fromSi: -1_000_000, toSi: 1_000_000 };

/** The change of mass, and where it sits: without a place it is in no moment. */
export function MassFields({ project, fitting, editor }: MassFieldsProps) {
  const { item, key, patch, errorAt, done } = editor;
  const { massPlace } = item;
  return (
    <>
      <QuantityField
        key={`${key}.massChangeKg`}
        label="Change of mass"
        dimension="mass"
        unit="kg"
        range={massRange}
        valueSi={item.massChangeKg}
        error={errorAt('massChangeKg')}
        onCommit={(massChangeKg) => {
          patch('massChangeKg', 'mass', { massChangeKg });
        }}
        onDone={done}
      />
      <CheckField
        key={`${key}.massPlace`}
        label="Its mass has a place"
        value={massPlace !== null}
        onCommit={(has) => {
          patch('massPlace', 'place of the mass', { massPlace: has ? placeOf(project, fitting) : null });
        }}
        onDone={done}
      />
      {massPlace !== null && (
        <PointFields
          label="Place of the mass, from amidships in the waterplane"
          part="massPlace"
          value={massPlace}
          editor={editor}
          onCommit={(place) => {
            patch('massPlace', 'place of the mass', { massPlace: place });
          }}
        />
      )}
    </>
  );
}
