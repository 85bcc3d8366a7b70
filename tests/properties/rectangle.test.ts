import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { emptyStrip, type StripCoefficients, type StripFlow } from '../../src/physics/section/memberFamily';
import {
  cornerFactor,
  plateEndFactor,
  plateEndNodes,
  sharpRectangleCoefficient,
  rectangleAxis,
  rectangleRegime,
  sectionOffAxisBand,
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

function axis(depthOverWidth: number, radiusOverWidth: number, Re: number) {
  return rectangleAxis(depthOverWidth, radiusOverWidth, Math.log10(Re), { best: 0, low: 0, high: 0 });
}

describe('a rectangle, worked by hand', () => {
  it('has EN’s corner points and DNV’s plate, kept a second time', () => {
    expect(sharpRectangleNodes.map((node) => node.join(' '))).toEqual([
      '0.2 2',
      '0.6 2.35',
      '0.7 2.4',
      '1 2.1',
      '2 1.65',
      '5 1',
      '10 0.9',
    ]);
    expect(plateEndNodes.map((node) => node.join(' '))).toEqual([
      '2 0.62',
      '5 0.66',
      '10 0.69',
      '20 0.81',
      '40 0.87',
      '50 0.9',
      '100 0.95',
      '200 1',
    ]);
  });

  it('loses half of its force to corners of a fifth of the width, in a straight line, and no more', () => {
    for (const [radius, factor] of [
      [0, 1],
      [0.05, 0.875],
      [0.1, 0.75],
      [0.2, 0.5],
      [0.5, 0.5],
    ] as const) {
      expect(cornerFactor(radius)).toBeCloseTo(factor, 12);
    }
  });

  it('has a band of -20 / +15.5 % when sharp, +23.5 % when rounded, and half of the low edge lost by Re 4e5', () => {
    const sharp = axis(1, 0, 1e6);
    expect(sharp.best).toBeCloseTo(2.1, 12);
    expect(sharp.low).toBeCloseTo(2.1 * 0.8, 12);
    expect(sharp.high).toBeCloseTo(2.1 * 1.155, 12);
    for (const [Re, left] of [
      [1e5, 1],
      [2e5, 0.75],
      [4e5, 0.5],
    ] as const) {
      const rounded = axis(1, 0.2, Re);
      expect(rounded.best).toBeCloseTo(1.05, 12);
      expect(rounded.low).toBeCloseTo(1.05 * 0.8 * left, 12);
      expect(rounded.high).toBeCloseTo(1.05 * 1.235, 12);
    }
    expect(axis(1, 0.2, 1.1e5).low).toBeLessThan(1.05 * 0.8 - 1e-3);
    expect(axis(1, 0.2, 3.9e5).low).toBeGreaterThan(1.05 * 0.4 + 1e-4);
    expect(axis(1, 0.1, 4e5).low).toBeCloseTo(2.1 * 0.75 * 0.8 * 0.75, 12);
  });

  it('has a low edge of -6.5 % as a plate across the wind, -20 % from where it has sides, halfway between in between', () => {
    for (const [depth, share] of [
      [0.02, 0.935],
      [0.2, 0.935],
      [Math.sqrt(0.2 * 0.6), 0.8675],
      [0.6, 0.8],
      [5, 0.8],
    ] as const) {
      const { low, best } = axis(depth, 0, 1e5);
      expect(low / best).toBeCloseTo(share, 12);
    }
  });

  it('is -15 / +25 % good at 45 deg, and changes its regime at 15 deg from either axis', () => {
    expect(sectionOffAxisBand).toEqual({ low: -0.15, high: 0.25 });
    const oblique = at(0.5, 0, 1e5, 45 * degree);
    const [along, across] = [axis(2, 0, 5e4), axis(0.5, 0, 1e5)];
    expect(oblique.dragLow).toBeCloseTo(0.85 * (0.25 * along.low + 0.5 * across.low), 12);
    expect(oblique.dragHigh).toBeCloseTo(1.25 * (0.25 * along.high + 0.5 * across.high), 12);
    expect(oblique.liftLow).toBeCloseTo(0.85 * 0.5 * (across.low - 0.5 * along.low), 12);
    expect(oblique.lift).toBeCloseTo(0.5 * (across.best - 0.5 * along.best), 12);
    const regimes = [14.9, 15.1, 74.9, 75.1].map((deg) => rectangleRegime(deg * degree));
    expect(regimes).toEqual([0, 1, 1, 2]);
  });

  it('may lift like a wing when thin, 2 pi sin a cos a to 10 deg, gone at 18 deg and at t/c 0.25', () => {
    const wing = (deg: number): number => 2 * Math.PI * Math.sin(deg * degree) * Math.cos(deg * degree);
    const plain = (thicknessM: number, deg: number): number => {
      const [along, across] = [axis(1 / thicknessM, 0, 1e5 * thicknessM), axis(thicknessM, 0, 1e5)];
      const off = 1 + 0.25 * Math.sin(2 * deg * degree) ** 2;
      return (across.high - along.high * thicknessM) * Math.sin(deg * degree) * Math.cos(deg * degree) * off;
    };
    const liftHigh = (thicknessM: number, deg: number): number =>
      at(thicknessM, 0, 1e5, deg * degree).liftHigh;
    expect(liftHigh(0.05, 5)).toBeCloseTo(wing(5), 12);
    expect(liftHigh(0.1, 10)).toBeCloseTo(wing(10), 12);
    expect(liftHigh(0.05, 14)).toBeCloseTo(0.5 * wing(14), 12);
    expect(liftHigh(0.1, 10.5)).toBeLessThan(wing(10.5) - 1e-3);
    expect(liftHigh(0.175, 5)).toBeCloseTo(Math.max(0.5 * wing(5), plain(0.175, 5)), 12);
    expect(liftHigh(0.12, 5)).toBeLessThan(wing(5) - 1e-3);
    expect(liftHigh(0.05, 18)).toBeCloseTo(plain(0.05, 18), 12);
    expect(liftHigh(0.25, 5)).toBeCloseTo(plain(0.25, 5), 12);
  });

  it('becomes round from a roundness of 0.4 up, a square only, by halves in between', () => {
    const [Re, angle] = [1e5, 0];
    const round = emptyStrip();
    prepareRoundBar(1, 0, null).strip(flow(Re, angle), round, true);
    const square = (share: number): number => axis(1, share / 2, Re).best;
    expect(at(1, 0.4, Re, angle).drag).toBeCloseTo(square(0.4), 12);
    expect(at(1, 0.7, Re, angle).drag).toBeCloseTo((square(0.7) + round.drag) / 2, 12);
    expect(at(2, 1, Re, angle).drag).toBeCloseTo(axis(0.5, 0.25, Re).best * 2, 12);
    const partly = at(Math.SQRT2, 1, Re, angle).drag;
    const asBox = Math.SQRT2 * axis(Math.SQRT1_2, 0.5 * Math.SQRT1_2, Re * Math.SQRT2).best;
    expect(partly).toBeCloseTo(asBox + 0.5 * (round.drag - asBox), 9);
  });

  it('stops lifting as it becomes round, by halves in between', () => {
    // A square of unlike sides, so that there is a lift to lose; 0.95 is round by 1 - smoothstep(ln(1/0.95) / ln 2).
    const angle = 30 * degree;
    const unlike = Math.log(1 / 0.95) / Math.LN2;
    const mostly = 1 - (3 * unlike ** 2 - 2 * unlike ** 3);
    for (const [roundness, corners] of [
      [0.7, 0.5],
      [1, 1],
    ] as const) {
      const [along, across] = [
        axis(1 / 0.95, roundness / 2, 0.95e5),
        axis(0.95, (roundness * 0.95) / 2, 1e5),
      ];
      const boxLift = (across.best - along.best * 0.95) * Math.sin(angle) * Math.cos(angle);
      const lift = (1 - corners * mostly) * boxLift;
      expect(at(0.95, roundness, 1e5, angle).lift).toBeCloseTo(lift, 10);
    }
    const round = at(1, 1, 1e5, angle);
    expect([round.lift, round.liftLow, round.liftHigh].map(Math.abs)).toEqual([0, 0, 0]);
  });

  it('holds EN’s ends: 2.0 for thinner plates across the wind, 0.9 for longer ones along it', () => {
    for (const ratio of [0.01, 0.1, 0.19]) expect(sharpRectangleCoefficient(ratio)).toBe(2);
    for (const ratio of [10.1, 12, 50]) expect(sharpRectangleCoefficient(ratio)).toBe(0.9);
  });

  it('has the perimeter of its sides less what the corners cut off', () => {
    expect(prepareRectangle(0.2, 0.1, 0.02, null).perimeterM).toBeCloseTo(
      0.4 - 0.16 + 0.2 + 2 * Math.PI * 0.02,
      12,
    );
  });
});
