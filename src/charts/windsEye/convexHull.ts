/** A point of a picture: to the right and down, px; or to the right and up, m. */
export type PlanePoint = readonly [x: number, y: number];

function turn([ax, ay]: PlanePoint, [bx, by]: PlanePoint, [cx, cy]: PlanePoint): number {
  return (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
}

/** The convex hull of points, its corners in order, by Andrew's monotone chain; fewer than three where they lie on a line. */
export function convexHull(points: readonly PlanePoint[]): PlanePoint[] {
  const sorted = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const half = (ordered: readonly PlanePoint[]): PlanePoint[] => {
    const chain: PlanePoint[] = [];
    for (const point of ordered) {
      while (chain.length > 1 && turn(chain.at(-2)!, chain.at(-1)!, point) <= 0) chain.pop();
      chain.push(point);
    }
    chain.pop();
    return chain;
  };
  return [...half(sorted), ...half(sorted.reverse())];
}

/** What of a polygon lies at or above a level (Sutherland and Hodgman); empty when nothing does. */
export function clippedBelow(corners: readonly PlanePoint[], level: number): PlanePoint[] {
  if (corners.every(([, y]) => y >= level)) return [...corners];
  return corners.flatMap((corner, i) => {
    const next = corners[(i + 1) % corners.length]!;
    const kept = corner[1] >= level ? [corner] : [];
    const crosses = corner[1] >= level !== next[1] >= level;
    return crosses ? [...kept, crossing(corner, next, level)] : kept;
  });
}

function crossing([ax, ay]: PlanePoint, [bx, by]: PlanePoint, level: number): PlanePoint {
  return [ax + ((level - ay) / (by - ay)) * (bx - ax), level];
}
