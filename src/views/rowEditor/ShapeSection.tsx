import { changeShapeKind } from '../../project/edit/changeShapeKind';
import { partOf } from '../../ui/parts/partFields';
import { ShapeFields } from '../../ui/parts/ShapeFields';
import { Section } from '../../ui/Section';
import type { RowEdit } from './useRowEdit';

export function ShapeSection({ row }: { readonly row: RowEdit }) {
  const { id, shape } = row.fitting;
  return (
    <Section head="Shape and size">
      <ShapeFields
        {...partOf(row, 'shape', shape, (next) => ({ shape: next }))}
        label="Shape"
        onKind={(kind) => {
          row.run('shape', 'shape', (project) => changeShapeKind(project, id, kind));
        }}
      />
    </Section>
  );
}
