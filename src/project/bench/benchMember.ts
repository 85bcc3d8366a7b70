import { asSailed, type FittingState } from '../core/fittingState';
import { deckLineOf, membersOf } from '../core/fittingToPhysics';
import { blankFitting, point } from '../file/blankParts';
import type {
  ItemChange,
  Project,
  ProjectDimension,
  ProjectFitting,
  ProjectPoint,
  ProjectShape,
} from '../file/schema';
import { isMember, isRound, type ProjectMember } from '../file/shapeKinds';
import { changed } from '../refit/applyItem';
import type { BenchMember, TypedMember } from './benchTypes';
import {
  candidateChordM,
  candidateProblems,
  candidateThicknessM,
  type Candidate,
  type CandidateProblem,
  type EllipseCandidate,
  type FairingRoundCandidate,
  type SectionCandidate,
} from './candidates';

const known = new WeakMap<ProjectFitting, BenchMember>();

/** The bars of the ledger in the file's order; what is left out of its sums has none of its numbers and is not offered. */
export function benchMembers(project: Project): readonly BenchMember[] {
  return project.fittings.filter(({ shape, excluded }) => isMember(shape) && excluded === null).map(asMember);
}

function asMember(fitting: ProjectFitting): BenchMember {
  const member = known.get(fitting) ?? { fitting, isTyped: false };
  known.set(fitting, member);
  return member;
}

/** A fitting cannot have this id by `freshId`, which gives a letter and a number. */
const typedId = 'typed-on-the-bench';

/** A round bar that no file holds, amidships on the centreline. The same values give a new member each time: keep it. */
export function typedMember(project: Project, typed: TypedMember): BenchMember {
  const fitting = blankFitting({
    id: typedId,
    name: 'Typed member',
    zoneId: project.zones[0]?.id ?? '',
    shape: {
      kind: 'roundBar',
      diameter: { m: typed.diameterM, basis: 'measured' },
      surface: { kind: 'smooth' },
      coefficient: null,
      friction: 'model',
      ends: [...typed.ends],
    },
    placement: {
      kind: 'taped',
      aftOfStemM: project.boat.lengthM / 2,
      side: 'centreline',
      athwart: { from: 'centreline', inboardOrOutM: 0 },
      aboveDeckM: typed.footAboveDeckM,
      lengthM: typed.lengthM,
      leanAftDeg: typed.leanAftDeg,
      leanOutDeg: typed.leanOutDeg,
      basis: 'measured',
      row: null,
      pair: false,
    },
  });
  return { fitting, isTyped: true };
}

/** What keeps a typed member from being computed, each beside its field. */
export function typedMemberProblems(typed: TypedMember): readonly CandidateProblem[] {
  const checks = [
    ['diameterM', 0.0001, 200, 'A diameter above zero is needed.'],
    ['lengthM', 0.001, 300, 'A length of at least a millimetre is needed.'],
    ['footAboveDeckM', -300, 300, 'A height is needed.'],
    ['leanAftDeg', -180, 180, 'An angle from −180° to 180° is needed.'],
    ['leanOutDeg', -180, 180, 'An angle from −180° to 180° is needed.'],
  ] as const;
  return checks.flatMap(([field, low, high, message]) =>
    typed[field] >= low && typed[field] <= high ? [] : [{ field, message }],
  );
}

/** What puts a candidate in the member's place, as a refit item has it; null for the member as it stands. */
export function candidateChange(member: BenchMember, candidate: Candidate): ItemChange | null {
  const { shape } = member.fitting;
  if (candidate.kind === 'bare' || !isMember(shape)) return null;
  if (candidate.kind === 'thinnerRound') {
    const diameter = drawn(candidate.diameterM);
    // A slimmer bar keeps its surface and a slimmer rope its strands.
    if (isRound(shape)) return { kind: 'slimmer', diameter };
    const round: ProjectShape = {
      kind: 'roundBar',
      diameter,
      surface: { kind: 'smooth' },
      ...memberParts(shape),
    };
    return { kind: 'typed', shape: round, source: fromBench };
  }
  return { kind: 'typed', shape: sectionShape(shape, member, candidate), source: fromBench };
}

const fromBench = 'A candidate of the fairing bench; what it rests on is in the note of its refit item.';

/** A designer's figure: doubted as one from a drawing. */
function drawn(sizeM: number): ProjectDimension {
  return { m: sizeM, basis: 'drawing' };
}

function memberParts(shape: ProjectMember) {
  const ends = shape.kind === 'wire' ? (['joined', 'joined'] as const) : shape.ends;
  return { coefficient: null, friction: shape.friction, ends } as const;
}

function sectionShape(
  shape: ProjectMember,
  member: BenchMember,
  candidate: EllipseCandidate | FairingRoundCandidate | SectionCandidate,
): ProjectShape {
  return {
    kind: candidate.kind === 'ellipse' ? 'ellipticalBar' : 'fairing',
    chord: drawn(candidateChordM(candidate, member) ?? 0),
    thickness: drawn(candidateThicknessM(candidate, member)),
    direction: candidate.direction,
    ...memberParts(shape),
  };
}

const states = new WeakMap<ProjectFitting, Map<string, FittingState>>();
/** Of one member: a slider leaves a trail of candidates behind. */
const mostStates = 200;

/**
 * The member with a candidate in its place, made by the same code as a refit item; null where the candidate has a problem.
 * Candidates of one shape share one state, whatever their name, mass and cost, so that only a changed shape is computed.
 */
export function candidateState(member: BenchMember, candidate: Candidate): FittingState | null {
  const before = asSailed(member.fitting);
  const change = candidateChange(member, candidate);
  if (candidateProblems(candidate, member).length > 0) return null;
  if (change === null) return before;
  const ofMember = states.get(member.fitting) ?? new Map<string, FittingState>();
  states.set(member.fitting, ofMember);
  const key = JSON.stringify(change);
  const last = ofMember.get(key);
  if (last !== undefined) return last;
  const answer = changed(before, change, 'bench', new Map());
  if (!answer.ok) return null;
  ofMember.set(key, answer.state);
  if (ofMember.size > mostStates) ofMember.delete(ofMember.keys().next().value ?? '');
  return answer.state;
}

/** Length of each single bar of the member, m, rows and pairs laid out. */
export function memberLengthsM(project: Project, { fitting }: BenchMember): readonly number[] {
  return membersOf(fitting.placement, deckLineOf(project.boat)).map(({ start, end }) =>
    Math.hypot(end[0] - start[0], end[1] - start[1], end[2] - start[2]),
  );
}

/** The middle of all its bars, in the boat's frame. */
export function memberMiddle(project: Project, { fitting }: BenchMember): ProjectPoint {
  const members = membersOf(fitting.placement, deckLineOf(project.boat));
  const mean = (axis: 0 | 1 | 2): number =>
    members.reduce((sum, { start, end }) => sum + (start[axis] + end[axis]) / 2, 0) / members.length;
  return point(mean(0), mean(1), mean(2));
}
