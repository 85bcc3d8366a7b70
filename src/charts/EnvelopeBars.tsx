import './charts.css';
import './envelopeBars.css';
import type { EnvelopeBar, EnvelopeBarsGeometry } from './envelopeBarGeometry';

/** What an envelope claims, what its numbers give, and what a handbook gives, on one scale. */
export function EnvelopeBars({ chart }: { readonly chart: EnvelopeBarsGeometry }) {
  const { widthPx, heightPx, zeroX, axisY, barPx, bars, spread, ticks, description } = chart;
  return (
    <svg
      className="envelope-bars"
      width={widthPx}
      height={heightPx}
      viewBox={`0 0 ${widthPx} ${heightPx}`}
      role="img"
      aria-label={description}
    >
      {ticks.map(({ x, label }, i) => (
        <g key={x}>
          <line className="chart-grid" x1={x} x2={x} y1={0} y2={axisY} />
          <text className="chart-tick" x={x} y={axisY + 14} textAnchor={i === 0 ? 'start' : 'middle'}>
            {label}
          </text>
        </g>
      ))}
      <line className="chart-axis" x1={zeroX} x2={zeroX} y1={0} y2={axisY} />
      {bars.map((bar) => (
        <Bar key={bar.id} bar={bar} zeroX={zeroX} barPx={barPx} />
      ))}
      <path
        className="envelope-bars-spread"
        d={`M${spread.fromX} ${spread.y}H${spread.toX}M${spread.fromX} ${spread.y - 2.5}v5M${spread.toX} ${spread.y - 2.5}v5`}
      />
    </svg>
  );
}

interface BarProps {
  readonly bar: EnvelopeBar;
  readonly zeroX: number;
  readonly barPx: number;
}

function Bar({ bar: { id, y, widthPx, label, labelX, labelAnchor }, zeroX, barPx }: BarProps) {
  const isInside = labelAnchor === 'end';
  return (
    <g className={`envelope-bar-${id}`}>
      <rect x={zeroX} y={y} width={widthPx} height={barPx} />
      <text
        className={isInside ? 'chart-label envelope-bar-inside' : 'chart-label'}
        x={labelX}
        y={y + barPx - 3}
        textAnchor={labelAnchor}
      >
        {label}
      </text>
    </g>
  );
}
