import { line, precisionFixed, range, scaleLinear, scaleLog, tickStep } from 'd3';
import { formatValue } from '../units/print';
import {
  placeCurveLabels,
  placePointLabels,
  placeRegimeLabels,
  type RegimeLabel,
  type UnlabelledPoint,
} from './coefficientChartLabels';
import type { CoefficientCurve, CurveAxis, CurveSample } from './coefficientCurves';
import { roundPx, type Extent, type PlacedLabel } from './labelBox';

/** A member's place on the chart. */
export interface CoefficientPoint {
  /** On the axis of the curve. */
  readonly x: number;
  readonly coefficient: number;
}

/** A fitting in one state: the curve of the member that is worked through, her point, and those of the others. */
export interface CoefficientSide {
  readonly name: 'before' | 'after';
  /** What it is, in words: "round bar". */
  readonly shapeName: string;
  readonly curve: CoefficientCurve;
  readonly point: CoefficientPoint;
  readonly others: readonly CoefficientPoint[];
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
  readonly against: CoefficientCurve['against'];
  /** What is drawn, in words: "round bar", or both where they differ. */
  readonly shapeName: string;
  /** A tick of ten to a power has an exponent; the typeface has no raised figures above 3. */
  readonly xTicks: readonly {
    readonly x: number;
    readonly label: string;
    readonly exponent: number | null;
  }[];
  readonly yTicks: readonly { readonly y: number; readonly label: string }[];
  readonly description: string;
  /** The chart in numbers: one, two and five of every decade, every ten degrees, or every 0.05. */
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

/** The chart of one fitting, before and after; both against the same. */
export function coefficientChartGeometry(
  sides: readonly CoefficientSide[],
  widthPx: number,
): CoefficientChartGeometry {
  const against = sides[0]?.curve.against ?? 'reynolds';
  const axis = axisOf(against, sides);
  const distinct = distinctCurves(sides, axis.grid);
  const sampled = distinct.map(({ curve }) => axis.grid.map(curve.at));
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
  const x = axis.scale(plot);
  const y = scaleLinear([0, most * headroom], [plot.bottom, plot.top]);
  const place = ({ x: at, coefficient }: CoefficientPoint): Place => ({
    x: roundPx(x(at)),
    y: roundPx(y(coefficient)),
  });
  // As many places as the ticks need to differ.
  const decimals = Math.max(1, precisionFixed(tickStep(0, most * headroom, 4)));
  const curves = distinct.map(({ name }, i) => chartCurve(name, sampled[i] ?? [], x, y));
  const placed = mergedWhereOne(
    sides.map((side) => ({
      name: side.name,
      ...place(side.point),
      others: distinctPlaces(side.others.map(place)),
      text: `${side.name} ${coefficientText(side.point.coefficient)}`,
    })),
  );
  const regimeLabels = placeRegimeLabels(sampled[0] ?? [], distinct[0]?.curve.regimes ?? [], x, y, plot);
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
    against,
    shapeName: [...new Set(sides.map(({ shapeName }) => shapeName))].join(', then '),
    xTicks: axis.ticks.map(({ at, label, exponent }) => ({ x: x(at), label, exponent })),
    yTicks: y.ticks(4).map((value) => ({ y: y(value), label: formatValue(value, '1', { decimals }) })),
    description: descriptionOf(sides),
    table: distinct.map(({ name, curve }) => ({
      curveName: name,
      rows: axis.tableGrid.map(curve.at),
    })),
  };
}

/** What a chart is drawn against: its scale, where the curve is sampled, and its ticks. */
interface Axis {
  readonly scale: (plot: Extent) => Scale;
  readonly grid: readonly number[];
  readonly tableGrid: readonly number[];
  readonly ticks: readonly {
    readonly at: number;
    readonly label: string;
    readonly exponent: number | null;
  }[];
}

function reynoldsAxis(sides: readonly CoefficientSide[]): Axis {
  const logs = sides.flatMap(({ point, others }) =>
    [point, ...others].map(({ x }) => Math.log10(Math.max(x, 1))),
  );
  const from = Math.min(shownDecades.from, ...logs.map(Math.floor));
  const to = Math.max(shownDecades.to, ...logs.map(Math.ceil));
  const exponents = range(from, to);
  return {
    scale: ({ left, right }) => scaleLog([10 ** from, 10 ** to], [left, right]),
    grid: range((to - from) * samplesPerDecade + 1).map((i) => 10 ** (from + i / samplesPerDecade)),
    tableGrid: [
      ...exponents.flatMap((exponent) => [1, 2, 5].map((digit) => digit * 10 ** exponent)),
      10 ** to,
    ],
    ticks: [...exponents, to].map((exponent) => ({ at: 10 ** exponent, label: '10', exponent })),
  };
}

