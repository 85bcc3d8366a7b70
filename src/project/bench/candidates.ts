import type { strutMaterials } from '../../physics/strut/strutMaterial';
import { formatQuantity } from '../../units/print';
import { estimated } from '../edit/estimatedSize';
import { fairingRound, ovalInstead } from '../edit/startedShape';
import { followingTheWind, noseForward } from '../file/directions';
import { limits } from '../file/limits';
import type { ProjectDirection } from '../file/schema';
import { acrossM, isMember } from '../file/shapeKinds';
import type { BenchMember } from './benchTypes';

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

/** Across the member's axis, m; 0 of what is no bar, which `benchMembers` never gives. */
export function memberAcrossM({ fitting: { shape } }: BenchMember): number {
  return isMember(shape) ? acrossM(shape) : 0;
}

/** Thickness of a candidate across its chord, m. */
export function candidateThicknessM(candidate: Candidate, member: BenchMember): number {
  switch (candidate.kind) {
    case 'bare':
      return memberAcrossM(member);
    case 'thinnerRound':
      return candidate.diameterM;
    case 'fairingRound':
      return memberAcrossM(member) + 2 * (candidate.skinM + candidate.clearanceM);
    case 'ellipse':
    case 'section':
      return candidate.thicknessM;
  }
}

/** Chord of a candidate that has a direction; null of the others. */
export function candidateChordM(candidate: Candidate, member: BenchMember): number | null {
  if (candidate.kind === 'fairingRound') {
    return candidate.chordOverThickness * candidateThicknessM(candidate, member);
  }
  return 'chordM' in candidate ? candidate.chordM : null;
}

/** What every start value rests on: common practice, no source. The designer types over all of them. */
export const candidateStart = {
  ...fairingRound,
  /** Glass or carbon laid thin over a core or ribs. */
  arealDensityKgM2: 2,
  /** As thick as the tube, and as slender as the middle of the section table. */
  sectionChordOverThickness: 4,
  thinnerShare: 0.8,
  ellipseThicknessShare: ovalInstead.thickness,
  ellipseChordShare: ovalInstead.chord,
  wallM: 0.002,
  material: 'aluminium6082',
} as const;

const startSkin: MassModel = { kind: 'skin', arealDensityKgM2: candidateStart.arealDensityKgM2 };
const startWall: MassModel = {
  kind: 'wall',
  material: candidateStart.material,
  wallM: candidateStart.wallM,
};

/** A candidate of a kind to start from, sized after the member. */
export function startCandidate(kind: CandidateKind, member: BenchMember, id: string): Candidate {
  const tubeM = memberAcrossM(member);
  const parts = { id, name: startName[kind], massKg: null, cost: 0 };
  // A thin bar is solid before its wall is 2 mm.
  const mass = tubeM / 4 > candidateStart.wallM ? startWall : ({ kind: 'none' } as const);
  switch (kind) {
    case 'bare':
      return { ...parts, kind };
    case 'thinnerRound':
      return { ...parts, kind, diameterM: estimated(candidateStart.thinnerShare * tubeM).m, mass };
    case 'ellipse':
      return {
        ...parts,
        kind,
        chordM: estimated(candidateStart.ellipseChordShare * tubeM).m,
        thicknessM: estimated(candidateStart.ellipseThicknessShare * tubeM).m,
        direction: noseForward,
        mass,
      };
    case 'fairingRound':
      return { ...parts, kind, ...fairingRound, direction: followingTheWind, mass: startSkin };
    case 'section':
      return {
        ...parts,
        kind,
        chordM: estimated(candidateStart.sectionChordOverThickness * tubeM).m,
        thicknessM: estimated(tubeM).m,
        direction: noseForward,
        mass,
      };
  }
}

const startName: Readonly<Record<CandidateKind, string>> = {
  bare: 'As it stands',
  thinnerRound: 'Thinner tube',
  ellipse: 'Ellipse',
  fairingRound: 'Fairing',
  section: 'Streamlined section',
};

/** What a bench begins with: the member as it stands, and a fairing round it, turning and fixed. */
export function firstCandidates(member: BenchMember): readonly Candidate[] {
  const turning = startCandidate('fairingRound', member, 'c2');
  const fixed = startCandidate('fairingRound', member, 'c3') as FairingRoundCandidate;
  return [
    startCandidate('bare', member, 'c1'),
    { ...turning, name: 'Fairing, turning' },
    { ...fixed, name: 'Fairing, fixed', direction: noseForward },
  ];
}

const thinnestM = 0.0001;
const widestM = 200;
/** Thicker than half its chord a section is no streamlined one; an ellipse may be. */
const leastChordOverThickness = 2;

type Check = readonly [isFine: boolean, field: string, message: string];

