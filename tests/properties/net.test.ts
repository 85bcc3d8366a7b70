import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  meshSolidity,
  netDragAreas,
  netNodes,
  netQuantities,
  netSolidityRange,
  screenLoss,
  slowWireFactor,
} from '../../src/physics/body/net';
import { netAxes } from '../../src/physics/body/netForce';
import { apparentWindAt } from '../../src/physics/condition/sailingState';
import type { NetShape } from '../../src/physics/fitting/fittingInput';
import { freeSetting } from '../../src/physics/fitting/localWind';
import { memberGeometry } from '../../src/physics/member/memberGeometry';
import { boatVector } from '../../src/physics/vector/vector3';
import { netAt, netTraceOf } from '../published/net';
import { conditionOf, stateOf } from '../published/support';
import { between } from './arbitraries';

const solidity = between(0, 1);
const wireReynolds = between(0, 4).map((log) => 10 ** log);

/** The curve as it was drawn, "solidity low best high", kept a second time so that a slip of the pen in the table shows. */
const drawn = [
  '0 0.8 1 1.2',
  '0.1 0.78 1.03 1.29',
  '0.2 0.87 1.18 1.66',
  '0.3 0.87 1.37 2.19',
  '0.5 0.99 1.42 1.83',
  '0.7 0.93 1.33 1.71',
  '1 1 1.18 1.36',
];

describe('the curve of nets', () => {
  it('has the nodes that were drawn', () => {
    expect(netNodes.map((node) => node.join(' '))).toEqual(drawn);
    expect(netSolidityRange).toEqual({ from: 0.1, to: 0.5 });
  });

  it('has 0.04 (0.02 to 0.08) along a net, half of it at half of solidity 0.13', () => {
    expect(netAt(0.13)).toMatchObject({
      alongAreaBestM2: 0.04,
      alongAreaLowM2: 0.02,
      alongAreaHighM2: 0.08,
    });
    expect(netAt(0.065).alongAreaBestM2).toBeCloseTo(0.02, 12);
    expect(netAt(0.12).alongAreaBestM2).toBeLessThan(0.04);
  });

  it('is held below wire Re 20', () => {
    expect(screenLoss(0.5, 1)).toBeCloseTo(3.9, 12);
    expect(screenLoss(0.5, 0)).toBeCloseTo(3.9, 12);
  });
});

describe('a net square onto the wind', () => {
  it('has nothing at solidity 0 and is a plate at solidity 1, whatever its wires', () => {
    fc.assert(
      fc.property(wireReynolds, (Re) => {
        const nothing = netAt(0, Re);
        expect(nothing).toMatchObject({ normalAreaBestM2: 0, normalAreaHighM2: 0, alongAreaHighM2: 0 });
        const plate = netAt(1, Re);
        expect(plate.normalCoefficientBest).toBeCloseTo(1.18, 12);
        expect(plate.normalCoefficientLow).toBeCloseTo(1, 12);
        expect(plate.normalCoefficientHigh).toBeCloseTo(1.36, 12);
      }),
    );
  });

  it('drags more the more solid it is, with its best value between low and high', () => {
    fc.assert(
      fc.property(between(1e-4, 0.999), wireReynolds, (s, Re) => {
        const [here, there] = [netAt(s, Re), netAt(s + 1e-3, Re)];
        expect(there.normalCoefficientBest).toBeGreaterThan(here.normalCoefficientBest);
        expect(here.normalCoefficientLow).toBeLessThan(here.normalCoefficientBest);
        expect(here.normalCoefficientBest).toBeLessThan(here.normalCoefficientHigh);
        expect(here.alongAreaLowM2).toBeLessThanOrEqual(here.alongAreaBestM2);
        expect(here.alongAreaBestM2).toBeLessThanOrEqual(here.alongAreaHighM2);
      }),
    );
  });

  it('has no step in solidity or in the wires’ Reynolds number', () => {
    fc.assert(
      fc.property(between(0, 0.999999), wireReynolds, (s, Re) => {
        const here = netAt(s, Re);
        for (const there of [netAt(s + 1e-7, Re), netAt(s, Re * (1 + 1e-7))]) {
          for (const key of [
            'normalCoefficientLow',
            'normalCoefficientBest',
            'normalCoefficientHigh',
          ] as const) {
            expect(Math.abs(there[key] - here[key])).toBeLessThan(2e-6);
          }
        }
      }),
    );
    for (const [s, low, best, high] of netNodes) {
      const trace = netAt(s);
      expect(trace.normalCoefficientLow).toBeCloseTo(s * low, 10);
      expect(trace.normalCoefficientBest).toBeCloseTo(s * best, 10);
      expect(trace.normalCoefficientHigh).toBeCloseTo(s * high, 10);
    }
  });

  it('catches more with slow thin wires, and the same above Re 400', () => {
    fc.assert(
      fc.property(between(0.001, 0.999), (s) => {
        expect(slowWireFactor(s, 400)).toBeCloseTo(1, 9);
        expect(slowWireFactor(s, 5e3)).toBeCloseTo(1, 9);
        const factors = [20, 50, 150, 400].map((Re) => slowWireFactor(s, Re));
        expect(factors).toEqual([...factors].sort((a, b) => b - a));
      }),
    );
    expect(slowWireFactor(0, 20)).toBeCloseTo(1.3 / 0.52, 6);
    expect(slowWireFactor(1e-5, 20)).toBeCloseTo(1.3 / 0.52, 3);
  });
});

