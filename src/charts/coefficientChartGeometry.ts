import { line, range, scaleLinear, scaleLog } from 'd3';
import { roundBarDrag, roundBarSurface, type RoundBarDrag } from '../physics/section/roundBar';
import { formatValue } from '../units/print';
import {
  placeCurveLabels,
  placePointLabels,
  placeRegimeLabels,
  type RegimeLabel,
  type UnlabelledPoint,
} from './coefficientChartLabels';
import { roundPx, type Extent, type PlacedLabel } from './labelBox';

/** What a round bar's curve depends on. */
export interface BarCurve {
  readonly diameterM: number;
  readonly roughnessM: number;
  /** |u_n| / |u|: 1 when the wind is square to the axis. */
  readonly inclinationCosine: number;
}

/** A member's place on the chart. */
export interface CoefficientPoint {
  readonly reynolds: number;
  readonly coefficient: number;
}

/** A fitting in one state: the curve of the member that is worked through, her point, and those of the others. */
export interface CoefficientSide {
  readonly name: 'before' | 'after';
  readonly curve: BarCurve;
  readonly point: CoefficientPoint;
  readonly others: readonly CoefficientPoint[];
}

/** One sample of a curve. */
export interface CurveSample {
  readonly reynolds: number;
  readonly low: number;
  readonly best: number;
  readonly high: number;
  readonly regime: number;
}

export interface ChartCurve {
  /** Empty when one curve serves both states. */
  readonly name: string;
  readonly samples: readonly CurveSample[];
  readonly bestPath: string;
  readonly bandPath: string;
}

interface Place {
  readonly x: number;
  readonly y: number;
}

export interface ChartPoint {
  readonly name: 'before' | 'after';
  readonly x: number;
  readonly y: number;
  readonly label: PlacedLabel;
  readonly others: readonly Place[];
}

export interface CoefficientChartGeometry {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly plot: Extent;
  readonly curves: readonly ChartCurve[];
  readonly points: readonly ChartPoint[];
  readonly regimeLabels: readonly RegimeLabel[];
  readonly curveLabels: readonly PlacedLabel[];
  readonly xTicks: readonly { readonly x: number; readonly exponent: number }[];
  readonly yTicks: readonly { readonly y: number; readonly label: string }[];
  readonly description: string;
  /** The chart in numbers: one, two and five of every decade. */
  readonly table: readonly { readonly curveName: string; readonly rows: readonly CurveSample[] }[];
}

const heightPx = 176;
const margin = { left: 28, right: 8, top: 18, bottom: 32 } as const;
const samplesPerDecade = 32;
/** Decades shown whatever the point: from before the dip to the end of the recovery. */
const shownDecades = { from: 3, to: 7 } as const;
/** Room above the highest band for the labels. */
const headroom = 1.08;
/** Two curves that part by less than this, two pixels, are drawn as one. */
const sameCurve = 0.02;
/** Two points nearer than this cover each other. */
const onePointPx = 3;

/** The chart of one fitting's round bars, before and after. */
export function coefficientChartGeometry(
  sides: readonly CoefficientSide[],
  widthPx: number,
): CoefficientChartGeometry {
  const decades = decadesOf(sides);
  const distinct = distinctCurves(sides, sampleGrid(decades));
  const sampled = distinct.map(({ curve }) => sampleCurve(curve, sampleGrid(decades)));
  const most = Math.max(
    ...sampled.flat().map(({ high }) => high),
    ...sides.flatMap(({ point, others }) => [point, ...others].map(({ coefficient }) => coefficient)),
  );
  const plot: Extent = {
    left: margin.left,
    right: widthPx - margin.right,
    top: margin.top,
    bottom: heightPx - margin.bottom,
  };
  const x = scaleLog([10 ** decades.from, 10 ** decades.to], [plot.left, plot.right]);
  const y = scaleLinear([0, most * headroom], [plot.bottom, plot.top]);
  const place = ({ reynolds, coefficient }: CoefficientPoint): Place => ({
    x: roundPx(x(reynolds)),
    y: roundPx(y(coefficient)),
  });
  const curves = distinct.map(({ name }, i) => chartCurve(name, sampled[i] ?? [], x, y));
  const placed = mergedWhereOne(
    sides.map((side) => ({
      name: side.name,
      ...place(side.point),
      others: distinctPlaces(side.others.map(place)),
      text: `${side.name} ${coefficientText(side.point.coefficient)}`,
    })),
  );
  const regimeLabels = placeRegimeLabels(sampled[0] ?? [], x, y, plot);
  const curveLabels = placeCurveLabels(curves, regimeLabels, x, y, plot);
  return {
    widthPx,
    heightPx,
    plot,
    curves,
    points: placePointLabels(
      placed,
      [...regimeLabels, ...curveLabels],
      sampled.flatMap((each) => alongCurve(each, x, y)),
      plot,
    ),
    regimeLabels,
    curveLabels,
    xTicks: range(decades.from, decades.to + 1).map((exponent) => ({ x: x(10 ** exponent), exponent })),
    yTicks: y.ticks(4).map((value) => ({ y: y(value), label: formatValue(value, '1', { decimals: 1 }) })),
    description: descriptionOf(sides),
    table: distinct.map(({ name, curve }) => ({
      curveName: name,
      rows: sampleCurve(curve, tableGrid(decades)),
    })),
  };
}

