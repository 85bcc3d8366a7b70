import { memo, useEffect, useMemo, useState } from 'react';
import { useWidth } from '../../charts/useWidth';
import { sweepGeometry, type SweepCurve, type SweepGeometry } from '../../charts/windsEye/sweepGeometry';
import type { SailingState } from '../../physics/condition/sailingState';
import type { DeckLine } from '../../physics/placement/deckLine';
import type { Project } from '../../project/file/schema';
import type { BasisPart, ProjectLedger } from '../../project/ledger/ledgerTypes';
import { sweepAnglesRad } from '../../project/picture/dragAreaSweep';
import { formatQuantity } from '../../units/print';
import { valueIn } from '../../units/printIn';
import { sweepWork, type ZoneSweep } from './sweepWork';

interface SweepPartProps {
  readonly project: Project;
  readonly ledger: ProjectLedger;
  readonly part: BasisPart;
  readonly state: SailingState;
  readonly line: DeckLine;
}

const firstWidthPx = 352;
/** More lines than this are not told apart. */
const mostZones = 3;

/** Drag area against the apparent wind angle, by zone, before and after. */
export const SweepPart = memo(function SweepPart(props: SweepPartProps) {
  const [ref, widthPx] = useWidth<HTMLElement>(firstWidthPx);
  const { zones, isFinished } = useSweep(props);
  const { deck, condition } = props.part.summary;
  const hasPlan = props.ledger.plan !== null;
  const chart = useMemo(
    () => sweepGeometry(curvesOf(zones, hasPlan), sweepAnglesRad, deck.angleFromBowRad, widthPx),
    [zones, hasPlan, deck.angleFromBowRad, widthPx],
  );
  return (
    <section className="picture-sweep" aria-labelledby="picture-sweep-title">
      <h2 id="picture-sweep-title" className="chart-title">
        Drag area against apparent wind angle, <span className="chart-title-unit">m²</span>
      </h2>
      <figure ref={ref} className={isFinished ? undefined : 'picture-stale'}>
        {zones.length > 0 && <SweepChart chart={chart} />}
        <figcaption className="fine">
          Force along the wind over its dynamic pressure, in one wind of {formatQuantity(deck.speedMs, 'kn')}{' '}
          at every height and angle; heel, leeway and duty as in {condition.name}. Upright line: the wind now.
          {hasPlan ? ' Thick: after; dashed: before.' : ''}
        </figcaption>
      </figure>
      <SweepTable zones={zones} hasPlan={hasPlan} />
    </section>
  );
});

/** Works the angles out in slices, so that the page answers in between; the last answer stands until the next is whole. */
function useSweep({ project, ledger, part, state, line }: SweepPartProps): {
  readonly zones: readonly ZoneSweep[];
  readonly isFinished: boolean;
} {
  const [finished, setFinished] = useState<{
    readonly ledger: ProjectLedger;
    readonly zones: readonly ZoneSweep[];
  }>();
  useEffect(() => {
    const work = sweepWork(project, ledger, part, state, line);
    let timer = setTimeout(goOn, 0);
    function goOn(): void {
      const untilMs = performance.now() + 8;
      let next = work.next();
      while (next.done !== true && performance.now() < untilMs) next = work.next();
      if (next.done === true) setFinished({ ledger, zones: next.value });
      else timer = setTimeout(goOn, 0);
    }
    return () => {
      clearTimeout(timer);
    };
  }, [project, ledger, part, state, line]);
  return { zones: finished?.zones ?? [], isFinished: finished?.ledger === ledger };
}

/** All together before and after, and the largest zones; the others are in the table. */
function curvesOf(zones: readonly ZoneSweep[], hasPlan: boolean): SweepCurve[] {
  const all = zones.find(({ id }) => id === null);
  if (all === undefined) return [];
  const largest = zones
    .filter(({ id }) => id !== null)
    .sort((a, b) => Math.max(...b.before) - Math.max(...a.before))
    .slice(0, mostZones);
  const curve = (zone: ZoneSweep, side: SweepCurve['side']): SweepCurve => ({
    id: `${zone.id ?? 'all'}-${side}`,
    name: zone.name,
    kind: zone.id === null ? 'total' : 'zone',
    side,
    dragAreaM2: zone[side],
  });
  return [
    curve(all, 'before'),
    ...(hasPlan ? [curve(all, 'after')] : []),
    ...largest.map((zone) => curve(zone, 'after')),
  ];
}

function SweepChart({ chart }: { readonly chart: SweepGeometry }) {
  const { widthPx, heightPx, plot, lines, xTicks, yTicks, nowX } = chart;
  return (
    <svg
      width={widthPx}
      height={heightPx}
      viewBox={`0 0 ${widthPx} ${heightPx}`}
      role="img"
      aria-label="Drag area against apparent wind angle; the numbers are in the table below"
    >
      {yTicks.map(({ y, label }) => (
        <g key={y}>
          <line className="chart-grid" x1={plot.left} x2={plot.right} y1={y} y2={y} />
          <text className="chart-tick" x={plot.left - 5} y={y + 4} textAnchor="end">
            {label}
          </text>
        </g>
      ))}
      {xTicks.map(({ x, label }) => (
        <g key={x}>
          <line className="chart-axis" x1={x} x2={x} y1={plot.bottom} y2={plot.bottom + 4} />
          <text className="chart-tick" x={x} y={plot.bottom + 16} textAnchor="middle">
            {label}
          </text>
        </g>
      ))}
      <line className="chart-axis" x1={plot.left} x2={plot.right} y1={plot.bottom} y2={plot.bottom} />
      <line className="sweep-now" x1={nowX} x2={nowX} y1={plot.top} y2={plot.bottom} />
      {lines.map(({ id, kind, side, path, label, labelX, labelY }) => (
        <g key={id}>
          <path className={`sweep-line sweep-${kind} sweep-${side}`} d={path} />
          <text className="chart-note" x={labelX} y={labelY}>
            {label}
          </text>
        </g>
      ))}
    </svg>
  );
}

interface SweepTableProps {
  readonly zones: readonly ZoneSweep[];
  readonly hasPlan: boolean;
}

function SweepTable({ zones, hasPlan }: SweepTableProps) {
  return (
    <details className="picture-words">
      <summary>The chart as a table</summary>
      <div className="sweep-scroll" tabIndex={0} role="region" aria-label="Drag area by zone and angle">
        <table className="sweep-table">
          <thead>
            <tr>
              <th scope="col">m²</th>
              {sweepAnglesRad.map((angle) => (
                <th key={angle} scope="col">
                  {valueIn(angle, 'deg', { decimals: 0 })}°
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {zones.flatMap((zone) =>
              (hasPlan ? (['before', 'after'] as const) : (['before'] as const)).map((side) => (
                <tr key={`${zone.id ?? 'all'} ${side}`}>
                  <th scope="row">
                    {zone.name}
                    {hasPlan ? `, ${side}` : ''}
                  </th>
                  {zone[side].map((value, i) => (
                    <td key={i}>{valueIn(value, 'm2', { decimals: 3 })}</td>
                  ))}
                </tr>
              )),
            )}
          </tbody>
        </table>
      </div>
    </details>
  );
}
