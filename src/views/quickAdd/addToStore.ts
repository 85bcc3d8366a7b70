import { addQuickEntry, quickFieldOfPath } from '../../project/survey/addQuickEntry';
import type { QuickEntry, QuickErrors } from '../../project/survey/quickEntry';
import { useAppStore } from '../../state/appStore';
import { noteAdded } from '../../state/quickAdd';
import { fittingSize } from '../../ui/fittingSize';

/** What was added, in words; or the field that the refusal is about, or its words where the form has no such field. */
export type Added = { readonly line: string } | { readonly refused: QuickErrors; readonly problem: string };

/** One fitting, one step of undo. */
export function addToStore(entry: QuickEntry): Added {
  const store = useAppStore.getState();
  const answer = store.edit(`Add ${entry.name}`, (project) => addQuickEntry(project, entry));
  if ('refused' in answer) return refusalOf(answer.refused.path, answer.refused.message);
  const fitting = answer.project.fittings.find(({ id }) => id === answer.newIds?.[0]);
  if (fitting === undefined) return { refused: {}, problem: 'it is not in the project' };
  noteAdded(fitting.id);
  const zone = answer.project.zones.find(({ id }) => id === fitting.zoneId);
  const size = fittingSize(fitting, answer.project.boat);
  return { line: `Added: ${fitting.name}, ${size}, ${zone?.name ?? ''}.` };
}

function refusalOf(path: string, message: string): Added {
  const field = quickFieldOfPath(path);
  if (field === null) return { refused: {}, problem: message };
  return { refused: { [field]: `This ${message}.` }, problem: '' };
}
