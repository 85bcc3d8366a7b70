import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Change } from '../../src/physics/fitting/change';
import type { FittingInput, PlacedMember, RoundBarShape } from '../../src/physics/fitting/fittingInput';
import { crossFlowDoubt } from '../../src/physics/section/crossFlowDoubt';
import { laminarFriction, roughFriction, turbulentFriction } from '../../src/physics/section/skinFriction';
import { boatVector } from '../../src/physics/vector/vector3';
import { conditionOf, evaluate, memberOf } from '../published/support';
import { between, degree } from './arbitraries';
import { barOf, steadyCondition } from './bars';
import { traceOf } from './support';

const typed = { best: 1.1, low: 1.1, high: 1.1, areaBase: 'd L', source: '' };

/** A bar of 3 m in a wind from ahead, its axis at so many degrees from the wind. */
function leaning(degrees: number, shape: Partial<RoundBarShape> = {}): FittingInput {
  const [x, z] = [3 * Math.cos(degrees * degree), 3 * Math.sin(degrees * degree)];
  return barOf(0.03, [{ start: boatVector(0, 0, 2), end: boatVector(x, 0, 2 + z) }], {
    coefficient: typed,
    ...shape,
  });
}

function doubtIn(fitting: FittingInput, id: string, duty = 1): { up: Change; down: Change } | null {
  return traceOf(fitting, steadyCondition, duty).doubts.find((doubt) => doubt.id === id) ?? null;
}

describe('the cross-flow principle', () => {
  it('is doubted by the same share of the force to either side, and not from 45 deg on', () => {
    fc.assert(
      fc.property(between(2, 88), (degrees) => {
        fc.pre(Math.abs(degrees - 45) > 0.01);
        const bar = leaning(degrees);
        const { deployed } = traceOf(bar, steadyCondition);
        const doubt = doubtIn(bar, 'cross-flow');
        if (degrees > 45) {
          expect(doubt).toBeNull();
          return;
        }
        const share = crossFlowDoubt(Math.sin(degrees * degree));
        for (const key of ['dragAgainstTrackN', 'airPowerW', 'trackPowerW'] as const) {
          expect((doubt?.up[key] ?? NaN) / deployed[key]).toBeCloseTo(share, 10);
          expect((doubt?.down[key] ?? NaN) / deployed[key]).toBeCloseTo(-share, 10);
        }
      }),
    );
  });

  it('is doubted by nothing at 45 deg, 20 % at 30 deg and half along the axis, eased between in the sine', () => {
    const eased = (from: number, to: number, share: number): number =>
      from + (to - from) * (3 * share ** 2 - 2 * share ** 3);
    fc.assert(
      fc.property(between(0, 1), (share) => {
        const [outer, inner] = [Math.SQRT1_2 - share * (Math.SQRT1_2 - 0.5), 0.5 * (1 - share)];
        expect(crossFlowDoubt(outer)).toBeCloseTo(eased(0, 0.2, share), 10);
        expect(crossFlowDoubt(inner)).toBeCloseTo(eased(0.2, 0.5, share), 10);
      }),
    );
  });
});

describe('the cross-flow principle on a section that lifts', () => {
  it('is doubted in its lift as in its drag', () => {
    const size = (valueM: number) => ({ valueM, basis: 'measured' as const, doubtId: 'own:bar:size' });
    fc.assert(
      fc.property(between(10, 40), between(-80, 80), (degrees, turnDeg) => {
        const bar: FittingInput = {
          ...leaning(degrees),
          shape: {
            kind: 'rectangularBar',
            chord: size(0.1),
            thickness: size(0.03),
            cornerRadiusM: 0,
            direction: { kind: 'fixed', angleRad: turnDeg * degree },
            directionDoubtId: 'own:bar:direction',
            coefficient: null,
            coefficientDoubtId: 'own:bar:coefficient',
            friction: false,
            ends: ['joined', 'joined'],
          },
        };
        const { deployed } = traceOf(bar, steadyCondition);
        const doubt = doubtIn(bar, 'cross-flow');
        const share = crossFlowDoubt(Math.sin(degrees * degree));
        for (const key of ['dragAgainstTrackN', 'sideForceN', 'heelingMomentNm'] as const) {
          expect(doubt?.up[key]).toBeCloseTo(share * deployed[key], 9);
          expect(doubt?.down[key]).toBeCloseTo(-share * deployed[key], 9);
        }
      }),
    );
  });
});

