import {
  differenceOfDoubts,
  excludesZero,
  rangesOf,
  sumDoubts,
  type DoubtChange,
  type Ranges,
} from '../doubt/doubts';
import type { FittingTrace } from '../fitting/evaluateFitting';
import { oneOfEach, type Notice } from '../fitting/notice';
import {
  addChange,
  addOutcome,
  zeroOutcome,
  type Change,
  type DoubtedKey,
  type Outcome,
} from '../fitting/outcome';

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

export function resultOf(outcome: Outcome, doubts: readonly DoubtChange[]): Result {
  return { outcome, doubts, ranges: rangesOf(outcome, doubts) };
}

export const zeroResult: Result = resultOf(zeroOutcome, []);

/** A row from its traces: the weights are shares of the time and add up to one. */
export function rowOf(parts: readonly ConditionPart[]): RowResult {
  const outcome = parts.reduce((sum, { weight, trace }) => addOutcome(sum, trace.mean, weight), zeroOutcome);
  const doubts = sumDoubts(parts.map(({ weight, trace }) => ({ doubts: trace.doubts, weight })));
  return {
    ...resultOf(outcome, doubts),
    parts,
    notices: oneOfEach(parts.flatMap(({ trace }) => trace.notices)),
  };
}

/** The sum of rows: outcomes add entry by entry, doubts add within a source with their signs. */
export function totalOf(rows: readonly Result[]): Result {
  const outcome = rows.reduce((sum, row) => addOutcome(sum, row.outcome, 1), zeroOutcome);
  return resultOf(outcome, sumDoubts(rows.map(({ doubts }) => ({ doubts, weight: 1 }))));
}

/** Before less after, from the difference of the doubts, source by source, so that a common error cancels. */
export function savingOf(before: Result, after: Result): Saving {
  const change = addChange(before.outcome, after.outcome, -1);
  const doubts = differenceOfDoubts(before.doubts, after.doubts);
  return { change, doubts, ranges: rangesOf(change, doubts) };
}

/** The sum of savings, or with a negative factor their difference. */
export function addSavings(a: Saving, b: Saving, factor: number): Saving {
  const change = addChange(a.change, b.change, factor);
  const doubts = sumDoubts([
    { doubts: a.doubts, weight: 1 },
    { doubts: b.doubts, weight: factor },
  ]);
  return { change, doubts, ranges: rangesOf(change, doubts) };
}

export const zeroSaving: Saving = savingOf(zeroResult, zeroResult);

/** True when the order of two rows holds over every doubt: the range of their difference excludes zero. */
export function orderIsSafe(a: Result, b: Result, key: DoubtedKey): boolean {
  return excludesZero(savingOf(a, b).ranges.all[key]);
}
