import { useAppStore, type AppState } from '../../state/appStore';
import { createAutosaver, leaveWithPage, type Autosaver } from '../../state/storage/autosaver';
import { openShelf } from '../../state/storage/openShelf';
import type { Reading } from '../../state/storage/records';
import { statusText } from '../../state/storage/saveStatus';
import type { Shelf, ShelfLoadResult, ShelfStart } from '../../state/storage/shelfTypes';
import { addFinding, useKeeping } from './keeping';

/** The storage of this page: what the start found, the shelf, and the autosaver that follows the store. */
export interface Keeper {
  readonly shelf: Shelf;
  readonly autosaver: Autosaver;
  readonly start: ShelfStart;
  /** Keeps what is open from now on, and what was changed before. */
  follow(): void;
}

/** Opens the storage and what it holds. Where the browser keeps nothing, it stands in this page. */
export async function openKeeper(): Promise<Keeper> {
  const shelf = await openShelf();
  const autosaver = createAutosaver({ shelf });
  const start = await shelf.openLast();
  const showStatus = (): void => {
    const status = autosaver.status();
    useKeeping.setState({ status, line: statusText(status) });
  };
  const keeper: Keeper = {
    shelf,
    autosaver,
    start,
    follow: () => {
      autosaver.subscribe(showStatus);
      leaveWithPage(autosaver);
      followStore(autosaver);
    },
  };
  for (const header of start.recovered) addFinding({ kind: 'recovered', header });
  for (const broken of start.broken) addFinding({ kind: 'broken', broken });
  useKeeping.setState({ keeper });
  return keeper;
}

function followStore(autosaver: Autosaver): void {
  const readingOf = rememberedReading();
  const report = (state: AppState): void => {
    if (state.project !== null) autosaver.changed({ project: state.project, reading: readingOf(state) });
  };
  const begin = (state: AppState): void => {
    const { opening } = state;
    if (opening === null) return;
    autosaver.open(opening.origin, () => {
      autosaver.changed({ project: opening.project, reading: readingOf(state) });
    });
  };
  begin(useAppStore.getState());
  report(useAppStore.getState());
  useAppStore.subscribe((state, previous) => {
    if (state.opening !== previous.opening) begin(state);
    report(state);
  });
}

/** Hands out the same object as long as the reading is the same. */
function rememberedReading(): (reading: Reading) => Reading {
  let last: Reading | null = null;
  return ({ question, selectedFittingId }) => {
    if (last?.question !== question || last.selectedFittingId !== selectedFittingId) {
      last = { question, selectedFittingId };
    }
    return last;
  };
}

/** Opens what the shelf answered with, or says why not; true when it opened. */
export function openLoaded(result: ShelfLoadResult): boolean {
  if (result.kind === 'opened') {
    useAppStore.getState().openStored(result.stored);
    return true;
  }
  if (result.kind === 'broken') addFinding({ kind: 'broken', broken: result.broken });
  else addFinding({ kind: 'trouble', text: whyNot(result) });
  return false;
}

function whyNot(result: Exclude<ShelfLoadResult, { kind: 'opened' | 'broken' }>): string {
  return result.kind === 'failed' ? `It did not work: ${result.why}.` : 'That project is no longer there.';
}
