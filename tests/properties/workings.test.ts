import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { doubtGroup, doubtScope } from '../../src/physics/doubt/doubtSource';
import { apparentWindAt, heightAboveWaterM, solveCondition } from '../../src/physics/condition/sailingState';
import { directionOf, isMemberShape } from '../../src/physics/fitting/fittingInput';
import { toTrack } from '../../src/physics/frames/boatToTrack';
import { ellipseProblem } from '../../src/physics/section/ellipse';
import { boatVector } from '../../src/physics/vector/vector3';
import { conditions, fittings } from './arbitraries';
import { traceOf } from './support';

/** One dry fitting of one member: its trace, and where its two ends lie. */
const single = fittings().map((fitting) => ({
  ...fitting,
  members: fitting.members.slice(0, 1),
  exposureLeeward: fitting.exposure,
}));
const dry = conditions().map((condition) => ({ ...condition, riseM: 12 }));

describe('the working of a member', () => {
  it('has the wind of its middle, from the condition’s own laws', () => {
    fc.assert(
      fc.property(single, dry, (fitting, condition) => {
        const state = solveCondition(condition);
        const [member] = traceOf(fitting, condition).members;
        if (member === undefined) return;
        const apparent = apparentWindAt(state, member.heightM);
        expect(member.trueWindMs).toBe(apparent.trueWindMs);
        expect(member.apparentSpeedMs).toBe(apparent.speedMs);
        expect(member.apparentAngleFromBowRad).toBe(apparent.angleFromBowRad);
        expect(member.apparentAngleFromCourseRad).toBe(apparent.angleFromCourseRad);
        expect(member.localAngleFromCourseRad - apparent.angleFromCourseRad).toBeCloseTo(
          fitting.localTurnRad,
          9,
        );
        expect(member.exposure).toBe(fitting.exposure.best);
        const { densityKgM3 } = state.air;
        expect(member.dynamicPressurePa).toBeCloseTo((densityKgM3 / 2) * member.localSpeedMs ** 2, 8);
      }),
      { numRuns: 200 },
    );
  });

  it('lies between its ends', () => {
    fc.assert(
      fc.property(single, dry, (fitting, condition) => {
        const state = solveCondition(condition);
        const { members } = traceOf(fitting, condition);
        const [placed] = fitting.members;
        const [first] = members;
        if (placed === undefined || first === undefined) return;
        const ends = [heightAboveWaterM(state, placed.start), heightAboveWaterM(state, placed.end)];
        const lowest = Math.min(...members.map(({ lowestHeightM }) => lowestHeightM));
        const highest = Math.max(...members.map(({ highestHeightM }) => highestHeightM));
        expect(lowest).toBeCloseTo(Math.min(...ends), 9);
        expect(highest).toBeCloseTo(Math.max(...ends), 9);
        for (const member of members) {
          const middle = (member.lowestHeightM + member.highestHeightM) / 2;
          if (fitting.shape.kind !== 'sphere' && fitting.shape.kind !== 'measuredArea') {
            expect(member.heightM).toBeCloseTo(middle, 9);
          }
        }
      }),
      { numRuns: 200 },
    );
  });

  it('has the angle between the wind and the axis, and what the wind is square to it', () => {
    fc.assert(
      fc.property(single, dry, (fitting, condition) => {
        const { rotation, tackSign } = solveCondition(condition);
        const [member] = traceOf(fitting, condition).members;
        const [placed] = fitting.members;
        if (member === undefined || placed === undefined || member.localSpeedMs === 0) return;
        if (!isMemberShape(fitting.shape)) {
          expect([member.axisAngleRad, member.crossSpeedMs, member.dryLengthM]).toEqual([null, null, null]);
          return;
        }
        const [a, b] = [toTrack(rotation, placed.start), toTrack(rotation, placed.end)];
        const axis = [b[0] - a[0], b[1] - a[1], b[2] - a[2]] as const;
        const from = member.localAngleFromCourseRad;
        const along = -Math.cos(from) * axis[0] + tackSign * Math.sin(from) * axis[1];
        const cosine = Math.min(Math.abs(along) / Math.hypot(...axis), 1);
        expect(Math.cos(member.axisAngleRad ?? NaN)).toBeCloseTo(cosine, 9);
        const cross = member.localSpeedMs * Math.sqrt(1 - cosine ** 2);
        expect(member.crossSpeedMs).toBeCloseTo(cross, 5);
        expect(member.incidenceRad === null).toBe(directionOf(fitting.shape) === null);
        expect(member.liftCoefficient === null).toBe(directionOf(fitting.shape) === null);
      }),
      { numRuns: 300 },
    );
  });

  it('has no number that its kind does not have, and none that is not finite', () => {
    fc.assert(
      fc.property(single, dry, (fitting, condition) => {
        const { kind } = fitting.shape;
        for (const member of traceOf(fitting, condition).members) {
          for (const [key, value] of Object.entries(member)) {
            if (typeof value === 'number') expect(Number.isFinite(value), key).toBe(true);
          }
          const isPoint = kind === 'measuredArea';
          expect(member.coefficientBest === null).toBe(isPoint);
          expect(member.areaM2 === null).toBe(isPoint);
          expect(member.reynolds === null).toBe(['measuredArea', 'bluffBody', 'net'].includes(kind));
          expect(member.endFactor === null).toBe(!isMemberShape(fitting.shape));
          const hasSlenderness = isMemberShape(fitting.shape) && fitting.shape.ends.includes('free');
          expect(member.slenderness !== null).toBe(hasSlenderness);
        }
      }),
      { numRuns: 200 },
    );
  });

  it('in no wind at all has no force, no drag area and no direction', () => {
    fc.assert(
      fc.property(single, dry, (fitting, condition) => {
        const calm = { best: 0, low: 0, high: 0 };
        const sheltered = { ...fitting, exposure: calm, exposureLeeward: calm };
        for (const member of traceOf(sheltered, condition).members) {
          expect(member).toMatchObject({ localSpeedMs: 0, dragAlongWindN: 0, dragAreaM2: 0 });
          expect(Math.abs(member.forceTrackXN) + Math.abs(member.forceTrackYN)).toBe(0);
        }
      }),
      { numRuns: 100 },
    );
  });
});

