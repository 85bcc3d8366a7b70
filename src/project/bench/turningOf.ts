import { toTrack } from '../../physics/frames/boatToTrack';
import { skinOf } from '../../physics/strut/skin';
import { roomAboutPivotM } from '../../physics/strut/roomAboutPivot';
import { turningFairingOf, type TurningTrace } from '../../physics/strut/turningFairing';
import { toSi } from '../../units/convert';
import { formatQuantity } from '../../units/print';
import { deckLineOf, membersOf } from '../core/fittingToPhysics';
import type { Project } from '../file/schema';
import { solveProjectCondition } from '../ledger/conditionSummary';
import { strutProblemTexts, turningNoticeText } from '../wording/strutText';
import { memberLengthsM } from './benchMember';
import type { BenchMember, TurningAnswer, TurningSetting } from './benchTypes';
import { candidateMass, candidateOutline } from './candidateMass';
import { candidateChordM, candidateThicknessM, memberAcrossM, type Candidate } from './candidates';
import { memberWind } from './memberWind';

/**
 * Does a turning candidate follow the wind, and what does its weight do? For one piece of the longest bar, at the mean wind
 * square to the member in a condition, leaning as it does there with the heel. A balance weight sits at the nose.
 */
export function candidateTurning(
  project: Project,
  member: BenchMember,
  candidate: Candidate,
  setting: TurningSetting,
  conditionId: string,
): TurningAnswer {
  const chordM = candidateChordM(candidate, member);
  if (chordM === null || !('direction' in candidate) || candidate.direction.kind !== 'turning') {
    return { ok: false, message: `${candidate.name} does not turn.` };
  }
  const wind = memberWind(project, member, { kind: 'condition', conditionId });
  if (typeof wind === 'string') return { ok: false, message: wind };
  const { massKg } = candidateMass(project, member, candidate);
  if (massKg === null) return { ok: false, message: 'Its mass is needed: give a skin, a wall or a mass.' };
  const { residualDeg, pieces } = candidate.direction;
  const lengths = memberLengthsM(project, member);
  const pieceM = Math.max(...lengths) / pieces;
  const centreM =
    setting.massCentreShare === null
      ? skinOf(candidateOutline(candidate, member), 1).massCentreM
      : setting.massCentreShare * chordM;
  const result = turningFairingOf({
    chordM,
    thicknessM: candidateThicknessM(candidate, member),
    lengthM: pieceM,
    pivotM: setting.pivotShare * chordM,
    massKg: (massKg * pieceM) / lengths.reduce((sum, one) => sum + one, 0),
    massCentreM: centreM,
    balancePlaceM: 0,
    residualRad: toSi(residualDeg, 'deg'),
    endClearanceM: setting.endClearanceM,
    leanRad: leanOf(project, member, conditionId),
    speedMs: wind.crossMeanMs,
    densityKgM3: wind.densityKgM3,
    kinematicViscosityM2S: wind.kinematicViscosityM2S,
    surface: project.methods.fairing,
  });
  if (result.kind === 'problem') return { ok: false, message: strutProblemTexts[result.problem] };
  const notices = [...fitNotices(member, candidate, result.trace), ...result.notices.map(turningNoticeText)];
  return { ok: true, trace: result.trace, notices };
}

/** A fairing's thickest place lies behind its aerodynamic centre: a tube that fits well does not let it follow, and the other way round. */
function fitNotices(member: BenchMember, candidate: Candidate, trace: TurningTrace): string[] {
  if (candidate.kind !== 'fairingRound') return [];
  const { chordM, thicknessM, pivotM } = trace;
  const roomM = roomAboutPivotM(chordM, thicknessM, pivotM);
  const neededM = memberAcrossM(member) / 2 + candidate.skinM;
  if (roomM >= neededM) return [];
  return [
    `The tube does not fit at that pivot: with its skin the fairing leaves a radius of ${formatQuantity(roomM - candidate.skinM, 'mm')} for a tube of ${formatQuantity(memberAcrossM(member) / 2, 'mm')}. Make it thicker, or set the pivot further aft, where it follows the wind less.`,
  ];
}

/** Largest angle of its bars from upright, heel counted in, rad. */
function leanOf(project: Project, { fitting }: BenchMember, conditionId: string): number {
  const condition = project.conditions.find(({ id }) => id === conditionId);
  if (condition === undefined) return 0;
  const { rotation } = solveProjectCondition(project, condition).states.best;
  const leans = membersOf(fitting.placement, deckLineOf(project.boat)).map(({ start, end }) => {
    const [foot, head] = [toTrack(rotation, start), toTrack(rotation, end)];
    const [dx, dy, dz] = [head[0] - foot[0], head[1] - foot[1], head[2] - foot[2]];
    return Math.atan2(Math.hypot(dx, dy), Math.abs(dz));
  });
  return Math.max(...leans);
}
