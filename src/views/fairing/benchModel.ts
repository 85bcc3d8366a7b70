import { benchMembers, typedMember } from '../../project/bench/benchMember';
import type { BenchMember, SweepQuestion } from '../../project/bench/benchTypes';
import {
  candidateProblems,
  firstCandidates,
  type Candidate,
  type CandidateProblem,
} from '../../project/bench/candidates';
import type { Project } from '../../project/file/schema';
import { heaviestPart } from '../../project/ledger/heaviestPart';
import type { LedgerBasis, ProjectLedger } from '../../project/ledger/ledgerTypes';
import type { Bench } from '../../state/benchAddress';

/** Where the currency of charts and tables is chosen. */
export const chartsTitle = 'Against wind and speed';

/** The member on the bench: the typed one, the one asked for, the ledger's selected row, or the first that can be. */
export function memberOf(
  project: Project,
  { memberId, typed }: Pick<Bench, 'memberId' | 'typed'>,
  selectedFittingId: string | null,
): BenchMember | null {
  if (typed !== null) return typedMember(project, typed);
  const members = benchMembers(project);
  const byId = (id: string | null): BenchMember | undefined =>
    members.find(({ fitting }) => fitting.id === id);
  return byId(memberId) ?? byId(selectedFittingId) ?? members[0] ?? null;
}

/** Why another member stands on the bench than the address or the ledger asked for; null where none does. */
export function insteadText(
  project: Project,
  { memberId, typed }: Pick<Bench, 'memberId' | 'typed'>,
  selectedFittingId: string | null,
  member: BenchMember,
): string | null {
  const wantedId = memberId ?? selectedFittingId;
  if (typed !== null || wantedId === null || wantedId === member.fitting.id) return null;
  const wanted = project.fittings.find(({ id }) => id === wantedId);
  return wanted === undefined
    ? `This project has no fitting ${wantedId}; ${member.fitting.name} stands here instead.`
    : `${wanted.name} is no bar, wire or section: only those have a fairing. ${member.fitting.name} stands here instead.`;
}

/** What the screen is about: everything that its parts share. */
export interface BenchModel {
  readonly project: Project;
  readonly member: BenchMember;
  readonly candidates: readonly Candidate[];
  readonly chosen: Candidate;
  /** The member as it stands, which all are compared with; null where it was taken off the bench. */
  readonly bare: Candidate | null;
  readonly basis: LedgerBasis;
  /** The condition that is swept: the basis itself, or the heaviest of the course. */
  readonly conditionId: string;
}

export function candidatesOf(onBench: readonly Candidate[], member: BenchMember): readonly Candidate[] {
  return onBench.length > 0 ? onBench : firstCandidates(member);
}

export function chosenOf(candidates: readonly Candidate[], chosenId: string | null): Candidate | undefined {
  return (
    candidates.find(({ id }) => id === chosenId) ??
    candidates.find(({ kind }) => kind !== 'bare') ??
    candidates[0]
  );
}

/** The condition in which the charts stand. */
export function conditionIdOf(ledger: ProjectLedger | null, basis: LedgerBasis): string {
  if (basis.kind === 'condition') return basis.conditionId;
  return heaviestPart(ledger?.parts ?? [])?.summary.condition.id ?? '';
}

/** The question of a sweep in the model's condition, on its tack or on the other. */
export function sweepQuestion(
  { project, conditionId }: BenchModel,
  over: SweepQuestion['over'],
  isOtherTack: boolean,
): SweepQuestion {
  const now = project.conditions.find(({ id }) => id === conditionId)?.tack ?? 'starboard';
  const other = now === 'port' ? 'starboard' : 'port';
  return { conditionId, over, tack: isOtherTack ? other : now };
}

/** Those that can be worked out; the others say beside their fields why not. */
export function workable(
  candidates: readonly Candidate[],
  member: BenchMember,
): {
  readonly good: readonly Candidate[];
  readonly problems: ReadonlyMap<string, readonly CandidateProblem[]>;
} {
  const problems = new Map(candidates.map((each) => [each.id, candidateProblems(each, member)]));
  return { good: candidates.filter(({ id }) => (problems.get(id) ?? []).length === 0), problems };
}
