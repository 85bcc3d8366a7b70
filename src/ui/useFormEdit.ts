import { useState } from 'react';
import type { EditAnswer } from '../project/edit/answer';
import type { Project } from '../project/file/schema';
import { useAppStore } from '../state/appStore';

/** What every field takes over from its form: the complaint about its last commit, and the end of its step. */
export interface FieldTie {
  readonly error: string | undefined;
  /** What half-typed text in the field is kept for. */
  readonly typedFor: string;
  readonly onDone: () => void;
}

/** How the fields and buttons of a form reach the project. */
export interface FormEdit {
  /** What the last edit did besides what was asked; '' for nothing. */
  readonly said: string;
  /**
   * Runs an edit for a field.
   * @param field edits of one field are one step, and a refusal stands beside the field that brought it about.
   * @param label of the step, such as "Change the heel of Upwind".
   */
  run(field: string, label: string, change: (project: Project) => EditAnswer): EditAnswer;
  /** Runs an edit that is a step of its own, as of a button. */
  act(field: string, label: string, change: (project: Project) => EditAnswer): EditAnswer;
  at(field: string): FieldTie;
}

/** @param about what the ids that begin the fields' names are of. */
export function useFormEdit(about: 'fitting' | 'zone' | 'condition' | 'plan'): FormEdit {
  const [complaint, setComplaint] = useState<{ readonly field: string; readonly message: string } | null>(
    null,
  );
  const [said, setSaid] = useState('');
  const run: FormEdit['run'] = (field, label, change) => {
    const answer = useAppStore.getState().edit(label, change, { group: field });
    const isRefused = 'refused' in answer;
    setComplaint(isRefused ? { field, message: refusalText(answer.refused.message) } : null);
    setSaid(isRefused ? '' : (answer.message ?? ''));
    return answer;
  };
  return {
    said,
    run,
    act: (field, label, change) => {
      endGroup();
      const answer = run(field, label, change);
      endGroup();
      return answer;
    },
    at: (field) => ({
      typedFor: `${about}/${field}`,
      error: complaint?.field === field ? complaint.message : undefined,
      onDone: endGroup,
    }),
  };
}

function endGroup(): void {
  useAppStore.getState().endGroup();
}

/** The project's checks complain in half sentences: "must be 0 or at least 0.01". */
function refusalText(message: string): string {
  const begun = /^(?:must|is|holds) /.test(message) ? `this ${message}` : message;
  return `Not taken: ${begun}${begun.endsWith('.') ? '' : '.'}`;
}
