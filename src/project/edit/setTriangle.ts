import { instrumentReadingAt, solveCondition } from '../../physics/condition/sailingState';
import { windProfile, windSpeedMs, referenceHeightM } from '../../physics/wind/windProfile';
import { fromSi, toSi } from '../../units/convert';
import { conditionToPhysics } from '../core/conditionToPhysics';
import type { Project, ProjectCondition, ProjectWind } from '../file/schema';
import { nothingSuch, type EditAnswer } from './answer';
import { patchCondition } from './conditionEdits';
import { neat } from './neat';

/** The two free sides of a wind triangle at 10 m. */
export interface TriangleSides {
  readonly trueWindAt10Ms: number;
  readonly trueWindAngleRad: number;
  readonly boatSpeedMs: number;
}

/**
 * Gives a condition the sides of a wind triangle. The wind stays given the way it is: a true wind at its height, or the
 * reading that an instrument at its height would show; both sides then move a reading.
 */
export function setTriangle(project: Project, conditionId: string, sides: TriangleSides): EditAnswer {
  const condition = project.conditions.find(({ id }) => id === conditionId);
  if (condition === undefined) return nothingSuch('condition', conditionId);
  const boatSpeedMs = stored(sides.boatSpeedMs);
  const wind =
    condition.wind.kind === 'true'
      ? trueWindOf(project, condition.wind.heightM, sides)
      : readingOf(project, { ...condition, boatSpeedMs }, condition.wind.heightUpMastM, sides);
  return patchCondition(project, conditionId, { wind, boatSpeedMs });
}

/** Finer than any field shows, without the tail of a conversion. */
function stored(value: number): number {
  return Number(value.toPrecision(13));
}

function trueWindOf(project: Project, heightM: number, sides: TriangleSides): ProjectWind {
  const { trueWindAt10Ms, trueWindAngleRad } = sides;
  const profile = windProfile(project.methods.windLaw, trueWindAt10Ms);
  const speedMs = heightM === referenceHeightM ? trueWindAt10Ms : windSpeedMs(profile, heightM);
  return {
    kind: 'true',
    speedMs: stored(speedMs),
    heightM,
    angleFromCourseDeg: stored(fromSi(trueWindAngleRad, 'deg')),
  };
}

function readingOf(
  project: Project,
  condition: ProjectCondition,
  heightUpMastM: number,
  { trueWindAt10Ms, trueWindAngleRad }: TriangleSides,
): ProjectWind {
  const state = solveCondition({
    ...conditionToPhysics(project, condition),
    wind: {
      kind: 'true',
      speedMs: trueWindAt10Ms,
      heightM: referenceHeightM,
      angleFromCourseRad: trueWindAngleRad,
    },
  });
  const { speedMs, angleFromBowRad } = instrumentReadingAt(state, heightUpMastM);
  // Dead ahead or astern, rounding may put the reading a hair to the other side.
  const angleDeg = Math.abs(angleFromBowRad) < toSi(1e-6, 'deg') ? 0 : fromSi(angleFromBowRad, 'deg');
  return { kind: 'instrument', speedMs: neat(speedMs), angleFromBowDeg: neat(angleDeg), heightUpMastM };
}
