import { doubtChange } from '../../../src/physics/doubt/doubtChange';
import type { Change } from '../../../src/physics/fitting/change';
import { zeroChange } from '../../setup/zeroChange';
import { zeroOutcome } from '../../../src/physics/fitting/outcome';
import { resultOf, type Result } from '../../../src/physics/ledger/ledgerSums';
import { blankCondition, blankProject } from '../../../src/project/file/blankParts';
import type { ProjectCondition } from '../../../src/project/file/schema';
import { solveProjectCondition, type SolvedCondition } from '../../../src/project/ledger/conditionSummary';
import { toSi } from '../../../src/units/convert';

/** A result of so many watts with one doubt about the item, up and down. */
export function resultOfPower(trackPowerW: number, upW = 0, downW = 0): Result {
  const change = (changeW: number): Change => ({ ...zeroChange(), trackPowerW: changeW });
  const doubts = [doubtChange('own:pole:diameter', change(upW), change(downW))];
  return resultOf({ ...zeroOutcome, trackPowerW }, () => doubts);
}

/** A condition solved: wind and boat speed in knots, angles in degrees. */
export function solved(parts: {
  readonly windKn: number;
  readonly angleDeg: number;
  readonly boatKn: number;
  readonly tack?: ProjectCondition['tack'];
  readonly leewayDeg?: number;
}): SolvedCondition {
  const { windKn, angleDeg, boatKn, tack = 'starboard', leewayDeg = 0 } = parts;
  const condition = blankCondition({
    id: 'now',
    name: 'Now',
    wind: { kind: 'true', speedMs: toSi(windKn, 'kn'), heightM: 10, angleFromCourseDeg: angleDeg },
    boatSpeedMs: toSi(boatKn, 'kn'),
    tack,
    leewayDeg,
  });
  return solveProjectCondition(blankProject({ conditions: [condition] }), condition);
}
