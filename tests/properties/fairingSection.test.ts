import { describe, expect, it } from 'vitest';
import { emptyFairing, fairingCoefficients } from '../../src/physics/section/fairing';
import { fairingRowsAt, placeRow, rowValue } from '../../src/physics/section/fairingRows';
import { prepareFairing } from '../../src/physics/section/fairingSection';
import { emptyStrip, type StripCoefficients, type StripFlow } from '../../src/physics/section/memberFamily';

const flow: StripFlow = {
  crossSpeedMs: 10,
  inclinationCosine: 1,
  kinematicViscosityM2S: 1.5e-5,
  effectiveSlenderness: Infinity,
  incidenceRad: 0.1,
};

const typed = { best: 0.02, low: 0.01, high: 0.03, areaBase: 'chord x length', source: 'a test' };

function stripOf(changes: Partial<StripFlow>, coefficient: typeof typed | null = null): StripCoefficients {
  const out = emptyStrip();
  prepareFairing(0.3, 0.054, 'turbulent', coefficient).strip({ ...flow, ...changes }, out, true);
  return out;
}

describe('a fairing ready for integration', () => {
  it('is based on its chord, has a direction, its outline’s perimeter and no end factor left', () => {
    const section = prepareFairing(0.3, 0.054, 'turbulent', null);
    expect(section.isDirected).toBe(true);
    expect(section.referenceWidthM).toBe(0.3);
    expect(section.perimeterM / 0.3).toBeGreaterThan(2.05);
    expect(section.perimeterM / 0.3).toBeLessThan(2.11);
    expect(section.endFactor('dnv', 3, 5)).toBe(1);
    expect(section.endFactor('en', 300, 6)).toBe(1);
  });

  it('gives the section’s coefficients at its chord Reynolds number', () => {
    const strip = stripOf({});
    expect(strip.reynolds).toBeCloseTo(2e5, 6);
    expect(strip.logCrisisReynolds).toBeCloseTo(Math.log10(2e5), 9);
    expect(strip).toMatchObject({
      ...fairingCoefficients(0.18, strip.reynolds, 0.1, 'turbulent', emptyFairing()),
    });
  });

  it('takes finite length from the slenderness of the flow', () => {
    expect(stripOf({ effectiveSlenderness: 4 }).lift).toBeLessThan(0.75 * stripOf({}).lift);
    expect(stripOf({ effectiveSlenderness: 4 }).drag).toBeGreaterThan(stripOf({}).drag);
  });

  it('lifts towards the side that its nose is turned from: positive incidence, positive lift', () => {
    expect(stripOf({ incidenceRad: 0.1 }).lift).toBeGreaterThan(0);
    expect(stripOf({ incidenceRad: -0.1 }).lift).toBeLessThan(0);
    expect(stripOf({ incidenceRad: 3 }).lift).toBeLessThan(0);
  });

  it('has the typed drag on chord x length and no lift at any incidence', () => {
    for (const incidenceRad of [0, 0.5, 2, -3]) {
      expect(stripOf({ incidenceRad, effectiveSlenderness: 3 }, typed)).toMatchObject({
        drag: 0.02,
        dragLow: 0.01,
        dragHigh: 0.03,
        lift: 0,
        liftLow: 0,
        liftHigh: 0,
        regime: 0,
      });
    }
  });

  it('stands still air', () => {
    const strip = stripOf({ crossSpeedMs: 0 });
    expect(strip.reynolds).toBe(0);
    expect(Number.isFinite(strip.drag) && Number.isFinite(strip.logCrisisReynolds)).toBe(true);
  });
});

describe('the stretches of incidence', () => {
  const at = (degrees: number) =>
    fairingCoefficients(0.18, 3e5, (degrees * Math.PI) / 180, 'turbulent', emptyFairing());

  it('change at 30 and at 150 deg', () => {
    expect([29.9, 30.1, 149.9, 150.1].map((degrees) => at(degrees).regime)).toEqual([1, 2, 2, 3]);
  });

  it('have the table’s own drag beyond square to the wind, whatever the surface', () => {
    const rows = fairingRowsAt(0.18);
    for (const degrees of [90, 93, 97, 120, 180]) {
      const table = rowValue(rows.drag, placeRow(3e5, { row: 0, share: 0 }), degrees);
      expect(at(degrees).drag).toBeCloseTo(table, 9);
    }
  });
});
