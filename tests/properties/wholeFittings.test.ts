import { describe, expect, it } from 'vitest';
import type { FittingInput, MemberShape, Shape } from '../../src/physics/fitting/fittingInput';
import { basisDoubt } from '../../src/physics/fitting/fittingInput';
import { boatVector } from '../../src/physics/vector/vector3';
import { conditionOf, evaluate, fittingOf, memberOf } from '../published/support';
import { netTraceOf } from '../published/net';
import { sphereAt } from '../published/sphere';

const windMs = 12;
/** Dry air at 15 C and 101,325 Pa: p / (287.05 T), and Sutherland's viscosity over it. */
const densityKgM3 = 101_325 / (287.05 * 288.15);
const viscosityM2S = (1.458e-6 * 288.15 ** 1.5) / (288.15 + 110.4) / densityKgM3;
const pressurePa = (densityKgM3 * windMs * windMs) / 2;
const fromAhead = conditionOf({
  wind: { kind: 'true', speedMs: windMs, heightM: 10, angleFromCourseRad: 0 },
});
const fromPort = conditionOf({
  wind: { kind: 'true', speedMs: windMs, heightM: 10, angleFromCourseRad: Math.PI / 2 },
  tack: 'port',
});

const size = (valueM: number) => ({ valueM, basis: 'measured' as const, doubtId: 'own:one:size' });
const typed = (best: number) => ({ best, low: 0.8 * best, high: 1.3 * best, areaBase: 'stated', source: '' });

/** On a point 2 m up, reaching up by the height. */
function standing(shape: Shape, heightM = 0): FittingInput {
  return fittingOf(shape, [{ start: boatVector(0, 0, 2), end: boatVector(0, 0, 2 + heightM) }], 'one');
}

const common = {
  coefficient: typed(0.7),
  coefficientDoubtId: 'own:one:coefficient',
  friction: false,
  ends: ['joined', 'joined'],
} as const;
const section = {
  ...common,
  chord: size(0.2),
  thickness: size(0.05),
  cornerRadiusM: 0,
  direction: { kind: 'fixed', angleRad: 0 },
  directionDoubtId: 'own:one:direction',
} as const;
const bars: readonly (readonly [MemberShape, number])[] = [
  [{ kind: 'roundBar', diameter: size(0.03), roughnessM: 0, ...common }, 0.03],
  [{ kind: 'wire', construction: 'spiralStrand', diameter: size(0.008), ...common }, 0.008],
  [{ kind: 'ellipticalBar', ...section }, 0.2],
  [{ kind: 'rectangularBar', ...section }, 0.2],
  [{ kind: 'fairing', ...section }, 0.2],
];
const box: Shape = {
  kind: 'bluffBody',
  length: size(1.5),
  width: size(0.5),
  height: size(0.8),
  cornerRadiusM: 0,
  coefficients: { x: typed(1.1), y: typed(0.9), z: null },
  coefficientDoubtId: 'own:one:coefficient',
};
const ball: Shape = {
  kind: 'sphere',
  diameter: size(0.3),
  roughnessM: 0,
  coefficient: null,
  coefficientDoubtId: 'own:one:coefficient',
};

