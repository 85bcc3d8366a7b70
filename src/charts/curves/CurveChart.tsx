import { ringPx, type ChartMark, type CurveChartGeometry } from './curveChartTypes';
import './curveChart.css';

interface CurveChartProps {
  readonly chart: CurveChartGeometry;
  /** What the chart shows, for those who do not see it; its numbers are in a table beside it. */
  readonly description: string;
}

/** Draws the marks of a chart of curves. */
export function CurveChart({ chart, description }: CurveChartProps) {
  const { widthPx, heightPx, marks } = chart;
  return (
    <svg
      className="curve-chart"
      width={widthPx}
      height={heightPx}
      viewBox={`0 0 ${widthPx} ${heightPx}`}
      role="img"
      aria-label={description}
    >
      {marks.map((mark, i) => (
        <Mark key={i} mark={mark} />
      ))}
    </svg>
  );
}

function Mark({ mark }: { readonly mark: ChartMark }) {
  const className = `curve-${mark.role}`;
  switch (mark.kind) {
    case 'path':
      return <path className={className} d={mark.d} strokeDasharray={mark.dash} />;
    case 'ring':
      return <circle className={className} cx={mark.x} cy={mark.y} r={ringPx} />;
    case 'text':
      return (
        <text className={className} x={mark.x} y={mark.y} textAnchor={mark.anchor}>
          {mark.text}
        </text>
      );
  }
}
