import type { Notice } from '../../physics/fitting/notice';
import type { ProjectFitting } from '../file/schema';
import { cautions } from '../wording/cautions';
import { noticeText } from '../wording/noticeText';
import type { Candidate } from './candidates';

const safetyNotice =
  'Safety-required: in a plan its saving stays outside every total until a named person has given a reason.';
const [, , structuralCaution, classCaution, movingCaution] = cautions;

/** True of a candidate that takes the tube's place, and with it the tube's load. */
export function replacesTube(candidate: Candidate): boolean {
  return candidate.kind !== 'bare' && candidate.kind !== 'fairingRound';
}

export function isTurning(candidate: Candidate): boolean {
  return 'direction' in candidate && candidate.direction.kind === 'turning';
}

/** What limits a candidate's numbers, and the cautions that go with it, one sentence or two each. */
export function candidateNotices(
  candidate: Candidate,
  { flags }: ProjectFitting,
  notices: readonly Notice[],
): string[] {
  return [
    ...(flags.safetyRequired && candidate.kind !== 'bare' ? [safetyNotice] : []),
    ...notices.map(noticeText),
    ...(replacesTube(candidate) ? [structuralCaution] : []),
    ...(isTurning(candidate) ? [movingCaution] : []),
    ...(candidate.kind === 'bare' ? [] : [classCaution]),
  ];
}
