import * as z from 'zod/mini';
import { create } from 'zustand';
import { quickLies, quickSides, type QuickChoices } from '../project/survey/quickEntry';
import { quickShapes } from '../project/survey/quickShapes';
import { useAppStore } from './appStore';
import type { Opening } from './projectSlice';

interface QuickAdding {
  /** What stays from one entry to the next, and over a reload. */
  readonly choices: QuickChoices;
  /** The fittings that were added since the project was opened, the latest first. */
  readonly addedIds: readonly string[];
  /** The opening that they belong to. */
  readonly opening: Opening | null;
}

const usual: QuickChoices = {
  shape: 'tube',
  zoneId: '',
  side: 'centreline',
  lie: 'upright',
  basis: 'measured',
};

const placeName = 'windtoll-quick-add';

/** Each choice stands for itself: one that cannot be read falls back alone. */
const stored = z.object({
  shape: z.catch(z.enum(quickShapes), usual.shape),
  zoneId: z.catch(z.string(), usual.zoneId),
  side: z.catch(z.enum(quickSides), usual.side),
  lie: z.catch(z.enum(quickLies), usual.lie),
  basis: z.catch(z.enum(['measured', 'estimated']), usual.basis),
});

function readChoices(): QuickChoices {
  try {
    const text = window.localStorage.getItem(placeName);
    const read = text === null ? null : stored.safeParse(JSON.parse(text));
    return read?.success === true ? read.data : usual;
  } catch {
    return usual;
  }
}

export const useQuickAdding = create<QuickAdding>()(() => ({
  choices: typeof window === 'undefined' ? usual : readChoices(),
  addedIds: [],
  opening: useAppStore.getState().opening,
}));

/** Another project has other fittings. */
useAppStore.subscribe(({ opening }) => {
  if (opening !== useQuickAdding.getState().opening) useQuickAdding.setState({ opening, addedIds: [] });
});

/** Chooses for this entry and the next; where the browser keeps nothing, until the page is closed. */
export function chooseQuick(change: Partial<QuickChoices>): void {
  const choices = { ...useQuickAdding.getState().choices, ...change };
  useQuickAdding.setState({ choices });
  try {
    window.localStorage.setItem(placeName, JSON.stringify(choices));
  } catch {
    // Forbidden or full: the choices are made again in a moment.
  }
}

export function noteAdded(id: string): void {
  useQuickAdding.setState(({ addedIds }) => ({ addedIds: [id, ...addedIds] }));
}
