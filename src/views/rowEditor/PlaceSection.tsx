import { changePlacementKind, setRowCount } from '../../project/edit/placementEdits';
import { partOf } from '../../ui/parts/partFields';
import { PlacementFields } from '../../ui/parts/PlacementFields';
import { Section } from '../../ui/Section';
import type { RowEdit } from './useRowEdit';

export function PlaceSection({ row }: { readonly row: RowEdit }) {
  const { id, placement } = row.fitting;
  return (
    <Section head="Count and place">
      <PlacementFields
        {...partOf(row, 'placement', placement, (next) => ({ placement: next }))}
        onKind={(kind) => {
          row.run('placement.kind', 'way of giving the place', (project) =>
            changePlacementKind(project, id, kind),
          );
        }}
        onCount={(count) => {
          row.run('placement.count', 'count', (project) => setRowCount(project, id, count));
        }}
      />
    </Section>
  );
}
