import { describe, expect, it } from 'vitest';
import { emptyFairing, finiteFairing } from '../../../src/physics/section/fairing';
import { fairingRowsAt } from '../../../src/physics/section/fairingRows';
import { skinOf } from '../../../src/physics/strut/skin';
import {
  turningFairingOf,
  type TurningFairing,
  type TurningTrace,
} from '../../../src/physics/strut/turningFairing';
import { turningQuantities } from '../../../src/physics/strut/turningQuantities';
import { ellipse, fairing, round } from '../../properties/outlines';

const degree = Math.PI / 180;

/** Pivot ahead of every aerodynamic centre, mass on the pivot, upright: nothing to warn of but that it moves. */
function inputOf(changes: Partial<TurningFairing>): TurningFairing {
  return {
    chordM: 0.2,
    thicknessM: 0.04,
    lengthM: 2,
    pivotM: 0.03,
    massKg: 1.5,
    massCentreM: 0.03,
    balancePlaceM: 0.005,
    residualRad: 3 * degree,
    endClearanceM: 0.005,
    leanRad: 0,
    speedMs: 12,
    densityKgM3: 1.225,
    kinematicViscosityM2S: 1.46e-5,
    surface: 'turbulent',
    ...changes,
  };
}

function traceOf(changes: Partial<TurningFairing>): TurningTrace {
  const result = turningFairingOf(inputOf(changes));
  if (result.kind === 'problem') throw new Error(result.problem);
  return result.trace;
}

function codesOf(changes: Partial<TurningFairing>): string[] {
  const result = turningFairingOf(inputOf(changes));
  return result.kind === 'turning' ? result.notices.map(({ code }) => code) : [result.problem];
}

