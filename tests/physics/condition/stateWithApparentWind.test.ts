import { describe, expect, it } from 'vitest';
import {
  apparentWindAt,
  solveCondition,
  stateWithApparentWind,
} from '../../../src/physics/condition/sailingState';
import { conditionToPhysics } from '../../../src/project/core/conditionToPhysics';
import { demoPath, projectAt } from '../../properties/projects';

describe('a state with a given apparent wind', () => {
  const project = projectAt(demoPath);

  it.each(project.conditions.map((one) => one.name))(
    'meets that wind at that height, heeled and making leeway: %s',
    (name) => {
      const own = project.conditions.find((one) => one.name === name);
      if (own === undefined) throw new Error(name);
      const condition = conditionToPhysics(project, own);
      const { air } = solveCondition(condition);
      for (const angleDeg of [0.5, 30, 90, 150, 179.5]) {
        const angle = (angleDeg * Math.PI) / 180;
        const met = apparentWindAt(stateWithApparentWind(condition, 12, angle, 2.5, air), 2.5);
        expect(met.speedMs).toBeCloseTo(12, 9);
        expect(met.angleFromBowRad).toBeCloseTo(angle, 9);
      }
    },
  );
});
