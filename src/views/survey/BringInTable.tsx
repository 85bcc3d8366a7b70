import { useEffect, useId, useRef, useState } from 'react';
import { importSurvey, newZoneNames } from '../../project/tables/importSurvey';
import { withDropped, noDraft } from '../../project/tables/surveyDraft';
import type { Project } from '../../project/file/schema';
import { useAppStore } from '../../state/appStore';
import {
  bringIn,
  putAway,
  setPastedText,
  usePastedText,
  usePutAway,
  useSurveyTable,
  type SurveyTable,
} from '../../state/surveyTable';
import { MappingTable } from './MappingTable';
import { Preview } from './Preview';
import { rowsText, standText } from './surveyTexts';
import { textOfFile } from './tableFile';
import { useSurvey, type Survey } from './useSurvey';

const headId = 'survey-in-head';

interface BringInTableProps {
  readonly project: Project;
  readonly onShowFitting: ((fittingId: string) => void) | undefined;
}

/** A filled table comes in: a file or pasted cells, its columns, its rows, and the import. */
export function BringInTable({ project, onShowFitting }: BringInTableProps) {
  const table = useSurveyTable();
  const [said, setSaid] = useState('');
  const [shownId, setShownId] = useState<string | null>(null);
  useHeadFocus(table !== null);
  return (
    <section className="survey-part survey-screen" aria-labelledby={headId}>
      <h3 id={headId} tabIndex={-1}>
        Bring in a table
      </h3>
      <p className="survey-said" role="status">
        {said}
      </p>
      {shownId !== null && onShowFitting !== undefined && (
        <p>
          <button
            type="button"
            className="plain-action"
            onClick={() => {
              onShowFitting(shownId);
            }}
          >
            Show the first of them in the ledger
          </button>
        </p>
      )}
      {table === null ? (
        <Source onSaid={setSaid} />
      ) : (
        <TableInWork project={project} table={table} onSaid={setSaid} onImported={setShownId} />
      )}
    </section>
  );
}

/** Where a table comes or goes, the button that did it goes too: the head takes the focus. */
function useHeadFocus(hasTable: boolean): void {
  const had = useRef(hasTable);
  useEffect(() => {
    if (had.current === hasTable) return;
    had.current = hasTable;
    document.getElementById(headId)?.focus();
  }, [hasTable]);
}

/** From so many characters on a paste is read at once: browsers take minutes to lay thousands of lines out in a field. */
const longPaste = 20_000;

/** Where a table comes from. Pasted text stays in its field until it is read. */
function Source({ onSaid }: { readonly onSaid: (words: string) => void }) {
  const text = usePastedText();
  const [problem, setProblem] = useState('');
  const last = usePutAway((state) => state.table);
  const id = useId();
  const take = (taken: string, words: string): void => {
    bringIn({ text: taken, draft: noDraft });
    onSaid(words);
  };
  const readFile = async (file: File): Promise<void> => {
    const read = await textOfFile(file);
    if (read.ok) take(read.text, read.said);
    else setProblem(read.message);
  };
  return (
    <div className="survey-source">
      <div className="survey-actions">
        <label className="plain-action survey-file">
          Choose a CSV file
          <input
            type="file"
            className="visually-hidden"
            accept=".csv,.tsv,.txt,text/csv,text/tab-separated-values,text/plain"
            onChange={(event) => {
              const input = event.currentTarget;
              const [file] = input.files ?? [];
              if (file !== undefined) void readFile(file);
              input.value = '';
            }}
          />
        </label>
        {last !== null && (
          <button
            type="button"
            className="plain-action"
            onClick={() => {
              bringIn(last);
              onSaid('The table that was put away is back.');
            }}
          >
            Bring the last table back
          </button>
        )}
      </div>
      <label htmlFor={id}>Or copy the cells in a spreadsheet, heads included, and paste them here.</label>
      <textarea
        id={id}
        className="field-input survey-paste"
        rows={6}
        value={text}
        spellCheck={false}
        aria-describedby={`${id}-problem`}
        aria-invalid={problem !== ''}
        onPaste={(event) => {
          const pasted = event.clipboardData.getData('text/plain');
          if (pasted.length < longPaste || text.trim() !== '') return;
          event.preventDefault();
          take(pasted, '');
        }}
        onChange={(event) => {
          setPastedText(event.target.value);
          setProblem('');
        }}
      />
      <p id={`${id}-problem`} role="alert" className="survey-problem">
        {problem}
      </p>
      <div>
        <button
          type="button"
          className="plain-action"
          onClick={() => {
            if (text.trim() === '') setProblem('Paste a table first: there is no text yet.');
            else take(text, '');
          }}
        >
          Read the table
        </button>
      </div>
    </div>
  );
}

