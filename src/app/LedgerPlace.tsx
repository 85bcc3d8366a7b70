import { useCallback } from 'react';
import { useAppStore } from '../state/appStore';
import type { SidePane } from '../state/readingSlice';
import { OneOfWords, type Option } from '../ui/OneOf';
import { LedgerPane } from '../views/ledger/LedgerPane';
import type { RowInPlaceProps } from '../views/ledger/RowInPlace';
import { MarginPane } from '../views/margin/MarginPane';
import { LazyPart, type Loader } from './LazyPart';
import { sidePanes } from './lazyPanes';
import { SidePaneView } from './SidePaneView';
import { bringUp, useSwap } from './swap';
import { useReadersUnits } from './useReadersUnits';

/** Where the page is too narrow for both, the ledger and the pane beside it swap. */
type Pane = 'ledger' | SidePane;

const panes: readonly Option<Pane>[] = [
  { id: 'ledger', label: 'Ledger' },
  ...sidePanes.map(({ id, label }) => ({ id, label })),
];

const noProps = {};
const loadEmptyLedger: Loader<object> = async () => (await import('./EmptyLedger')).EmptyLedger;
const loadRowInPlace: Loader<RowInPlaceProps> = async () =>
  (await import('../views/ledger/RowInPlace')).RowInPlace;

/** Name and size as fields in a row of the ledger. */
function renderInPlace(props: RowInPlaceProps) {
  return <LazyPart load={loadRowInPlace} props={props} name="Editing in the row" />;
}

/** The home place: margin, ledger and one pane beside it. */
export function LedgerPlace() {
  const isSideUp = useSwap((state) => state.isSideUp);
  const bringUpRow = useBringingUp();
  const sidePane = useAppStore((state) => state.sidePane);
  const isEmpty = useAppStore((state) => state.project?.fittings.length === 0);
  const readersUnits = useReadersUnits();
  return (
    <main className="sheet" data-pane={isSideUp ? 'working' : 'ledger'}>
      <section className="margin-place" aria-label="Condition and plan">
        <MarginPane />
      </section>
      <div className="pane-swap">
        <OneOfWords
          label="Pane"
          options={panes}
          chosenId={isSideUp ? sidePane : 'ledger'}
          onChoose={(pane) => {
            bringUp(pane === 'ledger' ? 'ledger' : 'side');
            if (pane !== 'ledger') useAppStore.getState().showPane(pane);
          }}
        />
      </div>
      <section className="ledger-place" aria-label="Ledger">
        {isEmpty ? (
          <LazyPart load={loadEmptyLedger} props={noProps} name="The first step" />
        ) : (
          <LedgerPane key={readersUnits} onPick={bringUpRow} renderInPlace={renderInPlace} />
        )}
      </section>
      <SidePaneView />
    </main>
  );
}

const narrow = '(max-width: 999px)';

/** Where the page is narrow, what brings up the row that was picked. */
function useBringingUp(): () => void {
  return useCallback(() => {
    const store = useAppStore.getState();
    const isNarrow = typeof window.matchMedia === 'function' && window.matchMedia(narrow).matches;
    // What was picked is a row: a pane about something else would not answer.
    if (isNarrow && store.sidePane !== 'edit') store.showPane('working');
    bringUp('side');
  }, []);
}
