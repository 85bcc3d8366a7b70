import { prepareEllipse } from '../section/ellipseSection';
import { fairingRegimes } from '../section/fairing';
import type { FairingSurface } from '../section/fairingAligned';
import { prepareFairing } from '../section/fairingSection';
import type { PreparedSection } from '../section/memberFamily';
import { rectangleRegimes } from '../section/rectangle';
import { prepareRectangle } from '../section/rectangleSection';
import { roundBarRegimes } from '../section/roundBar';
import { prepareRoundBar } from '../section/roundBarSection';
import { laidWireRegimes, prepareWire } from '../section/wire';
import type { MemberShape } from './fittingInput';

/** Regime names of the families, in the order of the index that a strip hands out. */
const familyRegimes = {
  roundBar: roundBarRegimes,
  wire: laidWireRegimes,
  ellipticalBar: roundBarRegimes,
  rectangularBar: rectangleRegimes,
  fairing: fairingRegimes,
} as const satisfies Record<MemberShape['kind'], readonly string[]>;

const sharedDoubtIds: Readonly<Record<MemberShape['kind'], readonly string[]>> = {
  roundBar: doubtIdsOf('roundBar'),
  wire: doubtIdsOf('wire'),
  ellipticalBar: doubtIdsOf('ellipticalBar'),
  rectangularBar: doubtIdsOf('rectangularBar'),
  fairing: doubtIdsOf('fairing'),
};

function doubtIdsOf(kind: MemberShape['kind']): readonly string[] {
  return familyRegimes[kind].map((regime) => `coefficient:${kind}:${regime}`);
}

/** A shape's section ready for integration, with the names of its coefficient's doubts by regime. */
export interface PreparedMember {
  readonly section: PreparedSection;
  readonly doubtIds: readonly string[];
}

interface Remembered extends PreparedMember {
  readonly surface: FairingSurface;
}

const known = new WeakMap<MemberShape, Remembered>();

/** Prepared once for a shape: the air and the doubts ask for the same shape many times over. */
export function prepareMember(shape: MemberShape, surface: FairingSurface): PreparedMember {
  const before = known.get(shape);
  if (before?.surface === surface) return before;
  const { coefficient, coefficientDoubtId } = shape;
  const prepared = {
    surface,
    section: sectionOf(shape, surface),
    doubtIds: coefficient === null ? sharedDoubtIds[familyOf(shape)] : [coefficientDoubtId],
  };
  known.set(shape, prepared);
  return prepared;
}

/** A rod among the wires is a round bar, with its regimes and its doubts. */
function familyOf(shape: MemberShape): MemberShape['kind'] {
  return shape.kind === 'wire' && shape.construction === 'rod' ? 'roundBar' : shape.kind;
}

function sectionOf(shape: MemberShape, surface: FairingSurface): PreparedSection {
  const { coefficient } = shape;
  if (shape.kind === 'roundBar') return prepareRoundBar(shape.diameter.valueM, shape.roughnessM, coefficient);
  if (shape.kind === 'wire') return prepareWire(shape.construction, shape.diameter.valueM, coefficient);
  const chordM = shape.chord.valueM;
  const thicknessM = shape.thickness.valueM;
  switch (shape.kind) {
    case 'ellipticalBar':
      return prepareEllipse(chordM, thicknessM, coefficient);
    case 'rectangularBar':
      return prepareRectangle(chordM, thicknessM, shape.cornerRadiusM, coefficient);
    case 'fairing':
      return prepareFairing(chordM, thicknessM, surface, coefficient);
  }
}

/** The width that a shape's coefficients are based on, m. */
export function referenceWidthOf(shape: MemberShape): number {
  return 'diameter' in shape ? shape.diameter.valueM : shape.chord.valueM;
}

/** The names of a shape's regimes, by index; a typed coefficient has none of the family's. */
export function regimesOf(shape: MemberShape): readonly string[] {
  return shape.coefficient === null ? familyRegimes[familyOf(shape)] : ['typed'];
}

/** The name of a regime, for the working. */
export function regimeName(shape: MemberShape, regime: number): string {
  return regimesOf(shape)[regime] ?? 'typed';
}
