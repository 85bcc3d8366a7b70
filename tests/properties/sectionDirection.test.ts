import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { apparentWindAt, solveCondition } from '../../src/physics/condition/sailingState';
import type { SailingCondition } from '../../src/physics/condition/sailingCondition';
import { emptyWind, windAt } from '../../src/physics/fitting/localWind';
import { heightAlong, memberGeometry } from '../../src/physics/member/memberGeometry';
import { fixedOrTurnedNose, incidenceOf } from '../../src/physics/member/sectionNose';
import { steadyCondition } from './bars';
import type { FittingInput, PlacedMember, SectionShape } from '../../src/physics/fitting/fittingInput';
import { noseInBoat, type SectionDirection } from '../../src/physics/section/sectionDirection';
import { boatVector, dot, magnitude, type BoatVector } from '../../src/physics/vector/vector3';
import { fittingOf } from '../published/support';
import { between, conditions, degree } from './arbitraries';
import { traceOf } from './support';
import {
  apply,
  axesTurnedAboutX,
  axesTurnedAboutZ,
  cross,
  inner,
  length,
  plus,
  times,
  transposed,
  type Vector,
} from './secondRouteVectors';

const point: fc.Arbitrary<BoatVector> = fc
  .tuple(between(-8, 8), between(-3, 3), between(2, 15))
  .map(([x, y, z]) => boatVector(x, y, z));
const member = fc
  .record({ start: point, end: point })
  .filter(({ start, end }) => magnitude([end[0] - start[0], end[1] - start[1], end[2] - start[2]]) > 0.2);
const angle = between(-Math.PI, Math.PI);

const up = { start: boatVector(0, 0, 1), end: boatVector(0, 0, 3) };
const athwart = { start: boatVector(0, 0, 2), end: boatVector(0, 1, 2) };
const forward = { start: boatVector(0, 0, 2), end: boatVector(3, 0.2, 2.1) };

describe('the nose of a fixed section', () => {
  it('points forward at 0, to port at +90 and to starboard at -90 deg on an upright member', () => {
    expectClose(noseInBoat(up.start, up.end, 0, false), [1, 0, 0]);
    expectClose(noseInBoat(up.start, up.end, 90 * degree, false), [0, 1, 0]);
    expectClose(noseInBoat(up.start, up.end, -90 * degree, false), [0, -1, 0]);
  });

  it('turns up for a positive angle on a member that lies athwart, where it can turn to neither side', () => {
    expectClose(noseInBoat(athwart.start, athwart.end, 0, false), [1, 0, 0]);
    expectClose(noseInBoat(athwart.start, athwart.end, 90 * degree, false), [0, 0, 1]);
  });

  it('changes its reference from up to forward at 15 deg, on either side of forward', () => {
    const noseOf = (degrees: number, ahead: 1 | -1) => {
      const [x, z] = [Math.cos(degrees * degree), Math.sin(degrees * degree)];
      return noseInBoat(boatVector(0, 0, 2), boatVector(ahead * x, 0, 2 + z), 0, false);
    };
    for (const ahead of [1, -1] as const) {
      const [near, far] = [noseOf(14.9, ahead), noseOf(15.1, ahead)];
      // Square to the axis in the centreplane, once its upper side and once its forward one.
      expect(near[2]).toBeCloseTo(Math.cos(14.9 * degree), 10);
      expect(far[0]).toBeCloseTo(Math.sin(15.1 * degree), 10);
    }
  });

  it('is measured from up on a member within 15 deg of forward', () => {
    const nose = noseInBoat(forward.start, forward.end, 0, false);
    expect(nose[2]).toBeGreaterThan(0.99);
    expect(noseInBoat(forward.start, forward.end, 90 * degree, false)[1]).toBeGreaterThan(0.99);
  });

  it('is a unit vector square to the axis and does not care which end point comes first', () => {
    fc.assert(
      fc.property(member, angle, fc.boolean(), ({ start, end }, angleRad, isMirrored) => {
        const nose = noseInBoat(start, end, angleRad, isMirrored);
        const along = [end[0] - start[0], end[1] - start[1], end[2] - start[2]] as const;
        expect(magnitude(nose)).toBeCloseTo(1, 12);
        expect(dot(nose, along) / magnitude(along)).toBeCloseTo(0, 12);
        expectClose(noseInBoat(end, start, angleRad, isMirrored), nose);
      }),
    );
  });

  it('of a mirrored member is the mirror image', () => {
    const nose = noseInBoat(boatVector(0, 1, 1), boatVector(0, 1, 3), 20 * degree, false);
    const image = noseInBoat(boatVector(0, -1, 1), boatVector(0, -1, 3), 20 * degree, true);
    expectClose(image, [nose[0], -nose[1], nose[2]]);
  });
});

function expectClose(actual: readonly number[], expected: readonly number[]): void {
  expected.forEach((value, i) => {
    expect(actual[i]).toBeCloseTo(value, 9);
  });
}

