import { unitsInOneWord, usePreferences } from '../state/preferences';
import { showIn } from '../units/shownUnits';

// Before the first text is printed, and before any part of the page hears of a change.
showIn(usePreferences.getState().units);
usePreferences.subscribe(({ units }) => {
  showIn(units);
});

/**
 * The reader's units in one word. Who calls it is drawn anew when they change, with everything below it that does not
 * remember its texts; what does remember them takes the word as its `key`.
 */
export function useReadersUnits(): string {
  return usePreferences(unitsInOneWord);
}
