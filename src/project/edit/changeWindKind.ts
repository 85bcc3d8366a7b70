import { solveCondition, trueWindOf, instrumentReadingAt } from '../../physics/condition/sailingState';
import { fromSi } from '../../units/convert';
import { conditionToPhysics } from '../core/conditionToPhysics';
import type { Project, ProjectCondition, ProjectWind } from '../file/schema';
import { nothingSuch, type EditAnswer } from './answer';
import { patchCondition } from './conditionEdits';
import { neat } from './neat';

/**
 * Gives the wind in the other way, and the same wind: an instrument reading becomes the true wind at 10 m, a true wind
 * what an instrument at the masthead reads.
 */
export function changeWindKind(project: Project, conditionId: string, kind: ProjectWind['kind']): EditAnswer {
  const condition = project.conditions.find(({ id }) => id === conditionId);
  if (condition === undefined) return nothingSuch('condition', conditionId);
  if (condition.wind.kind === kind) return { project };
  const wind = kind === 'true' ? asTrue(project, condition) : asReading(project, condition);
  return patchCondition(project, conditionId, { wind });
}

const referenceHeightM = 10;

function asTrue(project: Project, condition: ProjectCondition): ProjectWind {
  const { speedAt10Ms, angleFromCourseRad } = trueWindOf(conditionToPhysics(project, condition));
  return {
    kind: 'true',
    speedMs: neat(speedAt10Ms),
    heightM: referenceHeightM,
    angleFromCourseDeg: neat(fromSi(angleFromCourseRad, 'deg')),
  };
}

/** The lowest place that the file takes for an instrument, m. */
const lowestInstrumentM = 1;

function asReading(project: Project, condition: ProjectCondition): ProjectWind {
  const heightUpMastM = Math.max(project.boat.mast.topAboveWaterplaneM, lowestInstrumentM);
  const state = solveCondition(conditionToPhysics(project, condition));
  const { speedMs, angleFromBowRad } = instrumentReadingAt(state, heightUpMastM);
  return {
    kind: 'instrument',
    speedMs: neat(speedMs),
    angleFromBowDeg: neat(fromSi(angleFromBowRad, 'deg')),
    heightUpMastM,
  };
}
