import { describe, expect, it } from 'vitest';
import { evaluateFitting } from '../../../src/physics/fitting/evaluateFitting';
import { conditionStates } from '../../../src/physics/condition/conditionStates';
import { deckLineOf, fittingToPhysics } from '../../../src/project/core/fittingToPhysics';
import { asSailed } from '../../../src/project/core/fittingState';
import { fittingSweep, sweepAnglesRad } from '../../../src/project/picture/dragAreaSweep';
import { conditionOf, trueWind } from '../../published/support';
import { everyKind } from '../ledger/openProjects';
import { stateAt } from './pictures';

const project = everyKind();
const line = deckLineOf(project.boat);
const heel = { heelDeg: 15, leewayDeg: 4, angleDeg: 50 };

describe('drag area against the apparent wind angle', () => {
  it.each(project.fittings.map((fitting) => [fitting.name, fitting] as const))(
    'is the air power over q V of the same boat at rest in that wind: %s',
    (_, fitting) => {
      const alwaysUsed = { ...fitting, dutyFraction: { default: 1, byCondition: [] } };
      const sweep = fittingSweep(alwaysUsed, line, stateAt(heel), project.methods, 'none', 10);
      const input = fittingToPhysics(asSailed(alwaysUsed), line);
      for (const [i, angleRad] of sweepAnglesRad.entries()) {
        const condition = conditionOf({
          wind: trueWind(10, (angleRad * 180) / Math.PI + 4),
          heelRad: (15 * Math.PI) / 180,
          leewayRad: (4 * Math.PI) / 180,
        });
        const states = conditionStates(condition);
        const { mean } = evaluateFitting(input, states, project.methods, 1);
        const pressure = 0.5 * states.best.air.densityKgM3 * 100;
        expect(sweep[i]).toBeCloseTo(mean.airPowerW / (pressure * 10), 9);
      }
    },
  );

  it('of a sphere on an upright boat is the same from everywhere', () => {
    const ball = project.fittings.find(({ shape }) => shape.kind === 'sphere');
    if (ball === undefined) throw new Error('no sphere');
    const sweep = fittingSweep(ball, line, stateAt(), project.methods, 'none', 10);
    for (const value of sweep) expect(value).toBeCloseTo(sweep[0] ?? NaN, 12);
    expect(sweep[0]).toBeGreaterThan(0);
  });
});
