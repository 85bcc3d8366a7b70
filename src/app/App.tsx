import { useCallback, useEffect, useState } from 'react';
import { useAppStore } from '../state/appStore';
import { OneOfWords, type Option } from '../ui/OneOf';
import { LedgerPane } from '../views/ledger/LedgerPane';
import { MarginPane } from '../views/margin/MarginPane';
import { WorkingPane } from '../views/working/WorkingPane';
import { demoFileName, loadDemo } from './demo';
import { FailureLine } from './FailureLine';
import { FileActions } from './FileActions';
import { applyAddress, useAddress } from './useAddress';
import { useFileDrop } from './useFileDrop';

/** Where the page is too narrow for both, ledger and working swap. */
type Pane = 'ledger' | 'working';

const panes: readonly Option<Pane>[] = [
  { id: 'ledger', label: 'Ledger' },
  { id: 'working', label: 'Working' },
];

export function App() {
  const [pane, setPane] = useState<Pane>('ledger');
  const project = useAppStore((state) => state.project);
  const isOver = useFileDrop();
  const bringUpWorking = useCallback(() => {
    setPane('working');
  }, []);
  useAddress();
  useDemoAtStart();
  useTitle();
  return (
    <div className={isOver ? 'page dropping' : 'page'}>
      <RunningHead />
      <FailureLine />
      <main className="sheet" data-pane={pane}>
        {project === null ? (
          <p className="opening muted">Opening the demo.</p>
        ) : (
          <>
            <section className="margin-place" aria-label="Condition and plan">
              <MarginPane />
            </section>
            <div className="pane-swap">
              <OneOfWords label="Pane" options={panes} chosenId={pane} onChoose={setPane} />
            </div>
            <section className="ledger-place" aria-label="Ledger">
              <LedgerPane onPick={bringUpWorking} />
            </section>
            <section className="working-place" aria-label="Working of the selected row" tabIndex={0}>
              <WorkingPane />
            </section>
          </>
        )}
      </main>
      {isOver && <p className="drop-line">Let go to open the project file.</p>}
    </div>
  );
}

function RunningHead() {
  const isDemoOpen = useAppStore((state) => state.fileName === demoFileName);
  return (
    <header className="running-head">
      <span className="word-mark">
        <svg width="20" height="20" viewBox="0 0 20 20" aria-hidden="true">
          <path className="mark-side" d="M3 2 17 8 13 18" />
          <path className="mark-wind" d="M3 2 13 18" />
        </svg>
        Windtoll
      </span>
      <h1>Drag ledger</h1>
      <FileActions isDemoOpen={isDemoOpen} onOpenDemo={() => void openDemo()} />
    </header>
  );
}

async function openDemo(): Promise<void> {
  const store = useAppStore.getState();
  try {
    store.openText(demoFileName, await loadDemo());
  } catch {
    store.refuseFile(
      demoFileName,
      'the demo could not be loaded; reload the page, or open a file of your own',
    );
  }
}

/** Opens the demo, and in it what the address asks for. */
function useDemoAtStart(): void {
  useEffect(() => {
    if (useAppStore.getState().project !== null) return;
    const wanted = window.location.hash;
    void openDemo().then(() => {
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
