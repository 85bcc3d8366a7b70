import { describe, expect, it } from 'vitest';
import { sheddingAt, sheddingQuantities } from '../../../src/physics/vibration/shedding';
import {
  vibrationOf,
  vibrationQuantities,
  type VibrationInput,
  type VibrationTrace,
} from '../../../src/physics/vibration/vibration';

/** A wire of 25 mm whose own frequency is 40 Hz: sqrt(6400 / 1) / 2 over one metre. */
function inputOf(changes: Partial<VibrationInput>): VibrationInput {
  return {
    member: { kind: 'wire', tensionN: 6400 },
    lengthM: 1,
    massPerLengthKgM: 1,
    widthM: 0.025,
    speedFromMs: 2,
    speedToMs: 20,
    kinematicViscosityM2S: 1.5e-5,
    ...changes,
  };
}

function traceOf(changes: Partial<VibrationInput>): VibrationTrace {
  const result = vibrationOf(inputOf(changes));
  if (result.kind === 'problem') throw new Error(result.problem);
  return result.trace;
}

function noticesOf(changes: Partial<VibrationInput>) {
  const result = vibrationOf(inputOf(changes));
  return result.kind === 'vibration'
    ? result.notices
    : [{ code: result.problem, values: {} as Readonly<Record<string, number>> }];
}

const codesOf = (changes: Partial<VibrationInput>): string[] => noticesOf(changes).map(({ code }) => code);

describe('a member in the wind', () => {
  it('sheds in its own frequency at 5 m/s, 4.55 to 5.56, as worked by hand', () => {
    const trace = traceOf({});
    expect(trace.firstFrequencyHz).toBeCloseTo(40, 12);
    expect(trace.meetingSpeedMs).toBeCloseTo(5, 12);
    expect(trace.meetingSpeedLowMs).toBeCloseTo(1 / 0.22, 12);
    expect(trace.meetingSpeedHighMs).toBeCloseTo(1 / 0.18, 12);
    expect(trace.lockInFromMs).toBeCloseTo(4, 12);
    expect(trace.lockInToMs).toBeCloseTo(8, 12);
    expect(trace.sheddingFromHz).toBeCloseTo((0.18 * 2) / 0.025, 12);
    expect(trace.sheddingToHz).toBeCloseTo((0.22 * 20) / 0.025, 12);
    expect(trace.reynoldsAtMeeting).toBeCloseTo((5 * 0.025) / 1.5e-5, 8);
  });

  it('is warned of over the part of the band that its speeds reach', () => {
    expect(noticesOf({})).toEqual([
      { code: 'meets', values: { fromMs: 1 / 0.22, toMs: expect.closeTo(1 / 0.18, 12) as number } },
    ]);
    expect(noticesOf({ speedFromMs: 5, speedToMs: 5.2 })).toEqual([
      { code: 'meets', values: { fromMs: 5, toMs: 5.2 } },
    ]);
    expect(noticesOf({ speedToMs: 4.6 })[0]?.values['toMs']).toBe(4.6);
  });

  it('beside the band is warned of lock-in only, and beyond that of nothing', () => {
    expect(noticesOf({ speedFromMs: 6, speedToMs: 20 })).toEqual([
      { code: 'lock-in-near', values: { fromMs: 6, toMs: expect.closeTo(8, 12) as number } },
    ]);
    expect(codesOf({ speedFromMs: 2, speedToMs: 4.2 })).toEqual(['lock-in-near']);
    expect(codesOf({ speedFromMs: 8.1 })).toEqual([]);
    expect(codesOf({ speedToMs: 3.9 })).toEqual([]);
  });

  it('is met the sooner the slacker, the heavier and the thinner it is', () => {
    const once = traceOf({}).meetingSpeedMs;
    expect(traceOf({ member: { kind: 'wire', tensionN: 1600 } }).meetingSpeedMs).toBeCloseTo(once / 2, 12);
    expect(traceOf({ massPerLengthKgM: 4 }).meetingSpeedMs).toBeCloseTo(once / 2, 12);
    expect(traceOf({ widthM: 0.0125 }).meetingSpeedMs).toBeCloseTo(once / 2, 12);
  });

  it('clamped is met at 2.27 times the speed of the same tube on pins', () => {
    const tube = (ends: 'pinned' | 'clamped') =>
      traceOf({ member: { kind: 'tube', bendingStiffnessNm2: 800, ends }, lengthM: 1.5 });
    expect(tube('clamped').meetingSpeedMs / tube('pinned').meetingSpeedMs).toBeCloseTo(2.267, 3);
    expect(tube('pinned')).toMatchObject({ tensionN: null, bendingStiffnessNm2: 800 });
    expect(traceOf({})).toMatchObject({ tensionN: 6400, bendingStiffnessNm2: null });
  });

  it('is not said to shed regularly where the Strouhal number is not known', () => {
    expect(codesOf({ kinematicViscosityM2S: 5e-4 })).not.toContain('irregular');
    expect(codesOf({ kinematicViscosityM2S: 5.1e-4 })).toContain('irregular');
    expect(codesOf({ kinematicViscosityM2S: 6.3e-7 })).not.toContain('irregular');
    expect(codesOf({ kinematicViscosityM2S: 6.2e-7 })).toContain('irregular');
  });

  it('names what is wrong instead of giving a number', () => {
    expect(codesOf({ lengthM: NaN })).toEqual(['not-a-number']);
    expect(codesOf({ speedToMs: Infinity })).toEqual(['not-a-number']);
    expect(codesOf({ member: { kind: 'wire', tensionN: 0 } })).toEqual(['not-positive']);
    expect(codesOf({ member: { kind: 'tube', bendingStiffnessNm2: -1, ends: 'pinned' } })).toEqual([
      'not-positive',
    ]);
    for (const key of ['lengthM', 'massPerLengthKgM', 'widthM', 'kinematicViscosityM2S'] as const) {
      expect(codesOf({ [key]: 0 })).toEqual(['not-positive']);
    }
    expect(codesOf({ speedFromMs: -1 })).toEqual(['not-positive']);
    expect(codesOf({ speedFromMs: 0 })).toEqual(['meets']);
    expect(codesOf({ speedFromMs: 21 })).toEqual(['speeds-out-of-order']);
  });

  it('describes every number of its working', () => {
    expect(Object.keys(vibrationQuantities).sort()).toEqual(Object.keys(traceOf({})).sort());
  });
});

describe('shedding', () => {
  it('goes with the speed and against the diameter, a tenth to either side', () => {
    const once = sheddingAt(10, 0.025, 1.5e-5);
    expect(once).toMatchObject({ sheddingHz: expect.closeTo(80, 10) as number, isRegular: 1 });
    expect(once.sheddingLowHz).toBeCloseTo(72, 10);
    expect(once.sheddingHighHz).toBeCloseTo(88, 10);
    expect(sheddingAt(20, 0.025, 1.5e-5).sheddingHz).toBeCloseTo(160, 10);
    expect(sheddingAt(10, 0.05, 1.5e-5).sheddingHz).toBeCloseTo(40, 10);
    expect(sheddingAt(0, 0.05, 1.5e-5).sheddingHz).toBe(0);
  });

  it('is marked irregular outside Reynolds numbers of 250 to 2e5', () => {
    const at = (reynolds: number) => sheddingAt(reynolds, 1, 1).isRegular;
    expect([at(249), at(250), at(2e5), at(2.01e5)]).toEqual([0, 1, 1, 0]);
  });

  it('describes every number of its working', () => {
    expect(Object.keys(sheddingQuantities).sort()).toEqual(Object.keys(sheddingAt(1, 1, 1)).sort());
  });
});
