import type { BenchComparison, BenchMeasure, BenchRow, Ranged } from '../../project/bench/benchTypes';
import { benchMeasures } from '../../project/bench/benchTypes';
import type { Candidate, CandidateProblem } from '../../project/bench/candidates';
import { changeBench } from '../../state/bench';
import { columnDecimals, formatQuantity, formatValue, formatValueRange, printUnit } from '../../units/print';
import { chartsTitle } from './benchModel';
import { candidateRadioId } from './focusIds';

interface ComparisonTableProps {
  readonly candidates: readonly Candidate[];
  readonly problems: ReadonlyMap<string, readonly CandidateProblem[]>;
  readonly chosenId: string;
  /** Null while it cannot be worked out. */
  readonly comparison: BenchComparison | null;
  /** On a phone this measure stands alone beside the mass. */
  readonly measure: BenchMeasure;
}

/** The candidates side by side: what each takes, and what it saves or costs against the member as it stands. */
export function ComparisonTable(props: ComparisonTableProps) {
  const { candidates, problems, chosenId, comparison, measure } = props;
  const shown = benchMeasures.filter(({ id }) => id !== 'fullPriceW' || comparison?.hasFullPrice === true);
  const rows = comparison?.rows ?? [];
  return (
    <>
      <div className="bench-scroll" tabIndex={0} role="region" aria-label="Candidates">
        <table className="bench-table bench-comparison">
          <caption className="visually-hidden">
            Candidates compared; under each value what it saves or costs against the member as it stands, with
            its 90 % range
          </caption>
          <thead>
            <tr>
              <th scope="col">candidate</th>
              {shown.map(({ id, label, unit }) => (
                <th key={id} scope="col" className={classOf(id, measure)}>
                  {label}
                  <span className="fine">{printUnit(unit)}</span>
                </th>
              ))}
              <th scope="col">
                mass<span className="fine">{printUnit('kg')}</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {candidates.map((candidate) => {
              const row = rows.find(({ candidateId }) => candidateId === candidate.id);
              const [problem] = problems.get(candidate.id) ?? [];
              return (
                <tr key={candidate.id} className={candidate.id === chosenId ? 'bench-chosen' : undefined}>
                  <th scope="row">
                    <CandidateChoice candidate={candidate} isChosen={candidate.id === chosenId} />
                  </th>
                  {row === undefined ? (
                    <td colSpan={shown.length + 1} className="bench-left">
                      {problem === undefined ? '' : `Not compared: ${problem.message}`}
                    </td>
                  ) : (
                    <>
                      {shown.map(({ id, unit }) => (
                        <td key={id} className={classOf(id, measure)}>
                          <MeasureCell
                            row={row}
                            rows={rows}
                            measure={id}
                            unit={unit}
                            hasRange={id === measure}
                          />
                        </td>
                      ))}
                      <td>
                        <MassCell row={row} />
                      </td>
                    </>
                  )}
                </tr>
              );
            })}
          </tbody>
        </table>
      </div>
      <p className="bench-one-measure fine">
        There is room for one comparison here, the{' '}
        {shown.find(({ id }) => id === measure)?.label ?? 'chosen one'}: choose another below, under “
        {chartsTitle}”. A wider page shows all of them.
      </p>
    </>
  );
}

function classOf(id: BenchMeasure, measure: BenchMeasure): string {
  return id === measure ? 'bench-measure-now' : 'bench-measure';
}

function CandidateChoice({
  candidate,
  isChosen,
}: {
  readonly candidate: Candidate;
  readonly isChosen: boolean;
}) {
  return (
    <label className="one-of-option">
      <input
        id={candidateRadioId(candidate.id)}
        type="radio"
        name="bench-candidate"
        checked={isChosen}
        onChange={() => {
          changeBench({ chosenId: candidate.id });
        }}
      />
      <span className="one-of-name">{candidate.name}</span>
    </label>
  );
}

interface MeasureCellProps {
  readonly row: BenchRow;
  readonly rows: readonly BenchRow[];
  readonly measure: BenchMeasure;
  readonly unit: 'N' | 'W' | 'N m';
  /** Of the value itself; that of the difference always stands. */
  readonly hasRange: boolean;
}

function MeasureCell({ row, rows, measure, unit, hasRange }: MeasureCellProps) {
  const value = row.values[measure];
  const decimals = columnDecimals(
    rows.map(({ values }) => values[measure].best),
    unit,
  );
  return (
    <>
      {formatValue(value.best, unit, { decimals })}{' '}
      {hasRange && (
        <span className="fine">{formatValueRange(value.low, value.high, unit, { decimals })}</span>
      )}
      {row.kind !== 'bare' && (
        <Difference
          saving={row.saving[measure]}
          isSure={row.isSure[measure]}
          unit={unit}
          decimals={decimals}
        />
      )}
    </>
  );
}

interface DifferenceProps {
  readonly saving: Ranged;
  readonly isSure: boolean;
  readonly unit: 'N' | 'W' | 'N m';
  readonly decimals: number;
}

/** Blue only where it surely saves; a word says it again. */
function Difference({ saving, isSure, unit, decimals }: DifferenceProps) {
  const isSaving = saving.best > 0;
  const sign = isSaving ? 1 : -1;
  const otherWay = isSaving ? ', may cost' : ', may save';
  const isNone = saving.low === 0 && saving.high === 0;
  const [low, high] = isSaving ? [saving.low, saving.high] : [-saving.high, -saving.low];
  return (
    <span className="bench-difference">
      <span className={isSaving && isSure ? 'bench-saves' : undefined}>
        {isSaving ? 'saves' : 'costs'} {formatValue(sign * saving.best, unit, { decimals })}
      </span>{' '}
      <span className="fine">
        {formatValueRange(low, high, unit, { decimals })}
        {isSure || isNone ? '' : otherWay}
      </span>
    </span>
  );
}

function MassCell({ row: { mass, kind } }: { readonly row: BenchRow }) {
  return (
    <>
      {kind === 'fairingRound' && mass.massKg !== null && <span className="fine">fairing </span>}
      {mass.massKg === null ? <span className="fine">not known</span> : formatValue(mass.massKg, 'kg')}
      {kind !== 'bare' && (
        <span className="bench-difference fine">{massChangeText(mass.changeKg, kind)}</span>
      )}
    </>
  );
}

function massChangeText(changeKg: number | null, kind: BenchRow['kind']): string {
  if (changeKg === null) return 'change not known';
  // The mass above is the fairing's own, while the rows about it have the member's.
  if (kind === 'fairingRound') return 'comes on top';
  if (changeKg === 0) return 'no change';
  return `${changeKg > 0 ? 'adds' : 'takes off'} ${formatQuantity(Math.abs(changeKg), 'kg')}`;
}
