import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { SailingCondition } from '../../src/physics/condition/sailingCondition';
import { doubtChange, type DoubtChange } from '../../src/physics/doubt/doubtChange';
import { isMemberShape, type FittingInput, type PlacedMember } from '../../src/physics/fitting/fittingInput';
import { doubtedKeys } from '../../src/physics/fitting/change';
import { outcomeKeys, type Outcome, type OutcomeKey } from '../../src/physics/fitting/outcome';
import { boatVector, type BoatVector } from '../../src/physics/vector/vector3';
import { anyWindLaw, between, conditions, degree, duties, fittings, trueWindInput } from './arbitraries';
import { expectSameOutcome, forceSizeN, traceOf } from './support';

type MovePoint = (point: BoatVector) => BoatVector;

function moved(fitting: FittingInput, move: MovePoint, isMirror = false): FittingInput {
  const member = ({ start, end, isMirrored = false }: PlacedMember): PlacedMember => ({
    start: move(start),
    end: move(end),
    isMirrored: isMirrored !== isMirror,
  });
  return {
    ...fitting,
    members: fitting.members.map(member),
    stowed: fitting.stowed === null ? null : { ...fitting.stowed, place: move(fitting.stowed.place) },
  };
}

const mirror: MovePoint = ([x, y, z]) => boatVector(x, -y, z);

function mirroredCondition(condition: SailingCondition): SailingCondition {
  return {
    ...condition,
    tack: condition.tack === 'port' ? 'starboard' : 'port',
    centreOfLateralResistance: mirror(condition.centreOfLateralResistance),
  };
}

/** What the mirror turns round: forces across, moments about the axes in the plane of symmetry. */
const flipped: readonly OutcomeKey[] = [
  'forceTrackYN',
  'forceBoatYN',
  'momentTrackXNm',
  'momentTrackZNm',
  'momentBoatXNm',
  'momentBoatZNm',
];

function mirroredOutcome(outcome: Outcome): Outcome {
  const signed = outcomeKeys.map((key) => [key, flipped.includes(key) ? -outcome[key] : outcome[key]]);
  return Object.fromEntries(signed) as Record<OutcomeKey, number>;
}

function expectSameDoubts(
  actual: readonly DoubtChange[],
  expected: readonly DoubtChange[],
  scale: number,
): void {
  expect(actual.map(({ id }) => id).sort()).toEqual(expected.map(({ id }) => id).sort());
  for (const { id, up, down } of expected) {
    const other = actual.find((doubt) => doubt.id === id);
    for (const key of doubtedKeys) {
      expect(Math.abs((other?.up[key] ?? NaN) - up[key]), `${id} up ${key}`).toBeLessThanOrEqual(scale);
      expect(Math.abs((other?.down[key] ?? NaN) - down[key]), `${id} down ${key}`).toBeLessThanOrEqual(scale);
    }
  }
}

/**
 * A section that turns may be off to either side by an amount without a sign: its up state is the turn about the axis from
 * start to end. The mirror, or an axis the other way round, makes that the turn to the other side, its down state.
 */
function sidesChanged({ shape }: FittingInput, doubts: readonly DoubtChange[]): DoubtChange[] {
  return doubts.map((doubt) => {
    const { id, up, down } = doubt;
    return 'direction' in shape && id === shape.directionDoubtId ? doubtChange(id, down, up) : doubt;
  });
}

