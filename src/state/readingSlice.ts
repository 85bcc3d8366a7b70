import type { SliceCreator } from './appState';
import { rangeOf, toggled } from './selection';

/** Which state of the boat the ledger shows. */
export type Shown = 'before' | 'both' | 'after';

/** What the pane beside the ledger holds: the working of the selected row, the picture of the boat, or one of the places where things change. */
export type SidePane = 'working' | 'picture' | 'edit' | 'plan' | 'condition' | 'methods';

export interface ReadingSlice {
  readonly shown: Shown;
  readonly sidePane: SidePane;
  /** True until the editor that was asked for has put the focus into its first field: it may still be loading. */
  readonly isFirstFieldWanted: boolean;
  /** The field of the condition editor that a line elsewhere asked for, until it has the focus; null for none. */
  readonly openField: string | null;
  /** True while the list of fittings to add from stands open. */
  readonly isAdding: boolean;
  /** The row that has the focus and whose working is shown. */
  readonly selectedFittingId: string | null;
  /** Rows picked out together, in the order they were picked; empty when only the focus row counts. */
  readonly selectedIds: readonly string[];
  /** Where a range begins: the row that was last picked by itself. */
  readonly anchorId: string | null;
  show(shown: Shown): void;
  showPane(sidePane: SidePane): void;
  /** Shows the editor of the selected row and asks it to take the focus. */
  openEdit(): void;
  /** The editor's first field has the focus. */
  reachedFirstField(): void;
  /** Shows the condition editor and asks one of its fields, such as `wind.speedMs`, to take the focus. */
  openConditionAt(openField: string): void;
  /** The field that was asked for has the focus, or is not there. */
  reachedOpenField(): void;
  setAdding(isAdding: boolean): void;
  /** Moves the focus to one row; rows picked out together are let go. */
  select(fittingId: string | null): void;
  /** Moves the focus to one row and lets nothing go: on the way to the next row to be picked out. */
  moveFocus(fittingId: string): void;
  /** Takes a row into those picked out, or out of them, and moves the focus there. The focus row joins the first. */
  toggleSelected(fittingId: string): void;
  /**
   * Picks out everything from the anchor to a row and moves the focus there.
   * @param shownIds the rows in the order in which they stand on the page.
   */
  selectRange(toFittingId: string, shownIds: readonly string[]): void;
  clearSelected(): void;
}

export const readingSlice: SliceCreator<ReadingSlice> = (set) => ({
  shown: 'both',
  sidePane: 'working',
  isFirstFieldWanted: false,
  openField: null,
  isAdding: false,
  selectedFittingId: null,
  selectedIds: [],
  anchorId: null,

  show: (shown) => {
    set({ shown });
  },
  showPane: (sidePane) => {
    set({ sidePane });
  },
  openEdit: () => {
    set({ sidePane: 'edit', isFirstFieldWanted: true });
  },
  reachedFirstField: () => {
    set({ isFirstFieldWanted: false });
  },
  openConditionAt: (openField) => {
    set({ sidePane: 'condition', openField });
  },
  reachedOpenField: () => {
    set({ openField: null });
  },
  setAdding: (isAdding) => {
    set({ isAdding });
  },
  select: (selectedFittingId) => {
    set({ selectedFittingId, anchorId: selectedFittingId, selectedIds: [] });
  },
  moveFocus: (selectedFittingId) => {
    set({ selectedFittingId });
  },
  toggleSelected: (fittingId) => {
    set(({ selectedIds, selectedFittingId }) => ({
      selectedIds: toggled(selectedIds, selectedFittingId, fittingId),
      selectedFittingId: fittingId,
      anchorId: fittingId,
    }));
  },
  selectRange: (toFittingId, shownIds) => {
    set(({ anchorId, selectedFittingId }) => {
      const from = anchorId ?? selectedFittingId ?? toFittingId;
      return {
        selectedIds: rangeOf(shownIds, from, toFittingId),
        selectedFittingId: toFittingId,
        anchorId: from,
      };
    });
  },
  clearSelected: () => {
    set({ selectedIds: [] });
  },
});
