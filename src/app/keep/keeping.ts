import { create } from 'zustand';
import { useAppStore } from '../../state/appStore';
import type { Opening } from '../../state/projectSlice';
import type { Broken, Header } from '../../state/storage/records';
import type { SaveStatus } from '../../state/storage/saveStatus';
import { loadDemo, demoFileName } from '../demo';
import type { Keeper } from './keeper';

/** What the start found of earlier work, and what went wrong with the storage since; each is said until dismissed. */
export type Finding =
  | { readonly kind: 'recovered'; readonly header: Header }
  | { readonly kind: 'broken'; readonly broken: Broken }
  | { readonly kind: 'trouble'; readonly text: string }
  /** Half-typed text waits in fields that are not on the page; stays until it does not. */
  | { readonly kind: 'typed' }
  /** A file was opened that is of an older version of the format; said as long as that project is the open one. */
  | { readonly kind: 'older'; readonly fileName: string; readonly opening: Opening }
  /** A new version of the page has been fetched and waits to be asked for. */
  | { readonly kind: 'version' };

interface Keeping {
  /** Null until the storage has answered. */
  readonly keeper: Keeper | null;
  readonly status: SaveStatus;
  /** The status in one line. */
  readonly line: string;
  readonly findings: readonly Finding[];
}

export const useKeeping = create<Keeping>()(() => ({
  keeper: null,
  status: { kind: 'untouched' },
  line: '',
  findings: [],
}));

export function addFinding(finding: Finding): void {
  useKeeping.setState(({ findings }) => ({ findings: [...findings, finding] }));
}

export function dismissFinding(finding: Finding): void {
  useKeeping.setState(({ findings }) => ({ findings: findings.filter((each) => each !== finding) }));
}

/** So long, ms, the page waits for the storage before it shows the demo meanwhile. */
const patienceMs = 700;

let starting: Promise<Keeper | null> | null = null;

/**
 * Opens what was open last, else the demo. A storage that answers late takes the place of a demo that nobody has
 * touched; whatever was edited or opened by then stays and is kept.
 * @param onShown runs when the first project stands on the page.
 */
export async function openAtStart(onShown: () => void): Promise<void> {
  // The page may be drawn twice: only the first start follows the store.
  const isFirst = starting === null;
  starting ??= startKeeper();
  const demo = loadDemo();
  // Handled where it is opened, if it is.
  demo.catch(() => undefined);
  const early = await Promise.race([starting, after(patienceMs)]);
  if (isFirst) openStoredInPlaceOfDemo(early);
  if (useAppStore.getState().project === null) await openDemo(demo);
  onShown();
  if (!isFirst) return;
  const keeper = await starting;
  if (early === null) openStoredInPlaceOfDemo(keeper);
  keeper?.follow();
  keeper?.lookAgain(onShown);
}

function openStoredInPlaceOfDemo(keeper: Keeper | null): void {
  const stored = keeper?.start.stored ?? null;
  const store = useAppStore.getState();
  const { opening, project } = store;
  const isUntouched = opening === null || (opening.origin === 'demo' && opening.project === project);
  if (stored !== null && isUntouched) store.openStored(stored);
}

async function startKeeper(): Promise<Keeper | null> {
  try {
    const { openKeeper } = await import('./keeper');
    return await openKeeper();
  } catch {
    addFinding({
      kind: 'trouble',
      text: 'The part of this page that keeps projects in the browser did not load: save to a file, then reload.',
    });
    return null;
  }
}

function after(delayMs: number): Promise<null> {
  return new Promise((resolve) => {
    setTimeout(() => {
      resolve(null);
    }, delayMs);
  });
}

/** Opens the demo afresh; at the start, unless something else is open by then. */
export async function openDemo(loading: Promise<string> | null = null): Promise<void> {
  const store = useAppStore.getState();
  try {
    const text = await (loading ?? loadDemo());
    if (loading !== null && useAppStore.getState().project !== null) return;
    store.openText(demoFileName, text, 'demo');
  } catch {
    store.refuseFile(
      demoFileName,
      'the demo could not be loaded; reload the page, or open a file of your own',
    );
  }
}
