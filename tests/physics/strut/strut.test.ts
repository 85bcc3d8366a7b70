import { describe, expect, it } from 'vitest';
import { replaceTube } from '../../../src/physics/strut/replaceTube';
import { strutOf, type StrutInput, type StrutTrace } from '../../../src/physics/strut/strut';
import { strutMaterials } from '../../../src/physics/strut/strutMaterial';
import { strutQuantities } from '../../../src/physics/strut/strutQuantities';
import { sources } from '../../../src/physics/sources';
import { ellipse, fairing, round } from '../../properties/outlines';

const { aluminium6082, carbonEpoxy } = strutMaterials;

function inputOf(changes: Partial<StrutInput>): StrutInput {
  return { outline: round(0.05), wallM: 0.002, lengthM: 2, material: aluminium6082, ...changes };
}

function traceOf(changes: Partial<StrutInput>): StrutTrace {
  const result = strutOf(inputOf(changes));
  if (result.kind === 'problem') throw new Error(result.problem);
  return result.trace;
}

function codesOf(changes: Partial<StrutInput>): string[] {
  const result = strutOf(inputOf(changes));
  return result.kind === 'strut' ? result.notices.map(({ code }) => code) : [result.problem];
}

describe('a strut', () => {
  it('carries the load of Euler by its own numbers, worked by hand for a ring', () => {
    const trace = traceOf({});
    const second = (Math.PI / 4) * (0.025 ** 4 - 0.023 ** 4);
    const area = Math.PI * (0.025 ** 2 - 0.023 ** 2);
    const load = (Math.PI ** 2 * 70e9 * second) / 4;
    expect(trace.eulerLoadN / load).toBeCloseTo(1, 10);
    expect(trace.eulerLoadLowN / load).toBeCloseTo(0.97, 10);
    expect(trace.eulerLoadHighN / load).toBeCloseTo(1.03, 10);
    expect(trace.upperBoundN).toBe(trace.eulerLoadN);
    expect(trace.eulerStressPa / (load / area)).toBeCloseTo(1, 10);
    expect((trace.yieldLoadN ?? 0) / (250e6 * area)).toBeCloseTo(1, 10);
    expect(trace.gyrationRadiusM).toBeCloseTo(Math.sqrt(0.025 ** 2 + 0.023 ** 2) / 2, 12);
    expect(trace.slenderness).toBeCloseTo(2 / trace.gyrationRadiusM, 9);
    expect(trace.bendingStiffnessNm2 / (70e9 * second)).toBeCloseTo(1, 10);
    expect(trace.massKg).toBeCloseTo(2700 * area * 2, 9);
    expect(trace.massPerLengthKgM).toBeCloseTo(2700 * area, 9);
    expect(trace.meanDiameterM).toBeCloseTo(0.05, 12);
    expect(trace.enclosedAreaM2).toBeCloseTo(Math.PI * 0.025 ** 2, 12);
  });

  it('buckles about its chord, however long the chord is', () => {
    const trace = traceOf({ outline: fairing(0.2, 0.04) });
    expect(trace.weakM4).toBeCloseTo(trace.aboutChordM4, 15);
    expect(trace.acrossChordM4).toBeGreaterThan(5 * trace.aboutChordM4);
    expect(trace.eulerLoadN / ((Math.PI ** 2 * 70e9 * trace.aboutChordM4) / 4)).toBeCloseTo(1, 10);
  });

  it('always says that its load is an upper bound', () => {
    for (const outline of [round(0.05), ellipse(0.08, 0.04), fairing(0.16, 0.04)]) {
      expect(codesOf({ outline })).toContain('load-is-upper-bound');
    }
  });

  it('warns of a wall under a fiftieth of the diameter, and not at a fiftieth', () => {
    expect(codesOf({ wallM: 0.00101 })).toEqual(['load-is-upper-bound']);
    expect(codesOf({ wallM: 0.00099 })).toEqual(['load-is-upper-bound', 'thin-wall']);
  });

  it('warns of flat sides where a circle as flat would need a thicker wall, and never on a circle', () => {
    expect(codesOf({ outline: ellipse(0.1, 0.05), wallM: 0.0039 })).toContain('flat-sides');
    expect(codesOf({ outline: ellipse(0.1, 0.05), wallM: 0.0041 })).not.toContain('flat-sides');
    expect(codesOf({ outline: ellipse(0.05, 0.049), wallM: 0.0005 })).not.toContain('flat-sides');
    expect(codesOf({ outline: fairing(0.16, 0.04), wallM: 0.004 })).toContain('flat-sides');
    expect(codesOf({ wallM: 0.0005 })).not.toContain('flat-sides');
    // Flattest over mean diameter: 1.20 at an axis ratio of about 0.884.
    expect(codesOf({ outline: ellipse(0.05, 0.0448), wallM: 0.0005 })).not.toContain('flat-sides');
    expect(codesOf({ outline: ellipse(0.05, 0.0438), wallM: 0.0005 })).toContain('flat-sides');
  });

  it('takes the yield load where it is the smaller, and says so', () => {
    const short = traceOf({ lengthM: 0.3 });
    expect(short.upperBoundN).toBe(short.yieldLoadN);
    expect(short.upperBoundN).toBeLessThan(short.eulerLoadN);
    expect(codesOf({ lengthM: 0.3 })).toContain('yields-first');
    expect(codesOf({ lengthM: 2 })).not.toContain('yields-first');
  });

  it('says that it does not know the strength of a laminate', () => {
    expect(codesOf({ material: carbonEpoxy })).toContain('yield-not-known');
    expect(traceOf({ material: carbonEpoxy, lengthM: 0.1 })).toMatchObject({ yieldLoadN: null });
    expect(traceOf({ material: carbonEpoxy }).eulerLoadLowN).toBeLessThan(
      0.7 * traceOf({ material: carbonEpoxy }).eulerLoadN,
    );
  });

  it('names what is wrong instead of giving a number', () => {
    expect(codesOf({ wallM: NaN })).toEqual(['not-a-number']);
    expect(codesOf({ outline: round(Infinity) })).toEqual(['not-a-number']);
    expect(codesOf({ outline: round(0) })).toEqual(['not-positive']);
    expect(codesOf({ wallM: 0 })).toEqual(['not-positive']);
    expect(codesOf({ lengthM: -1 })).toEqual(['not-positive']);
    expect(codesOf({ outline: ellipse(0.04, 0.05) })).toEqual(['thicker-than-chord']);
    expect(codesOf({ outline: fairing(0.1, 0.051) })).toEqual(['fairing-too-thick']);
    expect(codesOf({ outline: fairing(0.1, 0.05) })).toContain('load-is-upper-bound');
    expect(codesOf({ wallM: 0.0251 })).toEqual(['wall-over-half-thickness']);
    expect(codesOf({ wallM: 0.025 })).toEqual(['load-is-upper-bound']);
    expect(codesOf({ material: { ...aluminium6082, densityKgM3: 0 } })).toEqual(['material-out-of-range']);
    expect(codesOf({ material: { ...aluminium6082, modulusLowPa: 8e10 } })).toEqual([
      'material-out-of-range',
    ]);
    expect(codesOf({ material: { ...aluminium6082, modulusHighPa: 1e10 } })).toEqual([
      'material-out-of-range',
    ]);
    expect(codesOf({ material: { ...aluminium6082, yieldStressPa: 0 } })).toEqual(['material-out-of-range']);
  });

  it('describes every number of its working', () => {
    expect(Object.keys(strutQuantities).sort()).toEqual(Object.keys(traceOf({})).sort());
  });
});

