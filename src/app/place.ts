import { create } from 'zustand';
import { placeFrom, type PlaceId, type PlaceRequest } from './placeAddress';

interface PlaceState {
  readonly place: PlaceId;
  /** What the address holds behind the name of each place other than the ledger. */
  readonly words: Readonly<Partial<Record<PlaceId, string>>>;
}

/** Where the reader is. What the ledger's own address holds is in the store of the project. */
export const usePlace = create<PlaceState>()(() => arrived({ place: 'ledger', words: {} }, currentRequest()));

function currentRequest(): PlaceRequest {
  return placeFrom(typeof window === 'undefined' ? '' : window.location.hash);
}

/** Bare of words, a place is as it was left. */
function arrived(state: PlaceState, { place, words }: PlaceRequest): PlaceState {
  if (place === 'ledger' || words === '') return { ...state, place };
  return { place, words: { ...state.words, [place]: words } };
}

/** Goes where an address leads, without a step of its own. */
export function arriveAt(hash: string): void {
  usePlace.setState((state) => arrived(state, placeFrom(hash)));
}

/** Goes to a place; `words` takes the place of what it held. */
export function goTo(place: PlaceId, words?: string): void {
  usePlace.setState((state) => ({
    place,
    words: words === undefined ? state.words : { ...state.words, [place]: words },
  }));
}

/** A place says what its address holds now. */
export function keepWords(place: PlaceId, words: string): void {
  usePlace.setState((state) => ({ words: { ...state.words, [place]: words } }));
}
