import { strutOf } from '../../physics/strut/strut';
import type { BeamEnds } from '../../physics/vibration/naturalFrequency';
import { sheddingAt } from '../../physics/vibration/shedding';
import { vibrationOf, type VibratingMember } from '../../physics/vibration/vibration';
import type { Project } from '../file/schema';
import type { LedgerBasis } from '../ledger/ledgerTypes';
import { isRound } from '../file/shapeKinds';
import { strutProblemTexts, vibrationNoticeText } from '../wording/strutText';
import { memberLengthsM } from './benchMember';
import type { BenchMember, CarryingTube, TautWire, VibrationAnswer, VibrationCase } from './benchTypes';
import { candidateThicknessM, type Candidate } from './candidates';
import { memberWind, type MemberWind } from './memberWind';
import { tubeInput } from './strutOfCandidate';

const sheddingPlaces = 41;
const roundOnly =
  'The shedding frequency is known for round bars and wires, not for elliptical or faired sections; nothing is said of those.';

/**
 * Shedding of a round candidate over the winds of a basis, square to its longest bar, against its own first frequency: a tube both
 * with pinned and with clamped ends, since nobody knows which is nearer, and standing free where one end is free; a wire by
 * its tension. A warning, no prediction.
 */
export function candidateVibration(
  project: Project,
  member: BenchMember,
  candidate: Candidate,
  carrying: CarryingTube | TautWire,
  basis: LedgerBasis,
): VibrationAnswer {
  const isRoundBar = candidate.kind === 'thinnerRound' || candidate.kind === 'bare';
  if (!isRoundBar || !isRound(member.fitting.shape)) return { ok: false, message: roundOnly };
  const wind = memberWind(project, member, basis);
  if (typeof wind === 'string') return { ok: false, message: wind };
  const widthM = candidateThicknessM(candidate, member);
  const beams =
    'tensionN' in carrying ? [wireCase(carrying)] : tubeCases(project, member, candidate, carrying);
  if (typeof beams === 'string') return { ok: false, message: beams };
  const lengthM = Math.max(...memberLengthsM(project, member));
  const cases = beams.map((beam) => caseOf(beam, widthM, lengthM, wind));
  const problem = cases.find((one) => typeof one === 'string');
  if (problem !== undefined) return { ok: false, message: problem };
  return {
    ok: true,
    cases: cases.filter((one) => typeof one !== 'string'),
    shedding: sheddingOver(wind, widthM),
  };
}

interface Beam {
  readonly ends: BeamEnds;
  readonly label: string;
  readonly vibrating: VibratingMember;
  readonly massPerLengthKgM: number;
}

function wireCase({ tensionN, massPerLengthKgM }: TautWire): Beam {
  const vibrating = { kind: 'wire', tensionN } as const;
  return { ends: 'pinned', label: 'taut, both ends held', vibrating, massPerLengthKgM };
}

const endLabels: Readonly<Partial<Record<BeamEnds, string>>> = {
  pinned: 'both ends pinned',
  clamped: 'both ends clamped',
  'clamped-free': 'clamped at its foot, free at its head',
};

function tubeCases(
  project: Project,
  member: BenchMember,
  candidate: Candidate,
  carrying: CarryingTube,
): Beam[] | string {
  const mass =
    candidate.kind === 'thinnerRound' && candidate.mass.kind === 'wall' ? candidate.mass : carrying;
  const diameterM = candidateThicknessM(candidate, member);
  const tube = { ...tubeInput(project, member, mass), outline: { kind: 'round', diameterM } as const };
  const strut = strutOf(tube);
  if (strut.kind === 'problem') return `The tube: ${strutProblemTexts[strut.problem]}`;
  const { bendingStiffnessNm2, massPerLengthKgM } = strut.trace;
  return endsToShow(member).map((ends) => ({
    ends,
    label: endLabels[ends] ?? ends,
    vibrating: { kind: 'tube', bendingStiffnessNm2, ends },
    massPerLengthKgM,
  }));
}

function endsToShow({ fitting: { shape } }: BenchMember): BeamEnds[] {
  const ends: readonly string[] = 'ends' in shape ? shape.ends : [];
  const stands = ends.includes('free') && ends.some((end) => end !== 'free');
  return ['pinned', 'clamped', ...(stands ? (['clamped-free'] as const) : [])];
}

function caseOf(
  { ends, label, vibrating, massPerLengthKgM }: Beam,
  widthM: number,
  lengthM: number,
  { crossFromMs, crossToMs, kinematicViscosityM2S }: MemberWind,
): VibrationCase | string {
  const result = vibrationOf({
    member: vibrating,
    lengthM,
    massPerLengthKgM,
    widthM,
    speedFromMs: crossFromMs,
    speedToMs: crossToMs,
    kinematicViscosityM2S,
  });
  if (result.kind === 'problem') return strutProblemTexts[result.problem];
  return { ends, label, trace: result.trace, notices: result.notices.map(vibrationNoticeText) };
}

/** Over winds from nothing to half as much again as the largest met. */
function sheddingOver({ crossToMs, kinematicViscosityM2S }: MemberWind, widthM: number) {
  return Array.from({ length: sheddingPlaces }, (_, i) => {
    const speedMs = (1.5 * crossToMs * i) / (sheddingPlaces - 1);
    const { crossSpeedMs, sheddingHz, sheddingLowHz, sheddingHighHz } = sheddingAt(
      speedMs,
      widthM,
      kinematicViscosityM2S,
    );
    return { crossSpeedMs, sheddingHz, sheddingLowHz, sheddingHighHz };
  });
}
