import { blankItem } from '../file/blankParts';
import type { ItemChange, Project, RefitItem } from '../file/schema';
import { pathText } from '../file/fieldErrors';
import { startLabels, type ItemStart } from '../wording/itemText';
import { nothingSuch, refusal, type EditAnswer, type Said } from './answer';
import { defaultChange, fittingAfterPlan } from './defaultChange';
import { freshId, withChanged, withInserted, withMoved, without } from './lists';
import { copyName, nameWithEnding } from './names';
import { patched, type Patch } from './patch';
import { changePlan } from './planEdits';

/** Adds an item of a kind about a fitting as the last of a plan, with a change to start from. */
export function addItem(project: Project, planId: string, fittingId: string, kind: ItemStart): EditAnswer {
  const planIndex = project.plans.findIndex(({ id }) => id === planId);
  const plan = project.plans[planIndex];
  if (plan === undefined) return nothingSuch('plan', planId);
  const fitting = project.fittings.find(({ id }) => id === fittingId);
  if (fitting === undefined) return nothingSuch('fitting', fittingId);
  const start = defaultChange(project, fittingAfterPlan(project, plan, fitting), kind);
  if (!start.ok) {
    return refusal(pathText(['plans', planIndex, 'items', plan.items.length, 'change']), start.message);
  }
  const id = freshId(plan.items, 'i');
  const name = itemName(fitting.name, kind);
  const item = blankItem({ id, name, fittingId, change: start.change, flags: startFlags(kind) });
  return changePlan(project, planId, (old) => ({ ...old, items: [...old.items, item] }), { newIds: [id] });
}

/** An item's name until somebody types another. */
export function itemName(fittingName: string, kind: ItemStart): string {
  return nameWithEnding(fittingName, `: ${startLabels[kind]}`);
}

export function hasStartName(item: RefitItem, fittingName: string): boolean {
  const starts = Object.keys(startLabels) as ItemStart[];
  return starts.some((start) => item.name === itemName(fittingName, start));
}

/** What turns can jam, and another section may not carry the load. */
function startFlags(kind: ItemStart): RefitItem['flags'] {
  return { structural: kind === 'otherSection', movingPart: kind === 'fairedTurning', classRule: null };
}

/** Changes any fields of an item but its id. */
export function patchItem(
  project: Project,
  planId: string,
  itemId: string,
  patch: Patch<Omit<RefitItem, 'id'>>,
): EditAnswer {
  return changeItem(project, planId, itemId, (item) => ({
    ...patched<Omit<RefitItem, 'id'>>(item, patch),
    id: item.id,
  }));
}

/** Makes an item another kind of change, starting anew; its name follows if nobody has typed another. */
export function changeItemKind(
  project: Project,
  planId: string,
  itemId: string,
  kind: ItemChange['kind'],
): EditAnswer {
  const planIndex = project.plans.findIndex(({ id }) => id === planId);
  const plan = project.plans[planIndex];
  if (plan === undefined) return nothingSuch('plan', planId);
  const itemIndex = plan.items.findIndex(({ id }) => id === itemId);
  const item = plan.items[itemIndex];
  const fitting = project.fittings.find(({ id }) => id === item?.fittingId);
  if (item === undefined || fitting === undefined) return nothingSuch('refit item', itemId);
  if (item.change.kind === kind) return { project };
  const upToItem = { ...plan, items: plan.items.slice(0, itemIndex) };
  const start = defaultChange(project, fittingAfterPlan(project, upToItem, fitting), kind);
  if (!start.ok) {
    return refusal(pathText(['plans', planIndex, 'items', itemIndex, 'change', 'kind']), start.message);
  }
  const { change } = start;
  const name = hasStartName(item, fitting.name) ? itemName(fitting.name, kind) : item.name;
  return changeItem(project, planId, itemId, (old) => ({ ...old, name, change }));
}

export function switchItem(project: Project, planId: string, itemId: string, on: boolean): EditAnswer {
  return changeItem(project, planId, itemId, (item) => ({ ...item, on }));
}

/** Sets who answers for changing a safety-required fitting and why; null takes the word back. */
export function setSafetyReason(
  project: Project,
  planId: string,
  itemId: string,
  safetyReason: RefitItem['safetyReason'],
): EditAnswer {
  return changeItem(project, planId, itemId, (item) => ({ ...item, safetyReason }));
}

/** Puts a copy of an item right after it, switched off: twice the same change would contradict or do nothing. */
export function duplicateItem(project: Project, planId: string, itemId: string): EditAnswer {
  const plan = project.plans.find(({ id }) => id === planId);
  const original = plan?.items.find(({ id }) => id === itemId);
  if (plan === undefined || original === undefined) return nothingSuch('refit item', itemId);
  const id = freshId(plan.items, 'i');
  const name = copyName(
    original.name,
    plan.items.map((item) => item.name),
  );
  const copy = { ...original, id, name, on: false };
  return changePlan(project, planId, (old) => ({ ...old, items: withInserted(old.items, [copy], itemId) }), {
    newIds: [id],
  });
}

/** Moves an item to stand before another of its plan, or last. */
export function moveItem(
  project: Project,
  planId: string,
  itemId: string,
  beforeId: string | null,
): EditAnswer {
  return changePlan(project, planId, (plan) => ({ ...plan, items: withMoved(plan.items, itemId, beforeId) }));
}

export function deleteItems(project: Project, planId: string, itemIds: readonly string[]): EditAnswer {
  return changePlan(project, planId, (plan) => ({ ...plan, items: without(plan.items, new Set(itemIds)) }));
}

/** Puts one item through a change. */
export function changeItem(
  project: Project,
  planId: string,
  itemId: string,
  change: (item: RefitItem) => RefitItem,
  said: Said = {},
): EditAnswer {
  const plan = project.plans.find(({ id }) => id === planId);
  if (plan === undefined) return nothingSuch('plan', planId);
  if (!plan.items.some(({ id }) => id === itemId)) return nothingSuch('refit item', itemId);
  return changePlan(
    project,
    planId,
    (old) => ({ ...old, items: withChanged(old.items, itemId, change) }),
    said,
  );
}
