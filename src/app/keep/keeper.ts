import type { Project } from '../../project/file/schema';
import { useAppStore, type AppState } from '../../state/appStore';
import { browserClock } from '../../state/storage/clock';
import { createAutosaver, leaveWithPage, type Autosaver } from '../../state/storage/autosaver';
import { openShelf } from '../../state/storage/openShelf';
import type { Opening } from '../../state/projectSlice';
import type { Reading, StoredProject } from '../../state/storage/records';
import { newerThan, secondLookMs } from '../../state/storage/secondLook';
import { statusText } from '../../state/storage/saveStatus';
import type { Work } from '../../state/storage/session';
import type { Shelf, ShelfLoadResult, ShelfStart } from '../../state/storage/shelfTypes';
import { isSameTyped, noTyped, type TypedTexts } from '../../state/storage/typedRecords';
import { ownedTexts, ownerOf, typedTextsOf, useTypedTexts } from '../../state/typedTexts';
import { addFinding, dismissFinding, useKeeping, type Finding } from './keeping';

/** The storage of this page: what the start found, the shelf, and the autosaver that follows the store. */
export interface Keeper {
  readonly shelf: Shelf;
  readonly autosaver: Autosaver;
  readonly start: ShelfStart;
  /** Keeps what is open from now on, and what was changed before. */
  follow(): void;
  /**
   * Looks at the shelf once more a moment after the start, and after each tab of that time has gone: a page that is being
   * closed may write only then.
   * @param onShown runs when something newer has taken the place of what the start opened.
   */
  lookAgain(onShown: () => void): void;
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
      followTyped();
    },
    lookAgain: (onShown) => {
      const lookSoon = (): void => {
        browserClock.after(secondLookMs, () => {
          whenSeen(() => void lookAgain(keeper, onShown));
        });
      };
      lookSoon();
      void shelf.whenOthersGo(lookSoon);
    },
  };
  sayFound(start);
  useKeeping.setState({ keeper });
  return keeper;
}

/** Of several tabs the one that somebody looks at shall find what another has left. */
function whenSeen(run: () => void): void {
  if (document.visibilityState === 'visible') run();
  else document.addEventListener('visibilitychange', run, { once: true });
}

function sayFound({ recovered, broken }: ShelfStart): void {
  for (const header of recovered) addFinding({ kind: 'recovered', header });
  for (const each of broken) addFinding({ kind: 'broken', broken: each });
}

/** Takes the newer work in place of what nobody has touched; beside what somebody has, it is offered. */
async function lookAgain({ shelf, autosaver, start }: Keeper, onShown: () => void): Promise<void> {
  const { stored: first } = start;
  if (first === null || !isUntouched(first)) {
    const recovered = await shelf.recoverLate(autosaver.openId());
    for (const header of recovered) addFinding({ kind: 'recovered', header });
    return;
  }
  const again = await shelf.openLast();
  sayFound(again);
  const newer = newerThan(first, again);
  if (newer === null || !isUntouched(first)) return;
  useAppStore.getState().openStored(newer);
  onShown();
}

function isUntouched(first: StoredProject): boolean {
  const { opening, project } = useAppStore.getState();
  const { texts } = useTypedTexts.getState();
  return opening?.origin === first && project === first.project && isSameTexts(texts, first.typed);
}

function followStore(autosaver: Autosaver): void {
  const readingOf = rememberedReading();
  const typedOf = rememberedTyped();
  let begun: Opening | null = null;
  const workOf = (state: AppState, project: Project): Work => ({
    project,
    reading: readingOf(state),
    typed: typedOf(state.opening, project),
  });
  const report = (state: AppState): void => {
    if (state.project !== null) autosaver.changed(workOf(state, state.project));
  };
  const begin = (state: AppState): void => {
    const { opening } = state;
    begun = opening;
    if (opening === null) return;
    autosaver.open(opening.origin, () => {
      autosaver.changed(workOf(state, opening.project));
    });
  };
  begin(useAppStore.getState());
  report(useAppStore.getState());
  useAppStore.subscribe((state, previous) => {
    if (state.opening !== previous.opening) begin(state);
    report(state);
  });
  useTypedTexts.subscribe(() => {
    const state = useAppStore.getState();
    // A project that is just being opened must not land in the record of the one before.
    if (state.opening === begun) report(state);
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

/** Hands out the same texts as long as they are the same, without those whose owner is gone. */
function rememberedTyped(): (opening: Opening | null, project: Project) => TypedTexts {
  let last = noTyped;
  return (opening, project) => {
    const owned = ownedTexts(typedTextsOf(opening), project);
    if (!isSameTexts(last, owned)) last = owned;
    return last;
  };
}

function isSameTexts(one: TypedTexts, other: TypedTexts): boolean {
  if (one === other) return true;
  return one.size === other.size && [...one].every(([path, typed]) => isSameTyped(typed, other.get(path)));
}

const typedFinding: Finding = { kind: 'typed' };

/** Says that half-typed text waits elsewhere, for as long as it does. */
function followTyped(): void {
  const look = (): void => {
    const { project } = useAppStore.getState();
    const { elsewhere } = useTypedTexts.getState();
    const isWaiting = project !== null && elsewhere.some((path) => ownerOf(project, path) !== null);
    const isSaid = useKeeping.getState().findings.includes(typedFinding);
    if (isWaiting && !isSaid) addFinding(typedFinding);
    if (!isWaiting && isSaid) dismissFinding(typedFinding);
  };
  look();
  useAppStore.subscribe(look);
  useTypedTexts.subscribe(look);
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
