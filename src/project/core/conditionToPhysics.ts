import { lateralResistanceDepthShare, type SailingCondition } from '../../physics/condition/sailingCondition';
import { boatVector, type BoatVector } from '../../physics/vector/vector3';
import { toSi } from '../../units/convert';
import type { Project, ProjectBoat, ProjectCondition, ProjectWind } from '../file/schema';
import { pointToBoat } from './fittingToPhysics';

/** A condition in the core's terms; the wind law is the project's. */
export function conditionToPhysics(project: Project, condition: ProjectCondition): SailingCondition {
  return {
    wind: windToPhysics(condition.wind),
    tack: condition.tack,
    boatSpeedMs: condition.boatSpeedMs,
    heelRad: toSi(condition.heelDeg, 'deg'),
    leewayRad: toSi(condition.leewayDeg, 'deg'),
    riseM: condition.riseM,
    air: condition.air,
    windLaw: project.methods.windLaw,
    windSpeedDoubt: condition.windSpeedDoubtFraction,
    windAngleDoubtRad: toSi(condition.windAngleDoubtDeg, 'deg'),
    densityDoubt: condition.densityDoubtFraction,
    hullDragPerSideForce: condition.prices.hullDragPerSideForce,
    driveLostPerHeelingMomentPerM: condition.prices.driveLostPerHeelingMomentPerM,
    atHeelLimit: condition.prices.atHeelLimit,
    totalResistanceN: condition.totalResistanceN,
    centreOfLateralResistance: lateralResistanceOf(project.boat),
  };
}

/** The centre of lateral resistance: the boat's, or amidships and 0.4 of the draught down. */
export function lateralResistanceOf(boat: ProjectBoat): BoatVector {
  const given = boat.centreOfLateralResistanceM;
  return given === null ? boatVector(0, 0, -lateralResistanceDepthShare * boat.draughtM) : pointToBoat(given);
}

function windToPhysics(wind: ProjectWind): SailingCondition['wind'] {
  if (wind.kind === 'true') {
    return {
      kind: 'true',
      speedMs: wind.speedMs,
      heightM: wind.heightM,
      angleFromCourseRad: toSi(wind.angleFromCourseDeg, 'deg'),
    };
  }
  return {
    kind: 'instrument',
    speedMs: wind.speedMs,
    angleFromBowRad: toSi(wind.angleFromBowDeg, 'deg'),
    heightUpMastM: wind.heightUpMastM,
  };
}
