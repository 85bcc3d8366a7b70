/** Nodes and weights of Gauss-Legendre quadrature on [0, 1]; the weights add up to one. */
export interface QuadratureRule {
  readonly nodes: Float64Array;
  readonly weights: Float64Array;
}

const rules = new Map<number, QuadratureRule>();

/**
 * Gauss-Legendre rule with `count` points, moved to [0, 1]. The nodes are the roots of the Legendre polynomial,
 * found by Newton's method from the usual cosine guess. Exact for polynomials up to degree 2 count - 1.
 */
export function gaussLegendre(count: number): QuadratureRule {
  const known = rules.get(count);
  if (known !== undefined) return known;
  const nodes = new Float64Array(count);
  const weights = new Float64Array(count);
  for (let i = 0; i < count; i += 1) {
    let x = Math.cos((Math.PI * (i + 0.75)) / (count + 0.5));
    let slope = legendreWithSlope(count, x).slope;
    for (let step = 0; step < 50; step += 1) {
      const { value, slope: here } = legendreWithSlope(count, x);
      slope = here;
      const change = value / here;
      x -= change;
      if (Math.abs(change) < 1e-15) break;
    }
    slope = legendreWithSlope(count, x).slope;
    nodes[i] = (1 - x) / 2;
    weights[i] = 1 / ((1 - x * x) * slope * slope);
  }
  const rule = { nodes, weights };
  rules.set(count, rule);
  return rule;
}

function legendreWithSlope(degree: number, x: number): { value: number; slope: number } {
  let previous = 1;
  let value = x;
  for (let k = 2; k <= degree; k += 1) {
    const next = ((2 * k - 1) * x * value - (k - 1) * previous) / k;
    previous = value;
    value = next;
  }
  if (degree === 0) return { value: 1, slope: 0 };
  return { value, slope: (degree * (previous - x * value)) / (1 - x * x) };
}
