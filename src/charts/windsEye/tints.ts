/** What the colours of a picture say. */
export interface TintScale {
  /** Upper end of each step but the last, in rising order; a value falls into the first whose end it does not pass. */
  readonly ends: readonly number[];
  readonly steps: number;
}

const steps = 5;

/**
 * Five tints over the positive values, each step as wide as the next in the square root, so that the many small ones are
 * told apart. Values of zero and below have no tint.
 */
export function tintScale(values: readonly number[]): TintScale {
  const most = Math.max(...values, 0);
  return {
    ends: Array.from({ length: steps - 1 }, (_, i) => most * ((i + 1) / steps) ** 2),
    steps,
  };
}

/** 0 for the lightest, `steps - 1` for the darkest, null for a value of zero and below. */
export function tintOf({ ends }: TintScale, value: number): number | null {
  if (!(value > 0)) return null;
  const step = ends.findIndex((end) => value <= end);
  return step === -1 ? ends.length : step;
}

/** How much of the full colour each tint has; the lightest is still told from paper. */
export function tintShare(step: number, count: number): number {
  return 0.22 + (0.78 * step) / (count - 1);
}
