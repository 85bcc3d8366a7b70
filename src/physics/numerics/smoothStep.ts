/** 0 below `from`, 1 above `to`, and 3 t^2 - 2 t^3 between: a ramp without a kink. */
export function smoothStep(from: number, to: number, x: number): number {
  if (x <= from) return 0;
  if (x >= to) return 1;
  const t = (x - from) / (to - from);
  return t * t * (3 - 2 * t);
}
