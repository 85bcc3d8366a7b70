import { deckLineOf } from '../core/fittingToPhysics';
import type { ItemChange, Project, ProjectPlacement, ProjectShape } from '../file/schema';
import { pathText } from '../file/fieldErrors';
import { startOf } from '../wording/itemText';
import { nothingSuch, refusal, type EditAnswer } from './answer';
import { carriedOver } from './changeShapeKind';
import { asKind } from './reshape';
import { defaultChange, fittingAfterPlan } from './defaultChange';
import { withShare } from './fittingEdits';
import { changeItem, hasStartName, itemName } from './itemEdits';
import { placedAs, placedInRow, type Placed } from './placementEdits';

type ChangeOf<Kind extends ItemChange['kind']> = Extract<ItemChange, { readonly kind: Kind }>;

/** An item's change of a kind; the refusal to answer with when there is no such item or it does something else. */
function changeOf<Kind extends ItemChange['kind']>(
  project: Project,
  planId: string,
  itemId: string,
  kind: Kind,
): { readonly change: ChangeOf<Kind> } | ReturnType<typeof refusal> {
  const plan = project.plans.find(({ id }) => id === planId);
  const change = plan?.items.find(({ id }) => id === itemId)?.change;
  if (change === undefined) return nothingSuch('refit item', itemId);
  if (change.kind !== kind) return refusal('', 'the item has become another kind of change');
  return { change: change as ChangeOf<Kind> };
}

/** Says where an item moves its fitting to in the other way, at the same place. */
export function changeItemPlacementKind(
  project: Project,
  planId: string,
  itemId: string,
  kind: ProjectPlacement['kind'],
): EditAnswer {
  return replaced(project, planId, itemId, (placement) =>
    placedAs(placement, kind, deckLineOf(project.boat)),
  );
}

/** How many stand in the row to which an item moves its fitting; one is no row. */
export function setItemRowCount(project: Project, planId: string, itemId: string, count: number): EditAnswer {
  return replaced(project, planId, itemId, (placement) => placedInRow(placement, count));
}

function replaced(
  project: Project,
  planId: string,
  itemId: string,
  replace: (placement: ProjectPlacement) => Placed,
): EditAnswer {
  const found = changeOf(project, planId, itemId, 'moved');
  if ('refused' in found) return found;
  const { placement, message } = replace(found.change.placement);
  const change: ItemChange = { kind: 'moved', placement };
  const said = message === undefined ? {} : { message };
  return changeItem(project, planId, itemId, (item) => ({ ...item, change }), said);
}

/**
 * Makes the shape that an item gives its fitting another kind. The sizes carry over as they do for a fitting, seen
 * where the plan has put the fitting by then.
 */
export function changeItemShapeKind(
  project: Project,
  planId: string,
  itemId: string,
  kind: ProjectShape['kind'],
): EditAnswer {
  const found = changeOf(project, planId, itemId, 'typed');
  if ('refused' in found) return found;
  if (found.change.shape.kind === kind) return { project };
  const placement = placementBefore(project, planId, itemId);
  if (placement === null) return nothingSuch('refit item', itemId);
  const { shape } = asKind(project, { shape: found.change.shape, placement }, kind);
  const change: ItemChange = { ...found.change, shape };
  return changeItem(project, planId, itemId, (item) => ({ ...item, change }), { message: carriedOver });
}

/** Where an item finds its fitting, after the items before it. */
function placementBefore(project: Project, planId: string, itemId: string): ProjectPlacement | null {
  const plan = project.plans.find(({ id }) => id === planId);
  const index = plan?.items.findIndex(({ id }) => id === itemId) ?? -1;
  const fitting = project.fittings.find(({ id }) => id === plan?.items[index]?.fittingId);
  if (plan === undefined || fitting === undefined) return null;
  return fittingAfterPlan(project, { ...plan, items: plan.items.slice(0, index) }, fitting).placement;
}

/** Sets the share of one condition's time in which a retracted fitting is still out; null goes back to the item's. */
export function setItemDutyInCondition(
  project: Project,
  planId: string,
  itemId: string,
  conditionId: string,
  fraction: number | null,
): EditAnswer {
  const found = changeOf(project, planId, itemId, 'retracted');
  if ('refused' in found) return found;
  const { change } = found;
  const dutyFraction = withShare(change.dutyFraction, conditionId, fraction);
  return changeItem(project, planId, itemId, (item) => ({ ...item, change: { ...change, dutyFraction } }));
}

/**
 * Makes an item about another fitting. The change starts anew, because what was typed was about the old one, and so
 * does the word of whoever answered for changing that; the name follows if nobody has typed another.
 */
export function changeItemFitting(
  project: Project,
  planId: string,
  itemId: string,
  fittingId: string,
): EditAnswer {
  const plan = project.plans.find(({ id }) => id === planId);
  const index = plan?.items.findIndex(({ id }) => id === itemId) ?? -1;
  const item = plan?.items[index];
  const fitting = project.fittings.find(({ id }) => id === fittingId);
  if (plan === undefined || item === undefined) return nothingSuch('refit item', itemId);
  if (fitting === undefined) return nothingSuch('fitting', fittingId);
  if (item.fittingId === fittingId) return { project };
  const upToItem = { ...plan, items: plan.items.slice(0, index) };
  const start = defaultChange(project, fittingAfterPlan(project, upToItem, fitting), startOf(item.change));
  if (!start.ok)
    return refusal(pathText(['plans', project.plans.indexOf(plan), 'items', index]), start.message);
  const oldName = project.fittings.find(({ id }) => id === item.fittingId)?.name ?? '';
  const name = hasStartName(item, oldName) ? itemName(fitting.name, startOf(item.change)) : item.name;
  const reason = item.safetyReason === null ? '' : ` The reason given for ${oldName} is taken back.`;
  return changeItem(
    project,
    planId,
    itemId,
    (old) => ({ ...old, name, fittingId, change: start.change, safetyReason: null }),
    {
      message: `The change starts anew from ${fitting.name}; look at mass, cost and flags again.${reason}`,
    },
  );
}
