import { precisionFixed, ticks, tickStep } from 'd3';
import type { Notice } from '../physics/fitting/notice';
import type { Result } from '../physics/ledger/ledgerSums';
import { fromSi, toSi } from '../units/convert';
import { unitSign, valueIn } from '../units/printIn';
import { shownUnit } from '../units/shownUnits';
import type { Unit } from '../units/unitTable';
import { labelBox, type Extent } from './labelBox';

/** What a bar shows: a row, a zone or the total, before and after. */
export interface BarSides {
  readonly before: Result;
  readonly after: Result;
}

export interface AxisTick {
  readonly x: number;
  readonly powerW: number;
  /** The number alone; the last one carries a short unit; empty where there is no room. */
  readonly label: string;
  /** The label's middle: under the mark, or as far from the right end as keeps it whole. */
  readonly labelX: number;
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

/**
 * The scale that holds every bar and every spread of the given rows.
 * @param above the scale of the bars above: its zero is taken too, if that leaves them at least half as long.
 */
export function trackPowerScale(rows: readonly BarSides[], widthPx: number, above?: PowerScale): PowerScale {
  const [fromW, toW] = stepped(reach(rows));
  // Straight by hand: d3's scales bring colours and dates into the first load.
  const ownPxPerW = (widthPx - 2 * marginPx) / (toW - fromW);
  const sharedPxPerW = above === undefined ? 0 : mostPxPerW(above.zeroX, fromW, toW, widthPx);
  const isShared = above !== undefined && sharedPxPerW >= ownPxPerW / 2;
  const pxPerW = isShared ? sharedPxPerW : ownPxPerW;
  const zeroX = isShared ? above.zeroX : marginPx - fromW * ownPxPerW;
  const xOf = (powerW: number) => zeroX + powerW * pxPerW;
  return { widthPx, zeroX, ticks: axisTicks(fromW, toW, widthPx, xOf), xOf };
}

/** The largest scale on which both sides of a given zero have room. */
function mostPxPerW(zeroX: number, fromW: number, toW: number, widthPx: number): number {
  const rightPxPerW = toW > 0 ? (widthPx - marginPx - zeroX) / toW : Infinity;
  return fromW < 0 ? Math.min(rightPxPerW, (zeroX - marginPx) / -fromW) : rightPxPerW;
}

/** From the least to the most that bars and spreads come to, zero with them, W. In place: every edit asks it of all rows. */
function reach(rows: readonly BarSides[]): { readonly least: number; readonly most: number } {
  let least = 0;
  let most = 0;
  const add = ({ outcome, ranges }: Result): void => {
    const { low, high } = ranges.item.trackPowerW;
    least = Math.min(least, outcome.trackPowerW, low);
    most = Math.max(most, outcome.trackPowerW, high);
  };
  for (const { before, after } of rows) {
    add(before);
    if (after !== before) add(after);
  }
  return { least, most };
}

/** So many steps to a factor of ten: the widest bar leaves at most a tenth of the column empty. */
const stepsPerDecade = 24;
/** The smaller side is held in steps of this share of the larger one. */
const sideShare = 1 / 32;

/**
 * Ends of the scale in steps, outwards from the reach, so that the scale stands still while a value is typed or dragged
 * and the bars are seen to move.
 */
function stepped({ least, most }: { readonly least: number; readonly most: number }): [number, number] {
  const larger = Math.max(most, -least);
  if (larger === 0) return [0, 1];
  const stepW = 10 ** (Math.ceil(stepsPerDecade * Math.log10(larger)) / stepsPerDecade);
  const other = (sideW: number): number =>
    Math.min(Math.ceil(sideW / (stepW * sideShare)) * sideShare, 1) * stepW;
  return most >= -least ? [-other(-least), stepW] : [-stepW, other(most)];
}

/** In which unit the axis counts: the reader's, and large powers in kilowatts where that is watts. */
function axisUnit(mostW: number): Unit {
  const unit = shownUnit('W');
  return unit === 'W' && mostW >= kilowattsFromW ? 'kW' : unit;
}

/** A longer unit stands in the head: on the axis it would leave no room for the marks. */
const mostUnitLetters = 3;

/** Three to six marks, fewer on a narrow column; round numbers of the axis's unit. */
function axisTicks(
  fromW: number,
  toW: number,
  widthPx: number,
  xOf: (powerW: number) => number,
): readonly AxisTick[] {
  const wanted = widthPx < 150 ? 3 : 4;
  const unit = axisUnit(Math.max(Math.abs(fromW), Math.abs(toW)));
  const [from, to] = [fromSi(fromW, unit), fromSi(toW, unit)];
  const decimals = precisionFixed(tickStep(from, to, wanted));
  const sign = unitSign(unit);
  const ending = sign.length > mostUnitLetters ? '' : `\u00a0${sign}`;
  const values = ticks(from, to, wanted);
  const marks = values.map((value, i): AxisTick => {
    const powerW = toSi(value, unit);
    const x = xOf(powerW);
    const digits = value === 0 ? '0' : valueIn(powerW, unit, { decimals });
    const label = i === values.length - 1 ? digits + ending : digits;
    const { left, right } = boxOf(label, x);
    return { x, powerW, label, labelX: Math.min(x, widthPx - (right - left) / 2) };
  });
  return withoutCollisions(marks);
}

function boxOf(label: string, x: number): Extent {
  return labelBox({ lines: [label], x, y: 0, anchor: 'middle' });
}

/** From the last mark, which has the unit, to the first: a label that would touch the next one is left out. */
function withoutCollisions(ticks: readonly AxisTick[]): readonly AxisTick[] {
  let freeUpTo = Infinity;
  return [...ticks]
    .reverse()
    .map((tick) => {
      const { left, right } = boxOf(tick.label, tick.labelX);
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
  'fairing-outside-table',
  'net-outside-range',
  'slenderness-below-table',
];

export function isOutsideValidity(notices: readonly Notice[]): boolean {
  return notices.some(({ code }) => outsideCodes.includes(code));
}
