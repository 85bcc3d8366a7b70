import { useId } from 'react';
import { StillInput } from './fields/StillInput';
import './oneOf.css';

export interface Option<Id extends string> {
  readonly id: Id;
  readonly label: string;
  /** A short fact at the end of the line. */
  readonly note?: string;
}

interface OneOfProps<Id extends string> {
  readonly label: string;
  readonly options: readonly Option<Id>[];
  readonly chosenId: Id;
  readonly onChoose: (id: Id) => void;
}

/** A choice that stands open as a list: for the few that a reader switches between all the time. */
export function OneOfList<Id extends string>({ label, options, chosenId, onChoose }: OneOfProps<Id>) {
  const group = useId();
  return (
    <fieldset className="one-of-list">
      <legend className="muted">{label}</legend>
      {options.map(({ id, label: name, note }) => (
        <label key={id} className="one-of-option">
          <StillInput
            type="radio"
            name={group}
            checked={id === chosenId}
            onChange={() => {
              onChoose(id);
            }}
          />
          <span className="one-of-name">{name}</span>
          {note !== undefined && <span className="muted">{note}</span>}
        </label>
      ))}
    </fieldset>
  );
}

/** The same as words in one line, the chosen one underlined. */
export function OneOfWords<Id extends string>({ label, options, chosenId, onChoose }: OneOfProps<Id>) {
  const group = useId();
  return (
    <fieldset className="one-of-words">
      <legend className="visually-hidden">{label}</legend>
      {options.map(({ id, label: name }) => (
        <label key={id} className="one-of-word">
          <StillInput
            type="radio"
            className="visually-hidden"
            name={group}
            checked={id === chosenId}
            onChange={() => {
              onChoose(id);
            }}
          />
          <span>{name}</span>
        </label>
      ))}
    </fieldset>
  );
}

/** The same as one line that opens. */
export function OneOfLine<Id extends string>({ label, options, chosenId, onChoose }: OneOfProps<Id>) {
  return (
    <label className="one-of-line">
      <span className="muted">{label}</span>
      <select
        value={chosenId}
        onChange={(event) => {
          const chosen = options.find(({ id }) => id === event.target.value);
          if (chosen !== undefined) onChoose(chosen.id);
        }}
      >
        {options.map(({ id, label: name, note }) => (
          <option key={id} value={id}>
            {note === undefined ? name : `${name} (${note})`}
          </option>
        ))}
      </select>
    </label>
  );
}