describe('the presets', () => {
  it('name their sources, and none of them claims to have been read', () => {
    for (const { source } of Object.values(strutMaterials)) {
      expect(['from memory', 'common practice, no source']).toContain(sources[source].confidence);
    }
  });

  it('doubt a metal by 3 %, and carbon tubes from 60 to 130 GPa about 90, at 1550 kg/m3', () => {
    expect(aluminium6082.modulusLowPa).toBeCloseTo(67.9e9, -3);
    expect(aluminium6082.modulusHighPa).toBeCloseTo(72.1e9, -3);
    expect(carbonEpoxy).toMatchObject({ modulusPa: 90e9, modulusLowPa: 60e9, modulusHighPa: 130e9 });
    expect(carbonEpoxy).toMatchObject({ densityKgM3: 1550, yieldStressPa: null });
  });

  it('hold each modulus between its low and its high value', () => {
    for (const { modulusLowPa, modulusPa, modulusHighPa } of Object.values(strutMaterials)) {
      expect(modulusLowPa).toBeLessThan(modulusPa);
      expect(modulusPa).toBeLessThan(modulusHighPa);
    }
  });
});

describe('a section in a tube’s place', () => {
  const replaced = (outline: StrutInput['outline'], material: StrutInput['material'], tube = inputOf({})) =>
    replaceTube(tube, { outline, material });

  it('gets the wall and the mass of the worked example', () => {
    const result = replaced(ellipse(0.07, 0.035), aluminium6082);
    expect(result).toMatchObject({ kind: 'replacement' });
    if (result.kind !== 'replacement') return;
    expect(result.tube.upperBoundN).toBeCloseTo(15_028, 0);
    expect(1000 * result.section.wallM).toBeCloseTo(3.88, 2);
    expect(result.massChangeKg).toBeCloseTo(1.67, 2);
    expect(result.massChangeKg).toBeCloseTo(result.section.massKg - result.tube.massKg, 12);
    expect(result.section.lengthM).toBe(2);
  });

  it('comes with its own warnings: a fairing in carbon is thin-walled and flat-sided', () => {
    const result = replaced(fairing(0.16, 0.04), carbonEpoxy);
    expect(result.kind === 'replacement' ? result.notices.map(({ code }) => code) : []).toEqual([
      'load-is-upper-bound',
      'thin-wall',
      'flat-sides',
      'yield-not-known',
    ]);
  });

  it('takes the yield load as what a stocky tube carries', () => {
    const stocky = inputOf({ lengthM: 0.3 });
    const result = replaced(ellipse(0.07, 0.035), aluminium6082, stocky);
    if (result.kind !== 'replacement') throw new Error(result.kind);
    expect(result.tube.upperBoundN).toBe(result.tube.yieldLoadN);
    expect(result.section.upperBoundN / result.tube.upperBoundN).toBeCloseTo(1, 7);
  });

  it('is refused where even solid it is too weak, with both loads', () => {
    const result = replaced(fairing(0.1, 0.02), aluminium6082);
    expect(result).toMatchObject({ kind: 'too-weak' });
    if (result.kind !== 'too-weak') return;
    expect(result.solidN).toBeLessThan(result.neededN);
  });

  it('says which of the two is impossible', () => {
    const bad = inputOf({ wallM: 1 });
    expect(replaced(ellipse(0.07, 0.035), aluminium6082, bad)).toMatchObject({
      where: 'tube',
      problem: 'wall-over-half-thickness',
    });
    expect(replaced(ellipse(0.03, 0.035), aluminium6082)).toMatchObject({
      where: 'section',
      problem: 'thicker-than-chord',
    });
  });
});
