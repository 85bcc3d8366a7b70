import {
  addCondition,
  deleteCondition,
  duplicateCondition,
  moveCondition,
  plainCondition,
} from '../../project/edit/conditionEdits';
import type { EditAnswer } from '../../project/edit/answer';
import type { Project } from '../../project/file/schema';
import { useAppStore } from '../../state/appStore';
import { MoveButtons, type Movable } from '../../ui/MoveButtons';
import type { FormEdit } from '../../ui/useFormEdit';

interface ConditionActionsProps {
  readonly project: Project;
  readonly conditionId: string;
  readonly form: FormEdit;
  readonly onDeleted: () => void;
}

/** Add, duplicate, reorder and delete. A new condition is chosen at once, and its name waits to be typed over. */
export function ConditionActions({ project, conditionId, form, onDeleted }: ConditionActionsProps) {
  const name = project.conditions.find(({ id }) => id === conditionId)?.name ?? '';
  const field = `${conditionId}.actions`;
  return (
    <div className="condition-actions">
      <button
        type="button"
        className="plain-action"
        onClick={() => {
          choose(
            form.act(field, 'Add a condition', (before) =>
              addCondition(before, plainCondition(before), conditionId),
            ),
          );
        }}
      >
        Add a condition
      </button>
      <button
        type="button"
        className="plain-action"
        onClick={() => {
          choose(form.act(field, `Duplicate ${name}`, (before) => duplicateCondition(before, conditionId)));
        }}
      >
        Duplicate
      </button>
      <MoveButtons {...conditionMove(project, conditionId, form)} />
      <button
        type="button"
        className="plain-action"
        onClick={() => {
          const answer = form.act(field, `Delete ${name}`, (before) => deleteCondition(before, conditionId));
          if (!('refused' in answer)) onDeleted();
        }}
      >
        Delete
      </button>
      <p className="condition-said" role="status">
        {form.at(field).error ?? form.said}
      </p>
    </div>
  );
}

/** A condition's steps in the list of conditions, for its buttons and keys. Its hours go with it. */
export function conditionMove({ conditions }: Project, id: string, form: FormEdit): Movable {
  const name = conditions.find((condition) => condition.id === id)?.name ?? '';
  return {
    list: conditions,
    id,
    onMove: (beforeId, way) => {
      form.act(`${id}.actions`, `Move ${name} ${way}`, (before) => moveCondition(before, id, beforeId));
    },
  };
}

function choose(answer: EditAnswer): void {
  const conditionId = 'newIds' in answer ? answer.newIds[0] : undefined;
  if (conditionId === undefined) return;
  useAppStore.getState().chooseBasis({ kind: 'condition', conditionId });
  useAppStore.getState().openConditionAt('name');
}
