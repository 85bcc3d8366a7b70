import { describe, expect, it } from 'vitest';
import { gaussLegendre, type QuadratureRule } from '../../../src/physics/numerics/gaussLegendre';

const counts = [1, 2, 3, 4, 6, 8, 12, 64];

function integral(rule: QuadratureRule, integrand: (x: number) => number): number {
  return rule.nodes.reduce((sum, x, i) => sum + (rule.weights[i] ?? NaN) * integrand(x), 0);
}

describe.each(counts)('Gauss-Legendre with %d points on [0, 1]', (count) => {
  const rule = gaussLegendre(count);

  it('is exact for every power up to 2 n - 1', () => {
    for (let power = 0; power <= 2 * count - 1; power += 1) {
      expect(Math.abs(integral(rule, (x) => x ** power) * (power + 1) - 1)).toBeLessThan(2e-13);
    }
  });

  it('has its nodes inside, in order and mirrored about the middle, and weights above zero', () => {
    for (let i = 0; i < count; i += 1) {
      const node = rule.nodes[i] ?? NaN;
      expect(node).toBeGreaterThan(i === 0 ? 0 : (rule.nodes[i - 1] ?? NaN));
      expect(node).toBeLessThan(1);
      expect(node + (rule.nodes[count - 1 - i] ?? NaN)).toBeCloseTo(1, 14);
      expect(rule.weights[i]).toBeGreaterThan(0);
    }
  });
});

describe('Gauss-Legendre', () => {
  it('is not exact for the power 2 n, by the amount of the textbook error term', () => {
    // Error of the rule on [0, 1] for x^(2n): (n!)^4 / ((2n + 1) ((2n)!)^2), Abramowitz and Stegun 25.4.30.
    expect(1 / 3 - integral(gaussLegendre(1), (x) => x ** 2)).toBeCloseTo(1 / 12, 14);
    expect(1 / 5 - integral(gaussLegendre(2), (x) => x ** 4)).toBeCloseTo(1 / 180, 14);
    expect(1 / 7 - integral(gaussLegendre(3), (x) => x ** 6)).toBeCloseTo(1 / 2800, 14);
  });

  it('has the two-point nodes at 1/2 -+ 1/(2 sqrt 3)', () => {
    const { nodes } = gaussLegendre(2);
    expect(nodes[0]).toBeCloseTo(0.5 - 0.5 / Math.sqrt(3), 15);
    expect(nodes[1]).toBeCloseTo(0.5 + 0.5 / Math.sqrt(3), 15);
  });

  it('keeps a rule once it is made', () => {
    expect(gaussLegendre(5)).toBe(gaussLegendre(5));
  });
});
