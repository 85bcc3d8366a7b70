import { useEffect } from 'react';
import { useAppStore, type AppState } from '../state/appStore';
import { addressOf, readingFrom } from './address';
import { arriveAt, usePlace } from './place';
import { placeAddress, placeFrom } from './placeAddress';

/**
 * Keeps the address, the place and the reading together. A new place and a new question are steps that the back button
 * undoes; moving along the rows, typing, and opening another file are none.
 */
export function useAddress(): void {
  useEffect(() => {
    const stops = [useAppStore.subscribe(follow), usePlace.subscribe(followPlace)];
    window.addEventListener('popstate', applyAddress);
    return () => {
      for (const stop of stops) stop();
      window.removeEventListener('popstate', applyAddress);
    };
  }, []);
}

/** Takes over what the address asks for, as far as the open project has it. */
export function applyAddress(): void {
  const { hash } = window.location;
  arriveAt(hash);
  const state = useAppStore.getState();
  if (state.project === null || hash === '' || usePlace.getState().place !== 'ledger') return;
  const reading = readingFrom(hash, state.project, state);
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
  if (state.project === null || usePlace.getState().place !== 'ledger') return;
  const isStep = state.project === previous.project && state.question !== previous.question;
  write(addressOf(state), isStep);
}

/** Where the address itself led here, there is no step to write down. */
function followPlace({ place, words }: ReturnType<typeof usePlace.getState>): void {
  const isStep = placeFrom(window.location.hash).place !== place;
  const state = useAppStore.getState();
  if (place !== 'ledger') write(placeAddress(place, words[place]), isStep);
  else if (isStep && state.project !== null) write(addressOf(state), isStep);
}

function write(address: string, isStep: boolean): void {
  if (address === window.location.hash) return;
  if (isStep) window.history.pushState(null, '', address);
  else window.history.replaceState(null, '', address);
}
