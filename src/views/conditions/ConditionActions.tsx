import {
  addCondition,
  deleteCondition,
  duplicateCondition,
  plainCondition,
} from '../../project/edit/conditionEdits';
import type { EditAnswer } from '../../project/edit/answer';
import type { ProjectCondition } from '../../project/file/schema';
import { useAppStore } from '../../state/appStore';
import type { FormEdit } from './useFormEdit';

interface ConditionActionsProps {
  readonly condition: ProjectCondition;
  readonly form: FormEdit;
}

/** Add, duplicate and delete. A new condition is chosen at once, and its name waits to be typed over. */
export function ConditionActions({ condition, form }: ConditionActionsProps) {
  const { id, name } = condition;
  const field = `${id}.actions`;
  const { error } = form.at(field);
  return (
    <div className="condition-actions">
      <button
        type="button"
        className="plain-action"
        onClick={() => {
          choose(
            form.run(field, 'Add a condition', (project) =>
              addCondition(project, plainCondition(project), id),
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
          choose(form.run(field, `Duplicate ${name}`, (project) => duplicateCondition(project, id)));
        }}
      >
        Duplicate
      </button>
      <button
        type="button"
        className="plain-action"
        onClick={() => {
          form.run(field, `Delete ${name}`, (project) => deleteCondition(project, id));
          useAppStore.getState().endGroup();
        }}
      >
        Delete
      </button>
      <p className="condition-said" role="status">
        {error ?? form.said}
      </p>
    </div>
  );
}

function choose(answer: EditAnswer): void {
  useAppStore.getState().endGroup();
  const conditionId = 'newIds' in answer ? answer.newIds[0] : undefined;
  if (conditionId === undefined) return;
  useAppStore.getState().chooseBasis({ kind: 'condition', conditionId });
  useAppStore.getState().openConditionAt('name');
}