/** A sharp bar five times as deep as thick, ends closed and no friction: EN's figure gives 1.0 along and 2.0 across. */
function fiveToOne(place: PlacedMember, direction: SectionDirection): FittingInput {
  const shape: SectionShape = {
    kind: 'rectangularBar',
    chord: { valueM: 0.1, basis: 'measured', doubtId: 'own:bar:chord' },
    thickness: { valueM: 0.02, basis: 'measured', doubtId: 'own:bar:thickness' },
    cornerRadiusM: 0,
    direction,
    directionDoubtId: 'own:bar:direction',
    coefficient: null,
    coefficientDoubtId: 'own:bar:coefficient',
    friction: false,
    ends: ['joined', 'surface'],
  };
  return fittingOf(shape, [place], 'bar');
}

const uniform = conditions(
  fc.constant({ kind: 'uniform' as const }),
  fc.record({
    kind: fc.constant('true' as const),
    speedMs: between(2, 25),
    heightM: fc.constant(10),
    angleFromCourseRad: between(0, Math.PI),
  }),
).map((condition) => ({ ...condition, riseM: 5 }));

/** Turns a vector about a unit axis. */
function turnedAbout(v: Vector, axis: Vector, by: number): Vector {
  const parallel = times(axis, inner(v, axis));
  const square = plus(v, times(parallel, -1));
  return plus(parallel, plus(times(square, Math.cos(by)), times(cross(axis, square), Math.sin(by))));
}

describe('the force on a fixed rectangular bar', () => {
  it('agrees with components of the wind on the turned section, worked out in the boat’s frame', () => {
    fc.assert(
      fc.property(member, angle, uniform, (place, angleRad, condition) => {
        const { deployed } = traceOf(fiveToOne(place, { kind: 'fixed', angleRad }), condition);
        const expected = fiveToOneForceInBoat(place, angleRad, condition);
        const size = length(expected) + 1e-9;
        const actual = [deployed.forceBoatXN, deployed.forceBoatYN, deployed.forceBoatZN];
        expected.forEach((value, i) => {
          expect(Math.abs((actual[i] ?? NaN) - value) / size).toBeLessThan(1e-9);
        });
      }),
      { numRuns: 300 },
    );
  });

  it('that turns with the wind without residual is that of the bar fixed edge-on to it', () => {
    fc.assert(
      fc.property(member, uniform, (place, condition) => {
        const turning = traceOf(
          fiveToOne(place, { kind: 'turning', pieces: 3, residualRad: 0, offRad: 0 }),
          condition,
        ).deployed;
        const { along, density, lengthM } = windOn(place, condition);
        const square = plus(along.wind, times(along.axis, -inner(along.wind, along.axis)));
        const expected = times(square, 0.5 * density * 1.0 * 0.02 * lengthM * length(square));
        const actual = [turning.forceBoatXN, turning.forceBoatYN, turning.forceBoatZN];
        expected.forEach((value, i) => {
          expect(Math.abs((actual[i] ?? NaN) - value) / (length(expected) + 1e-9)).toBeLessThan(1e-9);
        });
      }),
    );
  });

  it('never pushes against the wind: F . u >= 0', () => {
    fc.assert(
      fc.property(member, angle, uniform, (place, angleRad, condition) => {
        const { deployed } = traceOf(fiveToOne(place, { kind: 'fixed', angleRad }), condition);
        expect(deployed.airPowerW).toBeGreaterThanOrEqual(0);
      }),
    );
  });
});

type Condition = Parameters<typeof traceOf>[1];

/** The apparent wind in the boat's frame, from elementary turns; the tack's sign mirrors heel, leeway and wind. */
function windOn({ start, end }: PlacedMember, condition: Condition) {
  const { wind, boatSpeedMs, air } = condition;
  const side = condition.tack === 'starboard' ? 1 : -1;
  if (wind.kind !== 'true') throw new Error('this route takes a true wind');
  const from = wind.angleFromCourseRad;
  const inTrack: Vector = [
    -wind.speedMs * Math.cos(from) - boatSpeedMs,
    side * wind.speedMs * Math.sin(from),
    0,
  ];
  const toHeading = transposed(axesTurnedAboutZ(side * condition.leewayRad));
  const toBoat = transposed(axesTurnedAboutX(side * condition.heelRad));
  const inBoat = apply(toBoat, apply(toHeading, inTrack));
  const reach: Vector = [end[0] - start[0], end[1] - start[1], end[2] - start[2]];
  const lengthM = length(reach);
  return {
    along: { wind: inBoat, axis: times(reach, 1 / lengthM) },
    lengthM,
    density: densityOf(air),
  };
}

