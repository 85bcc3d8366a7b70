import fc from 'fast-check';
import type { SailingCondition } from '../../src/physics/condition/sailingCondition';
import {
  apparentWindAt,
  heightAboveWaterM,
  type SailingState,
} from '../../src/physics/condition/sailingState';
import type { FittingInput, PlacedMember, RoundBarShape } from '../../src/physics/fitting/fittingInput';
import { boatVector } from '../../src/physics/vector/vector3';
import { conditionOf, fittingOf } from '../published/support';
import { between } from './arbitraries';

export function barOf(
  diameterM: number,
  members: readonly PlacedMember[],
  shape: Partial<RoundBarShape> = {},
): FittingInput {
  const bar: RoundBarShape = {
    kind: 'roundBar',
    diameter: { valueM: diameterM, basis: 'measured', doubtId: 'own:bar:diameter' },
    roughnessM: 0,
    coefficient: null,
    coefficientDoubtId: 'own:bar:coefficient',
    friction: false,
    ends: ['joined', 'joined'],
    ...shape,
  };
  return fittingOf(bar, members, 'bar');
}

/** Upright at 3 m/s into a uniform wind of 10 m/s, dry standard air. */
export const steadyCondition: SailingCondition = conditionOf({ boatSpeedMs: 3 });

export const logDiameter = between(Math.log(0.003), Math.log(0.5)).map(Math.exp);
/** Members of every size: short parts, long stays, masts; some wet, some about the 1 m where the wind laws begin. */
export const place = fc
  .record({ start: places(), end: places() })
  .filter(({ start, end }) => lengthOf({ start, end }) > 0.02);

function places() {
  const height = fc.oneof(between(0.8, 1.2), between(-2, 3), between(0, 35));
  return fc.tuple(between(-8, 8), between(-3, 3), height).map(([x, y, z]) => boatVector(x, y, z));
}

export function lengthOf({ start, end }: PlacedMember): number {
  return Math.hypot(end[0] - start[0], end[1] - start[1], end[2] - start[2]);
}

/** Slowest and fastest apparent wind between the lowest and the highest point of some members, m/s. */
export function windAlong(
  members: readonly PlacedMember[],
  state: SailingState,
): { slowest: number; fastest: number } {
  const heights = members.flatMap(({ start, end }) =>
    [start, end].map((place) => heightAboveWaterM(state, place)),
  );
  const low = Math.max(Math.min(...heights), 0);
  const high = Math.max(...heights, 0);
  const speeds = Array.from(
    { length: 51 },
    (_, i) => apparentWindAt(state, low + ((high - low) * i) / 50).speedMs,
  );
  return { slowest: Math.min(...speeds), fastest: Math.max(...speeds) };
}
