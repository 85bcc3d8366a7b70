import { line, precisionFixed, scaleLinear, tickStep } from 'd3';
import { fromSi } from '../../units/convert';
import { valueIn } from '../../units/printIn';
import { labelLinePx, roundPx, type Extent } from '../labelBox';

/** One line of the chart: a zone, or all together. */
export interface SweepCurve {
  readonly id: string;
  readonly name: string;
  readonly kind: 'total' | 'zone';
  readonly side: 'before' | 'after';
  /** m2, one for each angle. */
  readonly dragAreaM2: readonly number[];
}

export interface SweepLine extends SweepCurve {
  readonly path: string;
  /** At the end of the line; empty for a line that another label speaks for. */
  readonly label: string;
  readonly labelX: number;
  readonly labelY: number;
}

export interface SweepGeometry {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly plot: Extent;
  readonly lines: readonly SweepLine[];
  readonly xTicks: readonly { readonly x: number; readonly label: string }[];
  readonly yTicks: readonly { readonly y: number; readonly label: string }[];
  readonly nowX: number;
}

const heightPx = 210;
const plotTop = 10;
const leftPx = 34;
const bottomPx = 34;
/** Room for the names at the ends of the lines. */
const labelsPx = 96;
const angleTicksDeg = [0, 45, 90, 135, 180] as const;

/** Drag area against the apparent wind angle, 0 to 180 degrees; names at the lines' ends, apart from each other. */
export function sweepGeometry(
  curves: readonly SweepCurve[],
  anglesRad: readonly number[],
  nowRad: number,
  widthPx: number,
): SweepGeometry {
  const plot = { left: leftPx, right: widthPx - labelsPx, top: plotTop, bottom: heightPx - bottomPx };
  const most = Math.max(...curves.flatMap(({ dragAreaM2 }) => dragAreaM2), 1e-6);
  const xOf = scaleLinear([0, Math.PI], [plot.left, plot.right]);
  const yOf = scaleLinear([0, most], [plot.bottom, plot.top]).nice(4);
  const draw = line<number>()
    .x((_, i) => roundPx(xOf(anglesRad[i] ?? 0)))
    .y((value) => roundPx(yOf(value)));
  const yValues = yOf.ticks(4);
  const decimals = precisionFixed(tickStep(0, yOf.domain()[1] ?? 1, 4));
  return {
    widthPx,
    heightPx,
    plot,
    lines: spread(
      curves.map((curve) => ({
        ...curve,
        path: draw(curve.dragAreaM2) ?? '',
        label: labelOf(curve),
        labelX: plot.right + 5,
        labelY: roundPx(yOf(curve.dragAreaM2.at(-1) ?? 0)) + 4,
      })),
      plot,
    ),
    xTicks: angleTicksDeg.map((deg) => ({
      x: roundPx(xOf((deg * Math.PI) / 180)),
      label: deg === 180 ? `${deg}°` : String(deg),
    })),
    yTicks: yValues.map((value) => ({ y: roundPx(yOf(value)), label: valueIn(value, 'm2', { decimals }) })),
    nowX: roundPx(xOf(Math.min(Math.abs(fromSi(nowRad, 'rad')), Math.PI))),
  };
}

const mostLetters = 15;

function labelOf({ name, kind, side }: SweepCurve): string {
  if (kind === 'total') return side === 'before' ? 'all, before' : 'all, after';
  const words = side === 'after' ? name : '';
  return words.length <= mostLetters ? words : `${words.slice(0, mostLetters - 1).trimEnd()}…`;
}

/** From the top down, each name below the one above it; then back up from the axis where they ran out of room. */
function spread(lines: readonly SweepLine[], { bottom }: Extent): readonly SweepLine[] {
  const named = lines.filter(({ label }) => label !== '').sort((a, b) => a.labelY - b.labelY);
  const places: number[] = [];
  for (const { labelY } of named) places.push(Math.max(labelY, (places.at(-1) ?? -Infinity) + labelLinePx));
  let lowest = bottom + labelLinePx;
  for (let i = places.length - 1; i >= 0; i -= 1) {
    places[i] = Math.min(places[i]!, lowest);
    lowest = places[i]! - labelLinePx;
  }
  return lines.map((each) => {
    const index = named.indexOf(each);
    return index === -1 ? each : { ...each, labelY: places[index] ?? each.labelY };
  });
}