/** Ideal gases with Magnus' vapour pressure, as in the second route. */
function densityOf({ temperatureC, pressurePa, relativeHumidity }: Condition['air']): number {
  const vapour = relativeHumidity * 611.2 * Math.exp((17.62 * temperatureC) / (temperatureC + 243.12));
  return (pressurePa - vapour * (1 - 287.05 / 461.5)) / (287.05 * (temperatureC + 273.15));
}

function fiveToOneForceInBoat(place: PlacedMember, angleRad: number, condition: Condition): Vector {
  const { along, lengthM, density } = windOn(place, condition);
  const { wind, axis } = along;
  const isNearForward = Math.acos(Math.min(Math.abs(axis[0]), 1)) < 15 * degree;
  const reference: Vector = isNearForward ? [0, 0, 1] : [1, 0, 0];
  const zero = plus(reference, times(axis, -inner(reference, axis)));
  const unit = times(zero, 1 / length(zero));
  const toPort = cross(axis, unit)[1] > 0 ? axis : times(axis, -1);
  const nose = turnedAbout(unit, toPort, angleRad);
  const beam = cross(axis, nose);
  const square = plus(wind, times(axis, -inner(wind, axis)));
  const pressure = 0.5 * density * length(square) * lengthM;
  return plus(
    times(nose, pressure * 1.0 * 0.02 * inner(square, nose)),
    times(beam, pressure * 2.0 * 0.1 * inner(square, beam)),
  );
}

describe('a bar without lift', () => {
  it('inherits none from a section that was summed before it', () => {
    const wind = fc.sample(uniform, { numRuns: 1, seed: 5 })[0];
    if (wind === undefined) throw new Error('no condition was drawn');
    const flat = fiveToOne(up, { kind: 'fixed', angleRad: 0.5 });
    const round: FittingInput = {
      ...flat,
      shape: {
        kind: 'roundBar',
        diameter: { valueM: 0.05, basis: 'measured', doubtId: 'own:bar:diameter' },
        roughnessM: 0,
        coefficient: null,
        coefficientDoubtId: 'own:bar:coefficient',
        friction: false,
        ends: ['joined', 'joined'],
      },
    };
    const before = traceOf(round, wind).deployed;
    traceOf(flat, wind);
    expect(traceOf(round, wind).deployed).toEqual(before);
  });
});

describe('a section that turns with the wind', () => {
  const turnedBy = (offRad: number): SectionDirection => ({
    kind: 'turning',
    pieces: 1,
    residualRad: 0.1,
    offRad,
  });

  function incidenceAt(
    { start, end }: PlacedMember,
    condition: SailingCondition,
    offRad: number,
    share: number,
  ): number {
    const state = solveCondition(condition);
    const setting = { exposure: 1, turnCosine: 1, turnSine: 0 };
    const geometry = memberGeometry({ start, end }, state.rotation, state.riseM);
    const nose = { x: 0, y: 0, z: 0 };
    fixedOrTurnedNose(geometry, turnedBy(offRad), state, setting, nose);
    const heightM = heightAlong(geometry, share);
    return incidenceOf(geometry, nose, windAt(state, setting, heightM, emptyWind()));
  }

  const upright = member.filter(({ start, end }) => Math.abs(end[2] - start[2]) > 0.5);

  it('in an even wind meets it at what it is off, turned about its axis from start to end', () => {
    fc.assert(
      fc.property(
        upright,
        conditions(fc.constant({ kind: 'uniform' })),
        between(-0.5, 0.5),
        (placed, condition, offRad) => {
          const found = incidenceAt(placed, { ...condition, riseM: 20 }, offRad, 0.5);
          expect(found).toBeCloseTo(-offRad, 9);
        },
      ),
    );
  });

  it('over a sheared wind meets the air below from one side and the air above from the other', () => {
    const condition: SailingCondition = {
      ...steadyCondition,
      wind: { kind: 'true', speedMs: 10, heightM: 10, angleFromCourseRad: 60 * degree },
      boatSpeedMs: 8,
      windLaw: { kind: 'log', charnock: 0.011 },
    };
    const mast = { start: boatVector(0, 0, 1), end: boatVector(0, 0, 21) };
    const [low, high] = [incidenceAt(mast, condition, 0, 0), incidenceAt(mast, condition, 0, 1)];
    expect(Math.abs(low)).toBeGreaterThan(1 * degree);
    expect(Math.abs(high)).toBeGreaterThan(1 * degree);
    expect(Math.sign(low)).toBe(-Math.sign(high));
    // Counted with the dynamic pressure, the even sum of what the points see aside is none.
    let [moment, size] = [0, 0];
    const state = solveCondition(condition);
    for (let i = 0; i < 2000; i += 1) {
      const share = (i + 0.5) / 2000;
      const { speedMs } = apparentWindAt(state, 1 + 20 * share);
      moment += speedMs ** 2 * Math.sin(incidenceAt(mast, condition, 0, share));
      size += speedMs ** 2;
    }
    expect(Math.abs(moment / size)).toBeLessThan(1e-4);
  });
});
