import { useEffect } from 'react';
import { useAppStore } from '../state/appStore';
import { Announcer } from './Announcer';
import { OpenDialog } from './dialogs/OpenDialog';
import { FailureLine } from './FailureLine';
import { openAtStart, useKeeping } from './keep/keeping';
import { LazyPart, preload, type Loader } from './LazyPart';
import { loadWorking } from './lazyPanes';
import { LedgerPlace } from './LedgerPlace';
import { goTo, usePlace } from './place';
import type { PlaceId } from './placeAddress';
import { places } from './places';
import { PlaceView } from './PlaceView';
import { RunningHead } from './RunningHead';
import { bringUp } from './swap';
import { TypingForm } from './TypingForm';
import { applyAddress, useAddress } from './useAddress';
import { useFileDrop } from './useFileDrop';
import { useKeys } from './useKeys';
import { useReadersUnits } from './useReadersUnits';
import './lines.css';
import './runningHead.css';

const noProps = {};
const loadKeepLines: Loader<object> = async () => (await import('./keep/KeepLines')).KeepLines;

export function App() {
  useReadersUnits();
  const isOver = useFileDrop();
  useAddress();
  useStart();
  useTitle();
  useKeys();
  useAskedPanes();
  return (
    <div className={isOver ? 'page dropping' : 'page'}>
      <RunningHead />
      <FailureLine />
      <Keeping />
      <Sheet />
      <OpenDialog />
      <Announcer />
      <TypingForm />
      {isOver && <p className="drop-line">Let go to open the project file.</p>}
    </div>
  );
}

/** The place that the reader is in; only the ledger waits for the project. */
function Sheet() {
  const isInLedger = usePlace(({ place }) => place === 'ledger');
  const hasProject = useAppStore((state) => state.project !== null);
  if (!isInLedger) return <PlaceView />;
  if (hasProject) return <LedgerPlace />;
  return (
    <main className="sheet">
      <p className="opening muted">Opening the project.</p>
    </main>
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

/** Opens what was open last or the demo, and in it what the address asks for. */
function useStart(): void {
  useEffect(() => {
    if (usePlace.getState().place === 'ledger') preload(loadWorking);
    if (useAppStore.getState().project !== null) return;
    const wanted = window.location.hash;
    void openAtStart(() => {
      // Another place is there already, and may have been typed in.
      if (wanted === '' || usePlace.getState().place !== 'ledger') return;
      window.history.replaceState(null, '', wanted);
      applyAddress();
    });
  }, []);
}

/** Goes to a pane that a key, a button of the ledger or a line of the margin asks for. */
function useAskedPanes(): void {
  useEffect(
    () =>
      useAppStore.subscribe((state, previous) => {
        const isAsked =
          (state.isFirstFieldWanted && !previous.isFirstFieldWanted) ||
          (state.openField !== null && state.openField !== previous.openField);
        if (!isAsked && state.sidePane === previous.sidePane) return;
        goTo('ledger');
        bringUp('side');
      }),
    [],
  );
}

function useTitle(): void {
  const boatName = useAppStore((state) => state.project?.boat.name);
  const place = usePlace((state) => state.place);
  useEffect(() => {
    document.title = titleOf(place, boatName);
  }, [boatName, place]);
}

function titleOf(place: PlaceId, boatName: string | undefined): string {
  if (place !== 'ledger') return `${places.find(({ id }) => id === place)?.heading ?? ''} – Windtoll`;
  return boatName === undefined ? 'Windtoll' : `${boatName} – drag ledger – Windtoll`;
}
