import { useCallback, useEffect } from 'react';
import { useAppStore } from '../state/appStore';
import type { SidePane } from '../state/readingSlice';
import { OneOfWords, type Option } from '../ui/OneOf';
import { LedgerPane } from '../views/ledger/LedgerPane';
import type { RowInPlaceProps } from '../views/ledger/RowInPlace';
import { MarginPane } from '../views/margin/MarginPane';
import { Announcer } from './Announcer';
import { OpenDialog } from './dialogs/OpenDialog';
import { FailureLine } from './FailureLine';
import { openAtStart, useKeeping } from './keep/keeping';
import { LazyPart, preload, type Loader } from './LazyPart';
import { loadWorking, sidePanes } from './lazyPanes';
import { RunningHead } from './RunningHead';
import { SidePaneView } from './SidePaneView';
import { bringUp, useSwap } from './swap';
import { applyAddress, useAddress } from './useAddress';
import { useFileDrop } from './useFileDrop';
import { useKeys } from './useKeys';
import { useReadersUnits } from './useReadersUnits';
import './lines.css';
import './runningHead.css';

/** Where the page is too narrow for both, the ledger and the pane beside it swap. */
type Pane = 'ledger' | SidePane;

const panes: readonly Option<Pane>[] = [
  { id: 'ledger', label: 'Ledger' },
  ...sidePanes.map(({ id, label }) => ({ id, label })),
];

const noProps = {};
const loadEmptyLedger: Loader<object> = async () => (await import('./EmptyLedger')).EmptyLedger;
const loadKeepLines: Loader<object> = async () => (await import('./keep/KeepLines')).KeepLines;

const loadRowInPlace: Loader<RowInPlaceProps> = async () =>
  (await import('../views/ledger/RowInPlace')).RowInPlace;

/** Name and size as fields in a row of the ledger. */
function renderInPlace(props: RowInPlaceProps) {
  return <LazyPart load={loadRowInPlace} props={props} name="Editing in the row" />;
}

export function App() {
  const isSideUp = useSwap((state) => state.isSideUp);
  const bringUpRow = useBringingUp();
  const sidePane = useAppStore((state) => state.sidePane);
  const hasProject = useAppStore((state) => state.project !== null);
  const isEmpty = useAppStore((state) => state.project?.fittings.length === 0);
  const readersUnits = useReadersUnits();
  const isOver = useFileDrop();
  useAddress();
  useStart();
  useTitle();
  useKeys();
  return (
    <div className={isOver ? 'page dropping' : 'page'}>
      <RunningHead />
      <FailureLine />
      <Keeping />
      <main className="sheet" data-pane={isSideUp ? 'working' : 'ledger'}>
        {hasProject ? (
          <>
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
          </>
        ) : (
          <p className="opening muted">Opening the project.</p>
        )}
      </main>
      <OpenDialog />
      <Announcer />
      {isOver && <p className="drop-line">Let go to open the project file.</p>}
    </div>
  );
}

/** Says what the storage has to say; silent while all is well. */
function Keeping() {
  const hasWords = useKeeping(
    ({ status, findings }) => findings.length > 0 || ['failed', 'unkept', 'conflict'].includes(status.kind),
  );
  return (
    <div className="keeping" role="status" aria-label="Storage">
      {hasWords && <LazyPart load={loadKeepLines} props={noProps} name="The word of the storage" />}
    </div>
  );
}

const narrow = '(max-width: 999px)';

/** Where the page is narrow, brings up what was asked for; answers with what brings up the row that was picked. */
function useBringingUp(): () => void {
  useEffect(
    () =>
      // A key or a button of the ledger may ask for a pane.
      useAppStore.subscribe((state, previous) => {
        const isAsked =
          (state.isFirstFieldWanted && !previous.isFirstFieldWanted) ||
          (state.openField !== null && state.openField !== previous.openField);
        if (isAsked || state.sidePane !== previous.sidePane) bringUp('side');
      }),
    [],
  );
  return useCallback(() => {
    const store = useAppStore.getState();
    const isNarrow = typeof window.matchMedia === 'function' && window.matchMedia(narrow).matches;
    // What was picked is a row: a pane about something else would not answer.
    if (isNarrow && store.sidePane !== 'edit') store.showPane('working');
    bringUp('side');
  }, []);
}

/** Opens what was open last or the demo, and in it what the address asks for. */
function useStart(): void {
  useEffect(() => {
    preload(loadWorking);
    if (useAppStore.getState().project !== null) return;
    const wanted = window.location.hash;
    void openAtStart(() => {
      if (wanted === '') return;
      window.history.replaceState(null, '', wanted);
      applyAddress();
    });
  }, []);
}

function useTitle(): void {
  const boatName = useAppStore((state) => state.project?.boat.name);
  useEffect(() => {
    document.title = boatName === undefined ? 'Windtoll' : `${boatName} – drag ledger – Windtoll`;
  }, [boatName]);
}
