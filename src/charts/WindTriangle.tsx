import type { ReactNode } from 'react';
import './charts.css';
import { labelLinePx, type PlacedLabel } from './labelBox';
import type { Point, WindTriangleGeometry } from './windTriangleGeometry';

const headLengthPx = 8;
const headHalfWidthPx = 3.2;

interface WindTriangleProps {
  readonly triangle: WindTriangleGeometry;
  /** The ends that can be moved. */
  readonly children?: ReactNode;
}

/** True wind, boat speed and apparent wind to scale, course upwards. */
export function WindTriangle({ triangle, children }: WindTriangleProps) {
  const { widthPx, heightPx, boat, trueFrom, apparentFrom, courseTo, labels, caption } = triangle;
  return (
    <svg
      className="wind-triangle"
      width={widthPx}
      height={heightPx}
      viewBox={`0 0 ${widthPx} ${heightPx}`}
      role="group"
      aria-label={triangle.description}
    >
      <line className="wind-triangle-course" x1={boat.x} y1={boat.y} x2={courseTo.x} y2={courseTo.y} />
      <path className="wind-triangle-arc" d={triangle.angleArc} />
      <path className="wind-triangle-hull" d={triangle.hull} />
      <Arrow className="wind-triangle-boat" from={apparentFrom} to={trueFrom} />
      <Arrow className="wind-triangle-true" from={trueFrom} to={boat} />
      <Arrow className="wind-triangle-apparent" from={apparentFrom} to={boat} />
      <Label label={labels.apparent} className="chart-label chart-label-strong" />
      <Label label={labels.boatSpeed} className="chart-label" />
      <Label label={labels.trueWind} className="chart-label" />
      <Label label={labels.angle} className="chart-label" />
      <Label label={caption} className="chart-note" />
      {children}
    </svg>
  );
}

interface ArrowProps {
  readonly className: string;
  readonly from: Point;
  readonly to: Point;
}

function Arrow({ className, from, to }: ArrowProps) {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  if (length < headLengthPx) return null;
  const [x, y] = [(to.x - from.x) / length, (to.y - from.y) / length];
  const foot = { x: to.x - headLengthPx * x, y: to.y - headLengthPx * y };
  const across = { x: -headHalfWidthPx * y, y: headHalfWidthPx * x };
  return (
    <g className={className}>
      <line x1={from.x} y1={from.y} x2={foot.x} y2={foot.y} />
      <path
        d={`M${to.x} ${to.y}L${foot.x + across.x} ${foot.y + across.y}L${foot.x - across.x} ${foot.y - across.y}Z`}
      />
    </g>
  );
}

function Label({ label, className }: { readonly label: PlacedLabel; readonly className: string }) {
  return (
    <text className={className} x={label.x} y={label.y} textAnchor={label.anchor}>
      {label.lines.map((line, i) => (
        <tspan key={line} x={label.x} dy={i === 0 ? 0 : labelLinePx}>
          {line}
        </tspan>
      ))}
    </text>
  );
}
