import {
  firstFree,
  labelBox,
  labelLinePx,
  overlaps,
  roundPx,
  type Extent,
  type PlacedLabel,
} from './labelBox';
import type {
  Point,
  TriangleFrame,
  TriangleLabels,
  TriangleSize,
  WindTriangleGeometry,
  WindVectors,
} from './windTriangleGeometry';

export interface TriangleWords {
  readonly apparent: readonly string[];
  readonly boatSpeed: readonly string[];
  readonly trueWind: readonly string[];
  readonly angle: readonly string[];
  readonly caption: string;
}

type Placed = Omit<WindTriangleGeometry, 'apparentSpeedMs' | 'apparentAngleRad' | 'description'>;
type Drawing = Pick<Placed, 'boat' | 'trueFrom' | 'apparentFrom' | 'labels'>;

const hullLengthPx = 30;
const hullHalfWidthPx = 6;
const arcRadiusPx = 30;
const arcRadiusAftPx = 18;
/** The dotted line along the course ends a little past the arc. */
const courseLengthPx = 44;
/** The apparent wind's label stands beyond the middle, clear of the arc. */
const apparentShare = 0.62;
const labelGapPx = 7;
const captionHeightPx = 20;
const edgePx = 5;
/** The largest drawing that is tried, and the step from one to the next smaller. */
const largestPxPerMs = 30;
const stepDown = 0.98;
const mostSteps = 300;

/** The drawing in a given frame, else the largest that fits with its labels, in the middle above its caption. */
export function placeTriangle(
  vectors: WindVectors,
  size: TriangleSize,
  words: TriangleWords,
  given: TriangleFrame | null,
): Placed {
  const { boat: origin, pxPerMs } = given ?? fittingFrame(vectors, size, words);
  const drawing = drawn(vectors, pxPerMs, words, origin);
  return {
    ...size,
    ...drawing,
    labels: labelsInside(drawing, size),
    pxPerMs,
    hull: hullPath(drawing.boat, vectors, drawing.apparentFrom.y > drawing.boat.y),
    courseTo: { x: origin.x, y: origin.y - courseLengthPx },
    angleArc: arcPath(drawing),
    caption: { lines: [words.caption], x: size.widthPx / 2, y: size.heightPx - 5, anchor: 'middle' },
  };
}

/**
 * In a frame that is held the ends may leave the picture; what they are called stays readable inside it, apart from the
 * other labels and off the arc where there is room.
 */
function labelsInside({ labels, boat, apparentFrom }: Drawing, size: TriangleSize): TriangleLabels {
  const frame = { left: 0, right: size.widthPx, top: 0, bottom: size.heightPx - captionHeightPx };
  const arc = arcBox(boat, apparentFrom);
  const taken: Extent[] = [];
  const placed = (label: PlacedLabel): PlacedLabel => {
    const first = movedInside(label, frame);
    const others = besides(first, [...taken, arc]).map((place) => movedInside(place, frame));
    const free = firstFree([first, ...others], taken, frame, [arc]);
    taken.push(labelBox(free));
    return free;
  };
  const apparent = placed(labels.apparent);
  const trueWind = placed(labels.trueWind);
  return { apparent, trueWind, boatSpeed: placed(labels.boatSpeed), angle: placed(labels.angle) };
}

/** Room that a moved label keeps from what it was moved away from. */
const movedGapPx = 0.5;

function movedInside(label: PlacedLabel, frame: Extent): PlacedLabel {
  const { left, right, top, bottom } = labelBox(label);
  const x = inwards(left - movedGapPx, right + movedGapPx, frame.right);
  const y = inwards(top - movedGapPx, bottom + movedGapPx, frame.bottom);
  return x === 0 && y === 0 ? label : { ...label, x: label.x + x, y: label.y + y };
}

/** The places of a label below, above and on both sides of each of the others. */
function besides(label: PlacedLabel, others: readonly Extent[]): PlacedLabel[] {
  const { left, right, top, bottom } = labelBox(label);
  return others.flatMap((other) => [
    { ...label, y: label.y + other.bottom - top + movedGapPx },
    { ...label, y: label.y + other.top - bottom - movedGapPx },
    { ...label, x: label.x + other.right - left + movedGapPx },
    { ...label, x: label.x + other.left - right - movedGapPx },
  ]);
}

