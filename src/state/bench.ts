import { create } from 'zustand';
import type { Candidate } from '../project/bench/candidates';
import { benchOf, benchWordsOf, usualBench, type Bench } from './benchAddress';

interface BenchState {
  readonly bench: Bench;
  /** The words that stand in the address, or the last that were read from it. */
  readonly words: string | null;
  /** What stood on the bench with each member before another came: a link back finds it again. */
  readonly before: ReadonlyMap<string, readonly Candidate[]>;
}

/** What stands on the fairing bench: no part of the project, and of no undo; the address holds it. */
export const useBench = create<BenchState>()(() => ({ bench: usualBench, words: null, before: new Map() }));

/** Takes over what an address asks for; a member alone comes back with the candidates it had. */
export function arriveOnBench(words: string): void {
  useBench.setState((state) => {
    if (words === state.words) return state;
    const before = remembered(state);
    const asked = benchOf(words);
    const candidates =
      asked.candidates.length > 0 ? asked.candidates : (before.get(nameOf(asked)) ?? asked.candidates);
    return { words, before, bench: { ...asked, candidates } };
  });
}

function nameOf({ memberId, typed }: Bench): string {
  return memberId ?? (typed === null ? '' : ' typed');
}

function remembered({ bench, before }: BenchState): BenchState['before'] {
  return bench.candidates.length === 0 ? before : new Map(before).set(nameOf(bench), bench.candidates);
}

export function changeBench(change: Partial<Bench>): void {
  useBench.setState(({ bench }) => ({ bench: { ...bench, ...change } }));
}

/** Puts another member on the bench, with the candidates it had. */
export function putOnBench(member: Pick<Bench, 'memberId' | 'typed'>): void {
  useBench.setState((state) => {
    const before = remembered(state);
    const candidates = before.get(nameOf({ ...state.bench, ...member })) ?? [];
    return { before, bench: { ...state.bench, ...member, candidates, chosenId: null } };
  });
}

/** The words that the address should have, or null where it has them. */
export function unwrittenWords(): string | null {
  const { bench, words } = useBench.getState();
  const next = benchWordsOf(bench);
  if (next === words) return null;
  useBench.setState({ words: next });
  return next;
}
