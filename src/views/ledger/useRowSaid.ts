import { useCallback, useState } from 'react';
import { useAppStore } from '../../state/appStore';

/** What the last command on rows did, and how to say it; silent once undo or redo has gone past it. */
export function useRowSaid(): readonly [said: string, say: (text: string) => void] {
  const turn = useAppStore((state) => state.turn);
  const [said, setSaid] = useState({ text: '', turn });
  const say = useCallback((text: string): void => {
    setSaid({ text, turn: useAppStore.getState().turn });
  }, []);
  return [said.turn === turn ? said.text : '', say];
}