/** How far a stretch must move to lie between 0 and a length. */
function inwards(from: number, to: number, length: number): number {
  return Math.max(0, -from) - Math.max(0, to - length);
}

function fittingFrame(vectors: WindVectors, size: TriangleSize, words: TriangleWords): TriangleFrame {
  let pxPerMs = largestPxPerMs;
  for (let step = 0; step < mostSteps && !fits(drawn(vectors, pxPerMs, words), size); step += 1) {
    pxPerMs *= stepDown;
  }
  const extent = extentOf(drawn(vectors, pxPerMs, words));
  const boat = {
    x: (size.widthPx - extent.left - extent.right) / 2,
    y: (size.heightPx - captionHeightPx - extent.top - extent.bottom) / 2,
  };
  return { boat, pxPerMs };
}

function drawn(
  vectors: WindVectors,
  pxPerMs: number,
  words: TriangleWords,
  boat: Point = { x: 0, y: 0 },
): Drawing {
  const at = ({ x, y }: Point): Point => ({ x: boat.x + pxPerMs * x, y: boat.y + pxPerMs * y });
  const trueFrom = at(vectors.trueFromMs);
  const apparentFrom = at(vectors.apparentFromMs);
  const labels = labelsOf(boat, trueFrom, apparentFrom, vectors.mirror, words);
  return { boat, trueFrom, apparentFrom, labels };
}

/** The apparent wind's label stands on the course's side of the triangle, the other two on the far side. */
function labelsOf(
  boat: Point,
  trueFrom: Point,
  apparentFrom: Point,
  mirror: 1 | -1,
  words: TriangleWords,
): TriangleLabels {
  const trueWind = besideLine(boat, trueFrom, mirror, words.trueWind);
  const boatSpeed = besideLine(trueFrom, apparentFrom, mirror, words.boatSpeed);
  const apparent = besideLine(boat, apparentFrom, mirror === 1 ? -1 : 1, words.apparent, apparentShare);
  return {
    apparent,
    trueWind,
    boatSpeed: keptApart(boatSpeed, trueWind, apparentFrom.y < trueFrom.y && trueFrom.y < boat.y),
    angle: angleLabel(boat, apparent, mirror, words.angle),
  };
}

/** Beside the course, on the free side: at the arc, or lower where the apparent wind's label has come down to it. */
function angleLabel(
  boat: Point,
  apparent: PlacedLabel,
  mirror: 1 | -1,
  lines: readonly string[],
): PlacedLabel {
  const at = (upPx: number): PlacedLabel => ({
    lines,
    x: boat.x - mirror * labelGapPx,
    y: boat.y - upPx,
    anchor: mirror === 1 ? 'end' : 'start',
  });
  const high = at(arcRadiusPx - 4);
  const taken = labelBox(apparent);
  if (!overlaps(labelBox(high), taken)) return high;
  const low = at(arcRadiusPx - 22);
  return overlaps(labelBox(low), taken) ? at(-4) : low;
}

/** A label beside a line, on its right (1) or left (-1) for one who looks from `from` to `to`; half-way unless told. */
function besideLine(
  from: Point,
  to: Point,
  side: 1 | -1,
  lines: readonly string[],
  share = 0.5,
): PlacedLabel {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const across =
    length === 0
      ? { x: side, y: 0 }
      : {
          x: (-side * (to.y - from.y)) / length,
          y: (side * (to.x - from.x)) / length,
        };
  const middle = { x: from.x + share * (to.x - from.x), y: from.y + share * (to.y - from.y) };
  const steep = Math.abs(across.x) > 0.35;
  const x = middle.x + labelGapPx * across.x;
  const y = middle.y + labelGapPx * across.y;
  const rows = lines.length - 1;
  const firstLine = steep
    ? y + 4 - (rows * labelLinePx) / 2 + across.y * labelLinePx * (0.3 + rows / 2)
    : across.y > 0
      ? y + labelLinePx * 0.8
      : y - rows * labelLinePx - 2;
  return { lines, x, y: firstLine, anchor: steep ? (across.x > 0 ? 'start' : 'end') : 'middle' };
}

