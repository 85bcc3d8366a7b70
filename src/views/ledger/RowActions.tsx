import { useId } from 'react';
import type { Project } from '../../project/file/schema';
import { isMember } from '../../project/file/shapeKinds';
import { useAppStore } from '../../state/appStore';
import { actedOnIds } from '../../state/selection';
import type { RowCommand } from './rowCommands';

interface RowActionsProps {
  readonly onCommand: (command: RowCommand) => void;
  readonly onEdit: () => void;
  /** What the last command did; read aloud. */
  readonly said: string;
}

/** What can be done to the rows picked out, as words in a line. */
export function RowActions({ onCommand, onEdit, said }: RowActionsProps) {
  const reasonId = useId();
  const project = useAppStore((state) => state.project);
  const selectedFittingId = useAppStore((state) => state.selectedFittingId);
  const selectedIds = useAppStore((state) => state.selectedIds);
  const ids = actedOnIds({ selectedFittingId, selectedIds });
  const isNothing = ids.length === 0;
  const areOut =
    !isNothing &&
    (project?.fittings.every(({ id, excluded }) => !ids.includes(id) || excluded !== null) ?? false);
  const words: readonly (readonly [key: string, word: string, run: () => void])[] = [
    ['edit', 'Edit', onEdit],
    ...commands.map(
      ([word, command]) =>
        [
          // The same button under either word, or it would lose the focus with the first press.
          command,
          command === 'exclude' && areOut ? 'Include' : word,
          () => {
            onCommand(command);
          },
        ] as const,
    ),
  ];
  return (
    <div className="row-actions">
      <div className="row-action-words" role="group" aria-label="Rows">
        <button
          type="button"
          className="plain-action"
          aria-label="Add a fitting"
          onClick={() => {
            useAppStore.getState().setAdding(true);
          }}
        >
          Add<span className="desk-word">&nbsp;a fitting</span>
        </button>
        {words.map(([key, word, run]) => (
          <button
            key={key}
            type="button"
            className="plain-action"
            disabled={isNothing}
            aria-describedby={isNothing ? reasonId : undefined}
            onClick={run}
          >
            {word}
          </button>
        ))}
        <BenchLink project={project} ids={ids} />
        {isNothing && (
          <span className="fine" id={reasonId}>
            Pick a row first.
          </span>
        )}
        {ids.length > 1 && <span className="fine">{ids.length} rows picked</span>}
      </div>
      <p className="row-said fine" role="status">
        {said}
      </p>
    </div>
  );
}

interface BenchLinkProps {
  readonly project: Project | null;
  readonly ids: readonly string[];
}

/** The way to the fairing bench, from one row that can have a fairing. */
function BenchLink({ project, ids }: BenchLinkProps) {
  const [id, ...more] = ids;
  const fitting = more.length > 0 ? undefined : project?.fittings.find((each) => each.id === id);
  if (fitting === undefined || fitting.excluded !== null || !isMember(fitting.shape)) return null;
  return (
    <a className="plain-action" href={`#place=fairing&member=${fitting.id}`}>
      Put on the bench
    </a>
  );
}

const commands: readonly (readonly [word: string, command: RowCommand])[] = [
  ['Duplicate', 'duplicate'],
  ['Up', 'up'],
  ['Down', 'down'],
  ['Exclude', 'exclude'],
  ['Delete', 'delete'],
];
