import type { PreparedSection } from '../section/memberFamily';
import { rectangleRegimes } from '../section/rectangle';
import { prepareRectangle } from '../section/rectangleSection';
import { roundBarRegimes } from '../section/roundBar';
import { prepareRoundBar } from '../section/roundBarSection';
import type { MemberShape } from './fittingInput';

/** Regime names of the families, in the order of the index that a strip hands out. */
export const familyRegimes = {
  roundBar: roundBarRegimes,
  rectangularBar: rectangleRegimes,
} as const satisfies Record<MemberShape['kind'], readonly string[]>;

const sharedDoubtIds: Readonly<Record<MemberShape['kind'], readonly string[]>> = {
  roundBar: doubtIdsOf('roundBar'),
  rectangularBar: doubtIdsOf('rectangularBar'),
};

function doubtIdsOf(kind: MemberShape['kind']): readonly string[] {
  return familyRegimes[kind].map((regime) => `coefficient:${kind}:${regime}`);
}

/** A shape's section ready for integration, with the names of its coefficient's doubts by regime. */
export interface PreparedMember {
  readonly section: PreparedSection;
  readonly doubtIds: readonly string[];
}

export function prepareMember(shape: MemberShape): PreparedMember {
  const { coefficient, coefficientDoubtId, kind } = shape;
  return {
    section: sectionOf(shape),
    doubtIds: coefficient === null ? sharedDoubtIds[kind] : [coefficientDoubtId],
  };
}

function sectionOf(shape: MemberShape): PreparedSection {
  switch (shape.kind) {
    case 'roundBar':
      return prepareRoundBar(shape.diameter.valueM, shape.roughnessM, shape.coefficient);
    case 'rectangularBar':
      return prepareRectangle(
        shape.chord.valueM,
        shape.thickness.valueM,
        shape.cornerRadiusM,
        shape.coefficient,
      );
  }
}

/** The width that a shape's coefficients are based on, m. */
export function referenceWidthOf(shape: MemberShape): number {
  return shape.kind === 'roundBar' ? shape.diameter.valueM : shape.chord.valueM;
}

/** The name of a regime, for the working; a typed coefficient has none of the family's. */
export function regimeName(shape: MemberShape, regime: number): string {
  return shape.coefficient === null ? familyRegimes[shape.kind][regime]! : 'typed';
}