/** Moves a label up or down until it no longer covers another. */
function keptApart(label: PlacedLabel, other: PlacedLabel, upwards: boolean): PlacedLabel {
  const [a, b] = [labelBox(label), labelBox(other)];
  if (!overlaps(a, b)) return label;
  return { ...label, y: label.y + (upwards ? b.top - a.bottom : b.bottom - a.top) };
}

function extentOf({ boat, trueFrom, apparentFrom, labels }: Drawing): Extent {
  const boxes = Object.values(labels).map((label: PlacedLabel) => labelBox(label));
  const points = [boat, trueFrom, apparentFrom];
  // The hull lies before or behind the point where the wind meets her.
  const hullY = apparentFrom.y > boat.y ? boat.y - hullLengthPx : boat.y + hullLengthPx;
  return {
    left: Math.min(...boxes.map(({ left }) => left), ...points.map(({ x }) => x)) - edgePx,
    right: Math.max(...boxes.map(({ right }) => right), ...points.map(({ x }) => x)) + edgePx,
    top: Math.min(...boxes.map(({ top }) => top), ...points.map(({ y }) => y), hullY) - edgePx,
    bottom: Math.max(...boxes.map(({ bottom }) => bottom), ...points.map(({ y }) => y), hullY) + edgePx,
  };
}

function fits(drawing: Drawing, size: TriangleSize): boolean {
  const { left, right, top, bottom } = extentOf(drawing);
  return right - left <= size.widthPx && bottom - top <= size.heightPx - captionHeightPx;
}

/** Smaller with the wind from aft, where the arc goes round most of the boat and the labels stand inside its side. */
function arcRadius(boat: Point, apparentFrom: Point): number {
  return apparentFrom.y > boat.y ? arcRadiusAftPx : arcRadiusPx;
}

/** What the arc takes up. */
function arcBox(boat: Point, apparentFrom: Point): Extent {
  const radius = arcRadius(boat, apparentFrom);
  const angle = Math.atan2(apparentFrom.x - boat.x, boat.y - apparentFrom.y);
  const acrossPx = radius * Math.sin(Math.min(Math.abs(angle), Math.PI / 2)) * Math.sign(angle);
  return {
    left: boat.x + Math.min(acrossPx, 0),
    right: boat.x + Math.max(acrossPx, 0),
    top: boat.y - radius,
    bottom: boat.y - radius * Math.cos(angle),
  };
}

function arcPath({ boat, apparentFrom }: Drawing): string {
  const [x, y] = [apparentFrom.x - boat.x, apparentFrom.y - boat.y];
  const length = Math.hypot(x, y);
  const radius = arcRadius(boat, apparentFrom);
  if (length === 0 || Math.abs(x) < 1e-9) return '';
  const end = { x: boat.x + (radius * x) / length, y: boat.y + (radius * y) / length };
  const start = `M${roundPx(boat.x)} ${roundPx(boat.y - radius)}`;
  return `${start}A${radius} ${radius} 0 0 ${x > 0 ? 1 : 0} ${roundPx(end.x)} ${roundPx(end.y)}`;
}

/** A hull seen from above with her bow (wind from ahead) or her stern (wind from aft) where the wind meets her. */
function hullPath(boat: Point, { bowRightRad }: WindVectors, windFromAft: boolean): string {
  const sternAt = windFromAft ? 0 : hullLengthPx;
  const bowAt = sternAt - hullLengthPx;
  const half = hullHalfWidthPx;
  const point = (across: number, aft: number): string => {
    const x = across * Math.cos(bowRightRad) - aft * Math.sin(bowRightRad);
    const y = across * Math.sin(bowRightRad) + aft * Math.cos(bowRightRad);
    return `${roundPx(boat.x + x)} ${roundPx(boat.y + y)}`;
  };
  return (
    `M${point(0, bowAt)}C${point(half * 0.7, bowAt + 9)} ${point(half * 1.15, bowAt + 17)} ${point(half * 0.8, sternAt)}` +
    `L${point(-half * 0.8, sternAt)}C${point(-half * 1.15, bowAt + 17)} ${point(-half * 0.7, bowAt + 9)} ${point(0, bowAt)}Z`
  );
}
