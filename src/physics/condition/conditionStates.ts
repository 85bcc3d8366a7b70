import type { Air } from '../air/air';
import { airOf } from '../air/air';
import type { AirDoubtId } from '../doubt/doubtSource';
import { iecPowerLaw, openSeaLogLaw, openSeaPowerLaw, type WindLaw } from '../wind/windProfile';
import type { SailingCondition } from './sailingCondition';
import { solveCondition, stateWithWind, trueWindOf, type SailingState } from './sailingState';

/** A condition solved at its best values, and once more for each state of each doubt about the air. */
export interface ConditionStates {
  readonly best: SailingState;
  readonly variants: readonly {
    readonly id: AirDoubtId;
    readonly up: SailingState;
    readonly down: SailingState;
  }[];
}

/** The other two views of the wind over the sea, beside the chosen law. */
function otherWindLaws(chosen: WindLaw): readonly [WindLaw, WindLaw] {
  if (chosen.kind === 'log') return [openSeaPowerLaw, iecPowerLaw];
  const chosenIsIec = chosen.kind === 'power' && chosen.exponent === iecPowerLaw.exponent;
  return [openSeaLogLaw, chosenIsIec ? openSeaPowerLaw : iecPowerLaw];
}

/**
 * Solves a condition and its doubts. What is doubted is the wind as it was given: with an instrument reading the
 * reading's speed and angle, and a changed law or reading moves the true wind.
 */
export function conditionStates(condition: SailingCondition): ConditionStates {
  const best = solveCondition(condition);
  const wind = trueWindOf(condition);
  const denser = (factor: number): SailingState =>
    stateWithWind(condition, wind, airScaled(condition, factor));
  const withLaw = (windLaw: WindLaw): SailingState => solveCondition({ ...condition, windLaw });
  const [lawA, lawB] = otherWindLaws(condition.windLaw);
  const { windSpeedDoubt, windAngleDoubtRad, densityDoubt } = condition;
  return {
    best,
    variants: [
      {
        id: 'wind-speed',
        up: faster(condition, 1 + windSpeedDoubt),
        down: faster(condition, 1 - windSpeedDoubt),
      },
      {
        id: 'wind-angle',
        up: turned(condition, windAngleDoubtRad),
        down: turned(condition, -windAngleDoubtRad),
      },
      { id: 'wind-law', up: withLaw(lawA), down: withLaw(lawB) },
      { id: 'density', up: denser(1 + densityDoubt), down: denser(1 - densityDoubt) },
    ],
  };
}

/** The condition with the given wind's speed times `factor`. */
function faster(condition: SailingCondition, factor: number): SailingState {
  return solveCondition({
    ...condition,
    wind: { ...condition.wind, speedMs: condition.wind.speedMs * factor },
  });
}

/** The condition with the given wind turned aft by `angleRad`; past dead astern it comes from the other side. */
function turned(condition: SailingCondition, angleRad: number): SailingState {
  const { wind } = condition;
  return solveCondition({
    ...condition,
    wind:
      wind.kind === 'true'
        ? { ...wind, angleFromCourseRad: wind.angleFromCourseRad + angleRad }
        : { ...wind, angleFromBowRad: wind.angleFromBowRad + angleRad },
  });
}

function airScaled(condition: SailingCondition, factor: number): Air {
  const air = airOf(condition.air);
  const densityKgM3 = air.densityKgM3 * factor;
  return { ...air, densityKgM3, kinematicViscosityM2S: air.dynamicViscosityPaS / densityKgM3 };
}
