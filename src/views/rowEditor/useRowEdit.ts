import type { EditAnswer } from '../../project/edit/answer';
import { patchFitting } from '../../project/edit/fittingEdits';
import type { Patch } from '../../project/edit/patch';
import type { Project, ProjectFitting } from '../../project/file/schema';
import { useFormEdit, type FieldTie } from '../../ui/useFormEdit';

/** How the fields of the editor reach their fitting. */
export interface RowEdit {
  readonly fitting: ProjectFitting;
  /** What the last edit did besides what was asked; '' for nothing. */
  readonly said: string;
  /**
   * Sets some fields of the fitting.
   * @param field the path of what is edited, such as `shape.diameter`: edits of one field are one step, and a refusal
   *   stands beside the field that brought it about.
   * @param words what is edited, for the name of the step: "diameter".
   */
  readonly patch: (field: string, words: string, patch: Patch<Omit<ProjectFitting, 'id'>>) => void;
  /** Runs any other edit for a field. */
  readonly run: (field: string, words: string, change: (project: Project) => EditAnswer) => EditAnswer;
  readonly at: (field: string) => FieldTie;
}

export function useRowEdit(fitting: ProjectFitting): RowEdit {
  const form = useFormEdit('fitting');
  const keyOf = (field: string): string => `${fitting.id}.${field}`;
  const run: RowEdit['run'] = (field, words, change) =>
    form.run(keyOf(field), `Change the ${words} of ${fitting.name}`, change);
  return {
    fitting,
    said: form.said,
    run,
    patch: (field, words, patch) => {
      run(field, words, (project) => patchFitting(project, fitting.id, patch));
    },
    at: (field) => form.at(keyOf(field)),
  };
}
