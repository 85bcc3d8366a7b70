import { crossings } from '../../physics/numerics/crossings';
import type { Project } from '../file/schema';
import { asSailed } from '../core/fittingState';
import { candidateState } from './benchMember';
import { sweepCandidate, sweepDifference, valuesBetween } from './benchSweep';
import {
  currencies,
  type Band,
  type BenchCrossing,
  type BenchMember,
  type BenchSweep,
  type Currency,
  type CurrencyCrossings,
  type SweepQuestion,
} from './benchTypes';
import { startCandidate, type Candidate } from './candidates';
import { crossingText, crossingsText, type Always } from './crossingText';
import { sweepStates, type SweepStates } from './sweepStates';

/** rad or m/s, 0.006 degrees: far within every doubt. */
const tolerance = 1e-4;
/** A difference smaller than this share of the bare member's largest value is rounding. */
const roundingShare = 1e-9;

/** The crossings without words: the name of a candidate may change while its shape stays. */
interface Found {
  readonly currency: Currency;
  readonly crossings: readonly Omit<BenchCrossing, 'text'>[];
  readonly always: Always;
}

const remembered = new WeakMap<BenchSweep, WeakMap<BenchSweep, readonly Found[]>>();

/**
 * Where a candidate and the member as it stands change places along a sweep, currency by currency, with the stretch on
 * which the doubts leave the order open. Side force counts with its sign: less to leeward is cheaper. Places between
 * the sweep's own are computed anew, not interpolated; the open stretch is interpolated.
 * Empty where the candidate or the condition cannot be computed.
 */
export function benchCrossings(
  project: Project,
  member: BenchMember,
  candidate: Candidate,
  question: SweepQuestion,
): readonly CurrencyCrossings[] {
  const bare = sweepCandidate(project, member, startCandidate('bare', member, 'bare'), question);
  const other = sweepCandidate(project, member, candidate, question);
  const states = sweepStates(project, member, question);
  if (!bare.ok || !other.ok || states === null) return [];
  const ofOther = remembered.get(other.sweep) ?? new WeakMap<BenchSweep, readonly Found[]>();
  remembered.set(other.sweep, ofOther);
  const known = ofOther.get(bare.sweep) ?? found(project, member, candidate, bare.sweep, other.sweep, states);
  ofOther.set(bare.sweep, known);
  return known.map((one) => worded(one, candidate.name, question));
}

function found(
  project: Project,
  member: BenchMember,
  candidate: Candidate,
  bare: BenchSweep,
  other: BenchSweep,
  states: SweepStates,
): Found[] {
  const differenceAt = closerLook(project, member, candidate, bare.question.conditionId, states);
  const bands = sweepDifference(bare, other);
  return currencies.map(({ id }) => {
    const rounding = roundingShare * largest(bare.bands[id].best);
    const places = new Map(Array.from(bare.xs, (x, i) => [x, bands[id].best[i] ?? 0]));
    const curve = (x: number): number => {
      const difference = places.get(x) ?? differenceAt(x, id);
      return Math.abs(difference) <= rounding ? 0 : difference;
    };
    const all = crossingsOf(curve, bare.xs, bands[id]);
    return { currency: id, crossings: all, always: alwaysOf(bare.xs, curve) };
  });
}

function largest(values: Float64Array): number {
  return values.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
}

/** Bare less candidate at any place; a place is computed once for all currencies. */
function closerLook(
  project: Project,
  member: BenchMember,
  candidate: Candidate,
  conditionId: string,
  { points, pointAt }: SweepStates,
): (x: number, currency: Currency) => number {
  const bare = asSailed(member.fitting);
  const bareAt = valuesBetween(project, bare, conditionId, points);
  const otherAt = valuesBetween(project, candidateState(member, candidate) ?? bare, conditionId, points);
  const looked = new Map<number, readonly [ReturnType<typeof bareAt>, ReturnType<typeof bareAt>]>();
  return (x, currency) => {
    const point = looked.has(x) ? null : pointAt(x);
    if (point !== null) looked.set(x, [bareAt(point), otherAt(point)]);
    const [a, b] = looked.get(x) ?? [];
    return (a?.[currency] ?? 0) - (b?.[currency] ?? 0);
  };
}

function crossingsOf(
  curve: (x: number) => number,
  xs: Float64Array,
  band: Band,
): Omit<BenchCrossing, 'text'>[] {
  const [from, to] = [xs[0] ?? 0, xs.at(-1) ?? 0];
  // A hair more than the step, so that rounding does not make one piece more than the sweep has.
  const step = ((to - from) / (xs.length - 1)) * (1 + 1e-12);
  const startsAhead = Array.from(xs, curve).find((difference) => difference !== 0) ?? 0;
  return crossings(curve, from, to, step, tolerance).map((at, i) => ({
    at,
    ...openStretch(at, xs, band),
    winsBelow: startsAhead > 0 === (i % 2 === 0),
  }));
}

/** The stretch about a crossing on which the range of the difference holds zero. */
function openStretch(
  at: number,
  xs: Float64Array,
  { low, high }: Band,
): { readonly from: number; readonly to: number } {
  const isOpen = (i: number): boolean => (low[i] ?? 0) <= 0 && (high[i] ?? 0) >= 0;
  const above = xs.findIndex((x) => x >= at);
  const below = Math.max(above - 1, 0);
  let [first, last] = [above, below];
  while (first > 0 && isOpen(first - 1)) first -= 1;
  while (last < xs.length - 1 && isOpen(last + 1)) last += 1;
  return {
    from: Math.min(edgeBetween(xs, low, high, first, first - 1), at),
    to: Math.max(edgeBetween(xs, low, high, last, last + 1), at),
  };
}

/** Where the range leaves zero between an open place and the next one that is not; the open place at an end. */
function edgeBetween(
  xs: Float64Array,
  low: Float64Array,
  high: Float64Array,
  open: number,
  shut: number,
): number {
  const [xOpen, xShut] = [xs[open], xs[shut]];
  if (xOpen === undefined || xShut === undefined) return xOpen ?? 0;
  const side = (low[shut] ?? 0) > 0 ? low : high;
  const [atOpen, atShut] = [side[open] ?? 0, side[shut] ?? 0];
  const share = atOpen * atShut < 0 ? atOpen / (atOpen - atShut) : 0;
  return xOpen + share * (xShut - xOpen);
}

/** Who is ahead where nothing crosses. */
function alwaysOf(xs: Float64Array, curve: (x: number) => number): Always {
  const differences = Array.from(xs, curve).filter((difference) => difference !== 0);
  if (differences.length === 0) return 'same';
  return (differences[0] ?? 0) > 0 ? 'wins' : 'loses';
}

function worded(found: Found, name: string, { over }: SweepQuestion): CurrencyCrossings {
  const { currency } = found;
  const all = found.crossings.map((one) => ({ ...one, text: crossingText(one, currency, name, over) }));
  return { currency, crossings: all, text: crossingsText(all, found.always, currency, name, over) };
}
