import fc from 'fast-check';
import { describe, it } from 'vitest';
import type { SailingCondition } from '../../src/physics/condition/sailingCondition';
import { outcomeKeys, type Outcome } from '../../src/physics/fitting/outcome';
import { between, conditions, duties, fittings, speedFreeLaw } from './arbitraries';
import { expectSameOutcome, traceOf } from './support';

function scaledSpeeds(condition: SailingCondition, factor: number): SailingCondition {
  const { wind, boatSpeedMs } = condition;
  return {
    ...condition,
    wind: { ...wind, speedMs: wind.speedMs * factor },
    boatSpeedMs: boatSpeedMs * factor,
  };
}

function scaledOutcome(outcome: Outcome, factor: number): Outcome {
  return Object.fromEntries(
    outcomeKeys.map((key) => [key, outcome[key] * factor ** (key.endsWith('W') ? 3 : 2)]),
  ) as Record<keyof Outcome, number>;
}

const quadraticCase = [fittings({ isQuadratic: true }), conditions(speedFreeLaw), duties] as const;

describe('fixed coefficients in a wind whose shape does not depend on its speed', () => {
  it('true wind and boat speed times k give forces and moments times k squared and powers times k cubed', () => {
    fc.assert(
      fc.property(...quadraticCase, between(0.3, 3), (fitting, condition, duty, factor) => {
        const slow = traceOf(fitting, condition, duty);
        const fast = traceOf(fitting, scaledSpeeds(condition, factor), duty);
        expectSameOutcome(fast.mean, scaledOutcome(slow.mean, factor), 1e-9);
        expectSameOutcome(fast.stowed, scaledOutcome(slow.stowed, factor), 1e-9);
      }),
      { numRuns: 300 },
    );
  });

  it('exposure times k gives forces and both powers times k squared', () => {
    fc.assert(
      fc.property(quadraticCase[0], quadraticCase[1], between(0.3, 0.9), (fitting, condition, factor) => {
        const times = (value: number) => value * factor;
        const sheltered = {
          ...fitting,
          exposure: { ...fitting.exposure, best: times(fitting.exposure.best) },
          exposureLeeward: { ...fitting.exposureLeeward, best: times(fitting.exposureLeeward.best) },
        };
        const { deployed } = traceOf(fitting, condition);
        const expected = Object.fromEntries(
          outcomeKeys.map((key) => [key, deployed[key] * factor ** 2]),
        ) as unknown as Outcome;
        expectSameOutcome(traceOf(sheltered, condition).deployed, expected, 1e-9);
      }),
      { numRuns: 200 },
    );
  });
});
