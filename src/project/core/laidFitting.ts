import type { SailingState } from '../../physics/condition/sailingState';
import { layFitting, type LaidFitting } from '../../physics/fitting/itemForces';
import type { ProjectBoat } from '../file/schema';
import type { FittingState } from './fittingState';
import { deckLineOf, fittingToPhysics } from './fittingToPhysics';

interface Known {
  readonly boat: ProjectBoat;
  readonly state: SailingState;
  readonly laid: LaidFitting;
}

/** A course profile looks at several conditions in turn, each with its own heel. */
const mostKnown = 8;
const known = new WeakMap<FittingState, readonly Known[]>();

/** A fitting laid in the track's frame. An edit of the wind moves no fitting, so that its laying serves on. */
export function laidFitting(fitting: FittingState, boat: ProjectBoat, state: SailingState): LaidFitting {
  const before = known.get(fitting) ?? [];
  const found = before.find((one) => one.boat === boat && isLaidAlike(one.state, state));
  if (found !== undefined) return found.laid;
  const laid = layFitting(fittingToPhysics(fitting, deckLineOf(boat)), state);
  known.set(fitting, [{ boat, state, laid }, ...before].slice(0, mostKnown));
  return laid;
}

/** True when a member lies in the same place in both: the tack is in the signs of heel and leeway. */
function isLaidAlike(a: SailingState, b: SailingState): boolean {
  return (
    a.rotation.signedHeelRad === b.rotation.signedHeelRad &&
    a.rotation.signedLeewayRad === b.rotation.signedLeewayRad &&
    a.riseM === b.riseM
  );
}
