import './charts.css';
import './waterfall.css';
import { printUnit } from '../units/print';
import type { SpreadMark, WaterfallGeometry, WaterfallRow } from './waterfallGeometry';

/** Half the height of the strokes that end a spread. */
const endPx = 2.5;

/** What a plan takes from the boat's track power, item by item. The table behind it is the caller's. */
export function Waterfall({ chart }: { readonly chart: WaterfallGeometry }) {
  const { widthPx, heightPx, plot, rows, ticks, hasZero } = chart;
  return (
    <svg
      className="waterfall"
      width={widthPx}
      height={heightPx}
      viewBox={`0 0 ${widthPx} ${heightPx}`}
      role="img"
      aria-label={chart.description}
    >
      <line className="chart-axis" x1={plot.left} x2={plot.right} y1={plot.bottom + 4} y2={plot.bottom + 4} />
      {ticks.map(({ x, label }) => (
        <Tick key={x} x={x} y={plot.bottom + 4} label={label} widthPx={widthPx} />
      ))}
      <text className="chart-tick" x={plot.right} y={heightPx - 1} textAnchor="end">
        track power, {printUnit('W')}
        {hasZero ? '' : '; the axis does not begin at 0'}
      </text>
      {rows.slice(1).map((row, i) => (
        <Thread key={row.id} from={rows[i]} to={row} />
      ))}
      {rows.map((row) => (
        <Row key={row.id} row={row} plot={plot} />
      ))}
    </svg>
  );
}

interface TickProps {
  readonly x: number;
  readonly y: number;
  readonly label: string;
  readonly widthPx: number;
}

function Tick({ x, y, label, widthPx }: TickProps) {
  const anchor = x < 20 ? 'start' : x > widthPx - 30 ? 'end' : 'middle';
  return (
    <g>
      <line className="chart-axis" x1={x} x2={x} y1={y} y2={y + 4} />
      <text className="chart-tick" x={x} y={y + 16} textAnchor={anchor}>
        {label}
      </text>
    </g>
  );
}

/** The running total, from the bar that left it to the one that takes it up. */
function Thread({ from, to }: { readonly from: WaterfallRow | undefined; readonly to: WaterfallRow }) {
  if (from === undefined) return null;
  const { totalX, bar } = from;
  return (
    <line className="waterfall-thread" x1={totalX} x2={totalX} y1={bar.y + bar.heightPx} y2={to.bar.y} />
  );
}

interface RowProps {
  readonly row: WaterfallRow;
  readonly plot: WaterfallGeometry['plot'];
}

function Row({ row, plot }: RowProps) {
  const { kind, name, shownName, value, note, nameY, noteY, bar, totalX, hatch, spread } = row;
  return (
    <g className={`waterfall-row waterfall-${kind}`}>
      <text
        className={kind === 'total' ? 'chart-label chart-label-strong' : 'chart-label'}
        x={plot.left}
        y={nameY}
      >
        {shownName}
        {shownName !== name && <title>{name}</title>}
      </text>
      <text
        className="chart-label chart-label-strong waterfall-value"
        x={plot.right}
        y={nameY}
        textAnchor="end"
      >
        {value}
      </text>
      <text className="chart-note" x={plot.left} y={noteY}>
        {note}
      </text>
      <rect className="waterfall-bar" x={bar.x} y={bar.y} width={bar.widthPx} height={bar.heightPx} />
      {hatch !== '' && <path className="waterfall-hatch" d={hatch} />}
      {kind === 'total' && (
        <line
          className="waterfall-stroke"
          x1={totalX}
          x2={totalX}
          y1={bar.y - 1}
          y2={bar.y + bar.heightPx + 1}
        />
      )}
      {spread !== null && <path className="waterfall-spread" d={spreadPath(spread)} />}
    </g>
  );
}

/** A stroke at each end; an arrow's point where the spread runs on beyond the chart. */
function spreadPath({ fromX, toX, y, isOpenLow, isOpenHigh }: SpreadMark): string {
  const low = isOpenLow ? `M${fromX + 4} ${y - 3}L${fromX} ${y}L${fromX + 4} ${y + 3}` : strokeAt(fromX, y);
  const high = isOpenHigh ? `M${toX - 4} ${y - 3}L${toX} ${y}L${toX - 4} ${y + 3}` : strokeAt(toX, y);
  return `M${fromX} ${y}H${toX}${low}${high}`;
}

function strokeAt(x: number, y: number): string {
  return `M${x} ${y - endPx}v${2 * endPx}`;
}
