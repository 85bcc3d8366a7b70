import { memo } from 'react';
import './charts.css';
import type { BarSegment, LedgerBarGeometry } from './ledgerBarGeometry';

/** Half the height of the strokes that end a spread. */
const endStrokePx = 2;

interface LedgerBarProps {
  readonly bar: LedgerBarGeometry;
}

/** One row's bar. The row's numbers stand beside it, so a screen reader passes it by. */
export const LedgerBar = memo(function LedgerBar({ bar }: LedgerBarProps) {
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
}, isDrawnAlike);

function isDrawnAlike({ bar: a }: LedgerBarProps, { bar: b }: LedgerBarProps): boolean {
  return (
    a.widthPx === b.widthPx &&
    a.heightPx === b.heightPx &&
    a.zeroX === b.zeroX &&
    a.isOutside === b.isOutside &&
    a.gridX.length === b.gridX.length &&
    a.gridX.every((x, i) => x === b.gridX[i]) &&
    a.segments.length === b.segments.length &&
    a.segments.every((segment, i) => isSameSegment(segment, b.segments[i])) &&
    a.spread?.fromX === b.spread?.fromX &&
    a.spread?.toX === b.spread?.toX &&
    a.spread?.y === b.spread?.y
  );
}

/** The hatch follows from the box. */
function isSameSegment(a: BarSegment, b: BarSegment | undefined): boolean {
  return (
    a.kind === b?.kind && a.x === b.x && a.y === b.y && a.widthPx === b.widthPx && a.heightPx === b.heightPx
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
