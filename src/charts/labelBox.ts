/** A text on a picture. Its box is estimated, so that labels can be kept apart without measuring them. */
export interface PlacedLabel {
  readonly lines: readonly string[];
  readonly x: number;
  /** Baseline of the first line. */
  readonly y: number;
  readonly anchor: 'start' | 'middle' | 'end';
}

/** Edges in pixels, y downwards. */
export interface Extent {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export const labelLinePx = 14;
/** Width of a letter at 12 px, on the wide side. */
const letterPx = 6.2;
const abovePx = 11;
const belowPx = 3;

export function labelBox({ lines, x, y, anchor }: PlacedLabel): Extent {
  const widthPx = letterPx * Math.max(...lines.map(({ length }) => length));
  const left = anchor === 'start' ? x : anchor === 'end' ? x - widthPx : x - widthPx / 2;
  return {
    left,
    right: left + widthPx,
    top: y - abovePx,
    bottom: y + belowPx + labelLinePx * (lines.length - 1),
  };
}

export function overlaps(a: Extent, b: Extent): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

export function isInside(box: Extent, frame: Extent): boolean {
  return (
    box.left >= frame.left && box.right <= frame.right && box.top >= frame.top && box.bottom <= frame.bottom
  );
}

/**
 * The first place that is inside the frame and covers nothing; where there is none, the first that covers at least
 * nothing `taken`; the first of all when even that is not to be had.
 * @param avoided what is better left free, such as a curve.
 */
export function firstFree(
  places: readonly [PlacedLabel, ...PlacedLabel[]],
  taken: readonly Extent[],
  frame: Extent,
  avoided: readonly Extent[] = [],
): PlacedLabel {
  const clear = places.filter((place) => {
    const box = labelBox(place);
    return isInside(box, frame) && !taken.some((other) => overlaps(box, other));
  });
  const best = clear.find((place) => !avoided.some((other) => overlaps(labelBox(place), other)));
  return best ?? clear[0] ?? places[0];
}

/** Pixels to a hundredth: more would only lengthen the page. */
export function roundPx(px: number): number {
  return Math.round(px * 100) / 100;
}
