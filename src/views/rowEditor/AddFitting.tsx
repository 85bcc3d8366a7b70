import { useEffect, useId, useMemo, useRef, useState, type KeyboardEvent } from 'react';
import { fittingFromCatalogue, inGroups, searchCatalogue } from '../../project/catalogue/catalogue';
import type { EditAnswer } from '../../project/edit/answer';
import type { ProjectBoat } from '../../project/file/schema';
import { useAppStore } from '../../state/appStore';
import { fittingSize } from '../../ui/fittingSize';
import { addBlank, addEntry } from './addToProject';
import { blanks } from './blankFittings';
import '../../ui/fields/fields.css';
import './addFitting.css';

interface AddFittingProps {
  readonly onClose: () => void;
}

/** The catalogue as a list to search, over the page until something is chosen or Escape is pressed. */
export function AddFitting({ onClose }: AddFittingProps) {
  const boat = useAppStore((state) => state.project?.boat);
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    if (dialog.current?.open === false) dialog.current.showModal();
  }, []);
  const head = useId();
  return (
    <dialog ref={dialog} className="add-fitting" aria-labelledby={head} onClose={onClose}>
      <h2 id={head}>Add a fitting</h2>
      {boat !== undefined && <CatalogueList boat={boat} onAdded={onClose} />}
      <button
        type="button"
        className="plain-action"
        onClick={() => {
          // Closing, as against taking the list away, gives the focus back to where it was.
          dialog.current?.close();
        }}
      >
        Close without adding
      </button>
    </dialog>
  );
}

interface Line {
  readonly id: string;
  readonly name: string;
  readonly size: string;
  readonly add: () => EditAnswer;
}

interface LineGroup {
  readonly name: string;
  readonly lines: readonly Line[];
}

function CatalogueList({ boat, onAdded }: { readonly boat: ProjectBoat; readonly onAdded: () => void }) {
  const [words, setWords] = useState('');
  const [problem, setProblem] = useState('');
  const place = useRef<HTMLDivElement>(null);
  const groups = useMemo(() => groupsFor(words, boat), [words, boat]);
  const count = groups.reduce((sum, group) => sum + (group === blankGroup ? 0 : group.lines.length), 0);

  const choose = (line: Line): void => {
    const answer = line.add();
    if ('refused' in answer) setProblem(`Not added: ${answer.refused.message}.`);
    else onAdded();
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
    if (step === undefined) return;
    event.preventDefault();
    const stops = [...(place.current?.querySelectorAll<HTMLElement>('input, .add-choice') ?? [])];
    stops[stops.findIndex((each) => each === document.activeElement) + step]?.focus();
  };
  return (
    <div ref={place} className="add-body" onKeyDown={onKeyDown}>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          const first = bestLine(groups, words);
          if (first !== undefined) choose(first);
        }}
      >
        <label className="add-search">
          <span className="muted">Search</span>
          <input
            type="search"
            className="field-input"
            autoFocus
            autoComplete="off"
            value={words}
            onChange={(event) => {
              setWords(event.target.value);
            }}
          />
        </label>
      </form>
      <p className="fine" role="status">
        {problem !== '' ? problem : countText(count, words)}
      </p>
      <div className="add-list">
        {groups.map(({ name, lines }) => (
          <section key={name} aria-label={name}>
            <h3>{name}</h3>
            <ul>
              {lines.map((line) => (
                <li key={line.id}>
                  <button
                    type="button"
                    className="add-choice"
                    onClick={() => {
                      choose(line);
                    }}
                  >
                    {line.name} <span className="add-size">{line.size}</span>
                  </button>
                </li>
              ))}
            </ul>
          </section>
        ))}
      </div>
    </div>
  );
}

function countText(count: number, words: string): string {
  if (count === 0) return `Nothing is called "${words.trim()}"; take a blank one and name it.`;
  if (words.trim() === '')
    return 'Type to search; the arrow keys walk through the list. Sizes are common practice.';
  return count === 1 ? '1 found; Enter adds it.' : `${count} found; Enter adds the best match.`;
}

/** The entries found, under their heads; the blank ones lead the whole list and end a searched one. */
function groupsFor(words: string, boat: ProjectBoat): LineGroup[] {
  const found = inGroups(searchCatalogue(words)).map(({ group, entries }) => ({
    name: group,
    lines: entries.map((entry) => ({
      id: entry.id,
      name: entry.name,
      size: fittingSize(fittingFromCatalogue(entry.id, boat, 'zone', 'new'), boat),
      add: () => addEntry(entry),
    })),
  }));
  return words.trim() === '' ? [blankGroup, ...found] : [...found, blankGroup];
}

const blankGroup: LineGroup = {
  name: 'Blank, to fill in yourself',
  lines: blanks.map((blank) => ({
    id: blank.name,
    name: blank.name.replace('New', 'A'),
    size: '',
    add: () => addBlank(blank),
  })),
};

/** The best match of the search, which need not stand first in the list by places. */
function bestLine(groups: readonly LineGroup[], words: string): Line | undefined {
  if (words.trim() === '') return undefined;
  const [best] = searchCatalogue(words);
  return groups.flatMap(({ lines }) => lines).find(({ id }) => id === best?.id);
}
