import { describe, expect, it } from 'vitest';
import { namedBodies } from '../../../src/physics/body/namedBodies';
import { shapeIds, type EnvelopeTexts } from '../../../src/project/envelope/envelopeTexts';
import type { EnvelopeHandbook } from '../../../src/project/envelope/envelopeCheck';
import { offBy } from '../../../src/project/envelope/handbookWords';
import { checkOf } from './support';

function handbookFor(texts: EnvelopeTexts): EnvelopeHandbook {
  const { handbook, handbookMissing } = checkOf(texts);
  if (handbook === null) throw new Error(handbookMissing ?? 'no reason');
  return handbook;
}

const rho = 1.225;
/** Dry standard air, from the printed table of the US Standard Atmosphere. */
const nu = 1.4607e-5;

/** A line through printed nodes against the logarithm. */
function logLine(
  x: number,
  [x0, y0]: readonly [number, number],
  [x1, y1]: readonly [number, number],
): number {
  return y0 + ((y1 - y0) * Math.log(x / x0)) / Math.log(x1 / x0);
}

describe('the handbook beside an envelope, by a second route from printed values', () => {
  it('a tube on the plateau with two free ends: 1.2 times the line through DNV’s l/d 20 and 40', () => {
    const handbook = handbookFor({
      speed: '10 m/s',
      shape: 'roundBar',
      width: '100 mm',
      length: '3 m',
      ends: 'free',
    });
    const dnv = logLine(30, [20, 0.74], [40, 0.82]);
    const en = 0.7 + (0.21 * Math.log10(3)) / Math.log10(7);
    expect(handbook.reynolds).toBeCloseTo((10 * 0.1) / nu, -2);
    expect(handbook.endFactorDnv).toBeCloseTo(dnv, 3);
    expect(handbook.endFactorEn).toBeCloseTo(en, 3);
    const forceN = (rho / 2) * 100 * 0.3 * 1.2 * dnv;
    expect(Math.abs(handbook.forceN.best / forceN - 1)).toBeLessThan(1e-3);
    expect(Math.abs(handbook.airPowerW.best / (forceN * 10) - 1)).toBeLessThan(1e-3);
  });

  it('joined ends leave the table’s own edges: 0.86, 1.2 and 1.31 at Re 1e5', () => {
    const speedMs = (1e5 * nu) / 0.1;
    const handbook = handbookFor({
      speed: `${speedMs} m/s`,
      shape: 'roundBar',
      width: '100 mm',
      length: '3 m',
      ends: 'joined',
    });
    expect(handbook.coefficient.best).toBeCloseTo(1.2, 3);
    expect(handbook.coefficient.low).toBeCloseTo(0.86, 2);
    expect(handbook.coefficient.high).toBeCloseTo(1.31, 3);
    expect([handbook.endFactorDnv, handbook.endFactorEn]).toEqual([null, null]);
  });

  it('one end on a surface counts double the length', () => {
    const on = (ends: string, length: string) =>
      handbookFor({ speed: '10 m/s', shape: 'roundBar', width: '100 mm', length, ends }).coefficient.best;
    expect(on('oneOnSurface', '2 m')).toBeCloseTo(on('free', '4 m'), 6);
  });

  it('a sphere at Re 1e5: 0.475 on its frontal area', () => {
    const speedMs = (1e5 * nu) / 0.2;
    const handbook = handbookFor({ speed: `${speedMs} m/s`, shape: 'sphere', width: '0.2 m' });
    expect(handbook.coefficient.best).toBeCloseTo(0.475, 3);
    expect(handbook.areaM2).toBeCloseTo(Math.PI * 0.01, 12);
  });

  it('a square plate of 1 m: EN’s 2.0 with the least end factor, near the 1.17 of squares', () => {
    const handbook = handbookFor({
      speed: '10 m/s',
      shape: 'plate',
      width: '1 m',
      length: '1 m',
      ends: 'free',
    });
    expect(handbook.coefficient.best).toBeCloseTo(2.0 * 0.62, 2);
    expect(handbook.coefficient.low).toBeLessThan(1.17);
    expect(handbook.coefficient.high).toBeGreaterThan(1.17);
  });

  it('a plate is the same whichever side is called its length', () => {
    const plate = (width: string, length: string) =>
      handbookFor({ speed: '10 m/s', shape: 'plate', width, length }).forceN;
    expect(plate('0.3 m', '2 m')).toEqual(plate('2 m', '0.3 m'));
  });

  it('a square bar between joined ends: 2.1 with the band of rectangles', () => {
    const texts = {
      speed: '10 m/s',
      shape: 'rectangularBar',
      width: '50 mm',
      depth: '50 mm',
      length: '2 m',
      ends: 'joined',
    };
    expect(handbookFor(texts).coefficient.best).toBeCloseTo(2.1, 6);
    const deep = handbookFor({ ...texts, depth: '100 mm' });
    expect(deep.coefficient.best).toBeCloseTo(1.65, 6);
    expect(deep.areaM2).toBeCloseTo(0.1, 12);
  });

  it('a wire has no end effect', () => {
    const handbook = handbookFor({
      speed: '10 m/s',
      shape: 'spiralStrand',
      width: '10 mm',
      length: '1 m',
      ends: 'free',
    });
    expect(handbook.endFactorDnv).toBeNull();
    expect(handbook.coefficient).toEqual(handbook.sectionCoefficient);
  });

  it('a shape that goes by name has the name’s coefficient, and says that it is not followed', () => {
    const handbook = handbookFor({ speed: '10 m/s', shape: 'disc', width: '0.3 m' });
    expect(handbook.coefficient).toEqual(namedBodies.disc.coefficient);
    expect(handbook.forceN.best).toBeCloseTo((rho / 2) * 100 * 1.135 * (Math.PI / 4) * 0.09, 3);
    expect(handbook.notices.join(' ')).toContain('not followed over the Reynolds number');
  });

  it('counts every one of them', () => {
    const texts = { speed: '10 m/s', shape: 'roundBar', width: '25 mm', length: '0.7 m' };
    const one = handbookFor(texts).forceN.best;
    expect(handbookFor({ ...texts, count: '16' }).forceN.best / one).toBeCloseTo(16, 10);
  });
});

