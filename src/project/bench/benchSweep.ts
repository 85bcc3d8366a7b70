import { addSource, emptySum, endsOf } from '../../physics/doubt/combinedEnds';
import type { DoubtChange } from '../../physics/doubt/doubtChange';
import { inputDoubts, itemForces, layFitting, type LaidFitting } from '../../physics/fitting/itemForces';
import { changeOf, type Change } from '../../physics/fitting/change';
import { layMembers, sumMean } from '../../physics/fitting/sumFitting';
import { dragAlongWindN } from '../../physics/ledger/alongWind';
import type { FittingState } from '../core/fittingState';
import { deckLineOf, fittingToPhysics } from '../core/fittingToPhysics';
import type { Project } from '../file/schema';
import { dutyIn } from '../ledger/rowEvaluator';
import { candidateState } from './benchMember';
import {
  currencies,
  type Band,
  type BenchMember,
  type BenchSweep,
  type Currency,
  type SweepAnswer,
  type SweepDoubt,
  type SweepQuestion,
} from './benchTypes';
import type { Candidate } from './candidates';
import { sweepStates, type SweepPoint, type SweepStates } from './sweepStates';

type Remembered = { readonly from: readonly unknown[]; readonly sweep: BenchSweep };

const known = new WeakMap<SweepStates, WeakMap<FittingState, Remembered>>();

/**
 * A candidate over apparent wind angle, apparent wind speed or boat speed, with the range of its item doubts (coefficients,
 * ends, sizes, exposure); wind and density are what the sweep sets and are not doubted. At the condition's own place the
 * best values are the ledger's. A sweep is remembered by the candidate's shape, the condition and the methods.
 */
export function sweepCandidate(
  project: Project,
  member: BenchMember,
  candidate: Candidate,
  question: SweepQuestion,
): SweepAnswer {
  const states = sweepStates(project, member, question);
  if (states === null) return { ok: false, message: 'The project has no such condition.' };
  const state = candidateState(member, candidate);
  if (state === null) return { ok: false, message: `${candidate.name} cannot be computed as it is typed.` };
  const ofStates = known.get(states) ?? new WeakMap<FittingState, Remembered>();
  known.set(states, ofStates);
  const { ends, inclined, fairing } = project.methods;
  const from = [project.boat, ends, inclined, fairing];
  const last = ofStates.get(state);
  if (last?.from.every((part, i) => part === from[i]) === true) return { ok: true, sweep: last.sweep };
  const sweep = sweepAnew(project, state, question, states);
  ofStates.set(state, { from, sweep });
  return { ok: true, sweep };
}

/**
 * Doubts that cost a sum each are worked out at every second place of one bar or a pair and every fourth of a longer row, and
 * drawn straight in between: off by up to 3 and 5 % of the sweep's
 * largest value, most at the kinks of a stall. Both counts of places can be divided by it.
 */
function inputDoubtStep({ laid }: LaidFitting): number {
  return laid.length <= 2 ? 2 : 4;
}

function sweepAnew(
  project: Project,
  state: FittingState,
  question: SweepQuestion,
  { xs, points, presentAt, held }: SweepStates,
): BenchSweep {
  const input = fittingToPhysics(state, deckLineOf(project.boat));
  const duty = dutyIn(state.fitting.dutyFraction, question.conditionId);
  const best = emptyArrays(xs.length);
  const [byCoefficient, byInput] = [collector(xs.length), collector(xs.length)];
  const laid = layFitting(input, points[0].state);
  const step = inputDoubtStep(laid);
  for (const [i, point] of points.entries()) {
    const forces = itemForces(laid, point.state, project.methods, duty);
    put(best, i, changeOf(forces.mean, point.state), point);
    byCoefficient.add(i, forces.coefficientDoubts, point);
    if (i % step !== 0) continue;
    byInput.add(i, inputDoubts(laid, point.state, project.methods, duty, forces.mean), point);
  }
  for (const { up, down } of byInput.doubts()) {
    for (const { id } of currencies) for (const values of [up[id], down[id]]) drawBetween(values, step);
  }
  const doubts = [...byCoefficient.doubts(), ...byInput.doubts()];
  return { question, xs, presentAt, held, bands: bandsOf(best, doubts), doubts };
}

/** Fills the places between those at which an input doubt was worked out. */
function drawBetween(values: Float64Array, step: number): void {
  for (const i of values.keys()) {
    const past = i % step;
    if (past === 0) continue;
    const [from, to] = [values[i - past] ?? 0, values[i - past + step] ?? 0];
    values[i] = from + ((to - from) * past) / step;
  }
}

interface Collector {
  readonly add: (i: number, changes: readonly DoubtChange[], point: SweepPoint) => void;
  readonly doubts: () => readonly SweepDoubt[];
}

