import { describe, expect, it } from 'vitest';
import { asSailed } from '../../../src/project/core/fittingState';
import { laidFitting } from '../../../src/project/core/laidFitting';
import type { ProjectBoat, ProjectCondition } from '../../../src/project/file/schema';
import { blankProject } from '../../../src/project/file/blankParts';
import { solveProjectCondition } from '../../../src/project/ledger/conditionSummary';
import { ledgerOf, pole, reach } from '../refit/support';

const project = blankProject({ fittings: [pole], conditions: [reach], plans: [] });
const state = asSailed(pole);

function laidIn(changes: Partial<ProjectCondition>, boat: ProjectBoat = project.boat) {
  const condition = { ...reach, ...changes };
  return laidFitting(state, boat, solveProjectCondition(project, condition).states.best);
}

describe('a laid fitting', () => {
  it('serves on when only the wind, the boat speed or the air is another', () => {
    const laid = laidIn({});
    expect(laidIn({ wind: { ...reach.wind, speedMs: reach.wind.speedMs + 1 } })).toBe(laid);
    expect(laidIn({ boatSpeedMs: reach.boatSpeedMs + 1 })).toBe(laid);
    expect(laidIn({ air: { ...reach.air, temperatureC: reach.air.temperatureC + 10 } })).toBe(laid);
  });

  it.each([
    ['heel', { heelDeg: reach.heelDeg + 5 }],
    ['leeway', { leewayDeg: reach.leewayDeg + 2 }],
    ['rise', { riseM: reach.riseM + 0.1 }],
    ['tack', { heelDeg: 10, tack: reach.tack === 'port' ? 'starboard' : 'port' }],
  ] as const)('is laid anew when the %s is another', (_, changes) => {
    const before = laidIn('tack' in changes ? { heelDeg: 10 } : {});
    const after = laidIn(changes);
    expect(after).not.toBe(before);
    expect(after.laid[0]?.nodes).not.toEqual(before.laid[0]?.nodes);
  });

  it('is laid anew on another boat', () => {
    expect(laidIn({}, { ...project.boat })).not.toBe(laidIn({}));
  });

  it('gives a ledger after many edits of the wind and the heel that is the one of a project opened anew', () => {
    const at = (speedMs: number, heelDeg: number) => ({
      ...project,
      conditions: [{ ...reach, heelDeg, wind: { ...reach.wind, speedMs } }],
    });
    for (let i = 0; i < 12; i += 1) ledgerOf(at(5 + i, 3 * i), null);
    const edited = ledgerOf(at(9, 7), null).forces.before.outcome;
    expect(edited).toEqual(ledgerOf(structuredClone(at(9, 7)), null).forces.before.outcome);
  });
});
