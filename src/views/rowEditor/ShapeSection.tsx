import { changeShapeKind } from '../../project/edit/changeShapeKind';
import type { ProjectShape } from '../../project/file/schema';
import { ChoiceField, type Choice } from '../../ui/fields/ChoiceField';
import { AreaFields } from './AreaFields';
import { BarFields } from './BarFields';
import { BodyFields } from './BodyFields';
import { Section } from './Section';
import type { RowEdit } from './useRowEdit';

const kindChoices: readonly Choice<ProjectShape['kind']>[] = [
  { value: 'roundBar', label: 'round bar' },
  { value: 'bluffBody', label: 'body with edges' },
  { value: 'measuredArea', label: 'measured area' },
];

export function ShapeSection({ row }: { readonly row: RowEdit }) {
  const { id, shape } = row.fitting;
  return (
    <Section head="Shape and size">
      <ChoiceField
        label="Shape"
        choices={kindChoices}
        value={shape.kind}
        onCommit={(kind) => {
          row.run('shape', 'shape', (project) => changeShapeKind(project, id, kind));
        }}
        {...row.at('shape')}
      />
      {shape.kind === 'roundBar' && <BarFields row={row} shape={shape} />}
      {shape.kind === 'bluffBody' && <BodyFields row={row} shape={shape} />}
      {shape.kind === 'measuredArea' && <AreaFields row={row} shape={shape} />}
    </Section>
  );
}
