import type { TemporalState } from 'zundo';
import type { StoreApi } from 'zustand';
import type { AppState } from './appState';

/** What the history keeps of each moment. Question and selection are no part of it: going back must not move the reader, but for a plan that comes or goes. */
export type Remembered = Pick<AppState, 'project' | 'step'>;

/** What can be taken back and done again, for buttons and their words; null where there is nothing. */
export interface HistoryView {
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  readonly undoLabel: string | null;
  readonly redoLabel: string | null;
}

/** The past and the future kept with a store; zundo leaves their type open where the slices are made. */
export function timesOf(store: { readonly temporal: unknown }): TemporalState<Remembered> {
  return (store.temporal as StoreApi<TemporalState<Remembered>>).getState();
}

export function remembered({ project, step }: AppState): Remembered {
  return { project, step };
}

/** The label of the step that undo takes back: the one that led to the project as it is. */
export function undoLabelOf({ step }: Remembered, { pastStates }: TemporalState<Remembered>): string | null {
  return pastStates.length === 0 ? null : step.label;
}

/** The label of the step that redo does again: the one that led to the next project kept. */
export function redoLabelOf({ futureStates }: TemporalState<Remembered>): string | null {
  return futureStates.at(-1)?.step?.label ?? null;
}

export function historyOf(state: Remembered, temporal: TemporalState<Remembered>): HistoryView {
  const undoLabel = undoLabelOf(state, temporal);
  const redoLabel = redoLabelOf(temporal);
  return { canUndo: undoLabel !== null, canRedo: redoLabel !== null, undoLabel, redoLabel };
}
