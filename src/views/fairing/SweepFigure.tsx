import { columnDecimals, formatValue, formatValueRange, printUnit } from '../../units/print';
import type { Currency } from '../../project/bench/benchTypes';
import { BenchFigure } from './BenchFigure';
import {
  currencyOf,
  isLogarithmic,
  sweepChartInput,
  tablePlaces,
  xText,
  type SweptCandidate,
} from './sweepCharts';

interface SweepFigureProps {
  readonly swept: readonly SweptCandidate[];
  readonly chosenId: string;
  readonly currency: Currency;
  readonly about: string;
  readonly heightPx: number;
}

const against = {
  apparentAngle: 'apparent wind angle',
  apparentSpeed: 'apparent wind speed',
  boatSpeed: 'boat speed',
} as const;

/** One currency of all candidates against what was swept. */
export function SweepFigure({ swept, chosenId, currency, about, heightPx }: SweepFigureProps) {
  const sweep = swept[0]?.sweep;
  if (sweep === undefined) return null;
  const { over } = sweep.question;
  const { label, unit } = currencyOf(currency);
  const scale = isLogarithmic(over, currency) ? ', logarithmic' : '';
  return (
    <BenchFigure
      title={`${capital(label)} against ${against[over]}`}
      unit={`${printUnit(unit)}${scale}`}
      about={about}
      note={noteOf(swept, currency)}
      input={(widthPx) => sweepChartInput({ swept, chosenId, currency, widthPx, heightPx })}
      table={<SweepTable swept={swept} currency={currency} />}
    />
  );
}

/** What is held; and what a logarithm cannot show. */
function noteOf(swept: readonly SweptCandidate[], currency: Currency): string | undefined {
  const sweep = swept[0]?.sweep;
  if (sweep === undefined || !isLogarithmic(sweep.question.over, currency)) return sweep?.held();
  const isCut = swept.some((each) => each.sweep.bands[currency].best.some((value) => value <= 0));
  return isCut
    ? `${sweep.held()} Logarithmic: what is near zero or below runs along the foot; the table has it.`
    : sweep.held();
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

function SweepTable({ swept, currency }: Pick<SweepFigureProps, 'swept' | 'currency'>) {
  const sweep = swept[0]?.sweep;
  if (sweep === undefined) return null;
  const { label, unit } = currencyOf(currency);
  const decimals = columnDecimals(
    swept.flatMap((each) => Array.from(each.sweep.bands[currency].best)),
    unit,
  );
  return (
    <table className="bench-table">
      <caption className="visually-hidden">
        {label} against {against[sweep.question.over]}, best and range
      </caption>
      <thead>
        <tr>
          <th scope="col">{printUnit(unit)}</th>
          {swept.map(({ candidate }) => (
            <th key={candidate.id} scope="col">
              {candidate.name}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {tablePlaces(sweep).map((i) => (
          <tr key={i}>
            <th scope="row">{xText(sweep.xs[i] ?? 0, sweep.question.over)}</th>
            {swept.map(({ candidate, sweep: { bands } }) => {
              const { best, low, high } = bands[currency];
              return (
                <td key={candidate.id}>
                  {formatValue(best[i] ?? Number.NaN, unit, { decimals })}{' '}
                  <span className="fine">
                    {formatValueRange(low[i] ?? Number.NaN, high[i] ?? Number.NaN, unit, { decimals })}
                  </span>
                </td>
              );
            })}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
