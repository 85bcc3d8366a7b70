import { replaceTube } from '../../physics/strut/replaceTube';
import { strutOf, type StrutInput, type StrutNotice, type StrutTrace } from '../../physics/strut/strut';
import { strutMaterials } from '../../physics/strut/strutMaterial';
import { formatQuantity } from '../../units/print';
import type { Project } from '../file/schema';
import { isRound } from '../file/shapeKinds';
import { strutNoticeText, strutProblemTexts } from '../wording/strutText';
import { memberLengthsM } from './benchMember';
import type { BenchMember, CarryingTube, StrutAnswer } from './benchTypes';
import { candidateOutline } from './candidateMass';
import { memberAcrossM, type Candidate, type CandidateMaterial, type MassModel } from './candidates';

/**
 * Does a candidate carry what the tube it replaces carries? Both as struts with pinned ends over the longest bar of the member,
 * an upper bound for both. A candidate without a wall of its own is asked for in the tube's material.
 */
export function strutOfCandidate(
  project: Project,
  member: BenchMember,
  candidate: Candidate,
  tube: CarryingTube,
): StrutAnswer {
  if (!isRound(member.fitting.shape) || member.fitting.shape.kind === 'wire') {
    return refused('Only a round tube is compared as a strut; this member is none.');
  }
  const input = tubeInput(project, member, tube);
  const old = strutOf(input);
  if (old.kind === 'problem') return refused(`The tube: ${strutProblemTexts[old.problem]}`);
  if (candidate.kind === 'bare' || candidate.kind === 'fairingRound') {
    const verdict = `The tube stays and carries ${loadText(old.trace.upperBoundN)}${candidate.kind === 'bare' ? '' : '; the fairing carries nothing'}.`;
    return answerOf(old.trace, null, null, verdict, old.notices);
  }
  const mass = candidate.mass.kind === 'wall' ? candidate.mass : null;
  const material = mass?.material ?? tube.material;
  const outline = candidateOutline(candidate, member);
  const needed = replaceTube(input, { outline, material: strutMaterials[material] });
  if (needed.kind === 'problem') return refused(`The section: ${strutProblemTexts[needed.problem]}`);
  const typed = mass === null ? null : typedStrut(input, outline, mass);
  const neededTrace = needed.kind === 'replacement' ? needed.section : null;
  const verdict = verdictOf(old.trace.upperBoundN, needed, typed?.trace ?? null);
  const notices = typed?.notices ?? (needed.kind === 'replacement' ? needed.notices : old.notices);
  return answerOf(old.trace, neededTrace, typed?.trace ?? null, verdict, notices);
}

function refused(message: string): StrutAnswer {
  return { ok: false, message };
}

/** The member's tube as a strut: its own diameter, the typed wall and material, its longest bar. */
export function tubeInput(
  project: Project,
  member: BenchMember,
  { material, wallM }: { readonly material: CandidateMaterial; readonly wallM: number },
): StrutInput {
  return {
    outline: { kind: 'round', diameterM: memberAcrossM(member) },
    wallM,
    lengthM: Math.max(...memberLengthsM(project, member)),
    material: strutMaterials[material],
  };
}

interface TypedStrut {
  readonly trace: StrutTrace;
  readonly notices: readonly StrutNotice[];
}

function typedStrut(
  { lengthM }: StrutInput,
  outline: StrutInput['outline'],
  { wallM, material }: Extract<MassModel, { kind: 'wall' }>,
): TypedStrut | null {
  const result = strutOf({ outline, wallM, lengthM, material: strutMaterials[material] });
  return result.kind === 'strut' ? result : null;
}

function loadText(loadN: number): string {
  return `at most ${formatQuantity(loadN, 'kN')}`;
}

function verdictOf(tubeN: number, needed: ReturnType<typeof replaceTube>, typed: StrutTrace | null): string {
  const wanted =
    needed.kind === 'replacement'
      ? `it needs a wall of ${formatQuantity(needed.section.wallM, 'mm')}`
      : 'even solid it carries less';
  if (typed === null) return `To carry what the tube carries (${loadText(tubeN)}), ${wanted}.`;
  const own = formatQuantity(typed.wallM, 'mm');
  if (typed.upperBoundN >= tubeN) {
    return `With a wall of ${own} it carries ${loadText(typed.upperBoundN)}, no less than the tube (${loadText(tubeN)}).`;
  }
  return `With a wall of ${own} it carries ${loadText(typed.upperBoundN)}, less than the tube (${loadText(tubeN)}); ${wanted}.`;
}

function answerOf(
  tube: StrutTrace,
  needed: StrutTrace | null,
  typed: StrutTrace | null,
  verdict: string,
  notices: readonly StrutNotice[],
): StrutAnswer {
  return { ok: true, tube, needed, typed, verdict, notices: notices.map(strutNoticeText) };
}
