import { deleteFittings } from '../../project/edit/deleteFittings';
import type { Project } from '../../project/file/schema';
import { useAppStore } from '../../state/appStore';
import { useQuickAdding } from '../../state/quickAdd';
import { fittingSize } from '../../ui/fittingSize';

interface AddedListProps {
  readonly project: Project;
  /** What was taken back, for the line that says it. */
  readonly onTakenBack: (words: string) => void;
}

/** What was just added, the latest first; each can be taken back, and what an undo took is gone from here too. */
export function AddedList({ project, onTakenBack }: AddedListProps) {
  const addedIds = useQuickAdding((state) => state.addedIds);
  const added = addedIds.flatMap((id) => project.fittings.filter((fitting) => fitting.id === id));
  if (added.length === 0) return null;
  const takeBack = (id: string, name: string): void => {
    const answer = useAppStore
      .getState()
      .edit(`Take back ${name}`, (current) => deleteFittings(current, [id]));
    onTakenBack('refused' in answer ? `Not taken back: ${answer.refused.message}.` : `Taken back: ${name}.`);
  };
  return (
    <ul className="quick-added" aria-label="Just added">
      {added.map((fitting) => (
        <li key={fitting.id}>
          <span className="quick-added-name">
            {fitting.name} <span className="muted">{fittingSize(fitting, project.boat)}</span>
          </span>
          <button
            type="button"
            className="plain-action"
            onClick={() => {
              takeBack(fitting.id, fitting.name);
            }}
          >
            Take back <span className="visually-hidden">{fitting.name}</span>
          </button>
        </li>
      ))}
    </ul>
  );
}