describe('mirror image', () => {
  it('of boat, tack and wind mirrors forces and moments and leaves powers, side force and heeling moment', () => {
    fc.assert(
      fc.property(fittings(), conditions(), duties, (fitting, condition, duty) => {
        const one = traceOf(fitting, condition, duty);
        const other = traceOf(moved(fitting, mirror, true), mirroredCondition(condition), duty);
        expectSameOutcome(other.mean, mirroredOutcome(one.mean), 1e-9);
        expectSameOutcome(other.deployed, mirroredOutcome(one.deployed), 1e-9);
        const expected = sidesChanged(fitting, one.doubts);
        expectSameDoubts(other.doubts, expected, 1e-8 * (1 + 20 * forceSizeN(one.deployed)));
        expect(other.notices).toEqual(one.notices);
      }),
      { numRuns: 300 },
    );
  });

  it('of a fitting on the leeward side has the leeward exposure: a pair is its two halves', () => {
    fc.assert(
      fc.property(fittings(), conditions(), (fitting, condition) => {
        const half = { ...fitting, members: fitting.members.slice(0, 1) };
        const [member] = half.members;
        if (member === undefined || Math.abs(member.start[1] + member.end[1]) < 1e-3) return;
        const isLeeward = member.start[1] + member.end[1] > 0 === (condition.tack === 'starboard');
        const exposure = isLeeward ? fitting.exposureLeeward : fitting.exposure;
        const same = { ...half, exposure, exposureLeeward: exposure };
        expectSameOutcome(traceOf(half, condition).mean, traceOf(same, condition).mean, 1e-12);
      }),
    );
  });
});

/** The boat's point as it lies in the track's frame: heel about x, then leeway about the vertical, each on its own. */
function laidInTrack({ tack, heelRad, leewayRad }: SailingCondition): MovePoint {
  const side = tack === 'starboard' ? 1 : -1;
  return ([x, y, z]) => {
    const heel = side * heelRad;
    const [across, up] = [y * Math.cos(heel) + z * Math.sin(heel), z * Math.cos(heel) - y * Math.sin(heel)];
    const leeway = side * leewayRad;
    return boatVector(
      x * Math.cos(leeway) + across * Math.sin(leeway),
      across * Math.cos(leeway) - x * Math.sin(leeway),
      up,
    );
  };
}

const trackKeys = outcomeKeys.filter(
  (key) => !key.includes('Boat') && key !== 'heelingMomentNm' && key !== 'fullPriceW',
);
const boatForceKeys: readonly OutcomeKey[] = [
  'forceBoatXN',
  'forceBoatYN',
  'forceBoatZN',
  'momentBoatXNm',
  'momentBoatYNm',
  'momentBoatZNm',
  'heelingMomentNm',
  'airPowerW',
];

function expectSameEntries(
  actual: Outcome,
  expected: Outcome,
  keys: readonly OutcomeKey[],
  relative: number,
): void {
  const scale = relative * 20 * (1e-6 + Math.max(forceSizeN(expected), forceSizeN(actual)));
  for (const key of keys) expect(Math.abs(actual[key] - expected[key]), key).toBeLessThanOrEqual(scale);
}

