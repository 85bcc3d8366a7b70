import {
  dimensionOf,
  unitChoices,
  bodyOf,
  type ColumnMeaning,
  type Mapping,
} from '../../project/tables/mapColumns';
import { delimiterNames } from '../../project/tables/readTable';
import { surveyColumns, surveyKeys, type SurveyKey } from '../../project/tables/surveyColumns';
import { surveyShapes } from '../../project/tables/surveyWords';
import { ChoiceField } from '../../ui/fields/ChoiceField';
import { unitSign } from '../../units/printIn';
import { isUnit } from '../../units/unitTable';
import type { Survey } from './useSurvey';

const none = '';

const meanings = [
  { value: none, label: 'not used' },
  ...surveyKeys.map((key) => ({ value: key, label: surveyColumns[key].label })),
];

/** What each column is, as it was found and may be changed. */
export function MappingTable({ survey }: { readonly survey: Survey }) {
  const { table, mapping, questions } = survey;
  const [first] = bodyOf(table, mapping);
  return (
    <section className="survey-mapping" aria-label="Columns">
      <p className="fine">
        Split at {delimiterNames[table.delimiter]}.
        {table.areQuotesLiteral && ' A quotation mark never closes: all of them are read as they stand.'}
      </p>
      {questions.some(({ kind }) => kind === 'item') && (
        <p role="alert" className="survey-problem">
          Choose the column that names the items.
        </p>
      )}
      <ul className="survey-columns">
        {mapping.columns.map((_, column) => (
          <li key={column}>
            <ColumnFields survey={survey} column={column} sample={first?.cells[column] ?? ''} />
          </li>
        ))}
      </ul>
      <TableFields survey={survey} />
    </section>
  );
}

interface ColumnFieldsProps {
  readonly survey: Survey;
  readonly column: number;
  readonly sample: string;
}

function ColumnFields({ survey, column, sample }: ColumnFieldsProps) {
  const { mapping, questions, setMapping } = survey;
  const { key, unit } = mapping.columns[column] ?? { key: null, unit: null };
  const head = mapping.heads[column] ?? '';
  const name = head === '' ? `Column ${column + 1}` : head;
  const isAsked = questions.some((question) => question.kind === 'unit' && question.column === column);
  return (
    <>
      <div className="survey-head">
        {name} <span className="muted">{sample.trim() === '' ? 'empty' : sample.trim()}</span>
      </div>
      <ChoiceField
        label={`What ${name} is`}
        labelHidden
        value={key ?? none}
        choices={meanings}
        onCommit={(value) => {
          setMapping(withMeaning(mapping, column, surveyKeys.find((each) => each === value) ?? null));
        }}
      />
      {key !== null && dimensionOf(key) !== null && (
        <ChoiceField
          label={`Unit of ${name}`}
          labelHidden
          value={unit ?? none}
          choices={[
            { value: none, label: 'unit in each cell' },
            ...unitChoices(key).map((each) => ({ value: each, label: unitSign(each) })),
          ]}
          error={isAsked ? 'Which unit is it? Nothing in the table says.' : undefined}
          onCommit={(value) => {
            setMapping(withColumn(mapping, column, { key, unit: isUnit(value) ? value : null }));
          }}
        />
      )}
    </>
  );
}

function withColumn(mapping: Mapping, column: number, meaning: ColumnMeaning): Mapping {
  return { ...mapping, columns: mapping.columns.map((old, i) => (i === column ? meaning : old)) };
}

/** A meaning belongs to one column: the one that had it before is not used. */
function withMeaning(mapping: Mapping, column: number, key: SurveyKey | null): Mapping {
  const columns = mapping.columns.map((old, i): ColumnMeaning => {
    if (i === column)
      return { key, unit: key === null || dimensionOf(key) === null ? null : fitting(old, key) };
    return key !== null && old.key === key ? { key: null, unit: null } : old;
  });
  return { ...mapping, columns };
}

/** The unit stays where the new meaning can be in it. */
function fitting({ unit }: ColumnMeaning, key: SurveyKey): ColumnMeaning['unit'] {
  return unit !== null && unitChoices(key).includes(unit) ? unit : null;
}

const shapes = [
  { value: none, label: 'asked row by row' },
  ...surveyShapes.map(({ word }) => ({ value: word, label: word })),
];

const mostHeads = 12;

function TableFields({ survey }: { readonly survey: Survey }) {
  const { table, mapping, questions, setMapping } = survey;
  const isMarkAsked = questions.some(({ kind }) => kind === 'decimalMark');
  const heads = table.records.slice(0, mostHeads);
  const headCount = heads.filter(({ number }) => mapping.headNumbers.includes(number)).length;
  return (
    <div className="survey-table-fields">
      <ChoiceField
        label="Decimal mark"
        value={mapping.decimalMark ?? none}
        choices={[
          { value: none, label: 'as each number shows' },
          { value: 'point', label: 'point: 1.5' },
          { value: 'comma', label: 'comma: 1,5' },
        ]}
        error={isMarkAsked ? 'Some numbers can be read in two ways: is it a point or a comma?' : undefined}
        onCommit={(value) => {
          setMapping({ ...mapping, decimalMark: value === none ? null : value });
        }}
      />
      <ChoiceField
        label="Rows taken for heads"
        value={String(headCount)}
        choices={Array.from({ length: heads.length + 1 }, (_, i) => ({
          value: String(i),
          label: i === 0 ? 'none' : i === 1 ? 'the first' : `the first ${i}`,
        }))}
        onCommit={(value) => {
          setMapping({
            ...mapping,
            headNumbers: heads.slice(0, Number(value)).map(({ number }) => number),
          });
        }}
      />
      <ChoiceField
        label="Rows that say no shape are"
        value={mapping.blankShape ?? none}
        choices={shapes}
        onCommit={(value) => {
          setMapping({ ...mapping, blankShape: value === none ? null : value });
        }}
      />
    </div>
  );
}