describe('a turning fairing', () => {
  it('is always named as a moving part', () => {
    expect(codesOf({})).toEqual(['moving-part']);
  });

  it('follows the wind only with its pivot ahead of the aerodynamic centre', () => {
    expect(codesOf({ pivotM: 0.039 })).not.toContain('may-not-follow');
    expect(codesOf({ pivotM: 0.041 })).toContain('may-not-follow');
    expect(codesOf({ pivotM: 0.049 })).not.toContain('does-not-follow');
    expect(codesOf({ pivotM: 0.05 })).toContain('does-not-follow');
    expect(codesOf({ pivotM: 0.1 })).not.toContain('may-not-follow');
    expect(traceOf({ pivotM: 0.03 }).followShare).toBeCloseTo(0.1, 12);
    expect(traceOf({ pivotM: 0.03 }).followShareLow).toBeCloseTo(0.05, 12);
    expect(traceOf({})).toMatchObject({
      aerodynamicCentreLowM: expect.closeTo(0.04, 12) as number,
      aerodynamicCentreM: expect.closeTo(0.05, 12) as number,
      aerodynamicCentreHighM: expect.closeTo(0.054, 12) as number,
    });
    expect(traceOf({ pivotM: 0.06 }).turningMomentNm).toBeLessThan(0);
    expect(traceOf({ pivotM: 0.06 }).hangAngleRad).toBeNull();
  });

  it('is turned by the lift that the ledger gives it at the residual error, at the aerodynamic centre', () => {
    const trace = traceOf({});
    const out = emptyFairing();
    const { lift } = finiteFairing(
      fairingRowsAt(0.2),
      0.2,
      (12 * 0.2) / 1.46e-5,
      3 * degree,
      10,
      'turbulent',
      out,
      false,
    );
    expect(lift).toBeGreaterThan(0.2);
    expect(trace.residualLift).toBeCloseTo(lift, 12);
    expect(trace.turningMomentNm).toBeCloseTo(0.5 * 1.225 * 144 * 0.2 * 2 * lift * 0.02, 12);
    expect(trace.dynamicPressurePa).toBeCloseTo(88.2, 10);
  });

  it('is turned four times as hard by twice the wind, near enough', () => {
    const ratio = traceOf({ speedMs: 24 }).turningMomentNm / traceOf({}).turningMomentNm;
    expect(ratio).toBeGreaterThan(3.9);
    expect(ratio).toBeLessThan(4.6);
  });

  it('may flutter as soon as its mass centre lies behind the pivot, and not once it is balanced', () => {
    expect(codesOf({ massCentreM: 0.031 })).toContain('may-flutter');
    const { balanceMassKg } = traceOf({ massCentreM: 0.09 });
    if (balanceMassKg === null) throw new Error('a balance weight is needed');
    const massKg = 1.5 + balanceMassKg;
    const massCentreM = (1.5 * 0.09 + balanceMassKg * 0.005) / massKg;
    expect(massCentreM).toBeCloseTo(0.03, 12);
    expect(codesOf({ massKg, massCentreM: massCentreM - 1e-12 })).not.toContain('may-flutter');
  });

  it('needs no balance weight where the mass lies ahead, and none helps that sits behind the pivot', () => {
    expect(traceOf({ massCentreM: 0.02 }).balanceMassKg).toBeNull();
    expect(traceOf({ massCentreM: 0.09, balancePlaceM: 0.03 }).balanceMassKg).toBeNull();
  });

  it('hangs off the wind by its weight when the tube leans, more in less wind', () => {
    const leaning = { massCentreM: 0.09, leanRad: 20 * degree };
    const trace = traceOf(leaning);
    expect(trace.weightMomentNm).toBeCloseTo(1.5 * 9.80665 * Math.sin(20 * degree) * 0.06, 10);
    expect(trace.hangAngleRad).toBeCloseTo((3 * degree * trace.weightMomentNm) / trace.turningMomentNm, 12);
    expect(traceOf({ ...leaning, leanRad: -20 * degree }).hangAngleRad).toBe(trace.hangAngleRad);
    expect(traceOf({ ...leaning, speedMs: 6 }).hangAngleRad ?? 0).toBeGreaterThan(
      3 * (trace.hangAngleRad ?? 0),
    );
    expect(codesOf({ ...leaning, speedMs: 6 })).toContain('hangs-off');
    expect(codesOf({ ...leaning, leanRad: 0 })).not.toContain('hangs-off');
  });

  it('may jam at its ends with less clearance than warmth takes, just under a millimetre a metre', () => {
    expect(traceOf({}).neededClearanceM).toBeCloseTo(0.00184, 12);
    expect(codesOf({ endClearanceM: 0.0019 })).not.toContain('ends-may-jam');
    expect(codesOf({ endClearanceM: 0.0018 })).toContain('ends-may-jam');
    expect(codesOf({ endClearanceM: 0 })).toContain('ends-may-jam');
  });

  it('says when the section lies outside its table', () => {
    expect(codesOf({ thicknessM: 0.06 })).toContain('outside-table');
    expect(codesOf({ speedMs: 1 })).toContain('outside-table');
  });

  it('names what is wrong instead of giving a number', () => {
    expect(codesOf({ speedMs: NaN })).toEqual(['not-a-number']);
    expect(codesOf({ balancePlaceM: Infinity })).toEqual(['not-a-number']);
    for (const key of ['chordM', 'thicknessM', 'lengthM', 'massKg', 'speedMs', 'densityKgM3'] as const) {
      expect(codesOf({ [key]: 0 })).toEqual(['not-positive']);
    }
    expect(codesOf({ kinematicViscosityM2S: 0 })).toEqual(['not-positive']);
    expect(codesOf({ endClearanceM: -0.001 })).toEqual(['not-positive']);
    expect(codesOf({ pivotM: 0.21 })).toEqual(['place-off-the-chord']);
    expect(codesOf({ massCentreM: -0.01 })).toEqual(['place-off-the-chord']);
    expect(codesOf({ residualRad: 0 })).toEqual(['angle-out-of-range']);
    expect(codesOf({ residualRad: 16 * degree })).toEqual(['angle-out-of-range']);
    expect(codesOf({ residualRad: 15 * degree })).not.toEqual(['angle-out-of-range']);
    expect(codesOf({ leanRad: -2 })).toEqual(['angle-out-of-range']);
  });

  it('describes every number of its working', () => {
    expect(Object.keys(turningQuantities).sort()).toEqual(Object.keys(traceOf({})).sort());
  });
});

describe('a skin', () => {
  it('of a round tube weighs its perimeter, its centre in the middle', () => {
    const { perimeterM, massPerLengthKgM, massCentreM } = skinOf(round(0.1), 2);
    expect(perimeterM).toBeCloseTo(Math.PI * 0.1, 12);
    expect(massPerLengthKgM).toBeCloseTo(0.2 * Math.PI, 12);
    expect(massCentreM).toBeCloseTo(0.05, 12);
  });

  it('of any symmetrical outline has its centre in the middle of the chord, a fairing’s lies ahead of it', () => {
    expect(skinOf(ellipse(0.2, 0.05), 1).massCentreM).toBeCloseTo(0.1, 12);
    const fairingCentre = skinOf(fairing(0.2, 0.04), 1).massCentreM;
    expect(fairingCentre).toBeGreaterThan(0.48 * 0.2);
    expect(fairingCentre).toBeLessThan(0.5 * 0.2);
  });

  it('so that a bare skin on a pivot that follows always needs a balance weight', () => {
    for (const ratio of [0.12, 0.18, 0.25]) {
      const { massCentreM } = skinOf(fairing(0.2, 0.2 * ratio), 1);
      expect(codesOf({ massCentreM, thicknessM: 0.2 * ratio })).toContain('may-flutter');
    }
  });
});
