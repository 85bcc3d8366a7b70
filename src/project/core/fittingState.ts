import type { ProjectFitting } from '../file/schema';

/**
 * A fitting as it stands before or after some refit items. Each part names its owner, so that a doubt in a part that an
 * item left alone is the same doubt before and after, and cancels in the saving; a part that an item brought is new.
 */
export interface FittingState {
  readonly fitting: ProjectFitting;
  readonly owners: PartOwners;
  /** Set when an item has stowed the fitting for good or removed it. */
  readonly gone: 'stowed' | 'removed' | null;
}

/** Who brought each part: the fitting itself, another fitting, or an item of a plan. */
export interface PartOwners {
  readonly size: string;
  /** Typed coefficients, a measured drag area. */
  readonly coefficient: string;
  readonly placement: string;
  readonly length: string;
  readonly exposure: string;
  readonly stowed: string;
}

const known = new WeakMap<ProjectFitting, FittingState>();

/** The state of a fitting that no item has touched; the same fitting gives the same state, so that its row is known. */
export function asSailed(fitting: ProjectFitting): FittingState {
  const own = fitting.id;
  const state = known.get(fitting) ?? {
    fitting,
    owners: { size: own, coefficient: own, placement: own, length: own, exposure: own, stowed: own },
    gone: null,
  };
  known.set(fitting, state);
  return state;
}
