import { useEffect, useId, useRef, useState } from 'react';
import { catalogue, fittingFromCatalogue, suggestedZoneId } from '../project/catalogue/catalogue';
import { startingEntryIds } from '../project/catalogue/newProject';
import type { EditAnswer } from '../project/edit/answer';
import { addFitting } from '../project/edit/fittingEdits';
import type { Project } from '../project/file/schema';
import { useAppStore } from '../state/appStore';
import { useShell, wantFirstStep } from './dialogs/shell';
import { goToLedger } from './swap';
import './emptyLedger.css';

const entries = startingEntryIds.flatMap((entryId) => catalogue.filter(({ id }) => id === entryId));

/** Where the ledger will be: the next step, which is to put something into the wind. */
export function EmptyLedger() {
  const [left, setLeft] = useState<readonly string[]>([]);
  const headingId = useId();
  const firstStep = useFirstStep();
  const wanted = entries.filter(({ id }) => !left.includes(id)).map(({ id }) => id);
  return (
    <div className="empty-ledger">
      <h2 id={headingId}>Nothing stands in the wind yet</h2>
      <p>
        The ledger lists what each fitting costs. Begin with what nearly every racing yacht carries, in usual
        sizes for a boat of this size; then measure yours and type over it.
      </p>
      <ul className="starting-entries" aria-labelledby={headingId}>
        {entries.map(({ id, name }) => (
          <li key={id}>
            <label>
              <input
                type="checkbox"
                checked={!left.includes(id)}
                onChange={(event) => {
                  setLeft(event.target.checked ? left.filter((each) => each !== id) : [...left, id]);
                }}
              />
              {name}
            </label>
          </li>
        ))}
      </ul>
      <p className="empty-actions">
        <button
          ref={firstStep}
          type="button"
          className="plain-action"
          disabled={wanted.length === 0}
          onClick={() => {
            addThese(wanted);
            goToLedger();
          }}
        >
          Add these {wanted.length} to the ledger
        </button>
        <button
          type="button"
          className="plain-action"
          onClick={() => {
            useAppStore.getState().setAdding(true);
          }}
        >
          Add a fitting from the catalogue
        </button>
      </p>
    </div>
  );
}

/** The button of the next step, which takes the focus when the project was just made. */
function useFirstStep() {
  const button = useRef<HTMLButtonElement>(null);
  const isWanted = useShell((state) => state.isFirstStepWanted);
  useEffect(() => {
    if (!isWanted) return;
    wantFirstStep(false);
    button.current?.focus();
  }, [isWanted]);
  return button;
}

/** All of them in one step, so that one undo takes them back. */
function addThese(entryIds: readonly string[]): void {
  const store = useAppStore.getState();
  const answer = store.edit('Add the usual fittings', (project) => withEntries(project, entryIds));
  if ('refused' in answer) return;
  store.select(answer.newIds?.[0] ?? null);
}

function withEntries(project: Project, entryIds: readonly string[]): EditAnswer {
  let answer: EditAnswer = { project };
  const newIds: string[] = [];
  for (const entryId of entryIds) {
    const kind = entries.find(({ id }) => id === entryId)?.zone;
    const zoneId = kind === undefined ? null : suggestedZoneId(kind, answer.project.zones);
    if (zoneId === null) continue;
    const added = addFitting(
      answer.project,
      fittingFromCatalogue(entryId, answer.project.boat, zoneId, 'new'),
    );
    if ('refused' in added) return added;
    newIds.push(...(added.newIds ?? []));
    answer = added;
  }
  return { project: answer.project, newIds };
}
