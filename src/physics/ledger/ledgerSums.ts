import type { DoubtChange } from '../doubt/doubtChange';
import {
  differenceOfDoubts,
  endsOfDifference,
  excludesZero,
  rangesOf,
  sumDoubts,
  type Ranges,
} from '../doubt/doubts';
import type { FittingTrace } from '../fitting/evaluateFitting';
import { oneOfEach, type Notice } from '../fitting/notice';
import { addChange, type Change, type DoubtedKey } from '../fitting/change';
import { sumOutcomes, zeroOutcome, type Outcome } from '../fitting/outcome';

/** An outcome with its doubts and the ranges they make: what every row, zone and total carries. */
export interface Result {
  readonly outcome: Outcome;
  readonly doubts: readonly DoubtChange[];
  readonly ranges: Ranges;
}

/** One fitting's share of the ledger: its trace in each condition with the condition's share of the time. */
export interface ConditionPart {
  readonly conditionId: string;
  readonly weight: number;
  readonly trace: FittingTrace;
}

export interface RowResult extends Result {
  readonly parts: readonly ConditionPart[];
  readonly notices: readonly Notice[];
}

/** What a change gives back: before less after, with the ranges of the difference. Positive saves. */
export interface Saving {
  readonly change: Change;
  readonly doubts: readonly DoubtChange[];
  readonly ranges: Ranges;
}

/**
 * A result whose doubts and ranges are worked out when they are first read. A ledger carries totals for every zone and
 * every step of a plan, and a reader looks at few of their ranges; an edit must not wait for the others.
 */
export function resultOf(outcome: Outcome, doubtsOf: () => readonly DoubtChange[]): Result {
  return new LazyResult(outcome, doubtsOf);
}

/** Doubts and ranges of a value, worked out when they are first read. A class, since a ledger holds thousands. */
class LazyDoubts {
  readonly #best: Change;
  readonly #doubtsOf: () => readonly DoubtChange[];
  #doubts: readonly DoubtChange[] | null = null;
  #ranges: Ranges | null = null;

  constructor(best: Change, doubtsOf: () => readonly DoubtChange[]) {
    this.#best = best;
    this.#doubtsOf = doubtsOf;
  }

  get doubts(): readonly DoubtChange[] {
    return (this.#doubts ??= this.#doubtsOf());
  }

  get ranges(): Ranges {
    return (this.#ranges ??= rangesOf(this.#best, this.doubts));
  }
}

class LazyResult extends LazyDoubts implements Result {
  readonly outcome: Outcome;

  constructor(outcome: Outcome, doubtsOf: () => readonly DoubtChange[]) {
    super(outcome, doubtsOf);
    this.outcome = outcome;
  }
}

class LazySaving extends LazyDoubts implements Saving {
  readonly change: Change;

  constructor(change: Change, doubtsOf: () => readonly DoubtChange[]) {
    super(change, doubtsOf);
    this.change = change;
  }
}

export const zeroResult: Result = { outcome: zeroOutcome, doubts: [], ranges: rangesOf(zeroOutcome, []) };

/** A row from its traces: the weights are shares of the time and add up to one. */
export function rowOf(parts: readonly ConditionPart[]): RowResult {
  const [only] = parts;
  const isAlone = parts.length === 1 && only?.weight === 1;
  const outcome = isAlone
    ? only.trace.mean
    : sumOutcomes(parts.map(({ weight, trace }) => ({ outcome: trace.mean, weight })));
  const doubts = sumDoubts(parts.map(({ weight, trace }) => ({ doubts: trace.doubts, weight })));
  return {
    outcome,
    doubts,
    ranges: rangesOf(outcome, doubts),
    parts,
    notices: oneOfEach(parts.flatMap(({ trace }) => trace.notices)),
  };
}

/** The sum of rows: outcomes add entry by entry, doubts add within a source with their signs. */
export function totalOf(rows: readonly Result[]): Result {
  return resultOf(sumOutcomes(rows), () => sumDoubts(rows));
}

/** A total with one row in place of another, without adding the others up again. */
export function totalWith(total: Result, removed: Result, added: Result): Result {
  return resultOf(sumOutcomes([total, { outcome: removed.outcome, weight: -1 }, added]), () =>
    sumDoubts([total, { doubts: removed.doubts, weight: -1 }, added]),
  );
}

/** Before less after, from the difference of the doubts, source by source, so that a common error cancels. */
export function savingOf(before: Result, after: Result): Saving {
  const change = addChange(before.outcome, after.outcome, -1);
  return savingFrom(change, () => differenceOfDoubts(before.doubts, after.doubts));
}

/** What the totals of rows give back, its doubts from the rows that give something back: the others cancel. */
export function totalSavingOf(before: Result, after: Result, savings: readonly Saving[]): Saving {
  const change = addChange(before.outcome, after.outcome, -1);
  return savingFrom(change, () => sumDoubts(savings));
}

/** The sum of savings, or with a negative factor their difference. */
export function addSavings(a: Saving, b: Saving, factor: number): Saving {
  return savingFrom(addChange(a.change, b.change, factor), () =>
    sumDoubts([
      { doubts: a.doubts, weight: 1 },
      { doubts: b.doubts, weight: factor },
    ]),
  );
}

/** A saving whose doubts and ranges are worked out when they are first read. */
function savingFrom(change: Change, doubtsOf: () => readonly DoubtChange[]): Saving {
  return new LazySaving(change, doubtsOf);
}

export const zeroSaving: Saving = savingOf(zeroResult, zeroResult);

/** True when the order of two rows holds over every doubt: the range of their difference excludes zero. */
export function orderIsSafe(a: Result, b: Result, key: DoubtedKey): boolean {
  const best = a.outcome[key] - b.outcome[key];
  const { low, high } = endsOfDifference(a.doubts, b.doubts, key);
  return excludesZero({ low: best + low, high: best + high });
}
