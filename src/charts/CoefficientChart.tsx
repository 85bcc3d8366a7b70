import './charts.css';
import { formatValueRange } from '../units/print';
import {
  axisWords,
  coefficientText,
  type ChartPoint,
  type CoefficientChartGeometry,
} from './coefficientChartGeometry';
import type { PlacedLabel } from './labelBox';

const pointRadiusPx = 4;
const otherRadiusPx = 2.5;

/** Drag coefficient against what it depends on most, with this fitting's points on it, and the table behind it. */
export function CoefficientChart({ chart }: { readonly chart: CoefficientChartGeometry }) {
  const { widthPx, heightPx, plot, curves, points, regimeLabels, curveLabels, xTicks, yTicks } = chart;
  const words = axisWords[chart.against];
  return (
    <figure className="coefficient-chart">
      <h3 className="chart-title">
        Drag coefficient <i>C</i>
        <sub>d</sub> against {words.name} <span className="chart-title-unit">{chart.shapeName}</span>
      </h3>
      <svg
        width={widthPx}
        height={heightPx}
        viewBox={`0 0 ${widthPx} ${heightPx}`}
        role="img"
        aria-label={chart.description}
      >
        {yTicks.map(({ y, label }) => (
          <g key={label}>
            <line className="chart-grid" x1={plot.left} x2={plot.right} y1={y} y2={y} />
            <text className="chart-tick" x={plot.left - 5} y={y + 4} textAnchor="end">
              {label}
            </text>
          </g>
        ))}
        {curves.map(({ name, bandPath }) => (
          <path key={name} className="coefficient-band" d={bandPath} />
        ))}
        <line className="chart-axis" x1={plot.left} x2={plot.right} y1={plot.bottom} y2={plot.bottom} />
        {xTicks.map((tick) => (
          <AxisTick key={tick.x} {...tick} y={plot.bottom} isLast={tick === xTicks.at(-1)} />
        ))}
        <text className="chart-tick" x={plot.left - 5} y={plot.top - 7}>
          C
          <tspan className="chart-raised" dy={3}>
            d
          </tspan>
        </text>
        <text className="chart-tick" x={plot.right} y={heightPx - 3} textAnchor="end">
          {words.note}
        </text>
        {curves.map(({ name, bestPath }, i) => (
          <path
            key={name}
            className={i === 0 ? 'coefficient-curve' : 'coefficient-curve coefficient-curve-second'}
            d={bestPath}
          />
        ))}
        {regimeLabels.map((label) => (
          <ChartLabel key={label.lines[0]} label={label} className="chart-note" />
        ))}
        {curveLabels.map((label) => (
          <ChartLabel key={label.lines[0]} label={label} className="chart-label" />
        ))}
        {points.map((point) => (
          <PointMark key={point.name} point={point} />
        ))}
      </svg>
      <CurveTable chart={chart} />
    </figure>
  );
}

interface AxisTickProps {
  readonly x: number;
  readonly y: number;
  readonly label: string;
  readonly exponent: number | null;
  readonly isLast: boolean;
}

/** The typeface has no raised figures above 3, so the exponent is set by hand. */
function AxisTick({ x, y, label, exponent, isLast }: AxisTickProps) {
  // A whole word beyond the plot's right end would be cut.
  const isTurned = isLast && exponent === null;
  return (
    <g>
      <line className="chart-axis" x1={x} x2={x} y1={y} y2={y + 4} />
      <text
        className="chart-tick"
        x={isTurned ? x + 6 : x}
        y={y + 16}
        textAnchor={isTurned ? 'end' : 'middle'}
      >
        {label}
        {exponent !== null && (
          <tspan className="chart-raised" dy={-4}>
            {exponent}
          </tspan>
        )}
      </text>
    </g>
  );
}

function PointMark({ point }: { readonly point: ChartPoint }) {
  const { name, x, y, label, others } = point;
  return (
    <g>
      {others.map((other) => (
        <circle
          key={`${other.x} ${other.y}`}
          className="coefficient-point-other"
          cx={other.x}
          cy={other.y}
          r={otherRadiusPx}
        />
      ))}
      <circle className={`coefficient-point-${name}`} cx={x} cy={y} r={pointRadiusPx} />
      <ChartLabel label={label} className={`chart-label coefficient-label-${name}`} />
    </g>
  );
}

function ChartLabel({ label, className }: { readonly label: PlacedLabel; readonly className: string }) {
  return (
    <text className={className} x={label.x} y={label.y} textAnchor={label.anchor}>
      {label.lines.join(' ')}
    </text>
  );
}

function CurveTable({ chart }: { readonly chart: CoefficientChartGeometry }) {
  const words = axisWords[chart.against];
  return (
    <details>
      <summary>as a table</summary>
      {chart.table.map(({ curveName, rows }) => (
        <table key={curveName}>
          <caption className="visually-hidden">
            Drag coefficient, {chart.shapeName}, against {words.name}
            {curveName === '' ? '' : `, ${curveName}`}
          </caption>
          <thead>
            <tr>
              <th scope="col">
                {words.tableHead}
                {curveName === '' ? '' : `, ${curveName}`}
              </th>
              <th scope="col">best</th>
              <th scope="col">low–high</th>
            </tr>
          </thead>
          <tbody>
            {rows.map(({ x, low, best, high }) => (
              <tr key={x}>
                <th scope="row">{words.cell(x)}</th>
                <td>{coefficientText(best)}</td>
                <td>{formatValueRange(low, high, '1', { decimals: best < 0.1 ? 3 : 2 })}</td>
              </tr>
            ))}
          </tbody>
        </table>
      ))}
    </details>
  );
}