describe('a net’s drag areas', () => {
  it('grow with the area and are far larger onto the face than along it', () => {
    fc.assert(
      fc.property(between(0.1, 20), between(0.1, 1), (areaM2, s) => {
        const one = netTraceOf({ areaM2: 1, solidity: s, wireDiameterM: 1e-3 }, 10, 1.5e-5);
        const many = netTraceOf({ areaM2, solidity: s, wireDiameterM: 1e-3 }, 10, 1.5e-5);
        expect(many.normalAreaBestM2 / one.normalAreaBestM2).toBeCloseTo(areaM2, 9);
        expect(many.alongAreaHighM2 / one.alongAreaHighM2).toBeCloseTo(areaM2, 9);
        expect(one.alongAreaBestM2).toBeLessThan(0.5 * one.normalAreaBestM2);
      }),
    );
  });

  it('take the wires’ Reynolds number from their diameter and the wind', () => {
    const trace = netTraceOf({ areaM2: 2, solidity: 0.2, wireDiameterM: 0.5e-3 }, 3, 1.5e-5);
    expect(trace.wireReynolds).toBeCloseTo(100, 9);
    expect(trace.slowWireFactor).toBeGreaterThan(1.1);
  });

  it('are taken in the wind of the middle of its dry height', () => {
    fc.assert(
      fc.property(between(-0.9, 3), between(1, 3), between(0.1, 0.9), (bottomM, heightM, s) => {
        const condition = conditionOf({ windLaw: { kind: 'power', exponent: 0.14 } });
        const state = stateOf(condition);
        const size = (valueM: number) => ({ valueM, basis: 'measured' as const, doubtId: 'own:net:size' });
        const shape: NetShape = {
          kind: 'net',
          facing: 'x',
          width: size(2),
          height: size(heightM),
          solidity: s,
          wireDiameter: size(0.2e-3),
        };
        const member = { start: boatVector(0, 0, bottomM), end: boatVector(0, 0, bottomM + heightM) };
        const middleM = (Math.max(bottomM, 0) + bottomM + heightM) / 2;
        const { speedMs } = apparentWindAt(state, middleM);
        const panel = { areaM2: 2 * heightM, solidity: s, wireDiameterM: 0.2e-3 };
        const there = netTraceOf(panel, speedMs, state.air.kinematicViscosityM2S);
        const net = netAxes(shape, memberGeometry(member, state.rotation, 0), state, freeSetting);
        expect(net[0].coefficient.best).toBeCloseTo(there.normalCoefficientBest, 10);
        expect(net[1].coefficient.best).toBeCloseTo(there.alongAreaBestM2 / panel.areaM2, 10);
      }),
    );
  });

  it('are not invented for an impossible net', () => {
    const good = { areaM2: 1, solidity: 0.2, wireDiameterM: 1e-3 };
    for (const bad of [
      { ...good, solidity: 1.1 },
      { ...good, solidity: -0.1 },
      { ...good, solidity: NaN },
      { ...good, areaM2: 0 },
      { ...good, wireDiameterM: 0 },
    ]) {
      expect(netDragAreas(bad, 10, 1.5e-5)).toBe(null);
    }
    expect(netDragAreas(good, -1, 1.5e-5)).toBe(null);
    expect(netDragAreas(good, 10, 0)).toBe(null);
  });

  it('describe every number of their working', () => {
    expect(Object.keys(netQuantities).sort()).toEqual(Object.keys(netAt(0.2)).sort());
  });
});

describe('a screen', () => {
  it('loses nothing open, everything closed, and its mesh is 1 - (1 - d/m)^2 solid', () => {
    fc.assert(
      fc.property(solidity, (s) => {
        expect(screenLoss(0, 1e3)).toBe(0);
        expect(screenLoss(1, 1e3)).toBe(Infinity);
        expect(meshSolidity(s, 1)).toBeCloseTo(1 - (1 - s) ** 2, 12);
        expect(meshSolidity(2, 1)).toBe(1);
      }),
    );
  });
});

describe('numbers quoted from the published formulas are what these formulas give', () => {
  const woven = (s: number): number => (0.52 * (1 - (1 - s) ** 2)) / (1 - s) ** 2;
  const taylor = (s: number): number => woven(s) / (1 + woven(s) / 4) ** 2;
  const loland = (s: number): number => 0.33 * s + 6.54 * s ** 2 - 4.88 * s ** 3;
  const aarsnes = (s: number): number => s - 1.24 * s ** 2 + 13.7 * s ** 3;

  it('screens in a free stream, open nets, net panels', () => {
    expect(taylor(0.1)).toBeCloseTo(0.115, 3);
    expect(taylor(0.15)).toBeCloseTo(0.181, 3);
    expect(taylor(0.2)).toBeCloseTo(0.254, 3);
    expect(taylor(0.3)).toBeCloseTo(0.42, 3);
    expect(taylor(0.5)).toBeCloseTo(0.807, 3);
    expect(0.95 * 0.15 + 0.2 * 0.15 ** 2).toBeCloseTo(0.147, 3);
    expect(0.72 * 0.15 + 2.1 * 0.15 ** 2).toBeCloseTo(0.155, 3);
    expect(0.67 * 0.1 + 1.3 * 0.1 ** 2).toBeCloseTo(0.08, 12);
    expect(0.67 * 0.15 + 1.3 * 0.15 ** 2).toBeCloseTo(0.13, 3);
    expect(0.7 * 0.15 + 4.9 * 0.15 ** 2).toBeCloseTo(0.215, 3);
    expect([0.15, 0.2, 0.3].map((s) => Number(loland(s).toFixed(3)))).toEqual([0.18, 0.289, 0.556]);
    expect([0.15, 0.2, 0.3].map((s) => Number(aarsnes(s).toFixed(3)))).toEqual([0.168, 0.26, 0.558]);
  });
});
