type Curve = (x: number) => number;

interface Sample {
  readonly x: number;
  readonly value: number;
}

/** Golden section: share of an interval that is kept. */
const kept = (Math.sqrt(5) - 1) / 2;

/**
 * Every x between `from` and `to` at which `curve` changes its sign, in rising order.
 *
 * The curve is sampled in equal steps of at most `step`; a change between two samples is closed in by bisection. Where it
 * comes nearest to zero between samples of the same sign, the turn is looked for by golden section, so that a pair of
 * crossings inside one step is found too. A touch of zero, or a stretch of zero between equal signs, is no crossing, nor is a zero
 * at an end: nothing changes places there. Where the sign changes over a stretch of zero, the crossing lies on the stretch.
 *
 * Exact for a continuous curve that turns at most once within two steps.
 * @param tolerance largest error of a crossing, in units of x.
 */
export function crossings(curve: Curve, from: number, to: number, step: number, tolerance: number): number[] {
  const samples = withTurns(curve, sampled(curve, from, to, step), tolerance).filter(
    ({ value }) => value !== 0,
  );
  const found: number[] = [];
  for (let i = 1; i < samples.length; i += 1) {
    const [left, right] = [samples[i - 1]!, samples[i]!];
    if (left.value * right.value < 0) found.push(bisected(curve, left, right, tolerance));
  }
  return found;
}

function sampled(curve: Curve, from: number, to: number, step: number): Sample[] {
  const pieces = Math.max(Math.ceil((to - from) / step), 1);
  return Array.from({ length: pieces + 1 }, (_, i) => {
    const x = i === pieces ? to : from + ((to - from) * i) / pieces;
    return { x, value: curve(x) };
  });
}

/** The samples, and between them the turns at which the curve gets across zero and comes back. */
function withTurns(curve: Curve, samples: readonly Sample[], tolerance: number): Sample[] {
  const turns = samples.flatMap((here, i) => {
    const [left, right] = [samples[i - 1] ?? here, samples[i + 1] ?? here];
    const sign = Math.sign(here.value);
    const isNearest =
      sign * left.value >= sign * here.value && sign * right.value >= sign * here.value && sign !== 0;
    if (!isNearest) return [];
    const turn = nearestZero(curve, left.x, right.x, sign, tolerance);
    return sign * turn.value < 0 ? [turn] : [];
  });
  return [...samples, ...turns].sort((a, b) => a.x - b.x);
}

/** Least sign x curve between two places, by golden section; as soon as it lies across zero that is enough. */
function nearestZero(curve: Curve, left: number, right: number, sign: number, tolerance: number): Sample {
  let [from, to] = [left, right];
  let [low, high] = [to - kept * (to - from), from + kept * (to - from)];
  let [atLow, atHigh] = [sign * curve(low), sign * curve(high)];
  while (to - from > tolerance && atLow >= 0 && atHigh >= 0) {
    if (atLow < atHigh) {
      [to, high, atHigh] = [high, low, atLow];
      low = to - kept * (to - from);
      atLow = sign * curve(low);
    } else {
      [from, low, atLow] = [low, high, atHigh];
      high = from + kept * (to - from);
      atHigh = sign * curve(high);
    }
  }
  return atLow < atHigh ? { x: low, value: sign * atLow } : { x: high, value: sign * atHigh };
}

/** Halves the interval until half of it is within the tolerance. */
function bisected(curve: Curve, left: Sample, right: Sample, tolerance: number): number {
  let [from, to] = [left.x, right.x];
  const sign = Math.sign(left.value);
  while (to - from > 2 * tolerance) {
    const middle = (from + to) / 2;
    if (middle <= from || middle >= to) break;
    if (sign * curve(middle) > 0) from = middle;
    else to = middle;
  }
  return (from + to) / 2;
}
