import type { KeyboardEvent } from 'react';
import { beforeAfterStep } from '../project/edit/lists';
import './moveButtons.css';

export interface Movable {
  /** The list in its order. */
  readonly list: readonly { readonly id: string }[];
  readonly id: string;
  /** @param beforeId what it is to stand before; null for the end. */
  readonly onMove: (beforeId: string | null, way: 'up' | 'down') => void;
}

interface MoveButtonsProps extends Movable {
  /** What is moved, where a list has more buttons than these. */
  readonly what?: string;
  /** Shows "up" and "down" alone, for a narrow line. */
  readonly isShort?: boolean;
}

const steps = [
  { step: -1, way: 'up' },
  { step: 1, way: 'down' },
] as const;

/** Up and down in a list. At an end a button stays where it is and keeps the focus, but does nothing. */
export function MoveButtons({ list, id, onMove, what = '', isShort = false }: MoveButtonsProps) {
  return steps.map(({ step, way }) => {
    const beforeId = beforeAfterStep(list, id, step);
    const name = ['Move', what, way].filter((word) => word !== '').join(' ');
    return (
      <button
        key={way}
        type="button"
        className="plain-action move-button"
        aria-label={name}
        aria-disabled={beforeId === undefined}
        onClick={() => {
          if (beforeId !== undefined) onMove(beforeId, way);
        }}
      >
        {isShort ? way : name}
      </button>
    );
  });
}

/** The same by Alt with an arrow, for whatever holds the focus inside but a list that opens with those keys. */
export function moveKeys({ list, id, onMove }: Movable): (event: KeyboardEvent) => void {
  return (event) => {
    const found = steps.find(({ way }) => event.key === (way === 'up' ? 'ArrowUp' : 'ArrowDown'));
    if (found === undefined || !event.altKey || event.ctrlKey || event.metaKey) return;
    if (event.target instanceof HTMLSelectElement) return;
    event.preventDefault();
    event.stopPropagation();
    const beforeId = beforeAfterStep(list, id, found.step);
    if (beforeId !== undefined) onMove(beforeId, found.way);
  };
}
