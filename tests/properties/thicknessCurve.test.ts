import { describe, expect, it } from 'vitest';
import { emptyFairing, fairingCoefficients } from '../../src/physics/section/fairing';
import { turbulentAlignedDrag } from '../../src/physics/section/fairingAligned';
import {
  thicknessCurveOf,
  thicknessRange,
  thicknessRowQuantities,
  type ThicknessCurveInput,
  type ThicknessCurveResult,
} from '../../src/physics/section/thicknessCurve';
import { strutOf } from '../../src/physics/strut/strut';
import { strutMaterials } from '../../src/physics/strut/strutMaterial';
import { fairing } from './outlines';

const carbon = { kind: 'section', wallM: 0.001, material: strutMaterials.carbonEpoxy } as const;

function inputOf(changes: Partial<ThicknessCurveInput>): ThicknessCurveInput {
  return {
    thicknessM: 0.05,
    lengthM: 2,
    speedMs: 15,
    densityKgM3: 1.2,
    kinematicViscosityM2S: 1.5e-5,
    surface: 'turbulent',
    build: { kind: 'skin', arealDensityKgM2: 1.5 },
    flatShare: 0.05,
    ...changes,
  };
}

type Curve = Extract<ThicknessCurveResult, { kind: 'curve' }>;

function curveOf(changes: Partial<ThicknessCurveInput> = {}): Curve {
  const result = thicknessCurveOf(inputOf(changes));
  if (result.kind === 'problem') throw new Error(result.problem);
  return result;
}

function rowAt(ratio: number, changes: Partial<ThicknessCurveInput> = {}) {
  const row = curveOf(changes).rows.find(({ thicknessRatio }) => Math.abs(thicknessRatio - ratio) < 1e-9);
  if (row === undefined) throw new Error(`no row at ${ratio}`);
  return row;
}

describe('a fairing against its thickness ratio', () => {
  it('keeps its thickness, and has the drag that the ledger gives the same section', () => {
    const row = rowAt(0.2);
    expect(row.chordM).toBeCloseTo(0.25, 12);
    expect(row.chordReynolds).toBeCloseTo(2.5e5, 6);
    const { drag, dragLow, dragHigh } = fairingCoefficients(0.2, 2.5e5, 0, 'turbulent', emptyFairing());
    const pressurePa = 0.5 * 1.2 * 15 ** 2;
    expect(row.dragN).toBeCloseTo(pressurePa * 0.25 * 2 * drag, 10);
    expect(row.dragLowN).toBeCloseTo(pressurePa * 0.25 * 2 * dragLow, 10);
    expect(row.dragHighN).toBeCloseTo(pressurePa * 0.25 * 2 * dragHigh, 10);
    expect(row.frontalCoefficient).toBeCloseTo(drag / 0.2, 10);
    expect(row.isOutsideTable).toBe(0);
    expect(rowAt(0.3).isOutsideTable).toBe(1);
  });

  it('sheds wetted area and skin as it gets stouter', () => {
    const { rows } = curveOf();
    rows.forEach((row, i) => {
      const before = rows[i - 1] ?? { wettedAreaM2: Infinity, massKg: Infinity };
      expect(row.wettedAreaM2).toBeLessThan(before.wettedAreaM2);
      expect(row.massKg).toBeLessThan(before.massKg);
      expect(row.massKg / (1.5 * row.wettedAreaM2)).toBeCloseTo(1, 3);
    });
  });

  it('as a section weighs what the strut of its wall and material weighs', () => {
    const strut = strutOf({
      outline: fairing(0.25, 0.05),
      wallM: 0.001,
      lengthM: 2,
      material: strutMaterials.carbonEpoxy,
    });
    expect(rowAt(0.2, { build: carbon }).massKg).toBe(strut.kind === 'strut' ? strut.trace.massKg : NaN);
  });

  it('has a flat bottom and no point: every ratio on it is within the share, and none beside it', () => {
    for (const flatShare of [0.02, 0.05, 0.1]) {
      const { rows, flat } = curveOf({ flatShare });
      expect(flat.isCutAtStart || flat.isCutAtEnd).toBe(false);
      for (const { thicknessRatio, dragN } of rows) {
        const isOnIt = thicknessRatio >= flat.from && thicknessRatio <= flat.to;
        expect(dragN <= (1 + flatShare) * flat.least, `${thicknessRatio}`).toBe(isOnIt);
        expect(dragN).toBeGreaterThanOrEqual(flat.least);
      }
    }
  });

  it('has its least drag slimmer than at fixed friction, since a longer chord has less of it', () => {
    const { flat } = curveOf();
    expect(flat.leastAt).toBeGreaterThan(0.22);
    expect(flat.leastAt).toBeLessThan(0.273);
    let [best, least] = [0, Infinity];
    for (let ratio = 0.1; ratio <= 0.4; ratio += 1e-4) {
      const drag = turbulentAlignedDrag(ratio, (15 * 0.05) / ratio / 1.5e-5) / ratio;
      if (drag < least) [best, least] = [ratio, drag];
    }
    expect(flat.leastAt).toBeCloseTo(best, 3);
  });

  it('in the laminar state stays on the section table, and says that the bottom is cut there', () => {
    const { rows, flat } = curveOf({ surface: 'laminar' });
    expect(rows[0]?.thicknessRatio).toBeCloseTo(0.12, 12);
    expect(rows.at(-1)?.thicknessRatio).toBeCloseTo(0.25, 12);
    expect(rows.every(({ isOutsideTable }) => isOutsideTable === 0)).toBe(true);
    expect(flat.isCutAtStart || flat.isCutAtEnd).toBe(true);
    expect(thicknessRange('turbulent')).toEqual({ from: 0.1, to: 0.4 });
    expect(thicknessRange('laminar')).toEqual({ from: 0.12, to: 0.25 });
  });

  it('names what is wrong instead of giving a curve', () => {
    const problemOf = (changes: Partial<ThicknessCurveInput>): string => {
      const result = thicknessCurveOf(inputOf(changes));
      return result.kind === 'problem' ? result.problem : 'none';
    };
    for (const key of ['thicknessM', 'lengthM', 'speedMs', 'densityKgM3', 'flatShare'] as const) {
      expect(problemOf({ [key]: 0 })).toBe('not-positive');
      expect(problemOf({ [key]: NaN })).toBe('not-a-number');
    }
    expect(problemOf({ kinematicViscosityM2S: -1 })).toBe('not-positive');
    expect(problemOf({ build: { kind: 'skin', arealDensityKgM2: 0 } })).toBe('not-positive');
    expect(problemOf({ build: { ...carbon, wallM: 0.026 } })).toBe('wall-over-half-thickness');
    expect(problemOf({ build: { ...carbon, wallM: 0.025 } })).toBe('none');
  });

  it('describes every number of a row', () => {
    expect(Object.keys(thicknessRowQuantities).sort()).toEqual(Object.keys(rowAt(0.2)).sort());
  });
});
