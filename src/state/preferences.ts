import * as z from 'zod/mini';
import { create } from 'zustand';
import { displayChoices, usualUnits, type DisplayUnits } from '../units/displayUnits';

/**
 * Columns of the ledger that a reader may add to those that are always there, in the order in which they are offered.
 * The full price, `price`, appears only where a condition gives one.
 */
export const extraColumns = [
  'coefficient',
  'regime',
  'reynolds',
  'air',
  'sideForce',
  'heelingMoment',
  'price',
  'savingSpread',
  'doubt',
] as const;

export type ExtraColumn = (typeof extraColumns)[number];

/** How this reader likes to read, in whatever project: kept by the browser and not by the project file. */
export interface Preferences {
  readonly units: DisplayUnits;
  readonly columns: readonly ExtraColumn[];
  /** True for rows closer together. */
  readonly isCompact: boolean;
}

/** The reader's units in one word: what remembers texts with units is made anew when it changes. */
export function unitsInOneWord({ units }: Preferences): string {
  return Object.values(units).join(' ');
}

const usual: Preferences = { units: usualUnits, columns: ['coefficient', 'price'], isCompact: false };

const placeName = 'windtoll-preferences';

/** Each part stands for itself: one that cannot be read falls back alone. */
const stored = z.object({
  units: z.catch(
    z.object({
      speed: z.catch(z.enum(displayChoices.speed), usualUnits.speed),
      length: z.catch(z.enum(displayChoices.length), usualUnits.length),
      size: z.catch(z.enum(displayChoices.size), usualUnits.size),
      force: z.catch(z.enum(displayChoices.force), usualUnits.force),
      power: z.catch(z.enum(displayChoices.power), usualUnits.power),
      moment: z.catch(z.enum(displayChoices.moment), usualUnits.moment),
    }),
    usualUnits,
  ),
  columns: z.catch(z.array(z.enum(extraColumns)), [...usual.columns]),
  isCompact: z.catch(z.boolean(), usual.isCompact),
});

/** What the browser kept, or the usual where it kept nothing, something else, or is not allowed to. */
function readPreferences(): Preferences {
  try {
    const text = window.localStorage.getItem(placeName);
    const read = text === null ? null : stored.safeParse(JSON.parse(text));
    return read?.success === true ? read.data : usual;
  } catch {
    return usual;
  }
}

export const usePreferences = create<Preferences>()(() =>
  typeof window === 'undefined' ? usual : readPreferences(),
);

/** Changes what is named and keeps it; where the browser refuses, it holds until the page is closed. */
export function prefer(change: Partial<Preferences>): void {
  usePreferences.setState(change);
  try {
    window.localStorage.setItem(placeName, JSON.stringify(usePreferences.getState()));
  } catch {
    // Forbidden or full: nothing of the project is lost with it.
  }
}
