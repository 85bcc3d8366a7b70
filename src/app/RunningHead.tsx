import { useAppStore, useHistory } from '../state/appStore';
import { openDialog } from './dialogs/shell';
import { FileChoice } from './FileChoice';
import { useKeeping } from './keep/keeping';
import { saveLedgerCsv } from './keep/saveLedgerCsv';
import { saveToFile } from './keep/saveToFile';
import { usePlace } from './place';
import { PlaceLinks } from './PlaceLinks';
import { places } from './places';

export function RunningHead() {
  return (
    <header className="running-head">
      <span className="word-mark">
        <svg width="20" height="20" viewBox="0 0 20 20" aria-hidden="true">
          <path className="mark-side" d="M3 2 17 8 13 18" />
          <path className="mark-wind" d="M3 2 13 18" />
        </svg>
        Windtoll
      </span>
      <PlaceHeading />
      <PlaceLinks />
      <OpenName />
      <div className="file-actions">
        <HistoryActions />
        <FileChoice />
        <button type="button" className="plain-action" title="Ctrl S" onClick={saveToFile}>
          Save to a file
        </button>
        <button
          type="button"
          className="plain-action ledger-csv"
          title="The ledger, for a spreadsheet"
          onClick={() => void saveLedgerCsv()}
        >
          Save as CSV
        </button>
        <DialogAction words="Projects" dialog="projects" />
        <DialogAction words="New project" dialog="new" isWideOnly />
        <DialogAction words="Units" dialog="units" />
        <DialogAction words="Keys" dialog="keys" title="?" isWideOnly />
      </div>
    </header>
  );
}

/** Plain to see from the words of the places and what stands below; a screen reader meets it first. */
function PlaceHeading() {
  const current = usePlace(({ place }) => place);
  return <h1 className="visually-hidden">{places.find(({ id }) => id === current)?.heading}</h1>;
}

/** What is open, and how it stands with the storage. */
function OpenName() {
  const name = useAppStore((state) => state.project?.name ?? '');
  const isDemo = useAppStore(
    ({ opening, project }) => opening?.origin === 'demo' && opening.project === project,
  );
  const line = useKeeping((state) => state.line);
  return (
    <div className="open-name muted">
      <span className="file-name" title={name}>
        {isDemo ? 'the demo, an invented boat' : name}
      </span>
      <span className="save-status" role="status">
        {line}
      </span>
    </div>
  );
}

function HistoryActions() {
  const { canUndo, canRedo, undoLabel, redoLabel } = useHistory();
  return (
    <>
      <HistoryAction words="Undo" can={canUndo} label={undoLabel} onAct={undo} />
      <HistoryAction words="Redo" can={canRedo} label={redoLabel} onAct={redo} />
    </>
  );
}

function undo(): void {
  useAppStore.getState().undo();
}

function redo(): void {
  useAppStore.getState().redo();
}

interface HistoryActionProps {
  readonly words: string;
  readonly can: boolean;
  readonly label: string | null;
  readonly onAct: () => void;
}

/** Not `disabled` where there is nothing to do: that would throw the focus away after the last step. */
function HistoryAction({ words, can, label, onAct }: HistoryActionProps) {
  return (
    <button
      type="button"
      className="plain-action"
      aria-disabled={!can}
      title={can ? `${words}: ${label ?? ''}` : `Nothing to ${words.toLowerCase()}`}
      onClick={() => {
        if (can) onAct();
      }}
    >
      {words}
    </button>
  );
}

interface DialogActionProps {
  readonly words: string;
  readonly dialog: Parameters<typeof openDialog>[0];
  readonly title?: string;
  /** A phone has no keyboard, and makes a new project from the list of projects. */
  readonly isWideOnly?: boolean;
}

function DialogAction({ words, dialog, title, isWideOnly = false }: DialogActionProps) {
  return (
    <button
      type="button"
      className={isWideOnly ? 'plain-action wide-only' : 'plain-action'}
      title={title}
      onClick={() => {
        openDialog(dialog);
      }}
    >
      {words}
    </button>
  );
}