describe('one upright fitting in an even wind has rho/2 W^2 C A', () => {
  it.each(bars)('a bar of any section, on its width x length: $kind', (shape, widthM) => {
    const trace = evaluate(standing(shape, 3), fromAhead);
    const areaM2 = widthM * 3;
    expect(trace.deployed.dragAgainstTrackN / (pressurePa * 0.7 * areaM2)).toBeCloseTo(1, 10);
    const working = memberOf(trace);
    expect(working.areaM2).toBeCloseTo(areaM2, 12);
    expect(working.dragAreaM2).toBeCloseTo(0.7 * areaM2, 10);
    expect(working.dynamicPressurePa).toBeCloseTo(pressurePa, 8);
    expect(working.dragAlongWindN).toBeCloseTo(pressurePa * 0.7 * areaM2, 8);
    expect(working.heightM).toBeCloseTo(3.5, 12);
    expect([working.lowestHeightM, working.highestHeightM]).toEqual([2, 5]);
    expect(working.dryLengthM).toBeCloseTo(3, 12);
    expect(working.axisAngleRad).toBeCloseTo(Math.PI / 2, 12);
    expect(working.reynolds).toBeCloseTo((windMs * widthM) / viscosityM2S, 4);
  });

  it('a sphere, by its curve and on pi d^2 / 4', () => {
    const trace = evaluate(standing(ball), fromAhead);
    const areaM2 = Math.PI * 0.15 ** 2;
    const reynolds = (windMs * 0.3) / viscosityM2S;
    const { best, low, high } = sphereAt(reynolds);
    expect(trace.deployed.dragAgainstTrackN).toBeCloseTo(pressurePa * best * areaM2, 10);
    expect(memberOf(trace).areaM2).toBeCloseTo(areaM2, 12);
    expect(memberOf(trace).reynolds).toBeCloseTo(reynolds, 4);
    const doubt = trace.doubts.find(({ id }) => id.startsWith('coefficient:sphere'));
    expect(doubt?.up.dragAgainstTrackN).toBeCloseTo(pressurePa * (high - best) * areaM2, 10);
    expect(doubt?.down.dragAgainstTrackN).toBeCloseTo(pressurePa * (low - best) * areaM2, 10);
  });

  it('a sphere with a typed coefficient, whatever its curve says', () => {
    const trace = evaluate(standing({ ...ball, coefficient: typed(0.6) }), fromAhead);
    const expected = pressurePa * 0.6 * Math.PI * 0.15 ** 2;
    expect(trace.deployed.dragAgainstTrackN).toBeCloseTo(expected, 10);
    const doubt = trace.doubts.find(({ id }) => id === 'own:one:coefficient');
    expect(doubt?.up.dragAgainstTrackN).toBeCloseTo(0.3 * expected, 10);
    expect(doubt?.down.dragAgainstTrackN).toBeCloseTo(-0.2 * expected, 10);
  });

  it('a body, on the face that the wind meets', () => {
    const [front, side] = [0.5 * 0.8, 1.5 * 0.8];
    const ahead = evaluate(standing(box, 0.8), fromAhead);
    expect(ahead.deployed.dragAgainstTrackN).toBeCloseTo(pressurePa * 1.1 * front, 9);
    expect(memberOf(ahead).coefficientLow).toBeCloseTo(0.8 * 1.1, 12);
    expect(memberOf(ahead).coefficientHigh).toBeCloseTo(1.3 * 1.1, 12);
    expect(memberOf(ahead).areaM2).toBeCloseTo(front, 12);
    const abeam = evaluate(standing(box, 0.8), fromPort);
    expect(Math.abs(abeam.deployed.forceTrackYN)).toBeCloseTo(pressurePa * 0.9 * side, 9);
    expect(memberOf(abeam).areaM2).toBeCloseTo(side, 12);
  });

  it('a net, on its face and along it', () => {
    const net: Shape = {
      kind: 'net',
      facing: 'y',
      width: size(2),
      height: size(0.6),
      solidity: 0.2,
      wireDiameter: size(0.003),
    };
    const traced = netTraceOf({ areaM2: 1.2, solidity: 0.2, wireDiameterM: 0.003 }, windMs, viscosityM2S);
    const face = evaluate(standing(net, 0.6), fromPort).deployed;
    expect(Math.abs(face.forceTrackYN)).toBeCloseTo(pressurePa * traced.normalAreaBestM2, 9);
    const along = evaluate(standing(net, 0.6), fromAhead).deployed;
    expect(along.dragAgainstTrackN).toBeCloseTo(pressurePa * traced.alongAreaBestM2, 9);
  });
});

describe('a body', () => {
  it('half under water has half the force and half the area', () => {
    const whole = evaluate(standing(box, 0.8), fromAhead);
    const wet = fittingOf(box, [{ start: boatVector(0, 0, -0.4), end: boatVector(0, 0, 0.4) }], 'one');
    const half = evaluate(wet, fromAhead);
    expect(half.deployed.dragAgainstTrackN).toBeCloseTo(whole.deployed.dragAgainstTrackN / 2, 9);
    expect(memberOf(half).areaM2).toBeCloseTo(0.2, 12);
    expect(memberOf(half).heightM).toBeCloseTo(0.2, 12);
  });

  it('between its axes is doubted by -15 and +25 %, fully at 45 deg, no more among all three and not at all on an axis', () => {
    const at = (degrees: number, heelDeg = 0) => {
      const angleFromCourseRad = (degrees * Math.PI) / 180;
      const wind = { kind: 'true', speedMs: windMs, heightM: 10, angleFromCourseRad } as const;
      const condition = conditionOf({ wind, heelRad: (heelDeg * Math.PI) / 180 });
      const { deployed, doubts } = evaluate(standing(box, 0.8), condition);
      const doubt = doubts.find(({ id }) => id === 'coefficient:bluffBody:off-axis');
      const share = (change: number | undefined) => (change ?? NaN) / deployed.dragAgainstTrackN;
      return [share(doubt?.down.dragAgainstTrackN), share(doubt?.up.dragAgainstTrackN)] as const;
    };
    expect(at(45)[0]).toBeCloseTo(-0.15, 12);
    expect(at(45)[1]).toBeCloseTo(0.25, 12);
    expect(at(50, 35)[0]).toBeCloseTo(-0.15, 12);
    expect(at(50, 35)[1]).toBeCloseTo(0.25, 12);
    expect(at(0)[0]).toBeCloseTo(0, 12);
    expect(at(15)[1]).toBeCloseTo(0.25 * Math.sin(Math.PI / 6) ** 2, 12);
  });

  it('with edges and no typed coefficient is a cube’s: 1.05 (0.8 to 1.3) on every face', () => {
    const plain: Shape = { ...box, coefficients: { x: null, y: null, z: null } };
    const { deployed, doubts } = evaluate(standing(plain, 0.8), fromAhead);
    const edges = doubts.find(({ id }) => id === 'coefficient:bluffBody:edges');
    expect(deployed.dragAgainstTrackN).toBeCloseTo(pressurePa * 1.05 * 0.4, 9);
    expect(edges?.up.dragAgainstTrackN).toBeCloseTo(pressurePa * 0.25 * 0.4, 9);
    expect(edges?.down.dragAgainstTrackN).toBeCloseTo(-pressurePa * 0.25 * 0.4, 9);
  });
});

describe('a doubted size', () => {
  it('is doubted by 2 % when measured, 3 % from a drawing, 15 % when estimated', () => {
    expect(basisDoubt).toEqual({ measured: 0.02, drawing: 0.03, estimated: 0.15 });
  });
});
