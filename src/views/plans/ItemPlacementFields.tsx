import { changeItemPlacementKind, setItemRowCount } from '../../project/edit/itemPartEdits';
import { partOf } from '../../ui/parts/partFields';
import { PlacementFields } from '../../ui/parts/PlacementFields';
import type { ChangeOf } from './ChangeFields';
import type { ItemEditor } from './usePlanEdits';

interface ItemPlacementFieldsProps {
  readonly change: ChangeOf<'moved'>;
  readonly editor: ItemEditor;
}

/** Where the fitting goes, in any way in which a fitting may be placed. */
export function ItemPlacementFields({ change, editor }: ItemPlacementFieldsProps) {
  const { planId, item, runField } = editor;
  return (
    <PlacementFields
      {...partOf(editor, 'change.placement', change.placement, (placement) => ({
        change: { kind: 'moved' as const, placement },
      }))}
      onKind={(kind) => {
        runField('change.placement.kind', 'way of giving the place', (project) =>
          changeItemPlacementKind(project, planId, item.id, kind),
        );
      }}
      onCount={(count) => {
        runField('change.placement.count', 'count', (project) =>
          setItemRowCount(project, planId, item.id, count),
        );
      }}
    />
  );
}
