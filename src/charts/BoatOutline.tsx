import './boatOutline.css';
import type { BoatOutlineGeometry } from './boatOutlineGeometry';

/** The boat in outline, to be marked with a pencil. */
export function BoatOutline({ chart }: { readonly chart: BoatOutlineGeometry }) {
  const { widthPx, heightPx, planPath, profilePath, centrelineY, waterY, mast, stemX, sternX } = chart;
  return (
    <svg
      className="boat-outline"
      viewBox={`0 0 ${widthPx} ${heightPx}`}
      width={widthPx}
      height={heightPx}
      role="img"
      aria-label={chart.description}
    >
      <path className="outline-line" d={profilePath} />
      <line className="outline-line" x1={mast.x} x2={mast.x} y1={mast.footY} y2={mast.topY} />
      <line className="outline-fine" x1={0} x2={widthPx} y1={waterY} y2={waterY} />
      <path className="outline-line" d={planPath} />
      <line className="outline-fine" x1={stemX} x2={sternX} y1={centrelineY} y2={centrelineY} />
      <Scale chart={chart} />
    </svg>
  );
}

function Scale({ chart: { stemX, sternX, ticks, tickY } }: { readonly chart: BoatOutlineGeometry }) {
  return (
    <g>
      <line className="outline-fine" x1={stemX} x2={sternX} y1={tickY} y2={tickY} />
      {ticks.map(({ x, label }) => (
        <g key={label}>
          <line className="outline-fine" x1={x} x2={x} y1={tickY} y2={tickY + 4} />
          <text className="outline-text" x={x} y={tickY + 15} textAnchor={x === stemX ? 'start' : 'middle'}>
            {label}
          </text>
        </g>
      ))}
    </g>
  );
}
