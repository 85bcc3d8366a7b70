import type { SliceCreator } from './appState';
import { rangeOf, toggled } from './selection';

/** Which state of the boat the ledger shows. */
export type Shown = 'before' | 'both' | 'after';

/** What the pane beside the ledger holds: the working of the selected row, or one of the places where things change. */
export type SidePane = 'working' | 'edit' | 'plan' | 'condition' | 'methods';

export interface ReadingSlice {
  readonly shown: Shown;
  readonly sidePane: SidePane;
  /** The row that has the focus and whose working is shown. */
  readonly selectedFittingId: string | null;
  /** Rows picked out together, in the order they were picked; empty when only the focus row counts. */
  readonly selectedIds: readonly string[];
  /** Where a range begins: the row that was last picked by itself. */
  readonly anchorId: string | null;
  show(shown: Shown): void;
  showPane(sidePane: SidePane): void;
  /** Moves the focus to one row; rows picked out together are let go. */
  select(fittingId: string | null): void;
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
  selectedFittingId: null,
  selectedIds: [],
  anchorId: null,

  show: (shown) => {
    set({ shown });
  },
  showPane: (sidePane) => {
    set({ sidePane });
  },
  select: (selectedFittingId) => {
    set({ selectedFittingId, anchorId: selectedFittingId, selectedIds: [] });
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
