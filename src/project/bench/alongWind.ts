import {
  apparentWindAt,
  heightAboveWaterM,
  type ApparentWind,
  type SailingState,
} from '../../physics/condition/sailingState';
import { dragAlongWindN } from '../../physics/ledger/alongWind';
import { doubtChange, type DoubtChange } from '../../physics/doubt/doubtChange';
import { sumDoubts } from '../../physics/doubt/doubts';
import { type Change } from '../../physics/fitting/change';
import { sumOutcomes } from '../../physics/fitting/outcome';
import { resultOf, type ConditionPart, type Result } from '../../physics/ledger/ledgerSums';
import { pointToBoat } from '../core/fittingToPhysics';
import type { Project } from '../file/schema';
import { memberMiddle } from './benchMember';
import type { BenchMember } from './benchTypes';

/** Free apparent wind at the middle of the member: neither sheltered nor turned, and the same for every candidate. */
export function windAtMember(project: Project, member: BenchMember, state: SailingState): ApparentWind {
  return apparentWindAt(state, heightAboveWaterM(state, pointToBoat(memberMiddle(project, member))));
}

/** The wind's angle from the course in each condition of a row. */
export type CourseAngles = ReadonlyMap<string, number>;

/**
 * A row's force along the wind at the member, in the place of its force against the track, so that sums, differences and
 * ranges run through the ledger's own code. The direction is that of the best wind, for every doubt.
 */
export function alongWindResult(parts: readonly ConditionPart[], angles: CourseAngles): Result {
  const turned = <Part extends Change>(change: Part, conditionId: string): Part => ({
    ...change,
    dragAgainstTrackN: dragAlongWindN(change, angles.get(conditionId) ?? 0),
  });
  const outcome = sumOutcomes(
    parts.map(({ conditionId, weight, trace }) => ({ outcome: turned(trace.mean, conditionId), weight })),
  );
  const doubtsIn = ({ conditionId, trace }: ConditionPart): DoubtChange[] =>
    trace.doubts.map(({ id, up, down }) =>
      doubtChange(id, turned(up, conditionId), turned(down, conditionId)),
    );
  return resultOf(outcome, () =>
    sumDoubts(parts.map((part) => ({ doubts: doubtsIn(part), weight: part.weight }))),
  );
}
