import { create } from 'zustand';
import { placeFrom, placeIds, type PlaceId, type PlaceRequest } from './placeAddress';

interface PlaceState {
  readonly place: PlaceId;
  /** What the address holds behind the name of each place other than the ledger. */
  readonly words: Readonly<Partial<Record<PlaceId, string>>>;
}

const storedName = 'windtoll-places';

/** What stood in the places when the browser last showed them; nothing where it kept none, or something else. */
function storedWords(): PlaceState['words'] {
  try {
    const stored: unknown = JSON.parse(window.localStorage.getItem(storedName) ?? '{}');
    if (typeof stored !== 'object' || stored === null) return {};
    return Object.fromEntries(
      placeIds.flatMap((id) => {
        const words: unknown = (stored as Record<string, unknown>)[id];
        return typeof words === 'string' ? [[id, words]] : [];
      }),
    );
  } catch {
    return {};
  }
}

/** Where the reader is. What the ledger's own address holds is in the store of the project. */
export const usePlace = create<PlaceState>()(() =>
  arrived({ place: 'ledger', words: storedWords() }, currentRequest()),
);

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
  try {
    window.localStorage.setItem(storedName, JSON.stringify(usePlace.getState().words));
  } catch {
    // Forbidden or full: the address has them too.
  }
}
