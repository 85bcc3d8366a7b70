import { useEffect } from 'react';
import { useAppStore, type AppState } from '../state/appStore';
import { addressOf, readingFrom } from './address';

/**
 * Keeps the address and the reading together. A new question is a step that the back button undoes; moving along the
 * rows, and opening another file, are none.
 */
export function useAddress(): void {
  useEffect(() => {
    const stopFollowing = useAppStore.subscribe(follow);
    window.addEventListener('popstate', applyAddress);
    return () => {
      stopFollowing();
      window.removeEventListener('popstate', applyAddress);
    };
  }, []);
}

/** Takes over what the address asks for, as far as the open project has it. */
export function applyAddress(): void {
  const state = useAppStore.getState();
  if (state.project === null || window.location.hash === '') return;
  const reading = readingFrom(window.location.hash, state.project, state);
  if (addressOf(reading) === addressOf(state)) return;
  useAppStore.setState({ ...reading, ...picksOf(state, reading.selectedFittingId) });
}

/** At another row, what was picked out around the row before is let go. */
function picksOf(
  { selectedFittingId, selectedIds, anchorId }: AppState,
  rowId: string | null,
): Pick<AppState, 'selectedIds' | 'anchorId'> {
  return rowId === selectedFittingId ? { selectedIds, anchorId } : { selectedIds: [], anchorId: rowId };
}

function follow(state: AppState, previous: AppState): void {
  if (state.project === null) return;
  const address = addressOf(state);
  if (address === window.location.hash) return;
  const isStep = state.project === previous.project && state.question !== previous.question;
  if (isStep) window.history.pushState(null, '', address);
  else window.history.replaceState(null, '', address);
}
