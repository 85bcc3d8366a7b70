import type { FlatNeighbourhood } from '../../physics/numerics/flatNeighbourhood';
import { thicknessCurveOf, type FairingBuild } from '../../physics/section/thicknessCurve';
import { strutMaterials } from '../../physics/strut/strutMaterial';
import { formatQuantity } from '../../units/print';
import { quantityIn, valueRangeIn, valueIn } from '../../units/printIn';
import type { Project } from '../file/schema';
import { strutProblemTexts } from '../wording/strutText';
import { memberLengthsM } from './benchMember';
import type { BenchMember, ThicknessCurveAnswer } from './benchTypes';
import {
  candidateChordM,
  candidateStart,
  candidateThicknessM,
  type Candidate,
  type MassModel,
} from './candidates';
import { memberWind } from './memberWind';

/** So much more than the least drag still counts as the flat bottom (assumed: far within the doubt of the drag). */
const flatShare = 0.05;

/**
 * Drag, wetted area and mass of a fairing or a streamlined section over its thickness ratio, its thickness kept, over the length
 * of all bars, at the mean wind square to them in a condition; the nose into the wind.
 */
export function candidateThicknessCurve(
  project: Project,
  member: BenchMember,
  candidate: Candidate,
  conditionId: string,
): ThicknessCurveAnswer {
  if (candidate.kind !== 'fairingRound' && candidate.kind !== 'section') {
    return refused(`${candidate.name} is no fairing: only a streamlined section has this curve.`);
  }
  const wind = memberWind(project, member, { kind: 'condition', conditionId });
  if (typeof wind === 'string') return refused(wind);
  const thicknessM = candidateThicknessM(candidate, member);
  const result = thicknessCurveOf({
    thicknessM,
    lengthM: memberLengthsM(project, member).reduce((sum, one) => sum + one, 0),
    speedMs: wind.crossMeanMs,
    densityKgM3: wind.densityKgM3,
    kinematicViscosityM2S: wind.kinematicViscosityM2S,
    surface: project.methods.fairing,
    build: buildOf(candidate.mass),
    flatShare,
  });
  if (result.kind === 'problem')
    return refused(`It cannot be worked out: ${strutProblemTexts[result.problem]}`);
  const chordM = candidateChordM(candidate, member);
  return {
    ok: true,
    rows: result.rows,
    flat: result.flat,
    flatText: flatText(result.flat),
    presentRatio: chordM === null ? null : thicknessM / chordM,
    notices: notesOn(candidate.mass, wind.crossMeanMs),
  };
}

function refused(message: string): ThicknessCurveAnswer {
  return { ok: false, message };
}

function buildOf(mass: MassModel): FairingBuild {
  if (mass.kind === 'wall') {
    return { kind: 'section', wallM: mass.wallM, material: strutMaterials[mass.material] };
  }
  const { arealDensityKgM2 } = mass.kind === 'skin' ? mass : candidateStart;
  return { kind: 'skin', arealDensityKgM2 };
}

function flatText({ from, to, isCutAtStart, isCutAtEnd }: FlatNeighbourhood): string {
  const range = valueRangeIn(from, to, '1', { decimals: 2 });
  const cut = isCutAtStart || isCutAtEnd ? '; it may go on where the models end' : '';
  return `Within ${valueIn(100 * flatShare, '1', { decimals: 0 })} % of the least drag at thickness over chord ${range}${cut}.`;
}

function notesOn(mass: MassModel, speedMs: number): string[] {
  const skin = quantityIn(candidateStart.arealDensityKgM2, 'kg/m2');
  return [
    `Nose into the wind, ${formatQuantity(speedMs, 'kn')} square to the member, thickness kept. Off the wind a shorter chord forgives more.`,
    'The doubt of the drag is much wider than its bottom is deep.',
    ...(mass.kind === 'none' ? [`Mass from a skin of ${skin} (common practice, no source).`] : []),
  ];
}
