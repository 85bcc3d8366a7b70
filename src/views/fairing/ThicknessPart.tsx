import { useMemo } from 'react';
import { candidateThicknessCurve } from '../../project/bench/thicknessCurveOf';
import { formatValue, formatValueRange, printUnit } from '../../units/print';
import { valueIn } from '../../units/printIn';
import type { BenchModel } from './benchModel';
import { BenchFigure } from './BenchFigure';
import { measureOf, thicknessChartInput, thicknessMeasures, type ThicknessCurve } from './thicknessCharts';

interface ThicknessPartProps {
  readonly model: BenchModel;
  readonly about: string;
}

/** Drag, mass and wetted area against the thickness ratio, with the stretch on which the drag hardly changes. */
export function ThicknessPart({ model, about }: ThicknessPartProps) {
  const { project, member, chosen, conditionId } = model;
  const answer = useMemo(
    () => candidateThicknessCurve(project, member, chosen, conditionId),
    [project, member, chosen, conditionId],
  );
  if (!answer.ok) return <p>{answer.message}</p>;
  return (
    <>
      <p>{answer.flatText}</p>
      {thicknessMeasures
        .filter(({ id }) => answer.rows.some((row) => measureOf(row, id)[0] > 0))
        .map((measure) => (
          <BenchFigure
            key={measure.id}
            title={`${measure.label} against thickness ratio`}
            unit={printUnit(measure.unit)}
            about={`${about}; ${chosen.name}`}
            input={(widthPx) => thicknessChartInput(answer, measure, widthPx)}
            table={<ThicknessTable curve={answer} measure={measure} />}
          />
        ))}
      {answer.notices.map((notice) => (
        <p key={notice} className="fine">
          {notice}
        </p>
      ))}
    </>
  );
}

interface ThicknessTableProps {
  readonly curve: ThicknessCurve;
  readonly measure: (typeof thicknessMeasures)[number];
}

function ThicknessTable({ curve, measure: { id, label, unit } }: ThicknessTableProps) {
  return (
    <table className="bench-table">
      <caption className="visually-hidden">{label} against thickness ratio</caption>
      <thead>
        <tr>
          <th scope="col">thickness over chord</th>
          <th scope="col">{printUnit(unit)}</th>
          {id === 'drag' && <th scope="col">range</th>}
        </tr>
      </thead>
      <tbody>
        {curve.rows.map((row) => {
          const [best, low, high] = measureOf(row, id);
          return (
            <tr key={row.thicknessRatio}>
              <th scope="row">
                {valueIn(row.thicknessRatio, '1', { decimals: 2 })}
                {row.isOutsideTable === 1 ? ', outside the table' : ''}
              </th>
              <td>{formatValue(best, unit)}</td>
              {id === 'drag' && <td>{formatValueRange(low, high, unit)}</td>}
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
