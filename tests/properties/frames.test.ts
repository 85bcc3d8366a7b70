import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  apparentWindAt,
  apparentWindVelocityAt,
  heightAboveWaterM,
  instrumentReadingAt,
  solveCondition,
  trueWindOf,
} from '../../src/physics/condition/sailingState';
import {
  boatToTrack,
  headingToTrack,
  toBoat,
  toTrack,
  trackToHeading,
} from '../../src/physics/frames/boatToTrack';
import { boatVector, dot, headingVector, magnitude, trackVector } from '../../src/physics/vector/vector3';
import { anyWindLaw, between, conditions, degree, instrumentInput, trueWindInput } from './arbitraries';

const numbers = fc.tuple(between(-20, 20), between(-20, 20), between(-20, 20));
const rotations = fc
  .tuple(
    between(-60 * degree, 60 * degree),
    between(-20 * degree, 20 * degree),
    fc.constantFrom('port' as const, 'starboard' as const),
  )
  .map((angles) => boatToTrack(...angles));

function expectClose(actual: readonly number[], expected: readonly number[]): void {
  for (const [i, value] of expected.entries()) expect(actual[i]).toBeCloseTo(value, 10);
}

describe('frames', () => {
  it('boat to track to boat is the identity, and keeps lengths and angles', () => {
    fc.assert(
      fc.property(rotations, numbers, numbers, (rotation, a, b) => {
        const [one, two] = [boatVector(...a), boatVector(...b)];
        expectClose(toBoat(rotation, toTrack(rotation, one)), one);
        expect(magnitude(toTrack(rotation, one))).toBeCloseTo(magnitude(one), 10);
        expect(dot(toTrack(rotation, one), toTrack(rotation, two))).toBeCloseTo(dot(one, two), 9);
      }),
    );
  });

  it('are right-handed: x cross y is z in every frame', () => {
    fc.assert(
      fc.property(rotations, ({ rowX, rowY, rowZ }) => {
        const cross = [
          rowX[1] * rowY[2] - rowX[2] * rowY[1],
          rowX[2] * rowY[0] - rowX[0] * rowY[2],
          rowX[0] * rowY[1] - rowX[1] * rowY[0],
        ];
        expectClose(cross, rowZ);
      }),
    );
  });

  it('heading to track to heading is the identity and leaves heights', () => {
    fc.assert(
      fc.property(rotations, numbers, (rotation, a) => {
        const laid = headingToTrack(rotation, headingVector(...a));
        expectClose(trackToHeading(rotation, laid), a);
        expect(laid[2]).toBe(a[2]);
      }),
    );
  });

  it('positive heel puts the leeward rail down, and leeway puts the course to leeward of the bow', () => {
    for (const [tack, leewardY] of [
      ['starboard', 1],
      ['port', -1],
    ] as const) {
      const rotation = boatToTrack(20 * degree, 5 * degree, tack);
      expect(toTrack(rotation, boatVector(0, leewardY, 0))[2]).toBeLessThan(0);
      expect(toTrack(rotation, boatVector(0, -leewardY, 0))[2]).toBeGreaterThan(0);
      // The bow points to windward of the course.
      expect(Math.sign(toTrack(rotation, boatVector(1, 0, 0))[1])).toBe(-leewardY);
      // The mast leans to leeward.
      expect(Math.sign(toTrack(rotation, boatVector(0, 0, 1))[1])).toBe(leewardY);
      expect(trackToHeading(rotation, trackVector(1, 0, 0))[1] * leewardY).toBeGreaterThan(0);
    }
  });
});

describe('the condition', () => {
  it('instrument reading to true wind to reading is the identity', () => {
    fc.assert(
      fc.property(conditions(anyWindLaw, instrumentInput), (condition) => {
        const { wind } = condition;
        if (wind.kind !== 'instrument') return;
        const reading = instrumentReadingAt(solveCondition(condition), wind.heightUpMastM);
        expect(reading.speedMs).toBeCloseTo(wind.speedMs, 9);
        expect(reading.angleFromBowRad).toBeCloseTo(wind.angleFromBowRad, 9);
      }),
      { numRuns: 500 },
    );
  });

  it('true wind to instrument reading to true wind is the identity', () => {
    fc.assert(
      fc.property(conditions(anyWindLaw, trueWindInput), between(5, 35), (condition, heightUpMastM) => {
        const { speedMs, angleFromBowRad } = instrumentReadingAt(solveCondition(condition), heightUpMastM);
        const read = {
          ...condition,
          wind: { kind: 'instrument' as const, speedMs, angleFromBowRad, heightUpMastM },
        };
        const [back, given] = [trueWindOf(read), trueWindOf(condition)];
        expect(back.speedAt10Ms).toBeCloseTo(given.speedAt10Ms, 8);
        expect(back.angleFromCourseRad).toBeCloseTo(given.angleFromCourseRad, 8);
      }),
      { numRuns: 500 },
    );
  });

  it('apparent wind angle from the course is the one from the bow plus leeway', () => {
    fc.assert(
      fc.property(conditions(anyWindLaw, trueWindInput), between(1, 30), (condition, heightM) => {
        const wind = apparentWindAt(solveCondition(condition), heightM);
        const difference = wind.angleFromCourseRad - wind.angleFromBowRad - condition.leewayRad;
        expect(Math.sin(difference)).toBeCloseTo(0, 10);
        expect(Math.cos(difference)).toBeCloseTo(1, 10);
      }),
    );
  });

  it('apparent wind by the law of cosines', () => {
    fc.assert(
      fc.property(conditions(anyWindLaw, trueWindInput), between(1, 30), (condition, heightM) => {
        const state = solveCondition(condition);
        const { speedMs, trueWindMs } = apparentWindAt(state, heightM);
        const v = condition.boatSpeedMs;
        const squared = trueWindMs ** 2 + v ** 2 + 2 * trueWindMs * v * Math.cos(state.trueWindAngleRad);
        expect(speedMs ** 2).toBeCloseTo(squared, 8);
      }),
    );
  });

  it('with neither boat speed nor true wind there is no air to feel', () => {
    fc.assert(
      fc.property(conditions(), (drawn) => {
        const still = {
          ...drawn,
          boatSpeedMs: 0,
          wind: { kind: 'true' as const, speedMs: 0, heightM: 10, angleFromCourseRad: 1 },
        };
        expect(magnitude(apparentWindVelocityAt(solveCondition(still), 10))).toBe(0);
      }),
    );
  });

  it('rise lifts every point by itself, and heel lowers a masthead by its cosine', () => {
    fc.assert(
      fc.property(conditions(), numbers, (condition, place) => {
        const state = solveCondition(condition);
        const level = solveCondition({ ...condition, riseM: 0 });
        const point = boatVector(...place);
        expect(heightAboveWaterM(state, point) - heightAboveWaterM(level, point)).toBeCloseTo(
          condition.riseM,
          10,
        );
        expect(heightAboveWaterM(level, boatVector(0, 0, 20))).toBeCloseTo(
          20 * Math.cos(condition.heelRad),
          10,
        );
      }),
    );
  });
});
