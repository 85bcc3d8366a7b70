import { extent, precisionFixed, scaleLinear, tickStep } from 'd3';
import type { Result, Saving } from '../physics/ledger/ledgerSums';
import { fromSi, toSi } from '../units/convert';
import { columnDecimals, formatQuantity, formatRange, formatValueRange } from '../units/print';
import { unitSign, valueIn } from '../units/printIn';
import { shownUnit } from '../units/shownUnits';
import type { Unit } from '../units/unitTable';
import { hatchPath, counterHatchPath, type Box } from './hatchPath';
import { roundPx } from './labelBox';

/** One refit item as the waterfall takes it. A withheld one moves no total and hangs on the one it stands at. */
export interface WaterfallStep {
  readonly id: string;
  readonly name: string;
  readonly isCounted: boolean;
  readonly saving: Saving;
  readonly savingAlone: Saving | null;
}

export interface WaterfallInput {
  readonly before: Result;
  readonly after: Result;
  readonly steps: readonly WaterfallStep[];
}

/** A hairline from low to high; an end that the chart has no room for is open. */
export interface SpreadMark {
  readonly fromX: number;
  readonly toX: number;
  readonly y: number;
  readonly isOpenLow: boolean;
  readonly isOpenHigh: boolean;
}

/**
 * One line of the waterfall, from before to after. A `total` is a bar from zero where zero is on the chart, else only a
 * stroke at its watts; the items float from the total before them to the total after.
 */
export interface WaterfallRow {
  readonly id: string;
  readonly kind: 'total' | 'saved' | 'added' | 'withheld';
  readonly name: string;
  /** As much of the name as the line holds. */
  readonly shownName: string;
  readonly value: string;
  readonly note: string;
  readonly nameY: number;
  readonly noteY: number;
  readonly bar: Box;
  /** Where the running total stands after this row: the line down to the next begins here. */
  readonly totalX: number;
  readonly hatch: string;
  readonly spread: SpreadMark | null;
}

export interface WaterfallGeometry {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly plot: {
    readonly left: number;
    readonly right: number;
    readonly top: number;
    readonly bottom: number;
  };
  readonly rows: readonly WaterfallRow[];
  readonly ticks: readonly { readonly x: number; readonly label: string }[];
  readonly hasZero: boolean;
  /** True when the spread of a total runs beyond the chart, so that the items can be seen. */
  readonly isSpreadCut: boolean;
  readonly description: string;
}

const sidePx = 8;
const rowPx = 52;
const barPx = 12;
const nameFromTopPx = 13;
const noteFromTopPx = 27;
const barFromTopPx = 32;
const spreadFromTopPx = 48;
const axisPx = 34;
const hatchPx = 5;
/** Width of a letter at 12 px, on the wide side. */
const letterPx = 6.2;
/** Below this share of the width, the items would be too small beside the spread of the totals. */
const leastStepShare = 0.45;
/** Zero is drawn where it lies no farther below the lowest total than this share of what is drawn. */
const zeroReach = 1;

/** Before, each item's saving in the plan's order, after: on one scale in watts, laid out downwards. */
export function waterfallGeometry(input: WaterfallInput, widthPx: number): WaterfallGeometry {
  const { before, after, steps } = input;
  const { fromW, toW, isSpreadCut } = reachOf(input);
  const plot = { left: sidePx, right: widthPx - sidePx, top: 0, bottom: rowPx * (steps.length + 2) };
  const scale = scaleLinear([fromW, toW], [plot.left, plot.right]);
  const hasZero = fromW <= 0 && toW >= 0;
  const layout: Layout = { scale, plot, hasZero, decimals: decimalsOf(input) };
  const rows = [totalRow('before', 'Before', before, 0, layout)];
  let runningW = before.outcome.trackPowerW;
  for (const [i, step] of steps.entries()) {
    rows.push(stepRow(step, i + 1, runningW, layout));
    if (step.isCounted) runningW -= step.saving.change.trackPowerW;
  }
  rows.push(totalRow('after', 'After', after, steps.length + 1, layout));
  return {
    widthPx,
    heightPx: plot.bottom + axisPx,
    plot,
    rows,
    ticks: ticksOf(scale, fromW, toW, widthPx),
    hasZero,
    isSpreadCut,
    description: descriptionOf(rows),
  };
}

