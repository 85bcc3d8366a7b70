import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { SailingCondition } from '../../src/physics/condition/sailingCondition';
import { solveCondition } from '../../src/physics/condition/sailingState';
import type { FittingInput, PlacedMember } from '../../src/physics/fitting/fittingInput';
import type { Outcome } from '../../src/physics/fitting/outcome';
import { boatVector } from '../../src/physics/vector/vector3';
import { between, conditions, degree, fittings } from './arbitraries';
import { expectSameOutcome, forceSizeN, sumOutcomes, summedForceN, traceOf } from './support';
import { barOf, steadyCondition, logDiameter, place, lengthOf, windAlong } from './bars';

describe('a row or a pair', () => {
  it('is the sum of its members in every component, each at its own place', () => {
    fc.assert(
      fc.property(fittings(), conditions(), (fitting, condition) => {
        const whole = traceOf(fitting, condition);
        const singles = fitting.members.map((member) =>
          traceOf({ ...fitting, members: [member] }, condition),
        );
        const outcomes = singles.map(({ deployed }) => deployed);
        expectSameOutcome(whole.deployed, sumOutcomes(outcomes), 1e-10, summedForceN(outcomes));
      }),
      { numRuns: 200 },
    );
  });

  it('has the forces and powers of its members’ workings', () => {
    fc.assert(
      fc.property(fittings(), conditions(), (fitting, condition) => {
        const { deployed, members } = traceOf(fitting, condition);
        const sum = (value: (member: (typeof members)[number]) => number): number =>
          members.reduce((total, member) => total + value(member), 0);
        const scale = 1e-9 * (1e-3 + sum((m) => Math.hypot(m.forceTrackXN, m.forceTrackYN, m.forceTrackZN)));
        const close = (a: number, b: number, size = 1): void => {
          expect(Math.abs(a - b)).toBeLessThanOrEqual(scale * size);
        };
        close(
          sum((m) => m.forceTrackXN),
          deployed.forceTrackXN,
        );
        close(
          sum((m) => m.forceTrackYN),
          deployed.forceTrackYN,
        );
        close(
          sum((m) => m.forceTrackZN),
          deployed.forceTrackZN,
        );
        close(
          sum((m) => m.trackPowerW),
          deployed.trackPowerW,
          20,
        );
        close(
          sum((m) => m.airPowerW),
          deployed.airPowerW,
          20,
        );
      }),
    );
  });

  it('is deployed times its duty plus stowed for the rest of the time', () => {
    fc.assert(
      fc.property(fittings(), conditions(), between(0, 1), (fitting, condition, duty) => {
        const { mean, deployed, stowed } = traceOf(fitting, condition, duty);
        const expected = Object.fromEntries(
          (Object.keys(mean) as (keyof Outcome)[]).map((key) => [
            key,
            duty * deployed[key] + (1 - duty) * stowed[key],
          ]),
        ) as Record<keyof Outcome, number>;
        expectSameOutcome(mean, expected, 1e-10, summedForceN([deployed, stowed]));
      }),
    );
  });
});

const alongWind: Partial<SailingCondition> = { heelRad: 0, leewayRad: 0, riseM: 0, boatSpeedMs: 0 };

describe('at the water', () => {
  it('a fitting wholly under water has no force, no doubt but zero, and says so', () => {
    fc.assert(
      fc.property(fittings(), conditions(), (drawn, condition) => {
        const sunk = { ...drawn, stowed: null };
        const trace = traceOf(sunk, { ...condition, riseM: -60 });
        expect(forceSizeN(trace.mean)).toBe(0);
        expect(trace.members).toEqual([]);
        expect(trace.notices.map(({ code }) => code)).toEqual(['under-water']);
        for (const { up, down } of trace.doubts) {
          expect(Object.values(up).every((value) => value === 0)).toBe(true);
          expect(Object.values(down).every((value) => value === 0)).toBe(true);
        }
      }),
    );
  });

  it('a leaning bar or a body is let down into it without a step', () => {
    const kinds = fittings({ kinds: ['roundBar', 'bluffBody'] });
    fc.assert(
      fc.property(kinds, conditions(), between(0, 1), (fitting, condition, share) => {
        const first = fitting.members[0];
        if (first === undefined) return;
        const single = { ...fitting, members: [first], stowed: null };
        const lean = Math.abs(first.end[2] - first.start[2]) / lengthOf(first);
        const upright = { ...condition, heelRad: 0, riseM: 0 };
        if (lean < 0.05) return;
        const heightM = first.start[2] + share * (first.end[2] - first.start[2]);
        const at = (stepM: number): Outcome =>
          traceOf(single, { ...upright, riseM: stepM - heightM }).deployed;
        // A micrometre deeper wets 20 um at most of the flattest bar: its force per metre times that.
        const dry = traceOf(single, { ...upright, riseM: 40 }).deployed;
        const perMetre = forceSizeN(dry) / Math.abs(first.end[2] - first.start[2]);
        const change = forceSizeN(at(1e-6)) - forceSizeN(at(-1e-6));
        expect(Math.abs(change)).toBeLessThanOrEqual(1e-4 * perMetre + 1e-9);
      }),
      { numRuns: 500 },
    );
  });

  it('half a bar in the water is the dry half alone, finite length aside', () => {
    fc.assert(
      fc.property(logDiameter, between(0.2, 5), conditions(), (diameterM, dryM, drawn) => {
        const condition = { ...drawn, heelRad: 0, riseM: 0 };
        const half = barOf(diameterM, [{ start: boatVector(1, 0, -dryM), end: boatVector(2, 1, dryM) }]);
        const dry = barOf(diameterM, [{ start: boatVector(1.5, 0.5, 0), end: boatVector(2, 1, dryM) }]);
        expectSameOutcome(traceOf(half, condition).mean, traceOf(dry, condition).mean, 1e-9);
      }),
    );
  });

  it('a bar that reaches below the water always says so', () => {
    fc.assert(
      fc.property(place, conditions(), (member, drawn) => {
        const condition = { ...drawn, heelRad: 0, riseM: 0 };
        const low = Math.min(member.start[2], member.end[2]);
        const high = Math.max(member.start[2], member.end[2]);
        const codes = traceOf(barOf(0.03, [member]), condition).notices.map(({ code }) => code);
        if (low < 0 && high > 0) expect(codes).toContain('partly-under-water');
        if (low > 0) expect(codes).not.toContain('partly-under-water');
      }),
      { numRuns: 2000 },
    );
  });

  it('below 1 m the wind is the wind of 1 m', () => {
    fc.assert(
      fc.property(logDiameter, between(0.05, 0.9), conditions(), (diameterM, heightM, drawn) => {
        const condition = { ...drawn, heelRad: 0, riseM: 0 };
        const at = (zM: number): FittingInput =>
          barOf(diameterM, [{ start: boatVector(0, -1, zM), end: boatVector(1, 1, zM) }]);
        const low = traceOf(at(heightM), condition).mean;
        const one = traceOf(at(1), condition).mean;
        expect(low.forceTrackXN).toBeCloseTo(one.forceTrackXN, 10);
        expect(low.forceTrackYN).toBeCloseTo(one.forceTrackYN, 10);
        expect(low.airPowerW).toBeCloseTo(one.airPowerW, 8);
      }),
    );
  });
});

