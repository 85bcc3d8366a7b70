import {
  apparentWindAt,
  heightAboveWaterM,
  instrumentReadingAt,
  trueWindOf,
  type ApparentWind,
} from '../../physics/condition/sailingState';
import { conditionStates, type ConditionStates } from '../../physics/condition/conditionStates';
import { freeboardAt } from '../../physics/placement/deckLine';
import { boatVector } from '../../physics/vector/vector3';
import { conditionToPhysics } from '../core/conditionToPhysics';
import { deckLineOf } from '../core/fittingToPhysics';
import type { Project, ProjectCondition } from '../file/schema';

/** What is true everywhere in a condition: both views of the wind, at the deck and at the masthead, and the air. */
export interface ConditionSummary {
  readonly condition: ProjectCondition;
  readonly trueWindAt10Ms: number;
  readonly trueWindAngleRad: number;
  readonly deck: ApparentWind;
  readonly masthead: ApparentWind;
  /** What an instrument at the masthead reads, in the plane that heels with the mast. */
  readonly mastheadReading: { readonly speedMs: number; readonly angleFromBowRad: number };
  readonly densityKgM3: number;
  readonly kinematicViscosityM2S: number;
  readonly roughnessLengthM: number | null;
}

export interface SolvedCondition {
  readonly states: ConditionStates;
  readonly summary: ConditionSummary;
}

const solvedBefore = new WeakMap<
  ProjectCondition,
  { readonly from: readonly unknown[]; readonly solved: SolvedCondition }
>();

/** Solves a condition; one that has not changed, nor the boat and the wind law with it, is answered from memory. */
export function solveProjectCondition(project: Project, condition: ProjectCondition): SolvedCondition {
  const from = [project.boat, project.methods.windLaw];
  const before = solvedBefore.get(condition);
  if (before !== undefined && before.from.every((part, i) => part === from[i])) return before.solved;
  const solved = solveAnew(project, condition);
  solvedBefore.set(condition, { from, solved });
  return solved;
}

function solveAnew(project: Project, condition: ProjectCondition): SolvedCondition {
  const input = conditionToPhysics(project, condition);
  const states = conditionStates(input);
  const { best } = states;
  const wind = trueWindOf(input);
  const line = deckLineOf(project.boat);
  const { topAboveWaterplaneM } = project.boat.mast;
  const amidships = boatVector(0, 0, freeboardAt(line, line.stemXM));
  const mastX = line.stemXM - project.boat.mast.aftOfStemM;
  return {
    states,
    summary: {
      condition,
      trueWindAt10Ms: wind.speedAt10Ms,
      trueWindAngleRad: wind.angleFromCourseRad,
      deck: apparentWindAt(best, heightAboveWaterM(best, amidships)),
      masthead: apparentWindAt(best, heightAboveWaterM(best, boatVector(mastX, 0, topAboveWaterplaneM))),
      mastheadReading: instrumentReadingAt(best, topAboveWaterplaneM),
      densityKgM3: best.air.densityKgM3,
      kinematicViscosityM2S: best.air.kinematicViscosityM2S,
      roughnessLengthM: best.profile.law.kind === 'log' ? best.profile.roughnessLengthM : null,
    },
  };
}
