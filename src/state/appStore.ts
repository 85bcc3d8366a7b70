import { temporal } from 'zundo';
import { create, useStore } from 'zustand';
import type { ProjectLedger } from '../project/ledger/ledgerTypes';
import type { AppState } from './appState';
import { historySlice } from './historySlice';
import {
  historyOf,
  redoLabelOf,
  remembered,
  undoLabelOf,
  type HistoryView,
  type Remembered,
} from './historyView';
import { ledgerOf } from './ledgerOf';
import { projectSlice } from './projectSlice';
import { questionSlice } from './questionSlice';
import { readingSlice } from './readingSlice';
import { repairing } from './repairing';

export type { AppState } from './appState';
export type { OpenFailure } from './projectSlice';
export type { Shown } from './readingSlice';

/** Most steps that can be taken back. */
export const mostSteps = 200;

export const useAppStore = create<AppState>()(
  repairing(
    temporal<AppState, [], [], Remembered>(
      (...store) => ({
        ...projectSlice(...store),
        ...questionSlice(...store),
        ...readingSlice(...store),
        ...historySlice(...store),
      }),
      {
        partialize: remembered,
        equality: (past, present) => past.project === present.project,
        limit: mostSteps,
        // An edit that goes on with the one before adds no moment to go back to. Zundo types its own function as the
        // store's, which takes less.
        handleSet: (remember) => {
          const addMoment = remember as unknown as (...moment: readonly unknown[]) => void;
          return (...moment) => {
            if (!moment[2].step.continues) addMoment(...moment);
          };
        },
      },
    ),
  ),
);

/** The ledger of the open project for the question asked; null while nothing is open. */
export function useLedger(): ProjectLedger | null {
  return useAppStore(({ project, question }) => (project === null ? null : ledgerOf(project, question)));
}

/** What can be taken back and done again now. */
export function currentHistory(): HistoryView {
  return historyOf(useAppStore.getState(), useAppStore.temporal.getState());
}

/** The same for a component, which is drawn anew when it changes. */
export function useHistory(): HistoryView {
  const step = useAppStore((state) => state.step);
  const undoLabel = useStore(useAppStore.temporal, (history) =>
    undoLabelOf({ project: null, step }, history),
  );
  const redoLabel = useStore(useAppStore.temporal, redoLabelOf);
  return { canUndo: undoLabel !== null, canRedo: redoLabel !== null, undoLabel, redoLabel };
}
