import type { ItemChange, Project, ProjectFitting, ProjectPlan } from '../file/schema';
import { isRound } from '../file/shapeKinds';
import type { ItemStart } from '../wording/itemText';
import { startedShape, type DefaultChange } from './startedShape';
import { applyPlan, statesAsSailed } from '../refit/applyPlan';

/** How much slimmer a bar is made until somebody says how much. */
const slimmerShare = 0.8;
/** The thinnest that the file takes, m. */
const thinnestM = 0.0001;

/** The fitting as the plan's items so far leave it; as sailed where they took it away or it does not count. */
export function fittingAfterPlan(
  project: Project,
  plan: ProjectPlan,
  fitting: ProjectFitting,
): ProjectFitting {
  return applyPlan(project, plan, statesAsSailed(project)).after.get(fitting.id)?.fitting ?? fitting;
}

/**
 * A change of a kind to start from. It brings in no number that nobody gave: places, exposures and shapes start as they
 * are, a retracted fitting is out half as long, and only "slimmer" has to be slimmer, by a fifth, and a remedy of shape
 * has to be of another shape, which it says as its source.
 * @param fitting as it is where the item will stand in its plan.
 */
export function defaultChange(project: Project, fitting: ProjectFitting, kind: ItemStart): DefaultChange {
  switch (kind) {
    case 'fairedTurning':
    case 'fairedFixed':
    case 'otherSection':
    case 'rounded':
      return startedShape(fitting, kind);
    case 'slimmer':
      return slimmer(fitting);
    case 'shapeOf':
      return shapeOf(project, fitting);
    case 'retracted': {
      const { default: share, byCondition } = fitting.dutyFraction;
      const dutyFraction = {
        default: share / 2,
        byCondition: byCondition.map((entry) => ({ ...entry, fraction: entry.fraction / 2 })),
      };
      return usable({ kind, dutyFraction, stowed: fitting.stowed });
    }
    case 'stowed':
      return usable({ kind, stowed: fitting.stowed });
    case 'removed':
      return usable({ kind });
    case 'moved':
      return usable({ kind, placement: fitting.placement });
    case 'sheltered': {
      const { exposure, exposureLeeward, shelteredByFittingId } = fitting;
      return usable({ kind, exposure, exposureLeeward, shelteredByFittingId });
    }
    case 'typed':
      return usable({ kind, shape: fitting.shape, source: '' });
  }
}

function usable(change: ItemChange): DefaultChange {
  return { ok: true, change };
}

function slimmer({ name, shape }: ProjectFitting): DefaultChange {
  if (!isRound(shape)) return { ok: false, message: `${name} is no round bar or wire and has no diameter` };
  const m = slimmerShare * shape.diameter.m;
  if (m < thinnestM) return { ok: false, message: `${name} is as thin as can be` };
  return usable({ kind: 'slimmer', diameter: { m, basis: 'estimated' } });
}

/** Takes the shape of another fitting, of one of the same kind if there is one, because it fits the placement. */
function shapeOf({ fittings }: Project, { id, shape }: ProjectFitting): DefaultChange {
  const others = fittings.filter((other) => other.id !== id && other.excluded === null);
  const model = others.find((other) => other.shape.kind === shape.kind) ?? others[0];
  if (model === undefined) return { ok: false, message: 'there is no other fitting to take the shape of' };
  return usable({ kind: 'shapeOf', fittingId: model.id });
}
