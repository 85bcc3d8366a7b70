import { roundPx } from './labelBox';

/** A rectangle in pixels, y downwards. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly widthPx: number;
  readonly heightPx: number;
}

/**
 * Strokes at 45 degrees across a box, clipped to it, as one SVG path: rising to the right, `spacingPx` apart along x.
 * A path needs no pattern with an id, and prints as ink.
 */
export function hatchPath(box: Box, spacingPx: number): string {
  const { x, y, widthPx, heightPx } = box;
  const strokes: string[] = [];
  for (let foot = spacingPx - heightPx; foot < widthPx; foot += spacingPx) {
    const from = Math.max(foot, 0);
    const to = Math.min(foot + heightPx, widthPx);
    if (to <= from) continue;
    const fromY = y + heightPx - (from - foot);
    const toY = y + heightPx - (to - foot);
    strokes.push(`M${roundPx(x + from)} ${roundPx(fromY)}L${roundPx(x + to)} ${roundPx(toY)}`);
  }
  return strokes.join('');
}

/** The same falling to the right; both together make the cross-hatch. */
export function counterHatchPath(box: Box, spacingPx: number): string {
  const { x, y, widthPx, heightPx } = box;
  const strokes: string[] = [];
  for (let foot = spacingPx - heightPx; foot < widthPx; foot += spacingPx) {
    const from = Math.max(foot, 0);
    const to = Math.min(foot + heightPx, widthPx);
    if (to <= from) continue;
    strokes.push(
      `M${roundPx(x + from)} ${roundPx(y + from - foot)}L${roundPx(x + to)} ${roundPx(y + to - foot)}`,
    );
  }
  return strokes.join('');
}
