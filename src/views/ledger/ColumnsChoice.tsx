import { memo, useEffect, useRef, type FocusEvent, type KeyboardEvent, type RefObject } from 'react';
import { extraColumns, prefer, usePreferences, type ExtraColumn } from '../../state/preferences';
import './columnsChoice.css';

const labels: Readonly<Record<ExtraColumn, string>> = {
  coefficient: 'coefficient and its spread',
  regime: 'regime',
  reynolds: 'Reynolds number',
  air: 'air power',
  sideForce: 'side force',
  heelingMoment: 'heeling moment',
  price: 'full price, where a condition gives a price',
  savingSpread: 'spread of the saving',
  doubt: 'largest doubts, by source',
};

/** Which columns stand beside those that are always there, and how close the rows are. */
export const ColumnsChoice = memo(function ColumnsChoice() {
  const place = useRef<HTMLDetailsElement>(null);
  const close = () => {
    if (place.current !== null) place.current.open = false;
  };
  useClickElsewhere(place, close);
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key !== 'Escape' || place.current?.open !== true) return;
    event.stopPropagation();
    close();
    place.current.querySelector('summary')?.focus();
  };
  const onBlur = ({ currentTarget, relatedTarget }: FocusEvent) => {
    if (relatedTarget !== null && !currentTarget.contains(relatedTarget)) close();
  };
  return (
    <details className="columns-choice" ref={place} onKeyDown={onKeyDown} onBlur={onBlur}>
      <summary className="plain-action">Columns</summary>
      <Choices />
    </details>
  );
});

function useClickElsewhere(place: RefObject<HTMLElement | null>, close: () => void): void {
  useEffect(() => {
    const onPointerDown = ({ target }: PointerEvent) => {
      if (place.current?.contains(target as Node) !== true) close();
    };
    document.addEventListener('pointerdown', onPointerDown);
    return () => {
      document.removeEventListener('pointerdown', onPointerDown);
    };
  });
}

function Choices() {
  const columns = usePreferences((state) => state.columns);
  const isCompact = usePreferences((state) => state.isCompact);
  return (
    <fieldset className="column-checks">
      <legend>Beside drag, track power and saving</legend>
      {extraColumns.map((id) => (
        <Check
          key={id}
          label={labels[id]}
          isChecked={columns.includes(id)}
          onChange={(isChosen) => {
            prefer({
              columns: extraColumns.filter((each) => (each === id ? isChosen : columns.includes(each))),
            });
          }}
        />
      ))}
      <hr />
      <Check
        label="rows closer together"
        isChecked={isCompact}
        onChange={(isChosen) => {
          prefer({ isCompact: isChosen });
        }}
      />
    </fieldset>
  );
}

interface CheckProps {
  readonly label: string;
  readonly isChecked: boolean;
  readonly onChange: (isChecked: boolean) => void;
}

function Check({ label, isChecked, onChange }: CheckProps) {
  return (
    <label className="column-check">
      <input
        type="checkbox"
        checked={isChecked}
        onChange={({ target }) => {
          onChange(target.checked);
        }}
      />
      {label}
    </label>
  );
}
