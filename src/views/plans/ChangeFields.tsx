import { changeItemShapeKind, setItemDutyInCondition } from '../../project/edit/itemPartEdits';
import type { ItemChange, Project, ProjectFitting } from '../../project/file/schema';
import { ChoiceField } from '../../ui/fields/ChoiceField';
import { DimensionField } from '../../ui/fields/DimensionField';
import { DutyFields } from '../../ui/parts/DutyFields';
import { partOf } from '../../ui/parts/partFields';
import { placeOf } from '../../ui/parts/placeOf';
import { ShapeFields } from '../../ui/parts/ShapeFields';
import { ShelterFields } from '../../ui/parts/ShelterFields';
import { StowedFields } from '../../ui/parts/StowedFields';
import { ItemPlacementFields } from './ItemPlacementFields';
import type { ItemEditor } from './usePlanEdits';
import { SourceField } from '../../ui/parts/SourceField';

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
          <ItemDutyFields change={change} project={project} editor={editor} />
          <ItemStowedFields change={change} project={project} fitting={fitting} editor={editor} />
        </>
      );
    case 'stowed':
      return <ItemStowedFields change={change} project={project} fitting={fitting} editor={editor} />;
    case 'removed':
      return null;
    case 'moved':
      return <ItemPlacementFields change={change} editor={editor} />;
    case 'sheltered':
      return <ItemShelterFields change={change} project={project} fitting={fitting} editor={editor} />;
    case 'typed':
      return <TypedFields change={change} editor={editor} />;
  }
}

/** One kind of change, for the fields of that kind. */
export type ChangeOf<Kind extends ItemChange['kind']> = Extract<ItemChange, { readonly kind: Kind }>;

interface OfKind<Kind extends ItemChange['kind']> {
  readonly change: ChangeOf<Kind>;
  readonly editor: ItemEditor;
}

function SlimmerFields({ change, editor }: OfKind<'slimmer'>) {
  return (
    <>
      <DimensionField
        label="New diameter"
        unit="mm"
        value={change.diameter}
        onCommit={(diameter) => {
          editor.patch('change.diameter', 'diameter', { change: { kind: 'slimmer', diameter } });
        }}
        {...editor.at('change.diameter')}
      />
      <p className="fine">
        Surface, ends and friction stay the fitting’s own; a shape typed in sets them too.
      </p>
    </>
  );
}

function ShapeOfField({ change, project, fitting, editor }: ChangeFieldsProps & OfKind<'shapeOf'>) {
  const choices = project.fittings
    .filter(({ id }) => id !== fitting?.id)
    .map(({ id, name }) => ({ value: id, label: name }));
  return (
    <ChoiceField
      label="Takes the shape of"
      value={change.fittingId}
      choices={choices}
      onCommit={(fittingId) => {
        editor.patch('change.fittingId', 'shape', { change: { kind: 'shapeOf', fittingId } });
      }}
      {...editor.at('change.fittingId')}
    />
  );
}

interface ItemDutyProps extends OfKind<'retracted'> {
  readonly project: Project;
}

function ItemDutyFields({ change, project, editor }: ItemDutyProps) {
  const { planId, item } = editor;
  return (
    <DutyFields
      {...partOf(editor, 'change.duty', change.dutyFraction, (dutyFraction) => ({
        change: { kind: 'retracted' as const, dutyFraction },
      }))}
      label="Still out, share of the time"
      conditions={project.conditions}
      onShare={({ id, name }, fraction) => {
        editor.runField(`change.duty.${id}`, `share of the time in ${name}`, (before) =>
          setItemDutyInCondition(before, planId, item.id, id, fraction),
        );
      }}
    />
  );
}

function ItemStowedFields({
  change,
  project,
  fitting,
  editor,
}: ChangeFieldsProps & OfKind<'retracted' | 'stowed'>) {
  return (
    <StowedFields
      {...partOf(editor, 'change.stowed', change.stowed, (stowed) => ({
        change: { kind: change.kind, stowed },
      }))}
      startPlace={placeOf(project, fitting)}
    />
  );
}

function ItemShelterFields({ change, project, fitting, editor }: ChangeFieldsProps & OfKind<'sheltered'>) {
  const { exposure, exposureLeeward, shelteredByFittingId } = change;
  const shelter = { exposure, exposureLeeward, shelteredByFittingId };
  return (
    <ShelterFields
      {...partOf(editor, 'change', shelter, (next) => ({ change: { ...next, kind: 'sheltered' as const } }))}
      others={project.fittings.filter(({ id }) => id !== fitting?.id)}
    />
  );
}

/** The shape that the fitting has after the item, typed in whole, with where it comes from. */
function TypedFields({ change, editor }: OfKind<'typed'>) {
  const { planId, item } = editor;
  return (
    <>
      <ShapeFields
        {...partOf(editor, 'change.shape', change.shape, (shape) => ({
          change: { kind: 'typed' as const, shape },
        }))}
        label="Shape after"
        onKind={(kind) => {
          editor.runField('change.shape', 'shape', (project) =>
            changeItemShapeKind(project, planId, item.id, kind),
          );
        }}
      />
      <SourceField
        label="Source of the shape"
        value={change.source}
        onCommit={(source) => {
          editor.patch('change.source', 'source', { change: { kind: 'typed', source } });
        }}
        {...editor.at('change.source')}
      />
    </>
  );
}