describe('friction along a bar', () => {
  it('is rho/2 C_f pi d L u_t^2, doubted from the laminar to the rough value', () => {
    const bar = leaning(0, { friction: true });
    const condition = conditionOf();
    const trace = evaluate(bar, condition);
    const densityKgM3 = 101_325 / (287.05 * 288.15);
    const viscosity = (1.458e-6 * 288.15 ** 1.5) / (288.15 + 110.4) / densityKgM3;
    const reynolds = (10 * 3) / viscosity;
    const perCoefficient = (densityKgM3 / 2) * Math.PI * 0.03 * 3 * 100;
    const best = turbulentFriction(reynolds);
    expect(trace.deployed.dragAgainstTrackN).toBeCloseTo(perCoefficient * best, 10);
    expect(memberOf(trace).frictionCoefficient).toBeCloseTo(best, 12);
    expect(memberOf(trace).axisAngleRad).toBeCloseTo(0, 12);
    const doubt = trace.doubts.find(({ id }) => id === 'friction');
    const changeTo = (value: number): number => perCoefficient * (value - best);
    expect(doubt?.up.dragAgainstTrackN).toBeCloseTo(changeTo(roughFriction(reynolds)), 10);
    expect(doubt?.down.dragAgainstTrackN).toBeCloseTo(changeTo(laminarFriction(reynolds)), 10);
  });
});

describe('a doubted length', () => {
  const ends = ['free', 'surface', 'joined'] as const;

  it('keeps the end that stands on a surface, else the middle', () => {
    fc.assert(
      fc.property(fc.constantFrom(...ends), fc.constantFrom(...ends), (first, last) => {
        const member = { start: boatVector(1, 0, 2), end: boatVector(2, 0.5, 6) };
        const bar = barOf(0.03, [member], { coefficient: typed, ends: [first, last] });
        const lengthDoubt = { fraction: 0.1, doubtId: 'own:bar:length' };
        const fixed = first === last ? 0.5 : first === 'surface' ? 0 : last === 'surface' ? 1 : 0.5;
        const stretched = (factor: number): PlacedMember => {
          const at = (share: number) => {
            const place = fixed + factor * (share - fixed);
            return boatVector(1 + place, 0.5 * place, 2 + 4 * place);
          };
          return { start: at(0), end: at(1) };
        };
        const doubt = doubtIn({ ...bar, lengthDoubt }, 'own:bar:length');
        const best = traceOf(bar, steadyCondition).mean;
        for (const [side, factor] of [
          ['up', 1.1],
          ['down', 0.9],
        ] as const) {
          const { mean } = traceOf({ ...bar, members: [stretched(factor)] }, steadyCondition);
          for (const key of ['dragAgainstTrackN', 'heelingMomentNm', 'airPowerW'] as const) {
            expect(doubt?.[side][key]).toBeCloseTo(mean[key] - best[key], 9);
          }
        }
      }),
      { numRuns: 30 },
    );
  });
});

describe('free ends', () => {
  it('are doubted by 4 % of the deployed force, whatever the method', () => {
    const stowed = {
      dragAreaM2: { best: 0.3, low: 0.3, high: 0.3 },
      place: boatVector(0, 0, 3),
      doubtId: 'own:bar:stowed-area',
    };
    const bar = { ...leaning(90, { ends: ['free', 'free'] }), stowed };
    for (const duty of [1, 0.4]) {
      const { deployed } = traceOf(bar, steadyCondition);
      const doubt = doubtIn(bar, 'end-table', duty);
      const expected = 0.04 * duty * deployed.dragAgainstTrackN;
      expect(doubt?.up.dragAgainstTrackN).toBeCloseTo(expected, 10);
      expect(doubt?.down.dragAgainstTrackN).toBeCloseTo(-expected, 10);
    }
    expect(doubtIn(leaning(90), 'end-table')).toBeNull();
    expect(doubtIn(leaning(90), 'ends')).toBeNull();
  });
});

describe('the Reynolds number that counts towards the crisis', () => {
  it('is the bar’s own for a smooth bar square to the wind', () => {
    for (const diameterM of [0.01, 0.1, 0.4]) {
      const bar = barOf(diameterM, [{ start: boatVector(0, 0, 2), end: boatVector(0, 0, 5) }]);
      const [member] = traceOf(bar, steadyCondition).members;
      expect(member?.crisisReynolds).toBeCloseTo(member?.reynolds ?? NaN, 4);
    }
  });
});
