import type { ItemChange, Project, ProjectFitting } from '../../project/file/schema';
import { ChoiceField } from '../../ui/fields/ChoiceField';
import { DimensionField } from '../../ui/fields/DimensionField';
import { DutyFields } from './DutyFields';
import { PlacementFields } from './PlacementFields';
import { ShelterFields } from './ShelterFields';
import { StowedFields } from './StowedFields';
import { TypedFields } from './TypedFields';
import type { ItemEditor } from './usePlanEdits';

interface ChangeFieldsProps {
  readonly project: Project;
  readonly fitting: ProjectFitting | null;
  readonly editor: ItemEditor;
}

/** The fields of an item's kind of change. */
export function ChangeFields({ project, fitting, editor }: ChangeFieldsProps) {
  const { change } = editor.item;
  switch (change.kind) {
    case 'slimmer':
      return <SlimmerFields change={change} editor={editor} />;
    case 'shapeOf':
      return <ShapeOfField change={change} project={project} fitting={fitting} editor={editor} />;
    case 'retracted':
      return (
        <>
          <DutyFields change={change} project={project} editor={editor} />
          <StowedFields change={change} project={project} fitting={fitting} editor={editor} />
        </>
      );
    case 'stowed':
      return <StowedFields change={change} project={project} fitting={fitting} editor={editor} />;
    case 'removed':
      return null;
    case 'moved':
      return <PlacementFields change={change} editor={editor} />;
    case 'sheltered':
      return <ShelterFields change={change} project={project} fitting={fitting} editor={editor} />;
    case 'typed':
      return <TypedFields change={change} project={project} fitting={fitting} editor={editor} />;
  }
}

/** One kind of change, for the fields of that kind. */
export type ChangeOf<Kind extends ItemChange['kind']> = Extract<ItemChange, { readonly kind: Kind }>;

interface SlimmerProps {
  readonly change: ChangeOf<'slimmer'>;
  readonly editor: ItemEditor;
}

function SlimmerFields({ change, editor }: SlimmerProps) {
  return (
    <DimensionField
      key={`${editor.key}.change.diameter`}
      label="New diameter"
      unit="mm"
      value={change.diameter}
      error={editor.errorAt('change.diameter')}
      onCommit={(diameter) => {
        editor.patch('change.diameter', 'diameter', { change: { kind: 'slimmer', diameter } });
      }}
      onDone={editor.done}
    />
  );
}

interface ShapeOfProps extends ChangeFieldsProps {
  readonly change: ChangeOf<'shapeOf'>;
}

function ShapeOfField({ change, project, fitting, editor }: ShapeOfProps) {
  const choices = project.fittings
    .filter(({ id }) => id !== fitting?.id)
    .map(({ id, name }) => ({ value: id, label: name }));
  return (
    <ChoiceField
      key={`${editor.key}.change.fittingId`}
      label="Takes the shape of"
      value={change.fittingId}
      choices={choices}
      error={editor.errorAt('change.fittingId')}
      onCommit={(fittingId) => {
        editor.patch('change.fittingId', 'shape', { change: { kind: 'shapeOf', fittingId } });
      }}
    />
  );
}
