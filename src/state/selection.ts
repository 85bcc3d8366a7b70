import type { AppState } from './appState';

/** The rows that an edit of the selection acts on: those picked out together, else the focus row. */
export function actedOnIds({
  selectedIds,
  selectedFittingId,
}: Pick<AppState, 'selectedIds' | 'selectedFittingId'>): readonly string[] {
  if (selectedIds.length > 0) return selectedIds;
  return selectedFittingId === null ? [] : [selectedFittingId];
}

/** The picked-out rows with one put in or taken out; the first pick takes the focus row along. */
export function toggled(
  selectedIds: readonly string[],
  focusId: string | null,
  fittingId: string,
): readonly string[] {
  if (selectedIds.includes(fittingId)) return selectedIds.filter((id) => id !== fittingId);
  if (selectedIds.length > 0 || focusId === null || focusId === fittingId) return [...selectedIds, fittingId];
  return [focusId, fittingId];
}

/** The rows from one to another, whichever stands first; the latter alone when the former is not on the page. */
export function rangeOf(shownIds: readonly string[], fromId: string, toId: string): readonly string[] {
  const from = shownIds.indexOf(fromId);
  const to = shownIds.indexOf(toId);
  if (to === -1) return [];
  if (from === -1) return [toId];
  return shownIds.slice(Math.min(from, to), Math.max(from, to) + 1);
}
