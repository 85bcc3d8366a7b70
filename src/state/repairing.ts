import type { StateCreator, StoreMutatorIdentifier } from 'zustand';
import type { AppState } from './appState';
import { repaired } from './repair';

type Mutators = [StoreMutatorIdentifier, unknown][];
type SetState = (
  partial: Partial<AppState> | ((state: AppState) => Partial<AppState>),
  replace?: boolean,
) => void;

/**
 * Mends question and selection in the same breath in which the project changes, whoever changes it: an edit, undo or
 * redo. Nobody ever sees a project with a question that it cannot answer.
 */
export function repairing<Own extends Mutators>(
  creator: StateCreator<AppState, [], Own>,
): StateCreator<AppState, [], Own> {
  const mending: StateCreator<AppState> = (set, get, store) => {
    const mendingSet: SetState = (partial) => {
      set((state) => {
        const changes = typeof partial === 'function' ? partial(state) : partial;
        const next = { ...state, ...changes };
        const { project } = next;
        if (project === state.project || project === null) return changes;
        return { ...changes, ...repaired(next, state.project, project) };
      });
    };
    return creator(mendingSet, get, store);
  };
  // The mutators are a mark for the types alone; they are the creator's.
  return mending as unknown as typeof creator;
}
