import type { ChartCurve, ChartPoint } from './coefficientChartGeometry';
import type { CurveSample } from './coefficientCurves';
import { firstFree, labelBox, type Extent, type PlacedLabel } from './labelBox';

export type RegimeLabel = PlacedLabel;

type Scale = (value: number) => number;

/** A stretch narrower than this keeps its name to itself. */
const leastStretchPx = 20;
const gapPx = 6;

/** The names of the curve's stretches, at the middle of each: the dip below the band, the others above or beside it. */
export function placeRegimeLabels(
  samples: readonly CurveSample[],
  regimes: readonly string[],
  x: Scale,
  y: Scale,
  plot: Extent,
): RegimeLabel[] {
  return regimes.flatMap((name, regime) => {
    const own = firstStretch(samples, regime);
    const [first, last] = [own[0], own.at(-1)];
    if (first === undefined || last === undefined) return [];
    if (x(last.x) - x(first.x) < leastStretchPx) return [];
    const middle = own[Math.floor(own.length / 2)] ?? first;
    const label = regimeLabel(name, middle, x, y);
    return [withinSides(label, plot)];
  });
}

/** A regime may come again further on, as edge-on does at 180 degrees; it is named once. */
function firstStretch(samples: readonly CurveSample[], regime: number): readonly CurveSample[] {
  const from = samples.findIndex((sample) => sample.regime === regime);
  if (from < 0) return [];
  const length = samples.slice(from).findIndex((sample) => sample.regime !== regime);
  return samples.slice(from, length < 0 ? undefined : from + length);
}

function regimeLabel(name: string, { x: at, low, high }: CurveSample, x: Scale, y: Scale): PlacedLabel {
  if (name === 'dip') return { lines: [name], x: x(at), y: y(low) + gapPx + 9, anchor: 'middle' };
  if (name === 'crisis') return { lines: [name], x: x(at) + 4 * gapPx, y: y(high) + gapPx, anchor: 'start' };
  return { lines: [name], x: x(at), y: y(high) - gapPx, anchor: 'middle' };
}

function withinSides(label: PlacedLabel, plot: Extent): PlacedLabel {
  const { left, right } = labelBox(label);
  const shift = Math.max(plot.left - left, 0) - Math.max(right - plot.right, 0);
  return { ...label, x: label.x + shift };
}

/** Two curves are named at their ends, the upper one above and the lower one below, clear of the stretches' names. */
export function placeCurveLabels(
  curves: readonly ChartCurve[],
  regimeLabels: readonly RegimeLabel[],
  x: Scale,
  y: Scale,
  plot: Extent,
): PlacedLabel[] {
  const taken = regimeLabels.map(labelBox);
  const ends = curves.flatMap(({ name, samples }) => {
    const end = samples.at(-1);
    return name === '' || end === undefined ? [] : [{ name, x: x(end.x), y: y(end.best) }];
  });
  const top = Math.min(...ends.map((end) => end.y));
  return ends.map((end) => {
    const steps = end.y === top ? [-4, -18, -32] : [13, 27, 41];
    const label = firstFree(offsetsFrom(end, steps), taken, plot);
    taken.push(labelBox(label));
    return label;
  });
}

function offsetsFrom(
  end: { readonly name: string; readonly x: number; readonly y: number },
  steps: readonly number[],
): [PlacedLabel, ...PlacedLabel[]] {
  const at = (dy: number): PlacedLabel => ({ lines: [end.name], x: end.x, y: end.y + dy, anchor: 'end' });
  const [first = 0, ...rest] = steps;
  return [at(first), ...rest.map(at)];
}

export interface UnlabelledPoint extends Omit<ChartPoint, 'label'> {
  readonly text: string;
}

const pointRadiusPx = 5;

/** The labels of the points: below to the left, below to the right, then further down or above, where there is room. */
export function placePointLabels(
  points: readonly UnlabelledPoint[],
  otherLabels: readonly PlacedLabel[],
  curves: readonly Extent[],
  plot: Extent,
): ChartPoint[] {
  const taken: Extent[] = [...otherLabels.map(labelBox), ...points.map(pointBox)];
  return points.map(({ text, ...point }) => {
    const label = firstFree(placesFor(text, point.x, point.y), taken, plot, curves);
    taken.push(labelBox(label));
    return { ...point, label };
  });
}

function pointBox({ x, y }: UnlabelledPoint): Extent {
  return {
    left: x - pointRadiusPx,
    right: x + pointRadiusPx,
    top: y - pointRadiusPx,
    bottom: y + pointRadiusPx,
  };
}

function placesFor(text: string, x: number, y: number): [PlacedLabel, ...PlacedLabel[]] {
  const at = (dx: number, dy: number, anchor: PlacedLabel['anchor']): PlacedLabel => ({
    lines: [text],
    x: x + dx,
    y: y + dy,
    anchor,
  });
  return [
    at(0, 19, 'end'),
    at(0, 19, 'start'),
    at(0, 34, 'end'),
    at(0, 34, 'start'),
    at(0, -10, 'end'),
    at(0, -10, 'start'),
    at(9, 4, 'start'),
    at(-9, 4, 'end'),
    at(0, -24, 'end'),
    at(0, -24, 'start'),
    at(0, 49, 'end'),
    at(0, 49, 'start'),
    at(0, 64, 'end'),
    at(0, 64, 'start'),
  ];
}
