const outlineSteps = 100;

/**
 * Half thickness of a NACA four-digit section over its chord:
 * 5 t (0.2969 sqrt x - 0.1260 x - 0.3516 x^2 + 0.2843 x^3 - 0.1015 x^4). Source: naca-four-digit.
 */
export function halfThickness(thicknessRatio: number, x: number): number {
  const sum = 0.2969 * Math.sqrt(x) + x * (-0.126 + x * (-0.3516 + x * (0.2843 - 0.1015 * x)));
  return 5 * thicknessRatio * sum;
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
