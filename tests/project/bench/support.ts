import { benchMembers } from '../../../src/project/bench/benchMember';
import type {
  BenchComparison,
  BenchMember,
  BenchSweep,
  SweepQuestion,
} from '../../../src/project/bench/benchTypes';
import { sweepCandidate } from '../../../src/project/bench/benchSweep';
import {
  firstCandidates,
  startCandidate,
  type Candidate,
  type EllipseCandidate,
} from '../../../src/project/bench/candidates';
import { compareCandidates } from '../../../src/project/bench/compareCandidates';
import type { Project } from '../../../src/project/file/schema';
import type { LedgerBasis } from '../../../src/project/ledger/ledgerTypes';

export function memberNamed(project: Project, name: string): BenchMember {
  const found = benchMembers(project).find(({ fitting }) => fitting.name === name);
  if (found === undefined) throw new Error(`no bar called ${name}`);
  return found;
}

/** One of each kind, and a section turned off the centreline. */
export function manyCandidates(member: BenchMember): readonly Candidate[] {
  const ellipse = startCandidate('ellipse', member, 'c5') as EllipseCandidate;
  return [
    ...firstCandidates(member),
    startCandidate('thinnerRound', member, 'c4'),
    ellipse,
    { ...startCandidate('section', member, 'c6'), direction: { kind: 'fixed', angleDeg: 12 } } as Candidate,
  ];
}

export function comparison(
  project: Project,
  member: BenchMember,
  candidates: readonly Candidate[],
  basis: LedgerBasis,
): BenchComparison {
  const answer = compareCandidates(project, member, candidates, basis);
  if (!answer.ok) throw new Error(answer.message);
  return answer.comparison;
}

export function sweepOf(
  project: Project,
  member: BenchMember,
  candidate: Candidate,
  question: SweepQuestion,
): BenchSweep {
  const answer = sweepCandidate(project, member, candidate, question);
  if (!answer.ok) throw new Error(answer.message);
  return answer.sweep;
}