describe('rotating everything together changes nothing', () => {
  it('an upright boat whose parts lie where heel and leeway put them has the same track forces', () => {
    const isotropic = fittings({ kinds: ['roundBar', 'measuredArea'], sameOnBothSides: true });
    fc.assert(
      fc.property(isotropic, conditions(anyWindLaw, trueWindInput), duties, (fitting, condition, duty) => {
        const upright = { ...condition, heelRad: 0, leewayRad: 0 };
        const laid = moved(fitting, laidInTrack(condition));
        const expected = traceOf(fitting, condition, duty).mean;
        expectSameEntries(traceOf(laid, upright, duty).mean, expected, trackKeys, 1e-9);
      }),
      { numRuns: 300 },
    );
  });

  it('at rest, turning the boat and the wind by one angle leaves force and moment in the boat’s frame', () => {
    const turn = between(-8 * degree, 8 * degree);
    const angle = between(10 * degree, 170 * degree);
    fc.assert(
      fc.property(
        fittings(),
        conditions(anyWindLaw, trueWindInput),
        angle,
        turn,
        (fitting, drawn, from, by) => {
          const at = (extraRad: number): SailingCondition => ({
            ...drawn,
            boatSpeedMs: 0,
            leewayRad: drawn.leewayRad + extraRad,
            wind: {
              kind: 'true',
              speedMs: drawn.wind.speedMs,
              heightM: 10,
              angleFromCourseRad: from + extraRad,
            },
          });
          const expected = traceOf(fitting, at(0)).deployed;
          expectSameEntries(traceOf(fitting, at(by)).deployed, expected, boatForceKeys, 1e-9);
        },
      ),
      { numRuns: 300 },
    );
  });

  it('a body with the same drag area along all three axes has the force of a measured area', () => {
    const body = fittings({ kinds: ['bluffBody'] });
    fc.assert(
      fc.property(
        body,
        conditions(fc.constant({ kind: 'uniform' })),
        between(0.1, 2),
        (drawn, condition, sideM) => {
          if (drawn.shape.kind !== 'bluffBody') return;
          const size = { ...drawn.shape.length, valueM: sideM };
          const cube: FittingInput = {
            ...drawn,
            shape: {
              ...drawn.shape,
              length: size,
              width: size,
              height: size,
              cornerRadiusM: 0,
              coefficients: { x: null, y: null, z: null },
            },
            members: drawn.members.map(({ start: [x, y, z] }) => ({
              start: boatVector(x, y, z + 20),
              end: boatVector(x, y, z + 20 + sideM),
            })),
          };
          const area = 1.05 * sideM ** 2;
          const measured: FittingInput = {
            ...cube,
            shape: {
              kind: 'measuredArea',
              dragAreaM2: { best: area, low: area, high: area },
              doubtId: 'own:area',
            },
            members: cube.members.map(({ start: [x, y, z] }) => {
              const middle = boatVector(x, y, z + sideM / 2);
              return { start: middle, end: middle };
            }),
          };
          const expected = traceOf(measured, condition).deployed;
          expectSameOutcome(traceOf(cube, condition).deployed, expected, 1e-9);
        },
      ),
    );
  });
});

describe('moving a fitting along the boat', () => {
  it('changes no force and no power, and the moment by the move times the force', () => {
    fc.assert(
      fc.property(fittings(), conditions(), between(-5, 5), (fitting, condition, byM) => {
        const here = traceOf(fitting, condition).deployed;
        const there = traceOf(
          moved(fitting, ([x, y, z]) => boatVector(x + byM, y, z)),
          condition,
        ).deployed;
        const expected: Outcome = {
          ...there,
          ...Object.fromEntries(
            outcomeKeys.filter((key) => !key.includes('oment')).map((key) => [key, here[key]]),
          ),
          momentBoatXNm: here.momentBoatXNm,
          momentBoatYNm: here.momentBoatYNm - byM * here.forceBoatZN,
          momentBoatZNm: here.momentBoatZNm + byM * here.forceBoatYN,
          heelingMomentNm: here.heelingMomentNm,
        };
        expectSameOutcome(there, expected, 1e-9);
      }),
      { numRuns: 200 },
    );
  });
});

describe('swapping the end points of a bar', () => {
  const bars = ['roundBar', 'wire', 'ellipticalBar', 'rectangularBar', 'fairing'] as const;

  it('changes nothing', () => {
    fc.assert(
      fc.property(fittings({ kinds: bars }), conditions(), duties, (fitting, condition, duty) => {
        if (!isMemberShape(fitting.shape)) return;
        const [first, last] = fitting.shape.ends;
        const swapped: FittingInput = {
          ...fitting,
          shape: { ...fitting.shape, ends: [last, first] },
          members: fitting.members.map((member) => ({ ...member, start: member.end, end: member.start })),
        };
        const one = traceOf(fitting, condition, duty);
        const other = traceOf(swapped, condition, duty);
        expectSameOutcome(other.mean, one.mean, 1e-10);
        const expected = sidesChanged(fitting, one.doubts);
        expectSameDoubts(other.doubts, expected, 1e-9 * (1 + 20 * forceSizeN(one.deployed)));
      }),
      { numRuns: 200 },
    );
  });
});