/** What keeps a candidate from being computed, each beside its field; empty when nothing does. */
export function candidateProblems(candidate: Candidate, member: BenchMember): readonly CandidateProblem[] {
  const checks = [...partChecks(candidate), ...sizeChecks(candidate, member)];
  if ('direction' in candidate) checks.push(...directionChecks(candidate.direction));
  if ('mass' in candidate) checks.push(...massChecks(candidate.mass, candidateThicknessM(candidate, member)));
  return checks.flatMap(([isFine, field, message]) => (isFine ? [] : [{ field, message }]));
}

function partChecks({ name, massKg, cost }: CandidateParts): Check[] {
  const longestName = 200;
  return [
    [
      name.trim() !== '' && name.length <= longestName,
      'name',
      `A name of 1 to ${longestName} characters is needed.`,
    ],
    [massKg === null || isWithin(massKg, 0, 1e6), 'massKg', 'A mass must not be below zero.'],
    [isWithin(cost, -1e12, 1e12), 'cost', 'A cost must be a number.'],
  ];
}

function isWithin(value: number, low: number, high: number): boolean {
  return Number.isFinite(value) && value >= low && value <= high;
}

function isSize(sizeM: number): boolean {
  return isWithin(sizeM, thinnestM, widestM);
}

function sizeMessage(): string {
  return `A size from ${formatQuantity(thinnestM, 'mm')} to ${formatQuantity(widestM, 'm')} is needed.`;
}

function sizeChecks(candidate: Candidate, member: BenchMember): Check[] {
  switch (candidate.kind) {
    case 'bare':
      return [];
    case 'thinnerRound': {
      const isThinner = candidate.diameterM < memberAcrossM(member);
      const message = `It must be thinner than the member, ${formatQuantity(memberAcrossM(member), 'mm')}.`;
      return [
        [isSize(candidate.diameterM), 'diameterM', sizeMessage()],
        [!isSize(candidate.diameterM) || isThinner, 'diameterM', message],
      ];
    }
    case 'ellipse':
    case 'section':
      return sectionChecks(candidate);
    case 'fairingRound':
      return fairingChecks(candidate, member);
  }
}

function sectionChecks({ kind, chordM, thicknessM }: EllipseCandidate | SectionCandidate): Check[] {
  const hasSizes = isSize(chordM) && isSize(thicknessM);
  const isSlender = kind === 'ellipse' || chordM >= leastChordOverThickness * thicknessM;
  return [
    [isSize(chordM), 'chordM', sizeMessage()],
    [isSize(thicknessM), 'thicknessM', sizeMessage()],
    [!hasSizes || thicknessM <= chordM, 'thicknessM', 'The thickness is larger than the chord.'],
    [
      !hasSizes || thicknessM > chordM || isSlender,
      'thicknessM',
      'A section thicker than half its chord is no streamlined one; take an ellipse.',
    ],
  ];
}

function fairingChecks(candidate: FairingRoundCandidate, member: BenchMember): Check[] {
  const { skinM, clearanceM, chordOverThickness } = candidate;
  const chordM = chordOverThickness * candidateThicknessM(candidate, member);
  const isSlender = isWithin(chordOverThickness, leastChordOverThickness, 1000);
  return [
    [isSize(skinM), 'skinM', sizeMessage()],
    [isWithin(clearanceM, 0, widestM), 'clearanceM', 'A clearance must not be below zero.'],
    [isSlender, 'chordOverThickness', 'The chord must be 2 to 1000 times the thickness.'],
    [!isSlender || !(chordM > widestM), 'chordOverThickness', 'The chord comes out longer than a boat.'],
  ];
}

function directionChecks(direction: ProjectDirection): Check[] {
  if (direction.kind === 'fixed') {
    return [
      [
        isWithin(direction.angleDeg, -180, 180),
        'direction.angleDeg',
        'An angle from −180° to 180° is needed.',
      ],
    ];
  }
  const { pieces, residualDeg } = direction;
  return [
    [isWithin(residualDeg, 0, 45), 'direction.residualDeg', 'A residual error from 0° to 45° is needed.'],
    [
      Number.isInteger(pieces) && isWithin(pieces, 1, limits.pieces),
      'direction.pieces',
      `A whole number of pieces from 1 to ${limits.pieces} is needed.`,
    ],
  ];
}

function massChecks(mass: MassModel, thicknessM: number): Check[] {
  if (mass.kind === 'none') return [];
  if (mass.kind === 'skin') {
    const message = 'A skin weighs more than nothing and at most 100 kg/m².';
    return [[mass.arealDensityKgM2 > 0 && mass.arealDensityKgM2 <= 100, 'mass.arealDensityKgM2', message]];
  }
  return [
    [mass.wallM > 0, 'mass.wallM', 'A wall must be thicker than nothing.'],
    [
      !(mass.wallM > thicknessM / 2),
      'mass.wallM',
      `The wall is thicker than half the section, ${formatQuantity(thicknessM / 2, 'mm')}.`,
    ],
  ];
}
