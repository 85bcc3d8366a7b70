import type { Notice } from '../physics/fitting/notice';
import { counterHatchPath, hatchPath, type Box } from './hatchPath';
import { isOutsideValidity, type BarSides, type PowerScale } from './ledgerBarScale';

/**
 * One stretch of a bar. `cost`: what the state shown takes; `saved`: what the plan gives back; `added`: what it takes
 * on top. `hatch` holds the strokes of the last two.
 */
export interface BarSegment extends Box {
  readonly kind: 'cost' | 'saved' | 'added';
  readonly hatch: string;
}

/** One row's bar on the common scale. Pixels; y downwards from the top of the row. */
export interface LedgerBarGeometry {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly zeroX: number;
  readonly gridX: readonly number[];
  readonly segments: readonly BarSegment[];
  /** Spread of the state that is judged (wind and density apart), under the bar; null when there is none to draw. */
  readonly spread: { readonly fromX: number; readonly toX: number; readonly y: number } | null;
  /** True when a number behind the bar lies outside the range of its source: drawn dotted. */
  readonly isOutside: boolean;
}

/** Which state a bar shows; with `both`, the state after is the one that is judged. */
export type BarShows = 'before' | 'both' | 'after';

export interface BarOptions {
  readonly shown?: BarShows;
  readonly heightPx?: number;
}

/** Bars leave room below them for the spread. */
const barShare = 0.4;
const hatchSpacingPx = 5;
/** A spread narrower than this is a blot. */
const leastSpreadPx = 1;

export function ledgerBarGeometry(
  row: BarSides & { readonly notices?: readonly Notice[] },
  scale: PowerScale,
  { shown = 'both', heightPx = 24 }: BarOptions = {},
): LedgerBarGeometry {
  const beforeW = row.before.outcome.trackPowerW;
  const afterW = row.after.outcome.trackPowerW;
  const judged = shown === 'before' ? row.before : row.after;
  const barHeightPx = Math.round(heightPx * barShare);
  const topPx = Math.round((heightPx - barHeightPx - 6) / 2);
  const stretches = shown === 'both' ? both(beforeW, afterW) : single(shown === 'before' ? beforeW : afterW);
  const { low, high } = judged.ranges.item.trackPowerW;
  const [fromX, toX] = [drawnAt(scale.xOf(low)), drawnAt(scale.xOf(high))];
  return {
    widthPx: scale.widthPx,
    heightPx,
    zeroX: drawnAt(scale.zeroX),
    gridX: scale.ticks.filter(({ powerW }) => powerW !== 0).map(({ x }) => x),
    segments: stretches.map((stretch) => segmentOf(stretch, scale, topPx, barHeightPx)),
    spread: toX - fromX < leastSpreadPx ? null : { fromX, toX, y: topPx + barHeightPx + 4 },
    isOutside: isOutsideValidity(row.notices ?? []),
  };
}

interface Stretch {
  readonly kind: BarSegment['kind'];
  readonly fromW: number;
  readonly toW: number;
}

function single(powerW: number): Stretch[] {
  return powerW === 0 ? [] : [{ kind: 'cost', fromW: 0, toW: powerW }];
}

/**
 * Filled is what both states have in common, from zero; what lies between them is hatched, as saved or as added. Where
 * the sign turns, they have nothing in common: the state after is filled and the one before hatched.
 */
function both(beforeW: number, afterW: number): Stretch[] {
  const kind = afterW > beforeW ? 'added' : 'saved';
  if (beforeW * afterW < 0) return [...single(afterW), { kind, fromW: 0, toW: beforeW }];
  const common = Math.abs(afterW) < Math.abs(beforeW) ? afterW : beforeW;
  return beforeW === afterW
    ? single(common)
    : [...single(common), { kind, fromW: common, toW: common === afterW ? beforeW : afterW }];
}

/** To a quarter of a pixel, finer than a screen shows: what moves by less is not drawn anew. */
function drawnAt(x: number): number {
  return Math.round(4 * x) / 4;
}

function segmentOf(
  { kind, fromW, toW }: Stretch,
  scale: PowerScale,
  y: number,
  heightPx: number,
): BarSegment {
  const [a, b] = [drawnAt(scale.xOf(fromW)), drawnAt(scale.xOf(toW))];
  const box: Box = { x: Math.min(a, b), y, widthPx: Math.abs(b - a), heightPx };
  return { ...box, kind, hatch: hatchOf(kind, box) };
}

function hatchOf(kind: BarSegment['kind'], box: Box): string {
  if (kind === 'cost') return '';
  const rising = hatchPath(box, hatchSpacingPx);
  return kind === 'saved' ? rising : rising + counterHatchPath(box, hatchSpacingPx);
}
