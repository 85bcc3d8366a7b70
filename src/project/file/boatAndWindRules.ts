import { trueWindOf } from '../../physics/condition/sailingState';
import { conditionToPhysics } from '../core/conditionToPhysics';
import type { Project, ProjectCondition, ProjectWind } from './schema';
import { pathText, type FieldError } from './fieldErrors';

/** The deck line goes aft from station to station; it is no function otherwise. */
export function deckErrors({ boat: { deckLine } }: Project): FieldError[] {
  return deckLine.flatMap(({ aftOfStemM }, i) => {
    const before = deckLine[i - 1]?.aftOfStemM;
    if (before === undefined || aftOfStemM > before) return [];
    const message = `must be more than ${before}, the station before; it is ${aftOfStemM}`;
    return [{ path: pathText(['boat', 'deckLine', i, 'aftOfStemM']), message }];
  });
}

/** Below this speed, m/s, there is a calm, and the file says 0: the log law has no answer for a breath of air. */
const leastWindMs = 0.01;
/** A wind given low down, m, is held to this speed, m/s: above it the log law has no answer in the waves. */
const lowHeightM = 5;
const mostLowWindMs = 30;

export function windErrors(project: Project): FieldError[] {
  return project.conditions.flatMap((condition, i) => {
    const { wind } = condition;
    const message = windProblem(wind);
    if (message !== null) return [{ path: pathText(['conditions', i, 'wind', 'speedMs']), message }];
    if (wind.kind === 'true' || !isFromOtherSide(project, condition)) return [];
    return [{ path: pathText(['conditions', i, 'wind', 'angleFromBowDeg']), message: otherSide }];
  });
}

const otherSide =
  'with this boat speed and leeway the reading means a true wind from the other side than the tack; change the tack or the angle';
/** Dead astern, rounding may put the true wind a hair to the other side, rad. */
const roundingRad = 1e-6;

/** True when an instrument reading solves to a true wind from the side the tack does not name. */
function isFromOtherSide(project: Project, condition: ProjectCondition): boolean {
  const { angleFromCourseRad } = trueWindOf(conditionToPhysics(project, condition));
  return angleFromCourseRad < -roundingRad && angleFromCourseRad > roundingRad - Math.PI;
}

function windProblem(wind: ProjectWind): string | null {
  const { speedMs } = wind;
  if (speedMs > 0 && speedMs < leastWindMs) return `must be 0 or at least ${leastWindMs}; it is ${speedMs}`;
  const heightM = wind.kind === 'true' ? wind.heightM : wind.heightUpMastM;
  if (heightM >= lowHeightM || speedMs <= mostLowWindMs) return null;
  return `must be at most ${mostLowWindMs} when given at a height below ${lowHeightM} m; it is ${speedMs}`;
}
