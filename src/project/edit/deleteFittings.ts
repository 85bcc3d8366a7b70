import type { Project, ProjectFitting, ProjectPlan, RefitItem } from '../file/schema';
import { counted, type EditAnswer } from './answer';
import { judged } from './judge';

/**
 * Deletes fittings and whatever names them: refit items about them, items that took their shape, and the shelter they
 * gave. The message counts what went with them.
 */
export function deleteFittings(project: Project, ids: readonly string[]): EditAnswer {
  const gone: ReadonlySet<string> = new Set(ids);
  const fittings = project.fittings
    .filter(({ id }) => !gone.has(id))
    .map((fitting) => withoutShelter(fitting, gone));
  const plans = project.plans.map((plan) => withoutItemsAbout(plan, gone));
  const message = lossText(project, gone);
  return judged(project, { fittings, plans }, message === '' ? {} : { message });
}

function isGone(id: string | null, gone: ReadonlySet<string>): boolean {
  return id !== null && gone.has(id);
}

function withoutShelter(fitting: ProjectFitting, gone: ReadonlySet<string>): ProjectFitting {
  return isGone(fitting.shelteredByFittingId, gone) ? { ...fitting, shelteredByFittingId: null } : fitting;
}

function withoutItemsAbout(plan: ProjectPlan, gone: ReadonlySet<string>): ProjectPlan {
  const items = plan.items
    .filter((item) => !isAbout(item, gone) && !takesShape(item, gone))
    .map((item) => withoutItemShelter(item, gone));
  const isSame = items.length === plan.items.length && items.every((item, i) => item === plan.items[i]);
  return isSame ? plan : { ...plan, items };
}

function isAbout(item: RefitItem, gone: ReadonlySet<string>): boolean {
  return gone.has(item.fittingId);
}

function takesShape({ change }: RefitItem, gone: ReadonlySet<string>): boolean {
  return change.kind === 'shapeOf' && gone.has(change.fittingId);
}

function hasShelter({ change }: RefitItem, gone: ReadonlySet<string>): boolean {
  return change.kind === 'sheltered' && isGone(change.shelteredByFittingId, gone);
}

function withoutItemShelter(item: RefitItem, gone: ReadonlySet<string>): RefitItem {
  if (item.change.kind !== 'sheltered' || !hasShelter(item, gone)) return item;
  return { ...item, change: { ...item.change, shelteredByFittingId: null } };
}

/** What else goes, in a sentence; '' for nothing. Exposures typed for a shelter stay, so they are named for a look. */
function lossText(project: Project, gone: ReadonlySet<string>): string {
  const items = project.plans.flatMap((plan) => plan.items);
  const about = items.filter((item) => isAbout(item, gone)).length;
  const shapes = items.filter((item) => !isAbout(item, gone) && takesShape(item, gone)).length;
  const sheltered = project.fittings.filter(
    ({ id, shelteredByFittingId }) => !gone.has(id) && isGone(shelteredByFittingId, gone),
  );
  const itemShelters = items.filter((item) => !isAbout(item, gone) && hasShelter(item, gone)).length;
  const deleted = [
    about === 0
      ? ''
      : counted(about, 'refit item about what was deleted', 'refit items about what was deleted'),
    shapes === 0 ? '' : counted(shapes, 'refit item that took its shape', 'refit items that took its shape'),
  ].filter((text) => text !== '');
  const lost = [
    sheltered.length === 0 ? '' : counted(sheltered.length, 'fitting'),
    itemShelters === 0 ? '' : counted(itemShelters, 'refit item'),
  ].filter((text) => text !== '');
  return [
    deleted.length === 0 ? '' : `Deleted with it: ${deleted.join(', ')}.`,
    lost.length === 0
      ? ''
      : `No longer sheltered by it: ${lost.join(', ')}; the exposure stays as typed, so look at it again.`,
  ]
    .filter((text) => text !== '')
    .join(' ');
}