function axisOf(against: CurveAxis, sides: readonly CoefficientSide[]): Axis {
  if (against === 'reynolds') return reynoldsAxis(sides);
  return against === 'solidity' ? solidityAxis : angleAxis;
}

/** As far as nets are dense; beyond, a wall. */
const mostSolidity = 0.7;
const solidityAxis: Axis = {
  scale: ({ left, right }) => scaleLinear([0, mostSolidity], [left, right]),
  grid: range(71).map((i) => i / 100),
  tableGrid: range(1, 15).map((i) => i / 20),
  ticks: range(8).map((i) => ({ at: i / 10, label: i === 0 ? '0' : (i / 10).toFixed(1), exponent: null })),
};

const mostDeg = 180;
const angleAxis: Axis = {
  scale: ({ left, right }) => scaleLinear([0, mostDeg], [left, right]),
  grid: range(mostDeg + 1),
  tableGrid: range(0, mostDeg + 1, 10),
  ticks: range(0, mostDeg + 1, 30).map((at) => ({ at, label: `${at}°`, exponent: null })),
};

interface NamedCurve {
  readonly name: string;
  readonly curve: CoefficientCurve;
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

function isSameCurve(a: CoefficientCurve, b: CoefficientCurve, grid: readonly number[]): boolean {
  return grid.every((x) => Math.abs(a.at(x).best - b.at(x).best) < sameCurve);
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
  return samples.map(({ x: at, best }) => {
    const [left, top] = [x(at), y(best)];
    return { left: left - 1, right: left + 1, top: top - 1, bottom: top + 1 };
  });
}

function chartCurve(name: string, samples: readonly CurveSample[], x: Scale, y: Scale): ChartCurve {
  const along = (value: (sample: CurveSample) => number): string =>
    line<CurveSample>(
      (sample) => roundPx(x(sample.x)),
      (sample) => roundPx(y(value(sample))),
    )(samples) ?? '';
  const back = [...samples].reverse();
  const lower = back.map(({ x: at, low }) => `L${roundPx(x(at))},${roundPx(y(low))}`).join('');
  return {
    name,
    samples,
    bestPath: along(({ best }) => best),
    bandPath: `${along(({ high }) => high)}${lower}Z`,
  };
}

export function coefficientText(coefficient: number): string {
  return formatValue(coefficient, '1', { decimals: coefficient < 0.1 ? 3 : 2 });
}

/** What an axis is called in titles and tables, under the axis, and how a place on it reads. */
interface AxisWords {
  readonly name: string;
  readonly tableHead: string;
  readonly note: string;
  readonly cell: (x: number) => string;
  readonly at: (x: number) => string;
}

const angleCell = (x: number): string => `${formatValue(x, '1', { decimals: 0 })}°`;
const solidityCell = (x: number): string => formatValue(x, '1', { decimals: 2 });

export const axisWords: Readonly<Record<CurveAxis, AxisWords>> = {
  reynolds: {
    name: 'Reynolds number',
    tableHead: 'Re',
    note: 'Reynolds number Re, no unit, logarithmic',
    cell: (x) => formatValue(x, '1', { decimals: 0 }),
    at: (x) => `at Reynolds number ${formatValue(x, '1')}`,
  },
  incidence: {
    name: 'incidence',
    tableHead: 'incidence',
    note: 'angle between chord and air, at this Reynolds number',
    cell: angleCell,
    at: (x) => `at ${angleCell(x)} of incidence`,
  },
  windAngle: {
    name: 'wind angle',
    tableHead: 'wind angle',
    note: 'wind at the fitting from the bow, heeled as she is; on the frontal areas',
    cell: angleCell,
    at: (x) => `in wind from ${angleCell(x)} off the bow`,
  },
  solidity: {
    name: 'solidity',
    tableHead: 'solidity',
    note: 'solid over gross area; onto the face, on the gross area',
    cell: solidityCell,
    at: (x) => `at solidity ${solidityCell(x)}`,
  },
};

function descriptionOf(sides: readonly CoefficientSide[]): string {
  const states = sides.map(
    ({ name, shapeName, curve, point }) =>
      `${name}, ${shapeName}, ${coefficientText(point.coefficient)} ${axisWords[curve.against].at(point.x)}`,
  );
  const words = axisWords[sides[0]?.curve.against ?? 'reynolds'].name;
  return `Drag coefficient against ${words}, with its range from low to high. This fitting: ${states.join('; ')}.`;
}
