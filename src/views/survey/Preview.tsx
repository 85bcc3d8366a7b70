import { useState } from 'react';
import type { Decision, SurveyRow } from '../../project/tables/readSurvey';
import { surveyColumns, surveyKeys, type SurveyKey } from '../../project/tables/surveyColumns';
import { CheckField } from '../../ui/fields/CheckField';
import { ChoiceField } from '../../ui/fields/ChoiceField';
import { useFocusNext } from '../../ui/useFocusNext';
import { cellId, dropId, PreviewRow } from './PreviewRow';
import { rowsText } from './surveyTexts';
import type { Survey } from './useSurvey';

const pageRows = 100;

/** The rows as they were read, a hundred at a time; what is wrong stands at its cell and can be mended there. */
export function Preview({ survey }: { readonly survey: Survey }) {
  const { rows, edits } = survey;
  const [isBadOnly, setIsBadOnly] = useState(false);
  const [page, setPage] = useState(0);
  const focusNext = useFocusNext();
  // A row that was touched stays in sight once it is mended: nothing is taken from under somebody's hands.
  const wanted = isBadOnly ? rows.filter((row) => needsHand(row) || edits.texts.has(row.number)) : rows;
  const pages = Math.max(Math.ceil(wanted.length / pageRows), 1);
  const shownPage = Math.min(page, pages - 1);
  const shown = wanted.slice(shownPage * pageRows, (shownPage + 1) * pageRows);
  if (rows.length === 0) return null;
  const keys = keysOf(survey);
  const dropInstead = (i: number): string => dropId((shown[i + 1] ?? shown[i - 1])?.number ?? 0);
  return (
    <section className="survey-preview" aria-label="Rows">
      <div className="survey-preview-head">
        <CheckField label="Show only rows that need a hand" value={isBadOnly} onCommit={setIsBadOnly} />
        <NamesakeChoice survey={survey} />
        <Pages page={shownPage} pages={pages} count={wanted.length} onPage={setPage} />
      </div>
      <div className="survey-scroll" tabIndex={0} role="group" aria-label="Rows of the table">
        <table className="survey-table" aria-rowcount={wanted.length + 1}>
          <caption className="visually-hidden">Rows of the table as they were read</caption>
          <thead>
            <tr aria-rowindex={1}>
              <th scope="col">Row</th>
              {keys.map((key) => (
                <th key={key} scope="col">
                  {surveyColumns[key].label}
                </th>
              ))}
              <th scope="col">What becomes of it</th>
            </tr>
          </thead>
          <tbody>
            {shown.map((row, i) => (
              <PreviewRow
                key={row.number}
                row={row}
                rowIndex={shownPage * pageRows + i + 2}
                keys={keys}
                survey={survey}
                onDropped={() => {
                  focusNext(dropInstead(i));
                }}
                onOpened={() => {
                  focusNext(cellId(row.number, 'item'));
                }}
              />
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
}

function needsHand({ state }: SurveyRow): boolean {
  return state === 'bad' || state === 'asks';
}

/** The columns that the table has, and those in which something is missing. */
function keysOf({ mapping, rows, edits }: Survey): readonly SurveyKey[] {
  const used = new Set(mapping.columns.map(({ key }) => key));
  for (const { errors } of rows) for (const key of surveyKeys) if (key in errors) used.add(key);
  for (const texts of edits.texts.values()) for (const key of surveyKeys) if (key in texts) used.add(key);
  return surveyKeys.filter((key) => used.has(key));
}

const decisions: readonly { readonly value: Decision | ''; readonly label: string }[] = [
  { value: '', label: 'asked row by row' },
  { value: 'add', label: 'added as another' },
  { value: 'replace', label: 'replace the one in the ledger' },
  { value: 'skip', label: 'skipped' },
];

/** One answer for all rows whose names the ledger has; each may still have its own. */
function NamesakeChoice({ survey: { rows, edits, setEdits } }: { readonly survey: Survey }) {
  const count = rows.filter(({ namesake, state }) => namesake !== null && state !== 'unfilled').length;
  if (count === 0) return null;
  return (
    <ChoiceField
      label={`${rowsText(count)} with a name that the ledger has ${count === 1 ? 'is' : 'are'}`}
      value={edits.decisionForAll ?? ''}
      choices={decisions}
      onCommit={(value) => {
        setEdits({ ...edits, decisionForAll: value === '' ? null : value });
      }}
    />
  );
}

interface PagesProps {
  readonly page: number;
  readonly pages: number;
  readonly count: number;
  readonly onPage: (page: number) => void;
}

function Pages({ page, pages, count, onPage }: PagesProps) {
  if (pages < 2) return null;
  const last = Math.min((page + 1) * pageRows, count);
  return (
    <div className="survey-actions">
      <button
        type="button"
        className="plain-action"
        aria-disabled={page === 0}
        onClick={() => {
          onPage(Math.max(page - 1, 0));
        }}
      >
        Rows before
      </button>
      <span role="status">
        {page * pageRows + 1} to {last} of {rowsText(count)}
      </span>
      <button
        type="button"
        className="plain-action"
        aria-disabled={page >= pages - 1}
        onClick={() => {
          onPage(Math.min(page + 1, pages - 1));
        }}
      >
        Rows after
      </button>
    </div>
  );
}
