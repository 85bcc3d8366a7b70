import type { BenchRow, Currency } from '../../project/bench/benchTypes';
import { courseWords } from '../../project/bench/courseWords';
import { columnDecimals, formatQuantity, formatValue, formatValueRange, printUnit } from '../../units/print';
import { shownUnit } from '../../units/shownUnits';
import { currencyOf } from './sweepCharts';

interface CoursePartProps {
  readonly rows: readonly BenchRow[];
  readonly currency: Currency;
}

/** What each candidate saves in each condition of the course, and on the whole. */
export function CoursePart({ rows, currency }: CoursePartProps) {
  const compared = rows.filter(({ kind, weighted }) => kind !== 'bare' && weighted !== null);
  const conditions = compared[0]?.perCondition ?? [];
  const { label, unit } = currencyOf(currency);
  const decimals = columnDecimals(
    compared.flatMap(({ perCondition }) => perCondition.map(({ saving }) => saving[currency].best)),
    unit,
  );
  if (conditions.length === 0) {
    return (
      <p className="fine">
        Without a course there is no answer on the whole: give the conditions their hours under Condition, in
        the ledger.
      </p>
    );
  }
  return (
    <>
      <div className="bench-scroll" tabIndex={0} role="region" aria-label="Over the course: table">
        <table className="bench-table">
          <caption className="bench-caption">
            Saving in {label}, {printUnit(unit)}; below zero it costs
          </caption>
          <thead>
            <tr>
              <th scope="col">condition</th>
              <th scope="col">of the time</th>
              {compared.map(({ candidateId, name }) => (
                <th key={candidateId} scope="col">
                  {name}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {conditions.map(({ conditionId, name, weight }, i) => (
              <tr key={conditionId}>
                <th scope="row">{name}</th>
                <td>{formatQuantity(weight, '%', { decimals: 0 })}</td>
                {compared.map(({ candidateId, perCondition }) => (
                  <SavingCell
                    key={candidateId}
                    saving={perCondition[i]?.saving[currency]}
                    unit={unit}
                    decimals={decimals}
                  />
                ))}
              </tr>
            ))}
            <tr className="bench-whole">
              <th scope="row">on the whole</th>
              <td>{formatQuantity(1, '%', { decimals: 0 })}</td>
              {compared.map(({ candidateId, weighted }) => (
                <SavingCell
                  key={candidateId}
                  saving={weighted?.saving[currency]}
                  unit={unit}
                  decimals={decimals}
                />
              ))}
            </tr>
          </tbody>
        </table>
      </div>
      <ul className="bench-lines">
        {compared.map(
          ({ candidateId, name, perCondition, weighted }) =>
            weighted !== null && (
              <li key={candidateId}>
                {name}: {courseWords(perCondition, weighted.saving, currency, shownUnit(unit))}
              </li>
            ),
        )}
      </ul>
    </>
  );
}

interface SavingCellProps {
  readonly saving: { readonly best: number; readonly low: number; readonly high: number } | undefined;
  readonly unit: 'N' | 'W';
  readonly decimals: number;
}

function SavingCell({ saving, unit, decimals }: SavingCellProps) {
  if (saving === undefined) return <td />;
  const { best, low, high } = saving;
  return (
    <td>
      <span className={low > 0 ? 'bench-saves' : undefined}>{formatValue(best, unit, { decimals })}</span>{' '}
      <span className="fine">{formatValueRange(low, high, unit, { decimals })}</span>
    </td>
  );
}
