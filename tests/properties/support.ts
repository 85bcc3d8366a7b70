import { expect } from 'vitest';
import { conditionStates } from '../../src/physics/condition/conditionStates';
import type { SailingCondition } from '../../src/physics/condition/sailingCondition';
import { evaluateFitting, type FittingTrace } from '../../src/physics/fitting/evaluateFitting';
import type { FittingInput } from '../../src/physics/fitting/fittingInput';
import { outcomeKeys, type Outcome, type OutcomeKey } from '../../src/physics/fitting/outcome';
import type { EndMethod } from '../../src/physics/section/endEffect';

/** The fitting in the condition with every doubt, through the code that the ledger uses. */
export function traceOf(
  fitting: FittingInput,
  condition: SailingCondition,
  dutyFraction = 1,
  ends: EndMethod = 'dnv',
): FittingTrace {
  return evaluateFitting(
    fitting,
    conditionStates(condition),
    { ends, inclined: 'cross-flow', fairing: 'turbulent' },
    dutyFraction,
  );
}

/** Length of the force. */
export function forceSizeN({ forceTrackXN, forceTrackYN, forceTrackZN }: Outcome): number {
  return Math.hypot(forceTrackXN, forceTrackYN, forceTrackZN);
}

/** Farthest that a generated point lies from the boat's origin, m: turns a force's size into a moment's. */
const armM = 20;
/** Turns a force's size into a power's, m/s. */
const speedMs = 20;

/** The size that an entry's rounding or tolerance is measured against. */
function scaleOf(key: OutcomeKey, forceN: number): number {
  if (key.includes('oment')) return forceN * armM;
  return key.endsWith('W') ? forceN * speedMs : forceN;
}

/** How far one entry of two outcomes lies apart, as a share of its scale; 0 where rounding alone parts them. */
function shareApart(key: OutcomeKey, actual: Outcome, expected: Outcome, forceN: number): number {
  const difference = Math.max(Math.abs(actual[key] - expected[key]) - 1e-12, 0);
  return difference === 0 ? 0 : difference / scaleOf(key, forceN);
}

/** The largest difference between two outcomes as a share of the force's size (times 20 m or 20 m/s, as below). */
export function farthestApart(actual: Outcome, expected: Outcome, forceN = forceSizeN(expected)): number {
  return Math.max(...outcomeKeys.map((key) => shareApart(key, actual, expected, forceN)));
}

/**
 * Every entry of two outcomes agrees to `relative` of the force's size (times 20 m for moments, 20 m/s for powers).
 * @param forceN size the tolerance is measured against, where it is not the expected force's.
 */
export function expectSameOutcome(
  actual: Outcome,
  expected: Outcome,
  relative: number,
  forceN = forceSizeN(expected),
): void {
  for (const key of outcomeKeys) {
    const share = shareApart(key, actual, expected, forceN);
    if (!(share <= relative)) {
      expect.fail(`${key}: ${actual[key]} against ${expected[key]}, ${share} apart, allowed ${relative}`);
    }
  }
}

/** Sum of outcomes, entry by entry. */
export function sumOutcomes(outcomes: readonly Outcome[]): Outcome {
  const sum = Object.fromEntries(outcomeKeys.map((key) => [key, 0])) as Record<OutcomeKey, number>;
  for (const outcome of outcomes) for (const key of outcomeKeys) sum[key] += outcome[key];
  return sum;
}

/** Sum of the forces' sizes, which rounding follows even where the forces cancel. */
export function summedForceN(outcomes: readonly Outcome[]): number {
  return outcomes.reduce((sum, outcome) => sum + forceSizeN(outcome), 0);
}
