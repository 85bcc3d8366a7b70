import { create } from 'zustand';
import type { Turn } from '../state/historySlice';

interface Said {
  readonly text: string;
  /** Grows with each saying: the same words twice are two. */
  readonly count: number;
}

/** What was last said to those who listen. */
export const useSaid = create<Said>()(() => ({ text: '', count: 0 }));

/** Says what a key has done, where nothing that has the focus would tell. */
export function say(text: string): void {
  useSaid.setState(({ count }) => ({ text, count: count + 1 }));
}

/** "Undone: Change the heel of Upwind". */
export function turnText({ kind, label }: Turn): string {
  if (label === null) return `Nothing to ${kind}.`;
  return `${kind === 'undo' ? 'Undone' : 'Redone'}: ${label}`;
}
