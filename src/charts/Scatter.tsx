import './charts.css';
import './scatter.css';
import { printUnit } from '../units/print';
import type { ScatterGeometry, ScatterPoint } from './scatterGeometry';

const radiusPx = 3.5;

/** Saving against a price; ink for what nothing beats, muted for the rest. The table behind it is the caller's. */
export function Scatter({ chart }: { readonly chart: ScatterGeometry }) {
  const { widthPx, heightPx, plot, points, xTicks, yTicks, zeroX, zeroY, priceLabel } = chart;
  return (
    <svg
      className="scatter"
      width={widthPx}
      height={heightPx}
      viewBox={`0 0 ${widthPx} ${heightPx}`}
      role="img"
      aria-label={chart.description}
    >
      {yTicks.map(({ at, label }) => (
        <g key={label}>
          <line className="chart-grid" x1={plot.left} x2={plot.right} y1={at} y2={at} />
          <text className="chart-tick" x={plot.left - 5} y={at + 4} textAnchor="end">
            {label}
          </text>
        </g>
      ))}
      <line className="chart-axis" x1={plot.left} x2={plot.right} y1={zeroY} y2={zeroY} />
      <line className="chart-axis" x1={zeroX} x2={zeroX} y1={plot.top} y2={plot.bottom} />
      {xTicks.map(({ at, label }) => (
        <g key={label}>
          <line className="chart-axis" x1={at} x2={at} y1={plot.bottom} y2={plot.bottom + 4} />
          <text className="chart-tick" x={at} y={plot.bottom + 16} textAnchor="middle">
            {label}
          </text>
        </g>
      ))}
      <text className="chart-tick" x={0} y={12}>
        saving alone, {printUnit('W')}
      </text>
      <text className="chart-tick" x={plot.right} y={heightPx - 4} textAnchor="end">
        {priceLabel}
      </text>
      {points.map((point) => (
        <Point key={point.id} point={point} />
      ))}
    </svg>
  );
}

function Point({ point }: { readonly point: ScatterPoint }) {
  const { x, y, label, name, beatenBy } = point;
  return (
    <g className={beatenBy === null ? 'scatter-best' : 'scatter-beaten'}>
      <title>{name}</title>
      <circle cx={x} cy={y} r={radiusPx} />
      <text className="chart-label" x={label.x} y={label.y} textAnchor={label.anchor}>
        {label.lines.join(' ')}
      </text>
    </g>
  );
}