describe('a doubt', () => {
  it('is of the air or of the items, own or shared, by its name', () => {
    expect(['wind-speed', 'wind-angle', 'wind-law', 'density', 'ends', 'own:a:b'].map(doubtGroup)).toEqual([
      'air',
      'air',
      'air',
      'air',
      'item',
      'item',
    ]);
    expect(['own:a:length', 'ends', 'not-own:a'].map(doubtScope)).toEqual(['own', 'shared', 'shared']);
  });
});

describe('an ellipse', () => {
  it('has two axes above nothing, the chord the longer one', () => {
    expect(ellipseProblem(1, 0.5)).toBeNull();
    expect(ellipseProblem(1, 1)).toBeNull();
    expect(ellipseProblem(1, 1.001)).toBe('thicker-than-chord');
    for (const [chord, thickness] of [
      [0, 1],
      [1, 0],
      [-1, -2],
      [NaN, 1],
      [1, NaN],
    ] as const) {
      expect(ellipseProblem(chord, thickness)).toBe('not-positive');
    }
  });
});

describe('a place on the boat', () => {
  it('turns with her heel about her own origin, and rises with her', () => {
    fc.assert(
      fc.property(conditions(), (condition) => {
        const state = solveCondition(condition);
        expect(heightAboveWaterM(state, boatVector(3, 0, 0))).toBeCloseTo(condition.riseM, 12);
        const up = heightAboveWaterM(state, boatVector(0, 0, 10));
        expect(up).toBeCloseTo(10 * Math.cos(condition.heelRad) + condition.riseM, 10);
      }),
    );
  });
});
