import type { Project, ProjectFitting } from '../../project/file/schema';
import { CheckField } from '../../ui/fields/CheckField';
import { QuantityField } from '../../ui/fields/QuantityField';
import { placeOf } from '../../ui/parts/placeOf';
import { PointField } from '../../ui/parts/smallFields';
import type { ItemEditor } from './usePlanEdits';

interface MassFieldsProps {
  readonly project: Project;
  readonly fitting: ProjectFitting | null;
  readonly editor: ItemEditor;
}

const massRange = { fromSi: -1_000_000, toSi: 1_000_000 };

/** The change of mass, and where it sits: without a place it is in no moment. */
export function MassFields({ project, fitting, editor }: MassFieldsProps) {
  const { item, patch, at } = editor;
  const { massPlace } = item;
  return (
    <>
      <QuantityField
        label="Change of mass"
        dimension="mass"
        unit="kg"
        range={massRange}
        valueSi={item.massChangeKg}
        onCommit={(massChangeKg) => {
          patch('massChangeKg', 'mass', { massChangeKg });
        }}
        {...at('massChangeKg')}
      />
      <CheckField
        label="Its mass has a place"
        value={massPlace !== null}
        onCommit={(has) => {
          patch('hasMassPlace', 'place of the mass', { massPlace: has ? placeOf(project, fitting) : null });
        }}
        {...at('hasMassPlace')}
      />
      {massPlace !== null && (
        <PointField
          label="Place of the mass, from amidships in the waterplane"
          value={massPlace}
          onCommit={(place) => {
            patch('massPlace', 'place of the mass', { massPlace: place });
          }}
          {...at('massPlace')}
        />
      )}
    </>
  );
}
