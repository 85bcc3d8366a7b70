import { useState } from 'react';
import type { EditAnswer } from '../../project/edit/answer';
import type { Project } from '../../project/file/schema';
import { useAppStore } from '../../state/appStore';

/** How the fields of a form reach the project. */
export interface FormEdit {
  /** What the last edit did besides what was asked; '' for nothing. */
  readonly said: string;
  /**
   * Runs an edit for a field.
   * @param field edits of one field are one step, and a refusal stands beside the field that brought it about.
   * @param label of the step, such as "Change the heel of Upwind".
   */
  run(field: string, label: string, change: (project: Project) => EditAnswer): EditAnswer;
  /** What every field takes over from here: the complaint about its last commit, and the end of its step. */
  at(field: string): { readonly error: string | undefined; readonly onDone: () => void };
}

export function useFormEdit(): FormEdit {
  const [complaint, setComplaint] = useState<{ readonly field: string; readonly message: string } | null>(
    null,
  );
  const [said, setSaid] = useState('');
  return {
    said,
    run: (field, label, change) => {
      const answer = useAppStore.getState().edit(label, change, { group: field });
      const isRefused = 'refused' in answer;
      setComplaint(isRefused ? { field, message: asSentence(answer.refused.message) } : null);
      setSaid(isRefused ? '' : (answer.message ?? ''));
      return answer;
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

/** "must be 0 or at least 0.01" as a sentence beside its field. */
function asSentence(message: string): string {
  const begun = /^(must|is|holds) /.test(message) ? `this ${message}` : message;
  return `${begun.charAt(0).toUpperCase()}${begun.slice(1)}${begun.endsWith('.') ? '' : '.'}`;
}
