import { describe, expect, it } from 'vitest';
import { namedBodies, type NamedBody } from '../../src/physics/body/namedBodies';
import { edgedBodyCoefficient } from '../../src/physics/body/threeAxisBody';
import { sources } from '../../src/physics/sources';

const bodies: readonly (readonly [string, NamedBody])[] = Object.entries(namedBodies);
const rounded = /Round/;
const halfWidths: Readonly<Record<string, number>> = { hexagonBarFlat: 0.4 };

describe('a named shape', () => {
  it.each(bodies)(
    '%s has a range of 15 %, 30 % with a round front, but the disc, and names its area and source',
    (id, body) => {
      const { best, low, high } = body.coefficient;
      expect(body.areaBase.length).toBeGreaterThan(5);
      expect(sources).toHaveProperty(body.source);
      if (id === 'disc') return;
      const half = halfWidths[id] ?? (rounded.test(id) || id === 'hexagonBarCorner' ? 0.3 : 0.15);
      expect(low).toBeCloseTo(best * (1 - half), 12);
      expect(high).toBeCloseTo(best * (1 + half), 12);
    },
  );

  it('has half of the range of its three sources, 1.10 to 1.27, beyond it for the disc', () => {
    const { low, high } = namedBodies.disc.coefficient;
    expect(low).toBeCloseTo(1.1 - 0.085, 2);
    expect(high).toBeCloseTo(1.27 + 0.085, 2);
  });

  it('has the cube of the bluff bodies', () => {
    expect(namedBodies.cubeFace.coefficient.best).toBe(edgedBodyCoefficient.best);
  });

  it('catches more with its open or flat side to the wind than with its round one', () => {
    const best = (id: keyof typeof namedBodies): number => namedBodies[id].coefficient.best;
    expect(best('halfTubeOpenFront')).toBeGreaterThan(best('halfTubeRoundFront'));
    expect(best('hollowHemisphereOpenFront')).toBeGreaterThan(best('hollowHemisphereRoundFront'));
    expect(best('solidHemisphereFlatFront')).toBeGreaterThan(best('solidHemisphereRoundFront'));
    expect(best('cone60')).toBeGreaterThan(best('cone30'));
  });
});
