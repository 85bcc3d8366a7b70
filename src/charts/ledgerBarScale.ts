import { extent, precisionFixed, scaleLinear, tickStep } from 'd3';
import type { Notice } from '../physics/fitting/notice';
import type { Result } from '../physics/ledger/ledgerSums';
import { fromSi } from '../units/convert';
import { formatValue, printUnit } from '../units/print';
import { labelBox } from './labelBox';

/** What a bar shows: a row, a zone or the total, before and after. */
export interface BarSides {
  readonly before: Result;
  readonly after: Result;
}

export interface AxisTick {
  readonly x: number;
  readonly powerW: number;
  /** The number alone; the last one carries the unit; empty where there is no room. Centred on the mark. */
  readonly label: string;
}

/** The one scale of a column of bars, from 0: watts to pixels, with the marks of its axis. */
export interface PowerScale {
  readonly widthPx: number;
  readonly zeroX: number;
  readonly ticks: readonly AxisTick[];
  readonly xOf: (powerW: number) => number;
}

/** Room at both ends, so that an end stroke of a spread is never cut. */
const marginPx = 3;
const labelGapPx = 3;
/** From here up the axis counts in kilowatts. */
const kilowattsFromW = 2000;

/** The scale that holds every bar and every spread of the given rows. */
export function trackPowerScale(rows: readonly BarSides[], widthPx: number): PowerScale {
  const [least = 0, most = 0] = extent([0, ...rows.flatMap(reach)]);
  const domain = least === most ? [0, 1] : [least, most];
  const scale = scaleLinear(domain, [marginPx, widthPx - marginPx]);
  return {
    widthPx,
    zeroX: scale(0),
    ticks: axisTicks(domain[0] ?? 0, domain[1] ?? 1, widthPx, scale),
    xOf: (powerW) => scale(powerW),
  };
}

function reach({ before, after }: BarSides): number[] {
  return [before, after].flatMap(({ outcome, ranges }) => [
    outcome.trackPowerW,
    ranges.item.trackPowerW.low,
    ranges.item.trackPowerW.high,
  ]);
}

/** Three to six marks, fewer on a narrow column; whole numbers of watts or kilowatts where the step allows. */
function axisTicks(
  fromW: number,
  toW: number,
  widthPx: number,
  xOf: (powerW: number) => number,
): readonly AxisTick[] {
  const wanted = widthPx < 150 ? 3 : 4;
  const unit = Math.max(Math.abs(fromW), Math.abs(toW)) >= kilowattsFromW ? 'kW' : 'W';
  const decimals = precisionFixed(fromSi(tickStep(fromW, toW, wanted), unit));
  const values = scaleLinear([fromW, toW], [0, 1]).ticks(wanted);
  const ticks = values.map((powerW, i) => {
    const digits = powerW === 0 ? '0' : formatValue(powerW, unit, { decimals });
    return {
      x: xOf(powerW),
      powerW,
      label: i === values.length - 1 ? `${digits}\u00a0${printUnit(unit)}` : digits,
    };
  });
  return withoutCollisions(ticks);
}

/** From the last mark, which has the unit, to the first: a label that would touch the next one is left out. */
function withoutCollisions(ticks: readonly AxisTick[]): readonly AxisTick[] {
  let freeUpTo = Infinity;
  return [...ticks]
    .reverse()
    .map((tick) => {
      const { left, right } = labelBox({ lines: [tick.label], x: tick.x, y: 0, anchor: 'middle' });
      if (right + labelGapPx > freeUpTo) return { ...tick, label: '' };
      freeUpTo = left;
      return tick;
    })
    .reverse();
}

/** Notices that say a number was computed outside the range of its source: drawn dotted, with the diamond. */
const outsideCodes: readonly Notice['code'][] = [
  'wind-near-axis',
  'reynolds-outside-table',
  'slenderness-below-table',
];

export function isOutsideValidity(notices: readonly Notice[]): boolean {
  return notices.some(({ code }) => outsideCodes.includes(code));
}
