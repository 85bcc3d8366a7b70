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
export function otherWindLaws(chosen: WindLaw): readonly [WindLaw, WindLaw] {
  if (chosen.kind === 'log') return [openSeaPowerLaw, iecPowerLaw];
  const chosenIsIec = chosen.kind === 'power' && chosen.exponent === 0.14;
  return [openSeaLogLaw, chosenIsIec ? openSeaPowerLaw : iecPowerLaw];
}

/** Solves a condition and its doubts. With an instrument reading the reading holds and the law moves the wind elsewhere. */
export function conditionStates(condition: SailingCondition): ConditionStates {
  const best = solveCondition(condition);
  const wind = trueWindOf(condition);
  const scaled = (factor: number): SailingState =>
    stateWithWind(condition, { ...wind, speedAt10Ms: wind.speedAt10Ms * factor }, best.air);
  const denser = (factor: number): SailingState =>
    stateWithWind(condition, wind, airScaled(condition, factor));
  const [lawA, lawB] = otherWindLaws(condition.windLaw);
  return {
    best,
    variants: [
      {
        id: 'wind-speed',
        up: scaled(1 + condition.windSpeedDoubt),
        down: scaled(1 - condition.windSpeedDoubt),
      },
      {
        id: 'wind-law',
        up: solveCondition({ ...condition, windLaw: lawA }),
        down: solveCondition({ ...condition, windLaw: lawB }),
      },
      { id: 'density', up: denser(1 + condition.densityDoubt), down: denser(1 - condition.densityDoubt) },
    ],
  };
}

function airScaled(condition: SailingCondition, factor: number): Air {
  const air = airOf(condition.air);
  const densityKgM3 = air.densityKgM3 * factor;
  return { ...air, densityKgM3, kinematicViscosityM2S: air.dynamicViscosityPaS / densityKgM3 };
}
