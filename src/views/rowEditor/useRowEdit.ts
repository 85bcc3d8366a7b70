import { useState } from 'react';
import type { EditAnswer } from '../../project/edit/answer';
import { patchFitting } from '../../project/edit/fittingEdits';
import type { Patch } from '../../project/edit/patch';
import type { Project, ProjectFitting } from '../../project/file/schema';
import { useAppStore } from '../../state/appStore';

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
  readonly run: (field: string, words: string, change: (project: Project) => EditAnswer) => void;
  /** What every field takes over from here: the complaint about its last commit, and the end of its step. */
  readonly at: (field: string) => { readonly error: string | undefined; readonly onDone: () => void };
}

interface Complaint {
  readonly field: string;
  readonly message: string;
}

export function useRowEdit(fitting: ProjectFitting): RowEdit {
  const [complaint, setComplaint] = useState<Complaint | null>(null);
  const [said, setSaid] = useState('');

  const run: RowEdit['run'] = (field, words, change) => {
    const store = useAppStore.getState();
    const label = `Change the ${words} of ${fitting.name}`;
    const answer = store.edit(label, change, { group: `${fitting.id}.${field}` });
    const isRefused = 'refused' in answer;
    setComplaint(isRefused ? { field, message: sentence(answer.refused.message) } : null);
    setSaid(isRefused ? '' : (answer.message ?? ''));
  };

  return {
    fitting,
    said,
    run,
    patch: (field, words, patch) => {
      run(field, words, (project) => patchFitting(project, fitting.id, patch));
    },
    at: (field) => ({
      error: complaint?.field === field ? complaint.message : undefined,
      onDone: endGroup,
    }),
  };
}

function endGroup(): void {
  useAppStore.getState().endGroup();
}

/** The file's checks complain in half sentences: "must be ...". */
function sentence(message: string): string {
  const start = message.startsWith('must') || message.startsWith('is ') ? `This ${message}` : message;
  return `Not taken: ${start}.`;
}
