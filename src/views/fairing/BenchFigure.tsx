import { useId, type ReactNode } from 'react';
import { CurveChart } from '../../charts/curves/CurveChart';
import { curveChartGeometry } from '../../charts/curves/curveChartGeometry';
import type { CurveChartInput } from '../../charts/curves/curveChartTypes';
import { curveSvg } from '../../charts/curves/curveSvg';
import { useWidth } from '../../charts/useWidth';
import { SaveChart } from '../../ui/SaveChart';

interface BenchFigureProps {
  /** What against what. */
  readonly title: string;
  /** After it, muted: unit and scale. */
  readonly unit: string;
  /** Of which member, in which condition: for the title of a saved picture. */
  readonly about: string;
  /** The chart for a width; null where there is nothing to draw. */
  readonly input: (widthPx: number) => CurveChartInput | null;
  readonly note?: string | undefined;
  /** The numbers of the chart. */
  readonly table: ReactNode;
}

const firstWidthPx = 360;
/** A saved picture has room. */
const savedWidthPx = 720;

/** A chart with its title, its table and the ways to save it. */
export function BenchFigure({ title, unit, about, input, note, table }: BenchFigureProps) {
  const titleId = useId();
  const [ref, widthPx] = useWidth<HTMLElement>(firstWidthPx);
  const drawn = input(widthPx);
  return (
    <figure className="bench-figure" aria-labelledby={titleId}>
      <h4 id={titleId} className="chart-title">
        {title} <span className="chart-title-unit">{unit}</span>
      </h4>
      <div ref={ref as React.RefObject<HTMLDivElement | null>} className="bench-drawing">
        {drawn !== null && (
          <CurveChart
            chart={curveChartGeometry(drawn)}
            description={`${title}, ${unit}; the numbers are in the table below`}
          />
        )}
      </div>
      {note !== undefined && <figcaption className="fine">{note}</figcaption>}
      <details className="bench-numbers">
        <summary>
          Table and files<span className="visually-hidden"> of {title}</span>
        </summary>
        <div className="bench-scroll" tabIndex={0} role="region" aria-label={`${title}: table`}>
          {table}
        </div>
        <SaveChart
          name={`${title} ${about}`}
          svg={(day) => {
            const saved = input(savedWidthPx);
            if (saved === null) return '';
            return curveSvg(
              curveChartGeometry(saved),
              [`${title}, ${unit}`, about, day],
              ['Preliminary estimate. Grey: 90 % range of each line.', ...(note === undefined ? [] : [note])],
            );
          }}
        />
      </details>
    </figure>
  );
}
