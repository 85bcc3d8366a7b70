import { area, line, precisionFixed, scaleLinear, scaleLog, tickStep } from 'd3';
import { fromSi, toSi } from '../../units/convert';
import { formatValue } from '../../units/print';
import { shownUnit } from '../../units/shownUnits';
import type { Unit } from '../../units/unitTable';
import { roundPx, type Extent } from '../labelBox';
import type {
  ChartMark,
  CurveChartGeometry,
  CurveChartInput,
  CurveInput,
  RingInput,
  StretchInput,
} from './curveChartTypes';
import { curveLabels, ringLabels } from './curveLabels';

const room = { left: 44, right: 10, top: 18, bottom: 34 } as const;

/** Pixels of each x, and of the values of a curve: what labels keep clear of. */
export interface PixelCurve {
  readonly curve: CurveInput;
  readonly xs: readonly number[];
  readonly ys: readonly number[];
}

interface Scales {
  readonly x: (value: number) => number;
  /** Of a value in SI, held inside the plot. */
  readonly y: (valueSi: number) => number;
  readonly yTicks: readonly { readonly y: number; readonly label: string }[];
}

/** Dashes that are told apart at 1.2 px. */
const dashes = ['7 3', '2 3', '9 3 2 3', '4 3', '12 4', '9 3 2 3 2 3'] as const;

function dashOf(index: number): string {
  return dashes[index % dashes.length] ?? dashes[0];
}

/** Lines with bands over one axis: who wins is filled, crossings are ringed, the present is one upright line. */
export function curveChartGeometry(input: CurveChartInput): CurveChartGeometry {
  const { widthPx, heightPx, curves } = input;
  const plot: Extent = {
    left: room.left,
    right: widthPx - room.right,
    top: room.top,
    bottom: heightPx - room.bottom,
  };
  const scales = scalesOf(input, plot);
  const xs = Array.from(input.xs, (value) => roundPx(scales.x(value)));
  const pixels = curves.map((curve) => ({
    curve,
    xs,
    ys: Array.from(curve.best, (value) => roundPx(scales.y(value))),
  }));
  const rings = input.rings.map((ring) => ringIn(ring, scales));
  const named = ringLabels(rings, pixels, plot);
  return {
    widthPx,
    heightPx,
    marks: [
      ...input.stretches.flatMap((stretch) => stretchMarks(stretch, scales, plot)),
      ...axisMarks(input, scales, plot),
      ...curves.map((curve) => bandMark(curve, xs, scales)),
      ...winnerMarks(pixels),
      ...pixels.map(lineMark),
      ...nowMarks(input.now, scales, plot),
      ...rings.flatMap(ringMarks),
      ...named.marks,
      ...curveLabels(pixels, named.boxes, plot),
    ],
  };
}

function scalesOf(input: CurveChartInput, plot: Extent): Scales {
  const x = scaleLinear([input.xAxis.from, input.xAxis.to], [plot.left, plot.right]);
  const unit = shownUnit(input.unit);
  const values = input.curves
    .flatMap(({ best, low, high }) => [...Array.from(best), ...Array.from(low), ...Array.from(high)])
    .filter(Number.isFinite)
    .map((value) => fromSi(value, unit));
  const y = input.isLogarithmic ? logScale(input, unit, plot) : linearScale(values, plot);
  const held = (value: number): number => Math.min(Math.max(value, plot.top), plot.bottom);
  return {
    x,
    y: (valueSi) => (Number.isFinite(valueSi) ? held(y.at(fromSi(valueSi, unit))) : Number.NaN),
    yTicks: y.ticks.map((value) => ({
      y: roundPx(y.at(value)),
      label: formatValue(toSi(value, unit), input.unit, { decimals: y.decimalsOf(value) }),
    })),
  };
}

interface ValueScale {
  readonly at: (value: number) => number;
  readonly ticks: readonly number[];
  readonly decimalsOf: (tick: number) => number;
}

/** Always with zero in it: a bar of nothing has a place. */
function linearScale(values: readonly number[], plot: Extent): ValueScale {
  const least = values.reduce((least, value) => Math.min(least, value), 0);
  const most = values.reduce((most, value) => Math.max(most, value), 0);
  const y = scaleLinear([least, most === least ? least + 1 : most], [plot.bottom, plot.top]).nice(4);
  const [from = 0, to = 1] = y.domain();
  const decimals = precisionFixed(tickStep(from, to, 4));
  return { at: y, ticks: y.ticks(4), decimalsOf: () => decimals };
}

