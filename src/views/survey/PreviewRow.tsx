import { useId } from 'react';
import type { Decision, SurveyRow } from '../../project/tables/readSurvey';
import { surveyColumns, type SurveyKey } from '../../project/tables/surveyColumns';
import { withDropped, withText } from '../../project/tables/surveyDraft';
import { stateText } from './surveyTexts';
import type { Survey } from './useSurvey';

interface PreviewRowProps {
  readonly row: SurveyRow;
  readonly rowIndex: number;
  readonly keys: readonly SurveyKey[];
  readonly survey: Survey;
  /** The row is going, or its text gives way to fields: what has the focus goes with it. */
  readonly onDropped: () => void;
  readonly onOpened: () => void;
}

export function dropId(row: number): string {
  return `survey-drop-${row}`;
}

export function cellId(row: number, cell: SurveyKey): string {
  return `survey-cell-${row}-${cell}`;
}

/** One row: text where all is well, fields where something has to be mended or was. */
export function PreviewRow({ row, rowIndex, keys, survey, onDropped, onOpened }: PreviewRowProps) {
  const { edits, setEdits } = survey;
  const isOpen = row.state === 'bad' || edits.texts.has(row.number);
  return (
    <tr className={`survey-row survey-row-${row.state}`} aria-rowindex={rowIndex}>
      <th scope="row">{row.number}</th>
      {keys.map((key) => (
        <td key={key}>
          {isOpen ? (
            <CellField
              row={row}
              cell={key}
              onText={(text) => {
                setEdits(withText(edits, row.number, key, text));
              }}
            />
          ) : (
            shortened(row.texts[key])
          )}
        </td>
      ))}
      <td className="survey-fate">
        {stateText(row)}
        {row.namesake !== null && row.state !== 'bad' && row.state !== 'unfilled' && (
          <DecisionField row={row} survey={survey} />
        )}
        {!isOpen && (
          <button
            type="button"
            className="plain-action"
            aria-label={`Change row ${row.number}`}
            onClick={() => {
              onOpened();
              setEdits(withText(edits, row.number, 'item', row.texts.item));
            }}
          >
            Change
          </button>
        )}
        <button
          type="button"
          className="plain-action"
          aria-label={`Drop row ${row.number}`}
          id={dropId(row.number)}
          onClick={() => {
            onDropped();
            setEdits(withDropped(edits, [row.number]));
          }}
        >
          Drop
        </button>
      </td>
    </tr>
  );
}

const mostShown = 300;

/** A cell that holds a book would bury the rows below. */
function shortened(text: string): string {
  return text.length > mostShown ? `${text.slice(0, mostShown)}…` : text;
}

interface CellFieldProps {
  readonly row: SurveyRow;
  readonly cell: SurveyKey;
  readonly onText: (text: string) => void;
}

/** A cell in the words of the table; its error stands under it. */
function CellField({ row, cell, onText }: CellFieldProps) {
  const id = useId();
  const error = row.errors[cell];
  return (
    <div className={error === undefined ? undefined : 'field-wrong'}>
      <input
        id={cellId(row.number, cell)}
        type="text"
        className="field-input survey-cell"
        aria-label={`${surveyColumns[cell].label}, row ${row.number}`}
        aria-invalid={error === undefined ? undefined : true}
        aria-describedby={error === undefined ? undefined : id}
        autoComplete="off"
        value={row.texts[cell]}
        onChange={(event) => {
          onText(event.target.value);
        }}
      />
      <div id={id} className="field-problem" aria-live="polite">
        {error}
      </div>
    </div>
  );
}

const choices: readonly { readonly value: Decision; readonly label: string }[] = [
  { value: 'add', label: 'add as another' },
  { value: 'replace', label: 'replace it' },
  { value: 'skip', label: 'skip' },
];

/** What to do with a row whose name the ledger has. Until somebody says it, nothing. */
function DecisionField({ row, survey: { edits, setEdits } }: Pick<PreviewRowProps, 'row' | 'survey'>) {
  return (
    <select
      className="survey-decision"
      aria-label={`What to do with row ${row.number}, ${row.texts.item}`}
      value={row.decision ?? ''}
      onChange={({ target }) => {
        const decision = choices.find(({ value }) => value === target.value)?.value;
        const next = new Map(edits.decisions);
        if (decision === undefined) next.delete(row.number);
        else next.set(row.number, decision);
        setEdits({ ...edits, decisions: next });
      }}
    >
      <option value="">choose</option>
      {choices.map(({ value, label }) => (
        <option key={value} value={value}>
          {label}
        </option>
      ))}
    </select>
  );
}