describe('limits', () => {
  it('a bar along the wind has friction only, a bar square to it none', () => {
    fc.assert(
      fc.property(logDiameter, conditions(fc.constant({ kind: 'uniform' })), (diameterM, drawn) => {
        const condition: SailingCondition = {
          ...drawn,
          ...alongWind,
          wind: { kind: 'true', speedMs: 10, heightM: 10, angleFromCourseRad: 0 },
        };
        const bar = (member: PlacedMember, friction: boolean): Outcome =>
          traceOf(barOf(diameterM, [member], { friction }), condition).mean;
        const along = { start: boatVector(0, 0, 2), end: boatVector(2, 0, 2) };
        const square = { start: boatVector(0, 0, 2), end: boatVector(0, 0, 4) };
        expect(forceSizeN(bar(along, false))).toBe(0);
        expect(bar(along, true).forceTrackXN).toBeLessThan(0);
        expectSameOutcome(bar(square, true), bar(square, false), 1e-12);
      }),
    );
  });

  it('a very long bar with free ends tends to the bar with joined ends', () => {
    fc.assert(
      fc.property(between(0.003, 0.02), conditions(), (diameterM, condition) => {
        const long = [{ start: boatVector(0, 0, 1), end: boatVector(2, 0, 21) }];
        const free = traceOf(barOf(diameterM, long, { ends: ['free', 'free'] }), condition).mean;
        expectSameOutcome(free, traceOf(barOf(diameterM, long), condition).mean, 1e-12);
      }),
    );
  });

  it('upright and without leeway the boat’s frame is the track’s', () => {
    fc.assert(
      fc.property(fittings(), conditions(), (fitting, drawn) => {
        const { mean } = traceOf(fitting, { ...drawn, heelRad: 0, leewayRad: 0 });
        for (const axis of ['X', 'Y', 'Z'] as const) {
          expect(mean[`forceBoat${axis}N`]).toBeCloseTo(mean[`forceTrack${axis}N`], 10);
          expect(mean[`momentBoat${axis}Nm`]).toBeCloseTo(mean[`momentTrack${axis}Nm`], 8);
        }
      }),
    );
  });

  it('an upright bar across a wind from ahead has q C_d d L against the track', () => {
    fc.assert(
      fc.property(logDiameter, between(2, 20), between(0.2, 2), (diameterM, windMs, coefficient) => {
        const typed = { best: coefficient, low: coefficient, high: coefficient, areaBase: 'd L', source: '' };
        const bar = barOf(diameterM, [{ start: boatVector(0, 0, 2), end: boatVector(0, 0, 5) }], {
          coefficient: typed,
        });
        const condition: SailingCondition = {
          ...steadyCondition,
          wind: { kind: 'true', speedMs: windMs, heightM: 10, angleFromCourseRad: 0 },
        };
        const density = 101_325 / (287.05 * 288.15);
        const expected = 0.5 * density * (windMs + 3) ** 2 * coefficient * diameterM * 3;
        expect(traceOf(bar, condition).mean.dragAgainstTrackN / expected).toBeCloseTo(1, 12);
      }),
    );
  });

  it('a heel and a leeway of a hundred-thousandth of a degree change next to nothing', () => {
    fc.assert(
      fc.property(fittings(), conditions(), (fitting, drawn) => {
        const dry = { ...drawn, riseM: 5, heelRad: 0, leewayRad: 0 };
        const tiny = 1e-5 * degree;
        const single = {
          ...fitting,
          members: fitting.members.slice(0, 1),
          exposureLeeward: fitting.exposure,
        };
        const { slowest } = windAlong(single.members, solveCondition(dry));
        fc.pre(slowest > 1);
        const here = traceOf(single, dry).mean;
        // Along its axis a bar has no force, and next to nothing cannot be told from nothing.
        fc.pre(forceSizeN(here) > 1e-6);
        const there = traceOf(single, { ...dry, heelRad: tiny, leewayRad: tiny }).mean;
        expectSameOutcome(there, here, 1e-4);
      }),
    );
  });
});
