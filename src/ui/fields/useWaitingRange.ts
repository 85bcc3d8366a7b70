import { useState } from 'react';
import type { ProjectRanged } from '../../project/file/schema';
import { useKeptText } from './useKeptText';

type Waiting = ProjectRanged | null;

/** A range whose three values are typed and not in order yet; kept for what it was typed for, if that has a name. */
export function useWaitingRange(
  typedFor: string | undefined,
  label: string,
): readonly [Waiting, (waiting: Waiting) => void] {
  const [local, setLocal] = useState<Waiting>(null);
  const [text, setText] = useKeptText(`${typedFor ?? ''}.range`, label);
  if (typedFor === undefined) return [local, setLocal];
  const setWaiting = (waiting: Waiting): void => {
    setText(waiting === null ? '' : [waiting.low, waiting.best, waiting.high].join(' '));
  };
  return [waitingIn(text), setWaiting];
}

/** Low, best and high in SI as they were kept; null for anything else, and for a range that is in order. */
function waitingIn(text: string): Waiting {
  const [low, best, high] = text.split(' ').map(Number);
  if (low === undefined || best === undefined || high === undefined) return null;
  if (![low, best, high].every(Number.isFinite) || (low <= best && best <= high)) return null;
  return { low, best, high };
}
