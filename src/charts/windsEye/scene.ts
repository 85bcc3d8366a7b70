import type { Solid, SolidRole } from '../../project/picture/solids';
import { dot, type BoatVector, type Vector3 } from '../../physics/vector/vector3';
import { clippedBelow, convexHull, type PlanePoint } from './convexHull';
import type { PictureView } from './viewOf';

/** Where the picture stands on the page: px to a metre, and the px of the view's origin. */
export interface PictureFrame {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly pxPerM: number;
  readonly originX: number;
  /** The waterline in the views along the water; amidships from above. */
  readonly originY: number;
}

/** One outline to draw. A thin bar is a stroke, `corners` its two ends; anything else a polygon. */
export interface SceneItem {
  readonly fittingId: string | null;
  readonly role: SolidRole;
  readonly isDragArea: boolean;
  /** Of its middle, m; larger is farther from the eye. */
  readonly depthM: number;
  /** Px, y downwards. */
  readonly corners: readonly PlanePoint[];
  /** Width of a stroke, px; 0 for a polygon. */
  readonly strokePx: number;
}

/** From here a bar is drawn as the outline it has, with its ends. */
const outlineFromPx = 3;
/** Thin things are seen. */
const leastStrokePx = 1;
const roundPoints = 24;

/**
 * What the eye meets, far to near: each outline painted over the ones before hides what it hides. Parts under water are
 * left out in the views along the water.
 */
export function sceneOf(solids: readonly Solid[], view: PictureView, frame: PictureFrame): SceneItem[] {
  const items: SceneItem[] = [];
  for (const solid of solids) {
    const item = itemOf(solid, view, frame);
    if (item !== null) items.push(item);
  }
  return items.sort((a, b) => b.depthM - a.depthM);
}

function itemOf(solid: Solid, view: PictureView, frame: PictureFrame): SceneItem | null {
  const strokePx = solid.kind === 'bar' ? solid.thicknessM * frame.pxPerM : Infinity;
  const isStroke = strokePx < outlineFromPx;
  const outline = isStroke ? dryStroke(solid, view) : dryOutline(outlineOf(solid, view), view);
  if (outline.length < 2) return null;
  return {
    fittingId: solid.fittingId,
    role: solid.role,
    isDragArea: solid.isDragArea,
    depthM: meanDepth(solid.points, view.away),
    corners: outline.map((point) => inFrame(point, frame)),
    strokePx: isStroke ? Math.max(strokePx, leastStrokePx) : 0,
  };
}

function meanDepth(points: readonly BoatVector[], away: Vector3): number {
  let sum = 0;
  for (const point of points) sum += dot(point, away);
  return sum / points.length;
}

/** A point as the eye sees it: to the right and up, m, heights above the water. */
function seen(point: Vector3, { right, up, riseM }: PictureView): PlanePoint {
  return [dot(point, right), dot(point, up) + riseM];
}

function inFrame([x, y]: PlanePoint, { originX, originY, pxPerM }: PictureFrame): PlanePoint {
  return [originX + x * pxPerM, originY - y * pxPerM];
}

function isAlongWater({ kind }: PictureView): boolean {
  return kind !== 'above';
}

function dryOutline(corners: readonly PlanePoint[], view: PictureView): readonly PlanePoint[] {
  return isAlongWater(view) ? clippedBelow(corners, 0) : corners;
}

function dryStroke({ points }: Solid, view: PictureView): readonly PlanePoint[] {
  const [start, end] = points.map((point) => seen(point, view));
  if (start === undefined || end === undefined) return [];
  if (!isAlongWater(view) || (start[1] >= 0 && end[1] >= 0)) return [start, end];
  if (start[1] < 0 && end[1] < 0) return [];
  const share = start[1] / (start[1] - end[1]);
  const at: PlanePoint = [start[0] + share * (end[0] - start[0]), 0];
  return start[1] < 0 ? [at, end] : [start, at];
}

/** The outline of a solid as the eye sees it, m: to the right and up. Round things by 24 corners. */
export function outlineOf(solid: Solid, view: PictureView): PlanePoint[] {
  switch (solid.kind) {
    case 'face':
      return solid.points.map((point) => seen(point, view));
    case 'cloud':
      return convexHull(solid.points.map((point) => seen(point, view)));
    case 'ball':
      return ballOutline(solid, view);
    case 'bar':
      return barOutline(solid, view);
  }
}

