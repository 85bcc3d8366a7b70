import type { strutMaterials } from '../../physics/strut/strutMaterial';
import type { ProjectDirection } from '../file/schema';

/** Most candidates on the bench, the bare member among them. */
export const mostCandidates = 6;

export type CandidateMaterial = keyof typeof strutMaterials;

/** What a candidate's mass is worked out from. */
export type MassModel =
  | { readonly kind: 'none' }
  | { readonly kind: 'skin'; readonly arealDensityKgM2: number }
  | { readonly kind: 'wall'; readonly material: CandidateMaterial; readonly wallM: number };

interface CandidateParts {
  /** Letters, digits, hyphens, underscores; unique on the bench. */
  readonly id: string;
  readonly name: string;
  /** Typed, in place of the mass model's: of the finished part, all members of a row together; null leaves it to the model. */
  readonly massKg: number | null;
  /** In the project's currency, for all members together. */
  readonly cost: number;
}

interface SectionParts extends CandidateParts {
  readonly direction: ProjectDirection;
  readonly mass: MassModel;
}

/** The member as it stands. */
export interface BareCandidate extends CandidateParts {
  readonly kind: 'bare';
}

export interface ThinnerRoundCandidate extends CandidateParts {
  readonly kind: 'thinnerRound';
  readonly diameterM: number;
  readonly mass: MassModel;
}

/** Replaces the tube. */
export interface EllipseCandidate extends SectionParts {
  readonly kind: 'ellipse';
  readonly chordM: number;
  readonly thicknessM: number;
}

/** A fairing round the tube: as thick as the tube and, on each side, skin and clearance. */
export interface FairingRoundCandidate extends SectionParts {
  readonly kind: 'fairingRound';
  readonly skinM: number;
  readonly clearanceM: number;
  readonly chordOverThickness: number;
}

/** A streamlined section that replaces the tube and carries what it carried. */
export interface SectionCandidate extends SectionParts {
  readonly kind: 'section';
  readonly chordM: number;
  readonly thicknessM: number;
}

export type Candidate =
  BareCandidate | ThinnerRoundCandidate | EllipseCandidate | FairingRoundCandidate | SectionCandidate;

export type CandidateKind = Candidate['kind'];

export const candidateKinds: readonly { readonly id: CandidateKind; readonly label: string }[] = [
  { id: 'bare', label: 'as it stands' },
  { id: 'thinnerRound', label: 'round, but thinner' },
  { id: 'ellipse', label: 'elliptical section in its place' },
  { id: 'fairingRound', label: 'fairing round it' },
  { id: 'section', label: 'streamlined section in its place' },
];

export const massModels: readonly { readonly id: MassModel['kind']; readonly label: string }[] = [
  { id: 'none', label: 'not worked out' },
  { id: 'skin', label: 'from a skin' },
  { id: 'wall', label: 'from a wall' },
];

export const candidateMaterials: readonly { readonly id: CandidateMaterial; readonly label: string }[] = [
  { id: 'aluminium6082', label: 'aluminium 6082' },
  { id: 'stainless316', label: 'stainless steel 316' },
  { id: 'titanium6al4v', label: 'titanium 6Al-4V' },
  { id: 'carbonEpoxy', label: 'carbon and epoxy' },
];

/** A complaint beside a field: `field` is its name in the candidate ("mass.wallM", "direction.residualDeg"). */
export interface CandidateProblem {
  readonly field: string;
  readonly message: string;
}
