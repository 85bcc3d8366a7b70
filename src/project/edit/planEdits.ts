import { blankPlan } from '../file/blankParts';
import type { Project, ProjectPlan } from '../file/schema';
import { nothingSuch, type EditAnswer, type Said } from './answer';
import { judged } from './judge';
import { freshId, freshIds, withChanged, withInserted, withMoved, without } from './lists';
import { copyName, newName } from './names';

/** Adds an empty plan right after another, or as the last. */
export function addPlan(project: Project, afterId: string | null = null, name?: string): EditAnswer {
  const id = freshId(project.plans, 'p');
  const names = project.plans.map((plan) => plan.name);
  const plan = blankPlan({ id, name: name ?? newName('Plan', names) });
  return judged(project, { plans: withInserted(project.plans, [plan], afterId) }, { newIds: [id] });
}

/** Puts a copy of a plan right after it, with items of its own ids. */
export function duplicatePlan(project: Project, id: string): EditAnswer {
  const original = project.plans.find((plan) => plan.id === id);
  if (original === undefined) return nothingSuch('plan', id);
  const copyId = freshId(project.plans, 'p');
  const itemIds = freshIds(original.items, 'i', original.items.length);
  const copy: ProjectPlan = {
    ...original,
    id: copyId,
    name: copyName(
      original.name,
      project.plans.map(({ name }) => name),
    ),
    items: original.items.map((item, i) => ({ ...item, id: itemIds[i] ?? '' })),
  };
  return judged(project, { plans: withInserted(project.plans, [copy], id) }, { newIds: [copyId] });
}

/** Changes a plan's name or note. */
export function patchPlan(
  project: Project,
  id: string,
  patch: Partial<Pick<ProjectPlan, 'name' | 'note'>>,
): EditAnswer {
  return changePlan(project, id, (plan) => ({ ...plan, ...patch }));
}

/** Moves a plan to stand before another, or last. */
export function movePlan(project: Project, id: string, beforeId: string | null): EditAnswer {
  return judged(project, { plans: withMoved(project.plans, id, beforeId) });
}

export function deletePlan(project: Project, id: string): EditAnswer {
  if (!project.plans.some((plan) => plan.id === id)) return nothingSuch('plan', id);
  return judged(project, { plans: without(project.plans, new Set([id])) });
}

/** Puts one plan through a change. */
export function changePlan(
  project: Project,
  id: string,
  change: (plan: ProjectPlan) => ProjectPlan,
  said: Said = {},
): EditAnswer {
  if (!project.plans.some((plan) => plan.id === id)) return nothingSuch('plan', id);
  const plans = withChanged(project.plans, id, change);
  return judged(project, { plans }, said);
}
