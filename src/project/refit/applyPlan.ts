import type { Project, ProjectPlan, RefitItem } from '../file/schema';
import { asSailed, type FittingState } from '../core/fittingState';
import { applyItem, type Contradiction, type FittingStates } from './applyItem';

/**
 * What became of an item: counted; withheld (a safety-required fitting and no reason yet: shown, but outside every
 * total); switched off; or passed over because it contradicts what stands before it.
 */
export type ItemStatus = 'counted' | 'withheld' | 'off' | 'contradiction';

export interface ItemStep {
  readonly item: RefitItem;
  readonly status: ItemStatus;
  readonly contradiction: Contradiction | null;
  /** The fitting before and after this item, in the plan's order; null when the item was not applied. */
  readonly before: FittingState | null;
  readonly after: FittingState | null;
  /** The fitting as sailed with this item alone; null when the item cannot stand alone or is off. */
  readonly aloneBefore: FittingState | null;
  readonly aloneAfter: FittingState | null;
}

export interface AppliedPlan {
  readonly plan: ProjectPlan;
  readonly steps: readonly ItemStep[];
  /** All fittings after the counted items. */
  readonly after: FittingStates;
}

/** The project's fittings as sailed, without those left out of the sums. */
export function statesAsSailed(project: Project): FittingStates {
  return new Map(
    project.fittings
      .filter(({ excluded }) => excluded === null)
      .map((fitting) => [fitting.id, asSailed(fitting)]),
  );
}

/** Changes that take a safety-required fitting out of the wind; moving one is none of them. */
const guardedChanges: readonly RefitItem['change']['kind'][] = [
  'removed',
  'retracted',
  'stowed',
  'slimmer',
  'sheltered',
  'shapeOf',
  'typed',
];

/** True when the item's saving must stay out of the totals until a named person gave a reason. */
export function isWithheld(item: RefitItem, fittingIsSafetyRequired: boolean): boolean {
  return fittingIsSafetyRequired && item.safetyReason === null && guardedChanges.includes(item.change.kind);
}

/** Applies a plan in its order; contradicted, withheld and switched-off items leave the fittings as they were. */
export function applyPlan(project: Project, plan: ProjectPlan, start: FittingStates): AppliedPlan {
  const states = new Map(start);
  const steps: ItemStep[] = [];
  for (const item of plan.items) {
    const step = item.on ? stepOf(project, plan, item, states, start) : skipped(item, 'off', null);
    if (step.status === 'counted' && step.after !== null) states.set(item.fittingId, step.after);
    steps.push(step);
  }
  return { plan, steps, after: states };
}

function stepOf(
  project: Project,
  plan: ProjectPlan,
  item: RefitItem,
  states: FittingStates,
  start: FittingStates,
): ItemStep {
  const inOrder = applyItem(project, plan.id, item, states);
  if (!inOrder.ok) return skipped(item, 'contradiction', inOrder.contradiction);
  const alone = applyItem(project, plan.id, item, start);
  const before = states.get(item.fittingId) ?? null;
  const safetyRequired = before?.fitting.flags.safetyRequired ?? false;
  return {
    item,
    status: isWithheld(item, safetyRequired) ? 'withheld' : 'counted',
    contradiction: null,
    before,
    after: inOrder.state,
    aloneBefore: alone.ok ? (start.get(item.fittingId) ?? null) : null,
    aloneAfter: alone.ok ? alone.state : null,
  };
}

function skipped(item: RefitItem, status: ItemStatus, contradiction: Contradiction | null): ItemStep {
  return { item, status, contradiction, before: null, after: null, aloneBefore: null, aloneAfter: null };
}

/** Fittings that lost their shelter: what they name as sheltering them stood there before and does not any more. */
export function shelterLost(before: FittingStates, after: FittingStates): ReadonlySet<string> {
  const lost = new Set<string>();
  for (const [id, state] of after) {
    const shelterId = state.fitting.shelteredByFittingId;
    if (shelterId === null || state.gone !== null) continue;
    const was = before.get(shelterId);
    const is = after.get(shelterId);
    if (was !== undefined && is !== undefined && was.gone === null && hasLeft(was, is)) lost.add(id);
  }
  return lost;
}

/** A shelter has left when it is removed, stowed, moved, or out of use more of the time than before. */
function hasLeft(was: FittingState, is: FittingState): boolean {
  if (is.gone !== null || is.owners.placement !== was.owners.placement) return true;
  return is.fitting.dutyFraction !== was.fitting.dutyFraction;
}
