import { firstFree, isInside, labelBox, overlaps, type Extent, type PlacedLabel } from '../labelBox';
import type { PixelCurve, PixelRing } from './curveChartGeometry';
import type { ChartMark, CurveInput, MarkRole } from './curveChartTypes';

const roles: Readonly<Record<CurveInput['look'], MarkRole>> = {
  bare: 'bareLabel',
  chosen: 'chosenLabel',
  other: 'label',
};

/** Where on the line a name may stand, as shares of the width: the middle first, where lines are apart. */
const shares = [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.12, 0.88, 0.05] as const;
const abovePx = 6;
const belowPx = 15;

/** The names on their lines: chosen and bare first, each clear of the others and, where that can be had, of the lines. */
export function curveLabels(
  pixels: readonly PixelCurve[],
  taken: readonly Extent[],
  plot: Extent,
): ChartMark[] {
  const boxes = [...taken];
  const order = { chosen: 0, bare: 1, other: 2 } as const;
  const sorted = [...pixels].sort((a, b) => order[a.curve.look] - order[b.curve.look]);
  return sorted.flatMap((each): ChartMark[] => {
    const label = placeOn(each, pixels, boxes, plot);
    if (label === null) return [];
    boxes.push(labelBox(label));
    return [textMark(label, roles[each.curve.look])];
  });
}

function textMark({ x, y, anchor, lines }: PlacedLabel, role: MarkRole): ChartMark {
  return { kind: 'text', role, x, y, anchor, text: lines.join(' ') };
}

/** The place that touches the fewest lines; null for a line without a point to stand at. */
function placeOn(
  own: PixelCurve,
  all: readonly PixelCurve[],
  taken: readonly Extent[],
  plot: Extent,
): PlacedLabel | null {
  let best: { readonly label: PlacedLabel; readonly faults: number } | null = null;
  for (const share of shares) {
    for (const dy of [-abovePx, belowPx]) {
      const label = labelAt(own, share, dy, plot);
      if (label === null) continue;
      const faults = faultsOf(labelBox(label), all, taken, plot);
      if (best === null || faults < best.faults) best = { label, faults };
      if (faults === 0) return label;
    }
  }
  return best === null ? null : best.label;
}

function labelAt({ curve, xs, ys }: PixelCurve, share: number, dy: number, plot: Extent): PlacedLabel | null {
  const wanted = plot.left + share * (plot.right - plot.left);
  const index = xs.findIndex((x) => x >= wanted);
  const y = ys[index];
  if (index === -1 || y === undefined || !Number.isFinite(y)) return null;
  return { lines: [curve.name], x: xs[index] ?? wanted, y: y + dy, anchor: 'middle' };
}

function faultsOf(box: Extent, all: readonly PixelCurve[], taken: readonly Extent[], plot: Extent): number {
  const covered = taken.filter((other) => overlaps(box, other)).length;
  const crossed = all.filter((curve) => runsThrough(curve, box)).length;
  return (isInside(box, plot) ? 0 : 100) + 10 * covered + crossed;
}

function runsThrough({ xs, ys }: PixelCurve, { left, right, top, bottom }: Extent): boolean {
  return xs.some((x, i) => {
    const y = ys[i] ?? Number.NaN;
    return x >= left && x <= right && y >= top && y <= bottom;
  });
}

/** The words beside the rings, and the room that rings and words take. */
export function ringLabels(
  rings: readonly PixelRing[],
  pixels: readonly PixelCurve[],
  plot: Extent,
): { readonly marks: readonly ChartMark[]; readonly boxes: readonly Extent[] } {
  const boxes = rings.map(({ x, y }) => ({ left: x - 6, right: x + 6, top: y - 6, bottom: y + 6 }));
  const lines = pixels.flatMap(({ xs, ys }) =>
    xs.map((x, i) => ({ left: x - 2, right: x + 2, top: (ys[i] ?? 0) - 2, bottom: (ys[i] ?? 0) + 2 })),
  );
  const marks: ChartMark[] = [];
  for (const { x, y, label } of rings) {
    if (label === '') continue;
    const at = (dx: number, dy: number, anchor: PlacedLabel['anchor']): PlacedLabel => ({
      lines: [label],
      x: x + dx,
      y: y + dy,
      anchor,
    });
    const placed = firstFree(
      [
        at(-9, -9, 'end'),
        at(9, -9, 'start'),
        at(9, 19, 'start'),
        at(-9, 19, 'end'),
        at(-9, -24, 'end'),
        at(9, -24, 'start'),
      ],
      boxes,
      plot,
      lines,
    );
    boxes.push(labelBox(placed));
    marks.push(textMark(placed, 'label'));
  }
  return { marks, boxes };
}
