import { useEffect } from 'react';
import { useAppStore } from '../state/appStore';
import { say, turnText, useSaid } from './announce';

/** The place where a screen reader hears what undo, redo and the keys of the page have done. */
export function Announcer() {
  const { text, count } = useSaid();
  useEffect(
    () =>
      useAppStore.subscribe(({ turn }, previous) => {
        if (turn !== null && turn !== previous.turn) say(turnText(turn));
      }),
    [],
  );
  return (
    <p className="visually-hidden" role="status" aria-label="What was done">
      <span key={count}>{text}</span>
    </p>
  );
}