interface TableInWorkProps {
  readonly project: Project;
  readonly table: SurveyTable;
  readonly onSaid: (words: string) => void;
  readonly onImported: (firstId: string | null) => void;
}

function TableInWork({ project, table, onSaid, onImported }: TableInWorkProps) {
  const reading = useSurvey(project, table);
  if (!reading.ok) {
    return (
      <>
        <p role="alert">{reading.message}</p>
        <PutAway table={table} onSaid={onSaid} />
      </>
    );
  }
  const { survey } = reading;
  return (
    <>
      <MappingTable survey={survey} />
      <Preview survey={survey} />
      <ImportActions survey={survey} table={table} onSaid={onSaid} onImported={onImported} />
    </>
  );
}

function PutAway({ table, onSaid }: Pick<TableInWorkProps, 'table' | 'onSaid'>) {
  return (
    <button
      type="button"
      className="plain-action"
      onClick={() => {
        putAway(table);
        onSaid('The table is put away. It can be brought back until the page is closed.');
      }}
    >
      Put the table away
    </button>
  );
}

interface ImportActionsProps extends Omit<TableInWorkProps, 'project'> {
  readonly survey: Survey;
}

/** Good rows go in as one step of undo; the others stay. */
function ImportActions({ survey, table, onSaid, onImported }: ImportActionsProps) {
  const { rows, edits, setEdits } = survey;
  const [problem, setProblem] = useState('');
  const good = rows.filter(({ state }) => state === 'good');
  const zones = newZoneNames(rows);
  const importGood = (): void => {
    const store = useAppStore.getState();
    const answer = store.edit(`Import ${rowsText(good.length)}`, (project) => importSurvey(project, good));
    if ('refused' in answer) {
      setProblem(`Not imported: ${answer.refused.message}.`);
      return;
    }
    setProblem('');
    const isSame = answer.project === store.project;
    onSaid(
      isSame
        ? `Nothing changed: ${rowsText(good.length)} say what the ledger has.`
        : `Imported: ${rowsText(good.length)}. Undo takes that back.`,
    );
    onImported(answer.newIds?.[0] ?? good[0]?.namesake?.id ?? null);
    const done = withDropped(
      edits,
      good.map(({ number }) => number),
    );
    const waits = rows.some(({ state }) => state === 'bad' || state === 'asks');
    if (waits) setEdits(done);
    else putAway(table);
  };
  return (
    <div className="survey-import">
      <p role="status">{standText(rows)}</p>
      {zones.length > 0 && <p>New zones will be made: {zones.join(', ')}.</p>}
      <p role="alert" className="survey-problem">
        {problem}
      </p>
      <div className="survey-actions">
        {good.length > 0 && (
          <button type="button" className="plain-action" onClick={importGood}>
            Import {rowsText(good.length)}
          </button>
        )}
        {edits.dropped.size > 0 && (
          <button
            type="button"
            className="plain-action"
            onClick={() => {
              setEdits({ ...edits, dropped: new Set() });
            }}
          >
            Bring back {rowsText(edits.dropped.size)} imported or dropped
          </button>
        )}
        <PutAway table={table} onSaid={onSaid} />
      </div>
    </div>
  );
}
