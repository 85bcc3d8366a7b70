import { skinOf } from '../../physics/strut/skin';
import type { SectionOutline } from '../../physics/strut/sectionOutline';
import { strutOf } from '../../physics/strut/strut';
import { strutMaterials } from '../../physics/strut/strutMaterial';
import { quantityIn } from '../../units/printIn';
import type { Project } from '../file/schema';
import { memberLengthsM } from './benchMember';
import type { BenchMember, CandidateMass } from './benchTypes';
import { candidateChordM, candidateMaterials, candidateThicknessM, type Candidate } from './candidates';

/** Outer outline of a candidate; round for the member as it stands, whatever its own section is. */
export function candidateOutline(candidate: Candidate, member: BenchMember): SectionOutline {
  const thicknessM = candidateThicknessM(candidate, member);
  const chordM = candidateChordM(candidate, member);
  if (chordM === null) return { kind: 'round', diameterM: thicknessM };
  return { kind: candidate.kind === 'ellipse' ? 'ellipse' : 'fairing', chordM, thicknessM };
}

interface MassOfPart {
  readonly massKg: number | null;
  readonly from: string;
}

/**
 * Mass of a candidate over all bars of its member, and what it changes. Ribs, bearings, ends, glue and paint are not in it.
 * The bare member's mass is the ledger's; without it a section that replaces the member changes the mass by nobody
 * knows what, and a fairing round it still adds its own.
 */
export function candidateMass(project: Project, member: BenchMember, candidate: Candidate): CandidateMass {
  const bareKg = member.fitting.massKg;
  if (candidate.kind === 'bare') {
    const from = bareKg === null ? 'the ledger gives no mass' : 'as the ledger gives it';
    return { massKg: bareKg, changeKg: 0, from };
  }
  const { massKg, from } = partMass(project, member, candidate);
  if (candidate.kind === 'fairingRound') return { massKg, changeKg: massKg, from };
  if (massKg !== null && bareKg === null) {
    return { massKg, changeKg: null, from: `${from}; the ledger gives no mass of the bare member` };
  }
  return { massKg, changeKg: massKg === null || bareKg === null ? null : massKg - bareKg, from };
}

function partMass(
  project: Project,
  member: BenchMember,
  candidate: Exclude<Candidate, { kind: 'bare' }>,
): MassOfPart {
  if (candidate.massKg !== null) return { massKg: candidate.massKg, from: 'as typed' };
  const { mass } = candidate;
  if (mass.kind === 'none') return { massKg: null, from: 'not worked out' };
  const lengthM = memberLengthsM(project, member).reduce((sum, one) => sum + one, 0);
  const outline = candidateOutline(candidate, member);
  if (mass.kind === 'skin') {
    return {
      massKg: skinOf(outline, mass.arealDensityKgM2).massPerLengthKgM * lengthM,
      from: `a skin of ${quantityIn(mass.arealDensityKgM2, 'kg/m2')} over ${quantityIn(lengthM, 'm')}`,
    };
  }
  const strut = strutOf({ outline, wallM: mass.wallM, lengthM, material: strutMaterials[mass.material] });
  const label = candidateMaterials.find(({ id }) => id === mass.material)?.label ?? '';
  return {
    massKg: strut.kind === 'strut' ? strut.trace.massKg : null,
    from: `a wall of ${quantityIn(mass.wallM, 'mm')} in ${label} over ${quantityIn(lengthM, 'm')}`,
  };
}
