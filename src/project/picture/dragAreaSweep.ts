import type { SailingState } from '../../physics/condition/sailingState';
import { stateWithWind } from '../../physics/condition/sailingState';
import { layMembers, sumMean } from '../../physics/fitting/sumFitting';
import type { DeckLine } from '../../physics/placement/deckLine';
import { fittingToPhysics } from '../core/fittingToPhysics';
import { asSailed } from '../core/fittingState';
import type { ProjectFitting, ProjectMethods } from '../file/schema';
import { dutyIn } from '../ledger/rowEvaluator';

/** Every ten degrees. */
export const sweepAnglesRad: readonly number[] = Array.from({ length: 19 }, (_, i) => (i * Math.PI) / 18);

/**
 * The drag area that a fitting would have in a wind from each angle off the bow, on the same tack, heel and leeway, all in
 * one uniform wind of `speedMs`: (F . u) / (q |u|), duty counted in. Source: ledger-practice.
 */
export function fittingSweep(
  fitting: ProjectFitting,
  line: DeckLine,
  state: SailingState,
  methods: ProjectMethods,
  conditionId: string,
  speedMs: number,
): readonly number[] {
  const input = fittingToPhysics(asSailed(fitting), line);
  const laid = layMembers(input, state);
  const duty = dutyIn(fitting.dutyFraction, conditionId);
  const pressurePa = 0.5 * state.air.densityKgM3 * speedMs * speedMs;
  return sweepAnglesRad.map((angleRad) => {
    const turned = uniformState(state, angleRad, speedMs);
    const { fx, fy } = sumMean(input, laid, turned, methods, duty);
    return (fx * turned.flowX + fy * turned.flowY) / pressurePa;
  });
}

/** The boat at rest in a uniform wind: the wind that she meets is the wind there is. */
function uniformState(state: SailingState, angleFromBowRad: number, speedMs: number): SailingState {
  const condition = { ...state.condition, boatSpeedMs: 0, windLaw: { kind: 'uniform' } as const };
  const angleFromCourseRad = angleFromBowRad + state.condition.leewayRad;
  return stateWithWind(condition, { speedAt10Ms: speedMs, angleFromCourseRad }, state.air);
}

/** The sum of several fittings' sweeps. */
export function sumOfSweeps(sweeps: readonly (readonly number[])[]): number[] {
  return sweepAnglesRad.map((_, i) => sweeps.reduce((sum, sweep) => sum + (sweep[i] ?? 0), 0));
}
