import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { emptyStrip, type StripCoefficients, type StripFlow } from '../../src/physics/section/memberFamily';
import {
  plateEndFactor,
  plateEndNodes,
  sharpRectangleCoefficient,
  sharpRectangleNodes,
} from '../../src/physics/section/rectangle';
import { prepareRectangle } from '../../src/physics/section/rectangleSection';
import { prepareRoundBar } from '../../src/physics/section/roundBarSection';
import { between, degree } from './arbitraries';

const plateau = 2;
const thicknesses = between(0.02, 3);
const reynolds = between(2, 6.5).map((log) => 10 ** log);

function flow(Re: number, incidenceRad: number): StripFlow {
  return {
    crossSpeedMs: Re,
    inclinationCosine: 1,
    kinematicViscosityM2S: 1,
    effectiveSlenderness: Infinity,
    incidenceRad,
  };
}

function at(thicknessM: number, radiusShare: number, Re: number, incidenceRad: number): StripCoefficients {
  const out = emptyStrip();
  const radiusM = (radiusShare * Math.min(thicknessM, 1)) / 2;
  prepareRectangle(1, thicknessM, radiusM, null).strip(flow(Re, incidenceRad), out, true);
  return out;
}

const numbers = ['drag', 'dragLow', 'dragHigh', 'lift', 'liftLow', 'liftHigh'] as const;

describe('rectangular section', () => {
  it('has no step at a node of EN’s diagram or of the end table', () => {
    for (const [ratio] of sharpRectangleNodes) {
      const [left, right] = [ratio * (1 - 1e-9), ratio * (1 + 1e-9)].map(sharpRectangleCoefficient);
      expect(Math.abs((left ?? 0) - (right ?? 0))).toBeLessThan(1e-6 * plateau);
    }
    for (const [ratio] of plateEndNodes) {
      const [left, right] = [ratio * (1 - 1e-9), ratio * (1 + 1e-9)].map(plateEndFactor);
      expect(Math.abs((left ?? 0) - (right ?? 0))).toBeLessThan(1e-6);
    }
  });

  it('changes by at most 0.02 in drag and 0.08 in lift over a tenth of a degree', () => {
    for (const thicknessM of [0.02, 0.12, 0.3, 0.8, 1]) {
      for (const radiusShare of [0, 0.5, 1]) {
        for (let deg = -180; deg < 180; deg += 0.1) {
          const one = at(thicknessM, radiusShare, 1e5, deg * degree);
          const next = at(thicknessM, radiusShare, 1e5, (deg + 0.1) * degree);
          for (const key of ['drag', 'dragLow', 'dragHigh'] as const)
            expect(Math.abs(next[key] - one[key])).toBeLessThanOrEqual(0.02);
          for (const key of ['lift', 'liftLow', 'liftHigh'] as const)
            expect(Math.abs(next[key] - one[key])).toBeLessThanOrEqual(0.08);
        }
      }
    }
  });

  it('changes slowly with the Reynolds number: |dln Cd/dln Re| <= 12', () => {
    fc.assert(
      fc.property(thicknesses, between(0, 1), reynolds, (thicknessM, radiusShare, Re) => {
        const one = at(thicknessM, radiusShare, Re, 0.3);
        const next = at(thicknessM, radiusShare, Re * 1.001, 0.3);
        for (const key of ['drag', 'dragLow', 'dragHigh'] as const) {
          const slope = Math.log(next[key] / one[key]) / Math.log(1.001);
          expect(Math.abs(slope)).toBeLessThanOrEqual(12);
        }
      }),
    );
  });

  it('is the same from nose and tail and mirrored from the two sides', () => {
    fc.assert(
      fc.property(thicknesses, between(0, 1), reynolds, between(-3, 3), (thicknessM, share, Re, a) => {
        const one = at(thicknessM, share, Re, a);
        const turned = at(thicknessM, share, Re, a + Math.PI);
        const mirrored = at(thicknessM, share, Re, -a);
        for (const key of numbers) {
          expect(turned[key]).toBeCloseTo(one[key], 9);
          expect(mirrored[key]).toBeCloseTo(key.startsWith('lift') ? -one[key] : one[key], 9);
        }
      }),
    );
  });

  it('with its corners rounded to half a square’s side is the round bar in everything', () => {
    fc.assert(
      fc.property(reynolds, between(-3, 3), between(2, 300), (Re, a, slenderness) => {
        const one = at(1, 1, Re, a);
        const round = emptyStrip();
        const bar = prepareRoundBar(1, 0, null);
        bar.strip(flow(Re, a), round, true);
        for (const key of numbers) expect(one[key]).toBeCloseTo(round[key], 9);
        const rectangle = prepareRectangle(1, 1, 0.5, null);
        for (const method of ['dnv', 'en'] as const) {
          expect(rectangle.endFactor(method, slenderness, 5, 0.3)).toBeCloseTo(
            bar.endFactor(method, slenderness, 5, 0.3),
            9,
          );
        }
        expect(rectangle.perimeterM).toBeCloseTo(bar.perimeterM, 12);
      }),
    );
  });

  it('keeps best between low and high, and drag above zero in every state', () => {
    fc.assert(
      fc.property(thicknesses, between(0, 1), reynolds, between(-3, 3), (thicknessM, share, Re, a) => {
        const { drag, dragLow, dragHigh } = at(thicknessM, share, Re, a);
        expect(dragLow).toBeGreaterThan(0);
        expect(dragLow).toBeLessThanOrEqual(drag);
        expect(drag).toBeLessThanOrEqual(dragHigh);
      }),
    );
  });

  it('has no end effect when it is long', () => {
    expect(prepareRectangle(1, 0.3, 0, null).endFactor('dnv', 1e4, 5, 0)).toBe(1);
    expect(prepareRectangle(1, 0.3, 0, null).endFactor('en', 1e4, 5, 0)).toBe(1);
  });
});
