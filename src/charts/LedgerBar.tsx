import './charts.css';
import type { BarSegment, LedgerBarGeometry } from './ledgerBarGeometry';

/** Half the height of the strokes that end a spread. */
const endStrokePx = 2;

/** One row's bar. The row's numbers stand beside it, so a screen reader passes it by. */
export function LedgerBar({ bar }: { readonly bar: LedgerBarGeometry }) {
  const { widthPx, heightPx, zeroX, gridX, segments, spread, isOutside } = bar;
  return (
    <svg
      className={isOutside ? 'ledger-bar ledger-bar-outside' : 'ledger-bar'}
      width={widthPx}
      height={heightPx}
      viewBox={`0 0 ${widthPx} ${heightPx}`}
      aria-hidden="true"
    >
      {gridX.length > 0 && (
        <path className="chart-grid" d={gridX.map((x) => `M${x} 0V${heightPx}`).join('')} />
      )}
      <line className="chart-axis" x1={zeroX} x2={zeroX} y1={0} y2={heightPx} />
      {segments.map(segmentOf)}
      {spread !== null && (
        <path
          className="ledger-bar-spread"
          d={`M${spread.fromX} ${spread.y}H${spread.toX}M${spread.fromX} ${spread.y - endStrokePx}v${2 * endStrokePx}M${spread.toX} ${spread.y - endStrokePx}v${2 * endStrokePx}`}
        />
      )}
    </svg>
  );
}

/** A plain function and not a component: a ledger has hundreds. */
function segmentOf({ kind, x, y, widthPx, heightPx, hatch }: BarSegment) {
  return (
    <g key={kind} className={`ledger-bar-${kind}`}>
      <rect x={x} y={y} width={widthPx} height={heightPx} />
      {hatch !== '' && <path d={hatch} />}
    </g>
  );
}
