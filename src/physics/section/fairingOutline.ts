const outlineSteps = 100;

/** Polynomial of the half thickness in x, behind the term in its root. Source: naca-four-digit. */
const [root, linear, square, cube, fourth] = [0.2969, -0.126, -0.3516, 0.2843, -0.1015];

/**
 * Half thickness of a NACA four-digit section over its chord:
 * 5 t (0.2969 sqrt x - 0.1260 x - 0.3516 x^2 + 0.2843 x^3 - 0.1015 x^4). Source: naca-four-digit.
 */
export function halfThickness(thicknessRatio: number, x: number): number {
  const sum = root * Math.sqrt(x) + x * (linear + x * (square + x * (cube + fourth * x)));
  return 5 * thicknessRatio * sum;
}

/** First and second slope of the half thickness over r = sqrt x, in which it is a polynomial down to the nose. */
export function halfThicknessSlopes(thicknessRatio: number, r: number): readonly [number, number] {
  const x = r * r;
  const first = root + r * (2 * linear + x * (4 * square + x * (6 * cube + 8 * fourth * x)));
  const second = 2 * linear + x * (12 * square + x * (30 * cube + 56 * fourth * x));
  return [5 * thicknessRatio * first, 5 * thicknessRatio * second];
}

/** Perimeter of a NACA four-digit section over its chord, by 100 straight pieces a side, the blunt tail closed. */
export function perimeterOverChord(thicknessRatio: number): number {
  let length = 0;
  let x = 0;
  let y = 0;
  for (let i = 1; i <= outlineSteps; i += 1) {
    const nextX = 0.5 * (1 - Math.cos((Math.PI * i) / outlineSteps));
    const nextY = halfThickness(thicknessRatio, nextX);
    length += Math.hypot(nextX - x, nextY - y);
    x = nextX;
    y = nextY;
  }
  return 2 * (length + y);
}