/** Takes the doubts of one place after another; a doubt that does not occur at a place is zero there. */
function collector(length: number): Collector {
  const byId = new Map<string, SweepDoubt>();
  return {
    add: (i, changes, point) => {
      for (const { id, up, down } of changes) {
        const doubt = byId.get(id) ?? { id, up: emptyArrays(length), down: emptyArrays(length) };
        byId.set(id, doubt);
        put(doubt.up, i, up, point);
        put(doubt.down, i, down, point);
      }
    },
    doubts: () => [...byId.values()],
  };
}

type Arrays = Readonly<Record<Currency, Float64Array>>;

function emptyArrays(length: number): Arrays {
  return {
    dragAlongWindN: new Float64Array(length),
    trackPowerW: new Float64Array(length),
    sideForceN: new Float64Array(length),
    fullPriceW: new Float64Array(length),
  };
}

function put(into: Arrays, i: number, change: Change, { angleFromCourseRad }: SweepPoint): void {
  into.dragAlongWindN[i] = dragAlongWindN(change, angleFromCourseRad);
  into.trackPowerW[i] = change.trackPowerW;
  into.sideForceN[i] = change.sideForceN;
  into.fullPriceW[i] = change.fullPriceW;
}

function bandsOf(best: Arrays, doubts: readonly SweepDoubt[]): BenchSweep['bands'] {
  const bandOf = (currency: Currency): Band => {
    const sides = doubts.map(({ up, down }) => [up[currency], down[currency]] as const);
    return withEnds(best[currency], sides);
  };
  return byCurrency(bandOf);
}

function withEnds(best: Float64Array, sides: readonly (readonly [Float64Array, Float64Array])[]): Band {
  const low = new Float64Array(best.length);
  const high = new Float64Array(best.length);
  for (const [i, value] of best.entries()) {
    const sum = emptySum();
    for (const [up, down] of sides) addSource(sum, up[i] ?? 0, down[i] ?? 0);
    const ends = endsOf(sum);
    low[i] = value + ends.low;
    high[i] = value + ends.high;
  }
  return { best, low, high };
}

/** One value for each currency. */
function byCurrency<Value>(valueOf: (currency: Currency) => Value): Readonly<Record<Currency, Value>> {
  return Object.fromEntries(currencies.map(({ id }) => [id, valueOf(id)])) as Record<Currency, Value>;
}

const differences = new WeakMap<BenchSweep, WeakMap<BenchSweep, Readonly<Record<Currency, Band>>>>();

/** Bare less candidate along a sweep, positive where the candidate costs less, its range source by source. */
export function sweepDifference(bare: BenchSweep, candidate: BenchSweep): Readonly<Record<Currency, Band>> {
  const ofCandidate = differences.get(candidate) ?? new WeakMap<BenchSweep, BenchSweep['bands']>();
  differences.set(candidate, ofCandidate);
  const last = ofCandidate.get(bare);
  if (last !== undefined) return last;
  const answer = byCurrency((currency) => {
    const best = minus(bare.bands[currency].best, candidate.bands[currency].best);
    return withEnds(best, sidesOfDifference(bare, candidate, currency));
  });
  ofCandidate.set(bare, answer);
  return answer;
}

function sidesOfDifference(
  bare: BenchSweep,
  candidate: BenchSweep,
  currency: Currency,
): (readonly [Float64Array, Float64Array])[] {
  const zero = new Float64Array(bare.xs.length);
  const find = (sweep: BenchSweep, id: string): SweepDoubt | undefined =>
    sweep.doubts.find((doubt) => doubt.id === id);
  const ids = new Set([...bare.doubts, ...candidate.doubts].map(({ id }) => id));
  return [...ids].map((id) => {
    const [a, b] = [find(bare, id), find(candidate, id)];
    return [
      minus(a?.up[currency] ?? zero, b?.up[currency] ?? zero),
      minus(a?.down[currency] ?? zero, b?.down[currency] ?? zero),
    ] as const;
  });
}

function minus(a: Float64Array, b: Float64Array): Float64Array {
  return a.map((value, i) => value - (b[i] ?? 0));
}

/** The best values of a fitting at any place of a sweep, without their doubts. */
export function valuesBetween(
  project: Project,
  state: FittingState,
  conditionId: string,
  [first]: SweepStates['points'],
): (point: SweepPoint) => Readonly<Record<Currency, number>> {
  const input = fittingToPhysics(state, deckLineOf(project.boat));
  const duty = dutyIn(state.fitting.dutyFraction, conditionId);
  const laid = layMembers(input, first.state);
  return (point) => {
    const change = changeOf(sumMean(input, laid, point.state, project.methods, duty), point.state);
    return {
      dragAlongWindN: dragAlongWindN(change, point.angleFromCourseRad),
      trackPowerW: change.trackPowerW,
      sideForceN: change.sideForceN,
      fullPriceW: change.fullPriceW,
    };
  };
}
