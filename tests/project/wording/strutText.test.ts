import { describe, expect, it } from 'vitest';
import { strutOf } from '../../../src/physics/strut/strut';
import { strutMaterials } from '../../../src/physics/strut/strutMaterial';
import { turningFairingOf } from '../../../src/physics/strut/turningFairing';
import { vibrationOf } from '../../../src/physics/vibration/vibration';
import { cautions } from '../../../src/project/wording/cautions';
import {
  strutNoticeText,
  strutProblemTexts,
  turningNoticeText,
  vibrationNoticeText,
} from '../../../src/project/wording/strutText';

function strutTexts(lengthM: number, wallM: number, material: keyof typeof strutMaterials): string[] {
  const result = strutOf({
    outline: { kind: 'ellipse', chordM: 0.1, thicknessM: 0.05 },
    wallM,
    lengthM,
    material: strutMaterials[material],
  });
  if (result.kind === 'problem') throw new Error(result.problem);
  return result.notices.map(strutNoticeText);
}

function turningTexts(pivotM: number): string[] {
  const result = turningFairingOf({
    chordM: 0.2,
    thicknessM: 0.06,
    lengthM: 2,
    pivotM,
    massKg: 3,
    massCentreM: 0.1,
    balancePlaceM: 0.005,
    residualRad: 0.05,
    endClearanceM: 0.001,
    leanRad: 0.5,
    speedMs: 6,
    densityKgM3: 1.225,
    kinematicViscosityM2S: 1.46e-5,
    surface: 'turbulent',
  });
  if (result.kind === 'problem') throw new Error(result.problem);
  return result.notices.map(turningNoticeText);
}

function vibrationTexts(speedFromMs: number): string[] {
  const result = vibrationOf({
    member: { kind: 'wire', tensionN: 6400 },
    lengthM: 1,
    massPerLengthKgM: 1,
    widthM: 0.025,
    speedFromMs,
    speedToMs: 20,
    kinematicViscosityM2S: 1e-2,
  });
  if (result.kind === 'problem') throw new Error(result.problem);
  return result.notices.map(vibrationNoticeText);
}

describe('the words about struts', () => {
  it('call every load an upper bound with an eccentric load, and leave the decision to an engineer and the class', () => {
    for (const lengthM of [0.3, 2, 6]) {
      const [first = ''] = strutTexts(lengthM, 0.003, 'aluminium6082');
      expect(first).toContain('is an upper bound: with an eccentric load');
      expect(first).toContain('licensed engineer');
      expect(first).toContain('the class');
    }
  });

  it('print walls in millimetres and loads in kilonewtons', () => {
    const texts = strutTexts(0.3, 0.0005, 'aluminium6082').join(' ');
    expect(texts).toMatch(/A wall of 0\.500\smm is under a fiftieth of the diameter \(1\.54\smm\)/);
    expect(texts).toMatch(/ask for a wall of 4\.00\smm instead of 0\.500\smm/);
    // Perimeter 242.2 mm x 0.5 mm less pi 0.5^2: 120.3 mm2 at 250 MPa.
    expect(texts).toMatch(/the wall yields at 30\.1\skN, before 328\skN/);
  });

  it('say what is not known of a laminate', () => {
    expect(strutTexts(2, 0.003, 'carbonEpoxy').join(' ')).toContain('strength of this laminate is not known');
  });
});

describe('the words about turning fairings', () => {
  it('name a moving part first, in the caution’s own words', () => {
    expect(turningTexts(0.03)[0]).toBe(cautions[4]);
  });

  it('say each thing that is wrong with its numbers', () => {
    const following = turningTexts(0.03).join(' ');
    expect(following).toMatch(/mass centre, 100\smm behind the nose, lies behind the pivot at 30\.0\smm/);
    expect(following).toMatch(/hold it \d+\.\d° off, more than the 2\.86° that were typed/);
    expect(following).toMatch(/1\.00\smm of clearance, .* 1\.84\smm along/);
    expect(following).toMatch(/Thickness over chord 0\.300 .* outside the section table/);
    expect(turningTexts(0.045).join(' ')).toMatch(
      /may lie as far forward as 40\.0\smm \(50\.0\smm is likely\)/,
    );
    expect(turningTexts(0.08).join(' ')).toMatch(/does not follow the wind: the pivot, 80\.0\smm behind/);
  });
});

describe('the words about vibration', () => {
  it('give the band in knots, as a warning and no prediction', () => {
    const [meets = '', irregular = ''] = vibrationTexts(2);
    expect(meets).toMatch(/first frequency at 8\.8–10\.8\skn square to it/);
    expect(meets).toContain('A warning, not a prediction.');
    expect(irregular).toContain('not known to be regular');
    expect(vibrationTexts(6)[0]).toMatch(/^At 11\.7–15\.6\skn square to it/);
  });
});

describe('what could not be used', () => {
  it('is said in a sentence each', () => {
    for (const text of Object.values(strutProblemTexts)) expect(text).toMatch(/^[A-Z].*\.$/);
  });
});
