import type { EndKind } from '../section/endEffect';
import type { TypedCoefficient } from '../section/roundBarSection';
import type { SectionDirection } from '../section/sectionDirection';
import type { WireConstruction } from '../section/wire';
import type { BoatVector } from '../vector/vector3';

/** How a length was obtained; it sets how far it is doubted. */
export type Basis = 'measured' | 'drawing' | 'estimated';

/** 90 % half-widths of a length by how it was obtained, as fractions. Assumed; no source. */
export const basisDoubt: Record<Basis, number> = { measured: 0.02, drawing: 0.03, estimated: 0.15 };

/** A length with the name of its own doubt: two fittings share a doubt only where they share the name. */
export interface Dimension {
  readonly valueM: number;
  readonly basis: Basis;
  readonly doubtId: string;
}

/** A number with its 90 % range. */
export interface Ranged {
  readonly best: number;
  readonly low: number;
  readonly high: number;
}

/** What every shape with a length has. */
interface MemberParts {
  readonly coefficient: TypedCoefficient | null;
  /** Name of the doubt in a typed coefficient. */
  readonly coefficientDoubtId: string;
  /** False: no friction along the axis. */
  readonly friction: boolean;
  readonly ends: readonly [EndKind, EndKind];
}

/** Round bar: tube, rod, rolled sail, mast without a sail. Coefficients on diameter x length. */
export interface RoundBarShape extends MemberParts {
  readonly kind: 'roundBar';
  readonly diameter: Dimension;
  /** Sand-grain roughness height, m; 0 for smooth. */
  readonly roughnessM: number;
}

/** Wire or rope by its construction, long enough to have no end effect. Coefficients on diameter x length. */
export interface WireShape extends MemberParts {
  readonly kind: 'wire';
  readonly construction: WireConstruction;
  readonly diameter: Dimension;
}

/** A section with a direction. Coefficients on chord x length; the chord runs from nose to tail. */
export interface SectionShape extends MemberParts {
  readonly kind: 'ellipticalBar' | 'rectangularBar' | 'fairing';
  readonly chord: Dimension;
  readonly thickness: Dimension;
  /** Of a rectangular section; 0 for sharp corners. */
  readonly cornerRadiusM: number;
  readonly direction: SectionDirection;
  /** Name of the doubt in the direction of a turning section. */
  readonly directionDoubtId: string;
}

/** A shape that is integrated along its length. */
export type MemberShape = RoundBarShape | WireShape | SectionShape;

/** A drag area measured or taken from a paper: the same from every side, at a point. */
export interface MeasuredAreaShape {
  readonly kind: 'measuredArea';
  readonly dragAreaM2: Ranged;
  readonly doubtId: string;
}

/** A bluff body by three axes of the boat; coefficients on width x height (x), length x height (y), length x width (z). */
export interface BluffBodyShape {
  readonly kind: 'bluffBody';
  readonly length: Dimension;
  readonly width: Dimension;
  readonly height: Dimension;
  /** Of all its edges; 0 for sharp ones. */
  readonly cornerRadiusM: number;
  /** Typed coefficients per axis; null takes the handbook's cube, rounded as the edges are. */
  readonly coefficients: {
    readonly x: TypedCoefficient | null;
    readonly y: TypedCoefficient | null;
    readonly z: TypedCoefficient | null;
  };
  /** Name of the doubts in typed coefficients; the axis follows. */
  readonly coefficientDoubtId: string;
}

/** Sphere, on its frontal area; it sits with its middle at a point. */
export interface SphereShape {
  readonly kind: 'sphere';
  readonly diameter: Dimension;
  /** Sand-grain roughness height, m; 0 for smooth. */
  readonly roughnessM: number;
  readonly coefficient: TypedCoefficient | null;
  readonly coefficientDoubtId: string;
}

/** A flat net by solidity, facing along one of the boat's axes; it stands on a point and reaches up by its height. */
export interface NetShape {
  readonly kind: 'net';
  readonly facing: 'x' | 'y' | 'z';
  readonly width: Dimension;
  readonly height: Dimension;
  /** Solid over gross area, 0 to 1. */
  readonly solidity: number;
  readonly wireDiameter: Dimension;
}

export type Shape = MemberShape | MeasuredAreaShape | BluffBodyShape | SphereShape | NetShape;

export function isMemberShape(shape: Shape): shape is MemberShape {
  return 'ends' in shape;
}

/** The direction of a shape that has one. */
export function directionOf(shape: Shape): SectionDirection | null {
  return 'direction' in shape ? shape.direction : null;
}

/**
 * One member of a fitting at its own place: a bar from `start` to `end`, or a body that stands on `start` and reaches
 * to `end` (the same point for a point). Rows and pairs arrive here already laid out.
 */
export interface PlacedMember {
  readonly start: BoatVector;
  readonly end: BoatVector;
  /** True for the image of a member across the centreplane: the direction of its section is mirrored too. */
  readonly isMirrored?: boolean;
}

/** What a fitting is when it is stowed: a drag area at a place; null means nothing is left in the wind. */
export interface StowedState {
  readonly dragAreaM2: Ranged;
  readonly place: BoatVector;
  readonly doubtId: string;
}

export interface FittingInput {
  readonly id: string;
  readonly shape: Shape;
  readonly members: readonly PlacedMember[];
  /** Half-width of the doubt in the members' lengths, as a fraction, and its name. Points and bodies have none. */
  readonly lengthDoubt: { readonly fraction: number; readonly doubtId: string } | null;
  /** Factor on the speed of the free apparent wind, members on the windward side and on the centreline. */
  readonly exposure: Ranged;
  /** The same for members on the leeward side. */
  readonly exposureLeeward: Ranged;
  readonly exposureDoubtId: string;
  /** Turns the wind at the fitting; positive brings it from further aft on the tack's side. */
  readonly localTurnRad: number;
  readonly stowed: StowedState | null;
}