describe('the verdict', () => {
  const tube = { speed: '10 m/s', shape: 'roundBar', width: '100 mm', length: '3 m', ends: 'free' };

  it.each([
    ['0.9', 'within'],
    ['0.5', 'low'],
    ['1.2', 'high'],
  ])('of Cd %s is: %s', (coefficient, kind) => {
    expect(handbookFor({ ...tube, coefficient }).verdict?.kind).toBe(kind);
  });

  it('of a claim without a coefficient is on the one that it implies', () => {
    const handbook = handbookFor({ ...tube, force: '9.2 N' });
    expect(handbook.verdict?.kind).toBe('low');
    expect(handbook.verdict?.sentence).toContain('which the numbers as written imply');
    expect(handbook.forceRatio).toBeCloseTo(9.2 / handbook.forceN.best, 12);
  });

  it('moves force, power and horsepower, each in its unit', () => {
    const { sentences } = handbookFor({
      ...tube,
      coefficient: '0.5',
      force: '9.19 N',
      power: '91.9 W',
      horsepower: '0.123 hp',
    });
    const moved = sentences.filter((sentence) => sentence.includes('as written, '));
    expect(moved).toHaveLength(3);
    expect(moved[2]).toContain('0.233\u00a0hp\u00a0(mechanical)');
    expect(moved.every((sentence) => sentence.includes('low by about two'))).toBe(true);
  });
});

describe('how far a number is off', () => {
  it.each([
    [1, 1.003, 'the same within half a percent'],
    [1, 1.01, 'low by 1.0 %'],
    [0.8, 1, 'low by 20 %'],
    [1.2, 1, 'high by 20 %'],
    [1, 1.6, 'low by a factor of 1.6'],
    [1, 1.9, 'low by about two'],
    [2.2, 1, 'high by about two'],
    [1, 3.44, 'low by a factor of 3.4'],
  ])('%f against %f is %s', (value, better, words) => {
    expect(offBy(value, better)).toBe(words);
  });
});

describe('outside a handbook', () => {
  it.each<readonly [string, EnvelopeTexts]>([
    ['Choose the shape', { speed: '10 m/s', area: '0.8 m2' }],
    ['type its length', { speed: '10 m/s', shape: 'roundBar', width: '25 mm' }],
    ['type its diameter', { speed: '10 m/s', shape: 'sphere' }],
    [
      'type its depth along the wind',
      { speed: '10 m/s', shape: 'rectangularBar', width: '25 mm', length: '1 m' },
    ],
    ['type the wind speed', { shape: 'sphere', width: '25 mm' }],
    ['type the sizes or the area', { speed: '10 m/s', shape: 'cubeCorner' }],
    [
      'not that of air',
      { speed: '4 m/s', density: '999.1', shape: 'roundBar', width: '22 mm', length: '30 m' },
    ],
  ])('it is said what to do: %s', (words, texts) => {
    const { handbook, handbookMissing } = checkOf(texts);
    expect(handbook).toBeNull();
    expect(handbookMissing).toContain(words);
  });

  it('a Reynolds number beyond the table gives a value and a notice', () => {
    const handbook = handbookFor({ speed: '300 m/s', shape: 'roundBar', width: '2 m', length: '10 m' });
    expect(handbook.notices.join(' ')).toContain('lies outside the table');
    expect(handbook.coefficient.best).toBeGreaterThan(0);
  });

  it('every shape in the list has an answer when its sizes are written', () => {
    for (const shape of shapeIds) {
      const handbook = handbookFor({
        speed: '10 m/s',
        shape,
        width: '0.2 m',
        length: '1 m',
        depth: '0.1 m',
        area: '0.1 m2',
      });
      expect(handbook.coefficient.low, shape).toBeLessThan(handbook.coefficient.best);
      expect(handbook.coefficient.high, shape).toBeGreaterThan(handbook.coefficient.best);
      expect(handbook.sources.length, shape).toBeGreaterThan(0);
    }
  });

  it.each([
    ['19 N', true],
    ['24 N', false],
  ])('says of %s on the pole of 3 m at 20 kn whether the range holds it', (force, isWithin) => {
    const pole = { speed: '20 kn', shape: 'roundBar', width: '100 mm', length: '3 m' } as const;
    const moved = handbookFor({ ...pole, force }).sentences.filter((each) => each.includes('as written, '));
    expect(moved.map((each) => each.includes('and within the range'))).toEqual([isWithin]);
  });
});