interface Layout {
  readonly scale: (powerW: number) => number;
  readonly plot: WaterfallGeometry['plot'];
  readonly hasZero: boolean;
  readonly decimals: number;
}

/** The one place to which totals and savings are rounded, so that the eye can subtract. */
function decimalsOf({ before, after }: WaterfallInput): number {
  return columnDecimals([before.outcome.trackPowerW, after.outcome.trackPowerW], 'W');
}

interface Reach {
  readonly fromW: number;
  readonly toW: number;
  readonly isSpreadCut: boolean;
}

/** What must be on the chart: all totals and what the items reach, and the spread of the totals if there is room. */
function reachOf({ before, after, steps }: WaterfallInput): Reach {
  const needed = [before.outcome.trackPowerW, after.outcome.trackPowerW];
  let runningW = before.outcome.trackPowerW;
  for (const { saving, isCounted } of steps) {
    const { low, high } = saving.ranges.item.trackPowerW;
    const savedW = saving.change.trackPowerW;
    needed.push(runningW - savedW, runningW - low, runningW - high);
    if (isCounted) runningW -= savedW;
  }
  const spreads = [before, after].flatMap(({ ranges }) => [
    ranges.item.trackPowerW.low,
    ranges.item.trackPowerW.high,
  ]);
  const [leastW = 0, mostW = 0] = extent(needed);
  const [lowW = 0, highW = 0] = extent([...needed, ...spreads]);
  const isSpreadCut = mostW - leastW < leastStepShare * (highW - lowW) && mostW > leastW;
  const [low, high] = isSpreadCut ? [leastW, mostW] : [lowW, highW];
  const padW = isSpreadCut ? 0.15 * (high - low) : 0;
  return { ...withZero(low - padW, high + padW), isSpreadCut };
}

function withZero(lowW: number, highW: number): Pick<Reach, 'fromW' | 'toW'> {
  const spanW = highW - lowW;
  const isNear = lowW > 0 ? lowW <= zeroReach * spanW : -highW <= zeroReach * spanW;
  const fromW = isNear ? Math.min(lowW, 0) : lowW;
  const toW = isNear ? Math.max(highW, 0) : highW;
  return fromW === toW ? { fromW: fromW - 1, toW: toW + 1 } : { fromW, toW };
}

function totalRow(
  id: string,
  name: string,
  { outcome, ranges }: Result,
  index: number,
  layout: Layout,
): WaterfallRow {
  const { scale, hasZero, decimals } = layout;
  const x = scale(outcome.trackPowerW);
  const zeroX = hasZero ? scale(0) : x;
  const { low, high } = ranges.item.trackPowerW;
  return {
    ...lineOf(id, name, formatQuantity(outcome.trackPowerW, 'W', { decimals }), index, layout),
    kind: 'total',
    note: low === high ? '' : `${formatRange(low, high, 'W', { decimals })} by the fittings`,
    bar: boxOf(zeroX, x, index),
    totalX: roundPx(x),
    hatch: '',
    spread: spreadOf(low, high, index, layout),
  };
}

function stepRow(step: WaterfallStep, index: number, runningW: number, layout: Layout): WaterfallRow {
  const { saving, isCounted } = step;
  const { scale, decimals } = layout;
  const savedW = saving.change.trackPowerW;
  const { low, high } = saving.ranges.item.trackPowerW;
  const bar = boxOf(scale(runningW), scale(runningW - savedW), index);
  const kind = !isCounted ? 'withheld' : savedW < 0 ? 'added' : 'saved';
  const verb = savedW < 0 ? 'adds' : isCounted ? 'saves' : 'would save';
  const value = `${verb} ${formatQuantity(Math.abs(savedW), 'W', { decimals })}`;
  return {
    ...lineOf(step.id, step.name, value, index, layout),
    kind,
    note: noteOf(step, decimals),
    bar,
    totalX: roundPx(scale(isCounted ? runningW - savedW : runningW)),
    hatch: kind === 'saved' ? hatchPath(bar, hatchPx) : kind === 'added' ? crossed(bar) : '',
    spread: spreadOf(runningW - high, runningW - low, index, layout),
  };
}

function crossed(bar: Box): string {
  return hatchPath(bar, hatchPx) + counterHatchPath(bar, hatchPx);
}

