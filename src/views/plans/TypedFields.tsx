import { changeShapeKind } from '../../project/edit/changeShapeKind';
import type { EditAnswer } from '../../project/edit/answer';
import { patchItem } from '../../project/edit/itemEdits';
import type { Project, ProjectFitting, ProjectShape } from '../../project/file/schema';
import { ChoiceField } from '../../ui/fields/ChoiceField';
import { DimensionField } from '../../ui/fields/DimensionField';
import { RangedField } from '../../ui/fields/RangedField';
import { TextField } from '../../ui/fields/TextField';
import type { ChangeOf } from './ChangeFields';
import { CoefficientFields } from './CoefficientFields';
import type { ItemEditor } from './usePlanEdits';

interface TypedFieldsProps {
  readonly change: ChangeOf<'typed'>;
  readonly project: Project;
  readonly fitting: ProjectFitting | null;
  readonly editor: ItemEditor;
}

const shapeChoices: readonly { readonly value: ProjectShape['kind']; readonly label: string }[] = [
  { value: 'roundBar', label: 'round bar' },
  { value: 'bluffBody', label: 'bluff body' },
  { value: 'measuredArea', label: 'measured area' },
];

/** The shape that the fitting has after the item, typed in whole, with where it comes from. */
export function TypedFields({ change, fitting, editor }: TypedFieldsProps) {
  const { key, errorAt, done } = editor;
  return (
    <>
      <ChoiceField
        key={`${key}.shape.kind`}
        label="Shape after"
        value={change.shape.kind}
        choices={shapeChoices}
        error={errorAt('change.shape.kind')}
        onCommit={(kind) => {
          editor.run(`Change the shape of ${editor.item.name}`, (project) =>
            withShapeKind(project, editor, fitting, change.shape, kind),
          );
        }}
      />
      <ShapeFields shape={change.shape} editor={editor} />
      <TextField
        key={`${key}.source`}
        kind="source"
        label="Source of the shape"
        value={change.source}
        error={errorAt('change.source')}
        onCommit={(source) => {
          editor.patch('change.source', 'source', { change: { kind: 'typed', source } });
        }}
        onDone={done}
      />
    </>
  );
}

/**
 * The item with its shape of another kind. The sizes carry over as they do for a fitting: the item's shape is put on a
 * fitting for a moment, and what that becomes is taken back.
 */
function withShapeKind(
  project: Project,
  { planId, item }: ItemEditor,
  fitting: ProjectFitting | null,
  shape: ProjectShape,
  kind: ProjectShape['kind'],
): EditAnswer {
  const fittings = project.fittings.map((each) => (each.id === fitting?.id ? { ...each, shape } : each));
  const answer = changeShapeKind({ ...project, fittings }, fitting?.id ?? '', kind);
  if ('refused' in answer) return answer;
  const reshaped = answer.project.fittings.find(({ id }) => id === fitting?.id)?.shape ?? shape;
  return patchItem(project, planId, item.id, { change: { kind: 'typed', shape: reshaped } });
}

interface ShapeFieldsProps {
  readonly shape: ProjectShape;
  readonly editor: ItemEditor;
}

const areaRange = { fromSi: 0, toSi: 10_000 };

const provenances = [
  { value: 'pull-test', label: 'pull test' },
  { value: 'tunnel', label: 'tunnel' },
  { value: 'paper', label: 'paper' },
  { value: 'estimate', label: 'estimate' },
] as const;

function ShapeFields({ shape, editor }: ShapeFieldsProps) {
  const { key, errorAt, done } = editor;
  const set = (part: string, next: ProjectShape): void => {
    editor.patch(`change.shape.${part}`, 'shape', { change: { kind: 'typed', shape: next } });
  };
  switch (shape.kind) {
    case 'roundBar':
      return (
        <>
          <DimensionField
            key={`${key}.shape.diameter`}
            label="Diameter"
            unit="mm"
            value={shape.diameter}
            error={errorAt('change.shape.diameter') ?? errorAt('change.shape.surface')}
            onCommit={(diameter) => {
              set('diameter', { ...shape, diameter });
            }}
            onDone={done}
          />
          <CoefficientFields
            label="Coefficient typed in"
            part="change.shape.coefficient"
            value={shape.coefficient}
            editor={editor}
            onCommit={(coefficient, part) => {
              set(part, { ...shape, coefficient });
            }}
          />
        </>
      );
    case 'bluffBody':
      return (
        <>
          {(['length', 'width', 'height'] as const).map((side) => (
            <DimensionField
              key={`${key}.shape.${side}`}
              label={{ length: 'Length', width: 'Width', height: 'Height' }[side]}
              unit="m"
              value={shape[side]}
              error={errorAt(`change.shape.${side}`)}
              onCommit={(dimension) => {
                set(side, { ...shape, [side]: dimension });
              }}
              onDone={done}
            />
          ))}
          {(['x', 'y', 'z'] as const).map((axis) => (
            <CoefficientFields
              key={`${key}.shape.coefficients.${axis}`}
              label={{ x: 'Coefficient typed in, fore and aft', y: '… athwart', z: '… vertical' }[axis]}
              part={`change.shape.coefficients.${axis}`}
              value={shape.coefficients[axis]}
              editor={editor}
              onCommit={(coefficient, part) => {
                set(part, { ...shape, coefficients: { ...shape.coefficients, [axis]: coefficient } });
              }}
            />
          ))}
        </>
      );
    case 'measuredArea':
      return (
        <>
          <RangedField
            key={`${key}.shape.area`}
            label="Drag area"
            dimension="area"
            unit="m2"
            range={areaRange}
            value={shape.dragAreaM2}
            error={errorAt('change.shape.dragAreaM2')}
            onCommit={(dragAreaM2) => {
              set('dragAreaM2', { ...shape, dragAreaM2 });
            }}
            onDone={done}
          />
          <ChoiceField
            key={`${key}.shape.provenance`}
            label="Known from"
            value={shape.provenance.kind}
            choices={provenances}
            onCommit={(kind) => {
              set('provenance', { ...shape, provenance: { ...shape.provenance, kind } });
            }}
          />
        </>
      );
  }
}
