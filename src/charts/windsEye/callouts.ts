import { labelBox, type Extent } from '../labelBox';
import type { PlanePoint } from './convexHull';
import type { PictureFrame, SceneItem } from './scene';

/** What may be called out: a fitting with what it costs. */
export interface CalloutWish {
  readonly fittingId: string;
  readonly number: number;
  readonly name: string;
  /** "213 W". */
  readonly value: string;
}

/** Two short lines beside the picture and a line from them to the fitting. */
export interface Callout extends CalloutWish {
  readonly shownName: string;
  readonly x: number;
  /** Baseline of the first line. */
  readonly y: number;
  readonly anchor: 'start' | 'end';
  readonly box: Extent;
  readonly line: readonly [from: PlanePoint, to: PlanePoint];
}

const mostCallouts = 9;
/** Of the usual letter at 12 px; boxes are reckoned wider, to be safe. */
const letterPx = 5.7;
const edgePx = 4;
/** Right of the heights. */
const leftPx = 34;
const linePx = 14;
const gapPx = 5;
const topPx = 14;
const stepPx = 6;
/** A label on the far side is as bad as one so much higher or lower, px; so is each square of the picture it covers. */
const otherSidePx = 60;
const coveredPx = 14;

/**
 * Five to nine callouts, the first wishes first, in a column at each side: each as near to the height of its fitting as
 * is free, and where it covers little. No two touch and none leaves the frame; one without a place is left out.
 */
export function calloutsOf(
  wishes: readonly CalloutWish[],
  items: readonly SceneItem[],
  frame: PictureFrame,
): Callout[] {
  const placed: Callout[] = [];
  const drawn = drawnCells(items, frame);
  for (const wish of wishes) {
    if (placed.length === mostCallouts) break;
    const at = anchorOf(wish.fittingId, items, frame);
    if (at === null) continue;
    const callout = freeCallout(wish, at, placed, drawn, frame);
    if (callout !== null) placed.push(callout);
  }
  return placed;
}

/** The middle of the largest part of a fitting that is in sight of the frame. */
function anchorOf(fittingId: string, items: readonly SceneItem[], frame: PictureFrame): PlanePoint | null {
  let best: { readonly size: number; readonly at: PlanePoint } | null = null;
  for (const item of items) {
    if (item.fittingId !== fittingId) continue;
    const xs = item.corners.map(([x]) => x);
    const ys = item.corners.map(([, y]) => y);
    const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
    const at: PlanePoint = [(left + right) / 2, (top + bottom) / 2];
    const isInside = at[0] >= 0 && at[0] <= frame.widthPx && at[1] >= 0 && at[1] <= frame.heightPx;
    const size = Math.hypot(right - left, bottom - top);
    if (isInside && (best === null || size > best.size)) best = { size, at };
  }
  return best?.at ?? null;
}

function freeCallout(
  wish: CalloutWish,
  at: PlanePoint,
  placed: readonly Callout[],
  drawn: ReadonlySet<number>,
  frame: PictureFrame,
): Callout | null {
  const near: Callout['anchor'] = at[0] < frame.originX ? 'start' : 'end';
  const sides = [near, near === 'start' ? 'end' : 'start'] as const;
  let best: Callout | null = null;
  let least = Infinity;
  for (const [i, anchor] of sides.entries()) {
    for (const y of heights(frame)) {
      // The other side is taken only where this one is crowded.
      const distance = Math.abs(y - at[1]) + i * otherSidePx;
      if (distance >= least) continue;
      const callout = calloutAt(wish, at, anchor, y, frame);
      if (placed.some((other) => touches(callout.box, other.box))) continue;
      const cost = distance + coveredPx * coveredCells(callout.box, drawn);
      if (cost >= least) continue;
      least = cost;
      best = callout;
    }
  }
  return best;
}

function heights({ heightPx }: PictureFrame): number[] {
  const count = Math.floor((heightPx - topPx - 2 * linePx) / stepPx);
  return Array.from({ length: Math.max(count, 0) + 1 }, (_, i) => topPx + stepPx * i);
}

/** The picture in squares of so many px, to know what is drawn where. */
const cellPx = 12;
const cellsAcross = 1000;

function cellAt(x: number, y: number): number {
  return Math.floor(y / cellPx) * cellsAcross + Math.floor(x / cellPx);
}

/** The squares that an outline of a fitting passes through. */
function drawnCells(items: readonly SceneItem[], { widthPx, heightPx }: PictureFrame): ReadonlySet<number> {
  const cells = new Set<number>();
  for (const { corners, role } of items) {
    if (role !== 'fitting') continue;
    corners.forEach(([ax, ay], i) => {
      const [bx, by] = corners[(i + 1) % corners.length] ?? [ax, ay];
      const steps = Math.ceil(Math.hypot(bx - ax, by - ay) / cellPx) + 1;
      for (let step = 0; step <= steps; step += 1) {
        const x = ax + ((bx - ax) * step) / steps;
        const y = ay + ((by - ay) * step) / steps;
        if (x >= 0 && y >= 0 && x <= widthPx && y <= heightPx) cells.add(cellAt(x, y));
      }
    });
  }
  return cells;
}

function coveredCells({ left, right, top, bottom }: Extent, drawn: ReadonlySet<number>): number {
  let count = 0;
  for (let y = top; y <= bottom + cellPx; y += cellPx) {
    for (let x = left; x <= right + cellPx; x += cellPx) {
      if (drawn.has(cellAt(Math.min(x, right), Math.min(y, bottom)))) count += 1;
    }
  }
  return count;
}

function touches(a: Extent, b: Extent): boolean {
  return (
    a.left < b.right + gapPx &&
    b.left < a.right + gapPx &&
    a.top < b.bottom + gapPx &&
    b.top < a.bottom + gapPx
  );
}

function calloutAt(
  wish: CalloutWish,
  at: PlanePoint,
  anchor: Callout['anchor'],
  y: number,
  { widthPx }: PictureFrame,
): Callout {
  const x = anchor === 'start' ? leftPx : widthPx - edgePx;
  // Not much more than a third of the picture.
  const letters = Math.max(Math.floor((0.36 * widthPx) / 6.2), 8);
  const shownName = shortened(`${wish.number} ${wish.name}`, letters);
  const box = labelBox({ lines: [shownName, wish.value], x, y, anchor });
  const textPx = letterPx * Math.max(shownName.length, wish.value.length);
  const from: PlanePoint = [anchor === 'start' ? x + textPx + 3 : x - textPx - 3, y - 4];
  return { ...wish, shownName, x, y, anchor, box, line: [from, at] };
}

function shortened(text: string, letters: number): string {
  return text.length <= letters ? text : `${text.slice(0, letters - 1).trimEnd()}…`;
}
