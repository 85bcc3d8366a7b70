import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  beamEnds,
  beamFrequencyHz,
  firstModeFactor,
  wireFrequencyHz,
} from '../../src/physics/vibration/naturalFrequency';
import { sheddingAt } from '../../src/physics/vibration/shedding';
import { vibrationOf, type VibrationInput, type VibrationTrace } from '../../src/physics/vibration/vibration';
import { between } from './arbitraries';

const members: fc.Arbitrary<VibrationInput> = fc
  .record({
    member: fc.oneof(
      between(10, 20_000).map((tensionN) => ({ kind: 'wire' as const, tensionN })),
      fc.record({
        kind: fc.constant('tube' as const),
        bendingStiffnessNm2: between(10, 1e5),
        ends: fc.constantFrom(...beamEnds),
      }),
    ),
    lengthM: between(0.5, 20),
    massPerLengthKgM: between(0.05, 5),
    widthM: between(0.004, 0.2),
    speedFromMs: between(0, 10),
    span: between(0, 30),
  })
  .map(({ span, ...rest }) => ({
    ...rest,
    speedToMs: rest.speedFromMs + span,
    kinematicViscosityM2S: 1.5e-5,
  }));

function traceOf(input: VibrationInput): VibrationTrace {
  const result = vibrationOf(input);
  if (result.kind === 'problem') throw new Error(result.problem);
  return result.trace;
}

function codesOf(input: VibrationInput): string[] {
  const result = vibrationOf(input);
  return result.kind === 'vibration' ? result.notices.map(({ code }) => code) : [result.problem];
}

describe('a member in the wind', () => {
  it('sheds in its own frequency at the wind where they meet, and at both ends of the band', () => {
    fc.assert(
      fc.property(members, (input) => {
        const trace = traceOf(input);
        const at = (speedMs: number) => sheddingAt(speedMs, input.widthM, input.kinematicViscosityM2S);
        const own = trace.firstFrequencyHz;
        expect(at(trace.meetingSpeedMs).sheddingHz / own).toBeCloseTo(1, 12);
        expect(at(trace.meetingSpeedLowMs).sheddingHighHz / own).toBeCloseTo(1, 12);
        expect(at(trace.meetingSpeedHighMs).sheddingLowHz / own).toBeCloseTo(1, 12);
        expect(trace.reynoldsAtMeeting).toBe(at(trace.meetingSpeedMs).reynolds);
        expect(trace.sheddingFromHz).toBeCloseTo(at(input.speedFromMs).sheddingLowHz, 9);
        expect(trace.sheddingToHz).toBeCloseTo(at(input.speedToMs).sheddingHighHz, 9);
      }),
    );
  });

  it('is warned of where its speeds reach the band, else where they reach lock-in, else of nothing', () => {
    fc.assert(
      fc.property(members, (input) => {
        const trace = traceOf(input);
        const reach = (from: number, to: number): boolean =>
          from <= input.speedToMs && to >= input.speedFromMs;
        const meets = reach(trace.meetingSpeedLowMs, trace.meetingSpeedHighMs);
        const near = reach(trace.lockInFromMs, trace.lockInToMs);
        const codes = codesOf(input).filter((code) => code !== 'irregular');
        expect(codes).toEqual(meets ? ['meets'] : near ? ['lock-in-near'] : []);
        const isRegular = trace.reynoldsAtMeeting >= 250 && trace.reynoldsAtMeeting <= 2e5;
        expect(codesOf(input).includes('irregular')).toBe(!isRegular);
      }),
      { numRuns: 1000 },
    );
  });

  it('locks in at reduced velocities of 4 to 8, about the 5 at which it meets', () => {
    fc.assert(
      fc.property(members, (input) => {
        const trace = traceOf(input);
        expect(trace.meetingSpeedMs / (trace.firstFrequencyHz * input.widthM)).toBeCloseTo(5, 12);
        expect(trace.lockInFromMs / trace.meetingSpeedMs).toBeCloseTo(4 / 5, 12);
        expect(trace.lockInToMs / trace.meetingSpeedMs).toBeCloseTo(8 / 5, 12);
      }),
    );
  });
});

describe('shedding', () => {
  it('is regular at Reynolds numbers of 250 to 2e5', () => {
    const at = (reynolds: number) => sheddingAt(reynolds, 1, 1).isRegular;
    expect([at(249), at(250), at(2e5), at(2.01e5)]).toEqual([0, 1, 1, 0]);
  });
});

describe('own frequencies', () => {
  /** What vanishes at beta L of the first mode, by the ends. */
  const characteristic = {
    pinned: (b: number) => Math.sin(b),
    clamped: (b: number) => Math.cos(b) * Math.cosh(b) - 1,
    'clamped-pinned': (b: number) => Math.sin(b) * Math.cosh(b) - Math.cos(b) * Math.sinh(b),
    'clamped-free': (b: number) => Math.cos(b) * Math.cosh(b) + 1,
  };

  it.each(beamEnds)('solve the beam equation: %s', (ends) => {
    const f = characteristic[ends];
    let [from, to] = ends === 'clamped-free' ? [1, 2.5] : ends === 'pinned' ? [2, 4] : [3, 5.5];
    expect(f(from) * f(to)).toBeLessThan(0);
    for (let i = 0; i < 60; i += 1) {
      const middle = (from + to) / 2;
      if (f(from) * f(middle) <= 0) to = middle;
      else from = middle;
    }
    expect(firstModeFactor[ends]).toBeCloseTo(from * from, 3);
  });

  it('of a pinned beam follow from the energies of a half sine', () => {
    // f^2 = int B y''^2 / int m y^2 / (2 pi)^2, exact since the half sine is the mode.
    const [stiffness, mass, length] = [1234, 0.7, 2.3];
    let [bending, moving] = [0, 0];
    for (let i = 0; i < 1000; i += 1) {
      const x = (length * (i + 0.5)) / 1000;
      bending += stiffness * ((Math.PI / length) ** 2 * Math.sin((Math.PI * x) / length)) ** 2;
      moving += mass * Math.sin((Math.PI * x) / length) ** 2;
    }
    expect(beamFrequencyHz(stiffness, mass, length, 'pinned')).toBeCloseTo(
      Math.sqrt(bending / moving) / (2 * Math.PI),
      9,
    );
  });

  it('are those of the worked examples', () => {
    expect(beamFrequencyHz(1000, 1, 2, 'pinned')).toBeCloseTo(12.4, 1);
    expect(wireFrequencyHz(1000, 0.1, 2)).toBeCloseTo(25, 12);
  });
});