function noteOf({ saving, savingAlone, isCounted }: WaterfallStep, decimals: number): string {
  const { low, high } = saving.ranges.item.trackPowerW;
  const spread = formatRange(low, high, 'W', { decimals });
  if (!isCounted) return `waits for a reason, not counted; ${spread}`;
  if (savingAlone === null) return `${spread}; cannot stand alone`;
  // The unit stands once: the line has no room for a long one twice.
  const alone = formatQuantity(savingAlone.change.trackPowerW, 'W', { decimals });
  return `${formatValueRange(low, high, 'W', { decimals })}; alone ${alone}`;
}

type Line = Pick<WaterfallRow, 'id' | 'name' | 'shownName' | 'value' | 'nameY' | 'noteY'>;

function lineOf(id: string, name: string, value: string, index: number, { plot }: Layout): Line {
  const top = rowPx * index;
  const roomPx = plot.right - plot.left - letterPx * (value.length + 2);
  return {
    id,
    name,
    shownName: shortened(name, Math.max(Math.floor(roomPx / letterPx), 4)),
    value,
    nameY: top + nameFromTopPx,
    noteY: top + noteFromTopPx,
  };
}

/** The text, or its beginning with an ellipsis; never cut through the middle of a character. */
export function shortened(text: string, mostLetters: number): string {
  const letters = Array.from(text);
  return letters.length <= mostLetters
    ? text
    : `${letters
        .slice(0, mostLetters - 1)
        .join('')
        .trimEnd()}…`;
}

function boxOf(oneX: number, otherX: number, index: number): Box {
  const x = Math.min(oneX, otherX);
  return {
    x: roundPx(x),
    y: rowPx * index + barFromTopPx,
    widthPx: roundPx(Math.abs(otherX - oneX)),
    heightPx: barPx,
  };
}

function spreadOf(lowW: number, highW: number, index: number, { scale, plot }: Layout): SpreadMark | null {
  if (lowW === highW) return null;
  const [fromX, toX] = [scale(lowW), scale(highW)];
  // A hundredth of a pixel is a rounding of the scale, no end beyond it.
  const isOpenLow = fromX < plot.left - 0.01;
  const isOpenHigh = toX > plot.right + 0.01;
  return {
    fromX: roundPx(Math.max(fromX, plot.left)),
    toX: roundPx(Math.min(toX, plot.right)),
    y: rowPx * index + spreadFromTopPx,
    isOpenLow,
    isOpenHigh,
  };
}

/** From here up an axis in watts counts in kilowatts. */
const kilowattsFromW = 10_000;
const labelGapPx = 10;
/** A longer sign stands in the title of the axis alone. */
const longestSign = 2;

function axisUnit(fromW: number, toW: number): Unit {
  const unit = shownUnit('W');
  const mostW = Math.max(Math.abs(fromW), Math.abs(toW));
  return unit === 'W' && mostW >= kilowattsFromW ? 'kW' : unit;
}

function ticksOf(
  scale: (powerW: number) => number,
  fromW: number,
  toW: number,
  widthPx: number,
): WaterfallGeometry['ticks'] {
  const wanted = widthPx < 500 ? 3 : 6;
  const unit = axisUnit(fromW, toW);
  const [from, to] = [fromSi(fromW, unit), fromSi(toW, unit)];
  const decimals = precisionFixed(tickStep(from, to, wanted));
  const values = scaleLinear([from, to], [0, 1]).ticks(wanted);
  const sign = unitSign(unit);
  let freeFrom = -Infinity;
  return values.map((value, i) => {
    const powerW = toSi(value, unit);
    const digits = value === 0 ? '0' : valueIn(powerW, unit, { decimals });
    const isNamed = i === values.length - 1 && sign.length <= longestSign;
    const label = isNamed ? `${digits} ${sign}` : digits;
    const x = roundPx(scale(powerW));
    const halfPx = (letterPx * label.length) / 2;
    const isFree = x - halfPx >= freeFrom;
    if (isFree) freeFrom = x + halfPx + labelGapPx;
    // Labels at the ends are moved in by those who draw; here only what would touch is left out.
    return { x, label: isFree ? label : '' };
  });
}

function descriptionOf(rows: readonly WaterfallRow[]): string {
  const parts = rows.map(({ name, value, note }) => `${name}: ${value}${note === '' ? '' : ` (${note})`}`);
  return `Track power from before to after, item by item in the plan's order. ${parts.join('. ')}.`;
}