interface Decades {
  readonly from: number;
  readonly to: number;
}

function decadesOf(sides: readonly CoefficientSide[]): Decades {
  const logs = sides.flatMap(({ point, others }) =>
    [point, ...others].map(({ reynolds }) => Math.log10(Math.max(reynolds, 1))),
  );
  return {
    from: Math.min(shownDecades.from, ...logs.map(Math.floor)),
    to: Math.max(shownDecades.to, ...logs.map(Math.ceil)),
  };
}

interface NamedCurve {
  readonly name: string;
  readonly curve: BarCurve;
}

/** One curve without a name where both states lie on the same, else one for each. */
function distinctCurves(sides: readonly CoefficientSide[], grid: readonly number[]): readonly NamedCurve[] {
  const [first, second] = sides;
  if (first === undefined) return [];
  if (second === undefined || isSameCurve(first.curve, second.curve, grid)) {
    return [{ name: '', curve: first.curve }];
  }
  return sides.map(({ name, curve }) => ({ name, curve }));
}

function isSameCurve(a: BarCurve, b: BarCurve, grid: readonly number[]): boolean {
  const other = sampleCurve(b, grid);
  return sampleCurve(a, grid).every(({ best }, i) => Math.abs(best - (other[i]?.best ?? 0)) < sameCurve);
}

function sampleGrid({ from, to }: Decades): number[] {
  const count = (to - from) * samplesPerDecade;
  return range(count + 1).map((i) => 10 ** (from + i / samplesPerDecade));
}

function tableGrid({ from, to }: Decades): number[] {
  const decades = range(from, to).flatMap((exponent) => [1, 2, 5].map((digit) => digit * 10 ** exponent));
  return [...decades, 10 ** to];
}

/** The bar's curve at the given Reynolds numbers, from the same function that the ledger uses. */
export function sampleCurve(
  { diameterM, roughnessM, inclinationCosine }: BarCurve,
  reynoldsNumbers: readonly number[],
): CurveSample[] {
  const surface = roundBarSurface(roughnessM, diameterM);
  return reynoldsNumbers.map((reynolds) => {
    const drag: RoundBarDrag = { best: 0, low: 0, high: 0, regime: 0, logCrisisReynolds: 0 };
    const { low, best, high, regime } = roundBarDrag(reynolds, surface, inclinationCosine, drag);
    return { reynolds, low, best, high, regime };
  });
}

/** Before and after at one place are one point with both names. */
function mergedWhereOne(points: readonly UnlabelledPoint[]): readonly UnlabelledPoint[] {
  const [before, after] = points;
  if (before === undefined || after === undefined) return points;
  const isOne = Math.hypot(before.x - after.x, before.y - after.y) < onePointPx;
  return isOne ? [{ ...after, text: `before, ${after.text}` }] : points;
}

/** Members of a row often share a pixel, and one ring is enough there. */
function distinctPlaces(places: readonly Place[]): Place[] {
  return [
    ...new Map(places.map((place) => [`${Math.round(place.x)} ${Math.round(place.y)}`, place])).values(),
  ];
}

type Scale = (value: number) => number;

/** A thin trail of boxes along a curve, for labels to keep clear of. */
function alongCurve(samples: readonly CurveSample[], x: Scale, y: Scale): Extent[] {
  return samples.map(({ reynolds, best }) => {
    const [left, top] = [x(reynolds), y(best)];
    return { left: left - 1, right: left + 1, top: top - 1, bottom: top + 1 };
  });
}

function chartCurve(name: string, samples: readonly CurveSample[], x: Scale, y: Scale): ChartCurve {
  const along = (value: (sample: CurveSample) => number): string =>
    line<CurveSample>(
      (sample) => roundPx(x(sample.reynolds)),
      (sample) => roundPx(y(value(sample))),
    )(samples) ?? '';
  const back = [...samples].reverse();
  const lower = back.map(({ reynolds, low }) => `L${roundPx(x(reynolds))},${roundPx(y(low))}`).join('');
  return {
    name,
    samples,
    bestPath: along(({ best }) => best),
    bandPath: `${along(({ high }) => high)}${lower}Z`,
  };
}

export function coefficientText(coefficient: number): string {
  return formatValue(coefficient, '1', { decimals: 2 });
}

function descriptionOf(sides: readonly CoefficientSide[]): string {
  const states = sides.map(
    ({ name, point }) =>
      `${name}, ${coefficientText(point.coefficient)} at Reynolds number ${formatValue(point.reynolds, '1')}`,
  );
  return `Drag coefficient of a round bar against Reynolds number, with its range from low to high. This fitting: ${states.join('; ')}.`;
}