function ballOutline({ points, thicknessM }: Solid, view: PictureView): PlanePoint[] {
  return points.flatMap((centre) => {
    const [x, y] = seen(centre, view);
    return Array.from({ length: roundPoints }, (_, i): PlanePoint => {
      const angle = (2 * Math.PI * i) / roundPoints;
      return [x + (thicknessM / 2) * Math.cos(angle), y + (thicknessM / 2) * Math.sin(angle)];
    });
  });
}

/** The hull of both end discs: each is an ellipse, as wide as the bar across it and narrowed along it. */
function barOutline({ points, thicknessM }: Solid, view: PictureView): PlanePoint[] {
  const [start, end] = points;
  if (start === undefined || end === undefined) return [];
  const axis: Vector3 = [end[0] - start[0], end[1] - start[1], end[2] - start[2]];
  const lengthM = Math.hypot(...axis);
  if (lengthM === 0) return [];
  const alongX = dot(axis, view.right) / lengthM;
  const alongY = dot(axis, view.up) / lengthM;
  const sine = Math.hypot(alongX, alongY);
  // End on, every direction is across it.
  const [ux, uy] = sine < 1e-9 ? [1, 0] : [alongX / sine, alongY / sine];
  const cosine = Math.sqrt(Math.max(1 - sine * sine, 0));
  const radiusM = thicknessM / 2;
  return convexHull(
    [start, end].flatMap((centre) => {
      const [x, y] = seen(centre, view);
      return Array.from({ length: roundPoints }, (_, i): PlanePoint => {
        const angle = (2 * Math.PI * i) / roundPoints;
        const along = radiusM * cosine * Math.cos(angle);
        const across = radiusM * Math.sin(angle);
        return [x + along * ux - across * uy, y + along * uy + across * ux];
      });
    }),
  );
}

/** The nearest item of a fitting under a point of the picture, or within a few px of it; null for none. */
export function itemAt(items: readonly SceneItem[], [x, y]: PlanePoint, reachPx: number): SceneItem | null {
  for (let i = items.length - 1; i >= 0; i -= 1) {
    const item = items[i]!;
    // What hides a fitting also takes the pointer, but for the rig, which is drawn as if it were glass.
    if (item.role !== 'rig' && contains(item, x, y)) return item.fittingId === null ? near() : item;
  }
  return near();

  function near(): SceneItem | null {
    let nearest: SceneItem | null = null;
    let leastPx = reachPx;
    for (let i = items.length - 1; i >= 0; i -= 1) {
      const item = items[i]!;
      if (item.role !== 'fitting') continue;
      const distance = edgeDistance(item, x, y);
      if (distance < leastPx) {
        leastPx = distance;
        nearest = item;
      }
    }
    return nearest;
  }
}

function contains({ corners, strokePx }: SceneItem, x: number, y: number): boolean {
  if (strokePx > 0) {
    const [a, b] = corners;
    return a !== undefined && b !== undefined && distanceToSegment(x, y, a, b) <= strokePx / 2;
  }
  let isInside = false;
  for (let i = 0, j = corners.length - 1; i < corners.length; j = i, i += 1) {
    const [ax, ay] = corners[i]!;
    const [bx, by] = corners[j]!;
    if (ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)) isInside = !isInside;
  }
  return isInside;
}

function edgeDistance({ corners }: SceneItem, x: number, y: number): number {
  let least = Infinity;
  for (let i = 0; i < corners.length; i += 1) {
    least = Math.min(least, distanceToSegment(x, y, corners[i]!, corners[(i + 1) % corners.length]!));
  }
  return least;
}

function distanceToSegment(x: number, y: number, [ax, ay]: PlanePoint, [bx, by]: PlanePoint): number {
  const dx = bx - ax;
  const dy = by - ay;
  const square = dx * dx + dy * dy;
  const share = square === 0 ? 0 : Math.min(Math.max(((x - ax) * dx + (y - ay) * dy) / square, 0), 1);
  return Math.hypot(x - ax - share * dx, y - ay - share * dy);
}
