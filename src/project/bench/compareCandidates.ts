import { excludesZero, type Range } from '../../physics/doubt/doubts';
import type { DoubtedKey } from '../../physics/fitting/change';
import { rowOf, savingOf, type Result, type RowResult } from '../../physics/ledger/ledgerSums';
import { asSailed, type FittingState } from '../core/fittingState';
import type { Project } from '../file/schema';
import { solveProjectCondition } from '../ledger/conditionSummary';
import { chooseConditions, type ChosenConditions } from '../ledger/chooseConditions';
import type { LedgerBasis } from '../ledger/ledgerTypes';
import { rowEvaluator } from '../ledger/rowEvaluator';
import { alongWindResult, windAtMember, type CourseAngles } from './alongWind';
import { candidateState } from './benchMember';
import {
  benchMeasures,
  type BenchConditionRow,
  type BenchMeasure,
  type BenchMember,
  type BenchRow,
  type ComparisonAnswer,
  type Measures,
  type Ranged,
} from './benchTypes';
import { candidateMass } from './candidateMass';
import { candidateNotices } from './candidateNotices';
import { mostCandidates, type Candidate } from './candidates';
import { courseWords } from './courseWords';

/**
 * The candidates side by side, each as the ledger would have it with the candidate in a plan, and each difference to the
 * member as it stands. Ranges hold every doubt, the air's too; those of a difference go source by source.
 * Rows that an edit left alone are answered from memory.
 */
export function compareCandidates(
  project: Project,
  member: BenchMember,
  candidates: readonly Candidate[],
  basis: LedgerBasis,
): ComparisonAnswer {
  const chosen = evaluation(project, member, basis);
  if (!chosen.ok) return chosen;
  const hasCourse = project.profile?.entries.some(({ hours }) => hours > 0) === true;
  const course = hasCourse ? evaluation(project, member, { kind: 'profile' }) : null;
  const rows = candidates.slice(0, mostCandidates).flatMap((candidate) => {
    const state = candidateState(member, candidate);
    const ofCourse = course?.ok === true ? course : null;
    return state === null ? [] : [rowFor(project, member, candidate, state, chosen, ofCourse)];
  });
  return { ok: true, comparison: { basis, rows, hasFullPrice: chosen.hasFullPrice } };
}

/** Everything that a basis gives to every candidate of a member. */
interface Evaluation {
  readonly ok: true;
  readonly evaluate: (state: FittingState) => RowResult;
  readonly bare: RowResult;
  readonly angles: CourseAngles;
  readonly names: ReadonlyMap<string, string>;
  readonly hasFullPrice: boolean;
}

function evaluation(
  project: Project,
  member: BenchMember,
  basis: LedgerBasis,
): Evaluation | { readonly ok: false; readonly message: string } {
  const chosen = chooseConditions(project, basis);
  if (!chosen.ok) return { ok: false, message: chosen.errors.map(({ message }) => message).join(' ') };
  const evaluate = rowEvaluator(project, chosen.conditions);
  const conditions = chosen.parts.map(({ summary }) => summary.condition);
  return {
    ok: true,
    evaluate,
    bare: evaluate(asSailed(member.fitting)),
    angles: courseAngles(project, member, chosen),
    names: new Map(conditions.map(({ id, name }) => [id, name])),
    hasFullPrice: conditions.some(
      ({ prices }) => prices.hullDragPerSideForce !== null || prices.driveLostPerHeelingMomentPerM !== null,
    ),
  };
}

function courseAngles(
  project: Project,
  member: BenchMember,
  { parts }: Extract<ChosenConditions, { ok: true }>,
): CourseAngles {
  return new Map(
    parts.map(({ summary: { condition } }) => {
      const { best } = solveProjectCondition(project, condition).states;
      return [condition.id, windAtMember(project, member, best).angleFromCourseRad];
    }),
  );
}

function rowFor(
  project: Project,
  member: BenchMember,
  candidate: Candidate,
  state: FittingState,
  chosen: Evaluation,
  course: Evaluation | null,
): BenchRow {
  const row = chosen.evaluate(state);
  const { values, saving } = measured(chosen.bare, row, chosen.angles);
  const perCondition = course === null ? [] : conditionRows(state, course);
  const weighted = course === null ? null : measured(course.bare, course.evaluate(state), course.angles);
  const priced = course?.hasFullPrice === true ? 'fullPriceW' : 'trackPowerW';
  const hasWords = weighted !== null && candidate.kind !== 'bare';
  return {
    candidateId: candidate.id,
    name: candidate.name,
    kind: candidate.kind,
    fitting: state.fitting,
    values,
    saving,
    isSure: byMeasure((measure) => excludesZero(saving[measure])),
    mass: candidateMass(project, member, candidate),
    perCondition,
    weighted,
    words: hasWords ? courseWords(perCondition, weighted.saving, priced, 'W') : null,
    notices: candidateNotices(candidate, member.fitting, row.notices),
  };
}

function conditionRows(state: FittingState, course: Evaluation): BenchConditionRow[] {
  const row = course.evaluate(state);
  return row.parts.map((part, i) => {
    const { conditionId, weight } = part;
    const bare = course.bare.parts[i] ?? part;
    const alone = (one: typeof part): RowResult => rowOf([{ ...one, weight: 1 }]);
    const name = course.names.get(conditionId) ?? '';
    return { conditionId, name, weight, ...measured(alone(bare), alone(part), course.angles) };
  });
}

interface Measured {
  readonly values: Measures;
  readonly saving: Measures;
}

const remembered = new WeakMap<RowResult, WeakMap<RowResult, Measured>>();

function measured(bare: RowResult, row: RowResult, angles: CourseAngles): Measured {
  const ofRow = remembered.get(row) ?? new WeakMap<RowResult, Measured>();
  remembered.set(row, ofRow);
  const known = ofRow.get(bare);
  if (known !== undefined) return known;
  const along = alongWindResult(row.parts, angles);
  const saving = savingOf(bare, row);
  const alongSaving = savingOf(alongWindResult(bare.parts, angles), along);
  const answer = {
    values: byMeasure((measure) => rangedOf(from(row, along, measure), keyOf(measure))),
    saving: byMeasure((measure) => {
      const { change, ranges } = from(saving, alongSaving, measure);
      return ranged(change[keyOf(measure)], ranges.all[keyOf(measure)]);
    }),
  };
  ofRow.set(bare, answer);
  return answer;
}

function from<Part>(plain: Part, along: Part, measure: BenchMeasure): Part {
  return measure === 'dragAlongWindN' ? along : plain;
}

/** Along the wind stands in the place of the force against the track, see `alongWindResult`. */
function keyOf(measure: BenchMeasure): DoubtedKey {
  return measure === 'dragAlongWindN' ? 'dragAgainstTrackN' : measure;
}

function rangedOf({ outcome, ranges }: Result, key: DoubtedKey): Ranged {
  return ranged(outcome[key], ranges.all[key]);
}

function ranged(best: number, { low, high }: Range): Ranged {
  return { best, low, high };
}

function byMeasure<Value>(valueOf: (measure: BenchMeasure) => Value): Readonly<Record<BenchMeasure, Value>> {
  return Object.fromEntries(benchMeasures.map(({ id }) => [id, valueOf(id)])) as Record<BenchMeasure, Value>;
}