/** Not more than this many times the least best value is shown: a band that reaches zero has no logarithm. */
const mostDecades = 3;

/** From the least best value to the largest end of a band, to whole steps of one, two and five. */
function logScale({ curves }: CurveChartInput, unit: Unit, plot: Extent): ValueScale {
  const shown = (values: ArrayLike<number>): number[] =>
    Array.from(values, (value) => fromSi(value, unit)).filter((value) => Number.isFinite(value) && value > 0);
  const most = curves.flatMap(({ high }) => shown(high)).reduce((a, b) => Math.max(a, b), 1e-6);
  const least = curves.flatMap(({ best }) => shown(best)).reduce((a, b) => Math.min(a, b), most);
  const from = stepBelow(Math.max(0.8 * least, most * 10 ** -mostDecades));
  const y = scaleLog([from, stepAbove(most)], [plot.bottom, plot.top]);
  const at = (value: number): number => (value > from ? y(value) : plot.bottom);
  return { at, ticks: roomyTicks(from, stepAbove(most), plot), decimalsOf: decimalsBelowOne };
}

/** So that 1 and 2, the farthest apart, and 2 and 5 have a line's height each. */
const leastDecadePx = 60;
const mantissas = [1, 2, 5] as const;

function stepBelow(value: number): number {
  const power = 10 ** Math.floor(Math.log10(value));
  return power * ([5, 2].find((mantissa) => mantissa * power <= value) ?? 1);
}

function stepAbove(value: number): number {
  const power = 10 ** Math.floor(Math.log10(value));
  return power * (mantissas.find((mantissa) => mantissa * power >= value * (1 - 1e-9)) ?? 10);
}

function stepsBetween(from: number, to: number): number[] {
  const steps: number[] = [];
  for (let power = Math.floor(Math.log10(from) + 1e-9); power <= Math.ceil(Math.log10(to)); power += 1) {
    steps.push(...mantissas.map((mantissa) => mantissa * 10 ** power));
  }
  return steps.filter((step) => step >= from * (1 - 1e-9) && step <= to * (1 + 1e-9));
}

/** Powers of ten alone where one, two and five would crowd. */
function roomyTicks(from: number, to: number, plot: Extent): number[] {
  const perDecadePx = (plot.bottom - plot.top) / Math.log10(to / from);
  const steps = stepsBetween(from, to);
  if (perDecadePx >= leastDecadePx) return steps;
  return steps.filter((step) => Math.abs(Math.log10(step) - Math.round(Math.log10(step))) < 1e-9);
}

function decimalsBelowOne(tick: number): number {
  return Math.max(0, -Math.floor(Math.log10(tick) + 1e-9));
}

function axisMarks({ xAxis }: CurveChartInput, { x, yTicks }: Scales, plot: Extent): ChartMark[] {
  const across = (y: number): string => `M${plot.left} ${y}H${plot.right}`;
  return [
    ...yTicks.flatMap(({ y, label }): ChartMark[] => [
      { kind: 'path', role: 'grid', d: across(y) },
      { kind: 'text', role: 'tick', x: plot.left - 6, y: y + 4, anchor: 'end', text: label },
    ]),
    { kind: 'path', role: 'axis', d: across(plot.bottom) },
    ...xAxis.ticks.flatMap(({ at, label }): ChartMark[] => {
      const px = roundPx(x(at));
      // A label in the middle of the last tick would leave the picture.
      const isLast = px > plot.right - 8;
      return [
        { kind: 'path', role: 'axis', d: `M${px} ${plot.bottom}V${plot.bottom + 4}` },
        {
          kind: 'text',
          role: 'tick',
          x: isLast ? plot.right + 6 : px,
          y: plot.bottom + 16,
          anchor: isLast ? 'end' : 'middle',
          text: label,
        },
      ];
    }),
    { kind: 'text', role: 'note', x: plot.right, y: plot.bottom + 30, anchor: 'end', text: xAxis.name },
  ];
}

