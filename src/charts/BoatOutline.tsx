import './boatOutline.css';
import type { BoatOutlineGeometry } from './boatOutlineGeometry';

/** The boat in outline, to be marked with a pencil. */
export function BoatOutline({ chart }: { readonly chart: BoatOutlineGeometry }) {
  const { widthPx, heightPx, planPath, profilePath, waterY, mast, profile, plan } = chart;
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
      <line className="outline-fine" x1={0} x2={profile.sternX + 8} y1={waterY} y2={waterY} />
      <path className="outline-line" d={planPath} />
      <line
        className="outline-fine"
        x1={plan.centrelineX}
        x2={plan.centrelineX}
        y1={plan.stemY}
        y2={plan.sternY}
      />
      <circle className="outline-line" cx={plan.centrelineX} cy={plan.mastY} r={2.5} />
      <ProfileScale profile={profile} />
      <PlanScale plan={plan} />
    </svg>
  );
}

function ProfileScale({ profile }: Pick<BoatOutlineGeometry, 'profile'>) {
  const { stemX, sternX, scaleY, ticks } = profile;
  return (
    <g>
      <line className="outline-fine" x1={stemX} x2={sternX} y1={scaleY} y2={scaleY} />
      {ticks.map(({ at, label }) => (
        <g key={label}>
          <line className="outline-fine" x1={at} x2={at} y1={scaleY} y2={scaleY + 4} />
          <text
            className="outline-text"
            x={at}
            y={scaleY + 15}
            textAnchor={at === stemX ? 'start' : 'middle'}
          >
            {label}
          </text>
        </g>
      ))}
    </g>
  );
}

function PlanScale({ plan: { stemY, sternY, scaleX, ticks } }: Pick<BoatOutlineGeometry, 'plan'>) {
  return (
    <g>
      <line className="outline-fine" x1={scaleX} x2={scaleX} y1={stemY} y2={sternY} />
      {ticks.map(({ at, label }) => (
        <g key={label}>
          <line className="outline-fine" x1={scaleX} x2={scaleX + 4} y1={at} y2={at} />
          <text className="outline-text" x={scaleX + 8} y={at + 4}>
            {label}
          </text>
        </g>
      ))}
    </g>
  );
}
