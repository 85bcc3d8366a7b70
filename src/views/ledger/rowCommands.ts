import type { EditAnswer } from '../../project/edit/answer';
import { deleteFittings } from '../../project/edit/deleteFittings';
import { duplicateFittings, excludeFittings, includeFittings } from '../../project/edit/fittingEdits';
import { shiftFitting } from '../../project/edit/orderFittings';
import type { Project } from '../../project/file/schema';
import { useAppStore } from '../../state/appStore';
import { actedOnIds } from '../../state/selection';

/** What is done to the rows picked out, by a word above the ledger or by a key. */
export type RowCommand = 'duplicate' | 'up' | 'down' | 'exclude' | 'delete';

/**
 * Runs a command on the rows picked out.
 * @param shownIds the rows in the order in which they stand on the page.
 * @returns what was done, for the line that says it.
 */
export function runRowCommand(command: RowCommand, shownIds: readonly string[]): string {
  const state = useAppStore.getState();
  const { project } = state;
  const ids = actedOnIds(state);
  if (project === null || ids.length === 0) return 'No row is picked.';
  const rows = namesOf(project, ids);
  switch (command) {
    case 'duplicate':
      return duplicate(ids, rows);
    case 'up':
      return shift(project, ids, rows, -1);
    case 'down':
      return shift(project, ids, rows, 1);
    case 'exclude':
      return exclude(project, ids, rows);
    case 'delete':
      return remove(ids, rows, shownIds);
  }
}

/** "Bow rail", or "3 rows". */
function namesOf(project: Project, ids: readonly string[]): string {
  if (ids.length > 1) return `${ids.length} rows`;
  return project.fittings.find(({ id }) => id === ids[0])?.name ?? 'nothing';
}

function run(label: string, change: (project: Project) => EditAnswer, done: string): string {
  const answer = useAppStore.getState().edit(label, change);
  if ('refused' in answer) return `Not done: ${answer.refused.message}.`;
  return answer.message === undefined ? done : `${done} ${answer.message}`;
}

function duplicate(ids: readonly string[], rows: string): string {
  const store = useAppStore.getState();
  let newIds: readonly string[] = [];
  const said = run(
    `Duplicate ${rows}`,
    (project) => {
      const answer = duplicateFittings(project, ids);
      if (!('refused' in answer)) newIds = answer.newIds ?? [];
      return answer;
    },
    `Duplicated ${rows}.`,
  );
  const [first, ...more] = newIds;
  if (first === undefined) return said;
  store.select(first);
  for (const id of more) store.toggleSelected(id);
  return said;
}

function shift(project: Project, ids: readonly string[], rows: string, step: -1 | 1): string {
  const edge = `${rows} cannot go further ${step === -1 ? 'up' : 'down'}.`;
  const answer = shifted(project, ids, step);
  if (!('refused' in answer) && answer.project === project) return edge;
  const said = run(`Move ${rows} ${step === -1 ? 'up' : 'down'}`, (before) => shifted(before, ids, step), '');
  return said === '' ? placeText(useAppStore.getState().project, ids) : said;
}

/** All of them one step in the file's order, the foremost first; none when that one cannot. */
function shifted(project: Project, ids: readonly string[], step: -1 | 1): EditAnswer {
  const inOrder = project.fittings.filter(({ id }) => ids.includes(id)).map(({ id }) => id);
  if (step === 1) inOrder.reverse();
  let answer: EditAnswer = { project };
  for (const id of inOrder) {
    const next = shiftFitting(answer.project, id, step);
    if ('refused' in next) return next;
    if (next.project === project) return answer;
    answer = next;
  }
  return answer;
}

/** Where the rows are now: the ledger sorts by cost, so that a move shows in the numbers alone. */
function placeText(project: Project | null, ids: readonly string[]): string {
  const index = project?.fittings.findIndex(({ id }) => ids.includes(id)) ?? -1;
  const fitting = project?.fittings[index];
  if (project === null || fitting === undefined) return '';
  const zone = project.zones.find(({ id }) => id === fitting.zoneId)?.name ?? '';
  return `${namesOf(project, ids)} now at number ${index + 1}, in ${zone}.`;
}

/** Takes the rows out of the sums, or back in when they are all out. */
function exclude(project: Project, ids: readonly string[], rows: string): string {
  const areOut = project.fittings.every(({ id, excluded }) => !ids.includes(id) || excluded !== null);
  if (areOut) {
    return run(`Include ${rows}`, (before) => includeFittings(before, ids), `Counted again: ${rows}.`);
  }
  const inIds = project.fittings.filter(({ id, excluded }) => ids.includes(id) && excluded === null);
  return run(
    `Exclude ${rows}`,
    (before) =>
      excludeFittings(
        before,
        inIds.map(({ id }) => id),
        '',
      ),
    `Left out of the sums: ${rows}. Type the reason under Edit, Flags.`,
  );
}

function remove(ids: readonly string[], rows: string, shownIds: readonly string[]): string {
  const store = useAppStore.getState();
  const neighbour = neighbourOf(ids, shownIds);
  const said = run(
    `Delete ${rows}`,
    (project) => deleteFittings(project, ids),
    `Deleted ${rows}; undo brings it back.`,
  );
  if (neighbour !== null && !said.startsWith('Not done')) store.select(neighbour);
  return said;
}

/** The row that the eye falls on next: the one below the last that goes, else the one above. */
function neighbourOf(ids: readonly string[], shownIds: readonly string[]): string | null {
  const last = Math.max(...ids.map((id) => shownIds.indexOf(id)));
  const below = shownIds.slice(last + 1).find((id) => !ids.includes(id));
  const above = shownIds
    .slice(0, Math.max(last, 0))
    .reverse()
    .find((id) => !ids.includes(id));
  return below ?? above ?? null;
}