function bandMark({ low, high }: CurveInput, xs: readonly number[], { y }: Scales): ChartMark {
  const draw = area<number>()
    .defined((_, i) => Number.isFinite(low[i]) && Number.isFinite(high[i]))
    .x((px) => px)
    .y0((_, i) => roundPx(y(low[i] ?? Number.NaN)))
    .y1((_, i) => roundPx(y(high[i] ?? Number.NaN)));
  return { kind: 'path', role: 'band', d: draw(xs) ?? '' };
}

/** Between bare and chosen: the tint says who wins, the words on the lines say it again. */
function winnerMarks(pixels: readonly PixelCurve[]): ChartMark[] {
  const bare = pixels.find(({ curve }) => curve.look === 'bare');
  const chosen = pixels.find(({ curve }) => curve.look === 'chosen');
  if (bare === undefined || chosen === undefined) return [];
  const between = (role: 'saves' | 'costs', end: (a: number, b: number) => number): ChartMark => {
    const draw = area<number>()
      .defined((_, i) => Number.isFinite(bare.ys[i]) && Number.isFinite(chosen.ys[i]))
      .x((px) => px)
      .y0((_, i) => bare.ys[i] ?? 0)
      .y1((_, i) => end(bare.ys[i] ?? 0, chosen.ys[i] ?? 0));
    return { kind: 'path', role, d: draw(bare.xs) ?? '' };
  };
  // Lower on the page is less.
  return [between('saves', Math.max), between('costs', Math.min)];
}

function lineMark({ curve, xs, ys }: PixelCurve): ChartMark {
  const draw = line<number>()
    .defined((_, i) => Number.isFinite(ys[i]))
    .x((px) => px)
    .y((_, i) => ys[i] ?? 0);
  const mark = { kind: 'path', role: curve.look, d: draw(xs) ?? '' } as const;
  return curve.look === 'other' ? { ...mark, dash: dashOf(curve.dashIndex) } : mark;
}

function stretchMarks({ fromX, toX, kind, label }: StretchInput, { x }: Scales, plot: Extent): ChartMark[] {
  const held = (px: number): number => roundPx(Math.min(Math.max(px, plot.left), plot.right));
  const [from, to] = [held(x(fromX)), held(x(toX))];
  if (to <= from) return [];
  const isRight = from > (plot.left + plot.right) / 2;
  return [
    { kind: 'path', role: kind, d: `M${from} ${plot.top}H${to}V${plot.bottom}H${from}Z` },
    {
      kind: 'text',
      role: 'note',
      x: isRight ? to : from,
      y: plot.top - 5,
      anchor: isRight ? 'end' : 'start',
      text: label,
    },
  ];
}

function nowMarks(now: CurveChartInput['now'], { x }: Scales, plot: Extent): ChartMark[] {
  if (now === null) return [];
  const px = roundPx(x(now.x));
  if (px < plot.left || px > plot.right) return [];
  const isRight = px > plot.right - 80;
  return [
    { kind: 'path', role: 'now', d: `M${px} ${plot.top - 12}V${plot.bottom}` },
    {
      kind: 'text',
      role: 'label',
      x: isRight ? px - 4 : px + 4,
      y: plot.top - 5,
      anchor: isRight ? 'end' : 'start',
      text: now.label,
    },
  ];
}

/** A ring in pixels. */
export interface PixelRing {
  readonly x: number;
  readonly y: number;
  readonly lowX: number;
  readonly highX: number;
  readonly label: string;
}

function ringIn({ x, y, lowX, highX, label }: RingInput, scales: Scales): PixelRing {
  return {
    x: roundPx(scales.x(x)),
    y: roundPx(scales.y(y)),
    lowX: roundPx(scales.x(lowX)),
    highX: roundPx(scales.x(highX)),
    label,
  };
}

function ringMarks({ x, y, lowX, highX }: PixelRing): ChartMark[] {
  const spread: ChartMark[] =
    highX - lowX > 1
      ? [
          {
            kind: 'path',
            role: 'spread',
            d: `M${lowX} ${y - 4}V${y + 4}M${lowX} ${y}H${highX}M${highX} ${y - 4}V${y + 4}`,
          },
        ]
      : [];
  return [...spread, { kind: 'ring', role: 'ring', x, y }];
}
