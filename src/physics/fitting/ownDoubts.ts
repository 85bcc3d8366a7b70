import type { Dimension, FittingInput, PlacedMember, Ranged, Shape } from './fittingInput';
import { basisDoubt, isMemberShape, type NetShape, type SectionShape } from './fittingInput';
import { boatVector } from '../vector/vector3';

/** A fitting at the high and at the low state of one of its own doubts. */
export interface FittingVariant {
  readonly id: string;
  readonly up: FittingInput;
  readonly down: FittingInput;
  /** True when the members themselves move, so that they must be laid anew. */
  readonly movesMembers: boolean;
}

/**
 * The fitting's own doubts that act through its input: sizes, length, exposure. (Typed coefficients and measured areas
 * scale the force and are collected while it is summed.)
 */
export function ownVariants(fitting: FittingInput): FittingVariant[] {
  return [...sizeVariants(fitting), ...lengthVariants(fitting), ...exposureVariants(fitting)];
}

function sizeVariants(fitting: FittingInput): FittingVariant[] {
  const { shape } = fitting;
  if (shape.kind === 'measuredArea') return [];
  if ('diameter' in shape) {
    return [sizeVariant(fitting, shape.diameter, (diameter) => ({ ...shape, diameter }))];
  }
  if (isMemberShape(shape)) return sectionVariants(fitting, shape);
  if (shape.kind === 'net') return netVariants(fitting, shape);
  return [
    sizeVariant(fitting, shape.length, (length) => ({ ...shape, length })),
    sizeVariant(fitting, shape.width, (width) => ({ ...shape, width })),
    sizeVariant(fitting, shape.height, (height) => ({ ...shape, height })),
  ];
}

function netVariants(fitting: FittingInput, shape: NetShape): FittingVariant[] {
  return [
    sizeVariant(fitting, shape.width, (width) => ({ ...shape, width })),
    sizeVariant(fitting, shape.height, (height) => ({ ...shape, height })),
    sizeVariant(fitting, shape.wireDiameter, (wireDiameter) => ({ ...shape, wireDiameter })),
  ];
}

function sectionVariants(fitting: FittingInput, shape: SectionShape): FittingVariant[] {
  return [
    sizeVariant(fitting, shape.chord, (chord) => ({ ...shape, chord })),
    sizeVariant(fitting, shape.thickness, (thickness) => ({ ...shape, thickness })),
    ...residualVariants(fitting, shape),
  ];
}

/** A section that turns is off by its residual to either side; the best value has none, so the worse of the two counts. */
function residualVariants(fitting: FittingInput, shape: SectionShape): FittingVariant[] {
  const { direction } = shape;
  if (direction.kind !== 'turning' || direction.residualRad === 0) return [];
  const off = (offRad: number): FittingInput => ({
    ...fitting,
    shape: { ...shape, direction: { ...direction, offRad } },
  });
  const { residualRad } = direction;
  return [{ id: shape.directionDoubtId, up: off(residualRad), down: off(-residualRad), movesMembers: false }];
}

function sizeVariant(
  fitting: FittingInput,
  size: Dimension,
  rebuild: (size: Dimension) => Shape,
): FittingVariant {
  const doubt = basisDoubt[size.basis];
  const changed = (factor: number): FittingInput => ({
    ...fitting,
    shape: rebuild({ ...size, valueM: size.valueM * factor }),
  });
  return { id: size.doubtId, up: changed(1 + doubt), down: changed(1 - doubt), movesMembers: false };
}

function lengthVariants(fitting: FittingInput): FittingVariant[] {
  const { lengthDoubt } = fitting;
  if (lengthDoubt === null) return [];
  const stretched = (factor: number): FittingInput => ({
    ...fitting,
    members: fitting.members.map((member) => stretch(member, factor, fixedShare(fitting.shape))),
  });
  const { fraction, doubtId } = lengthDoubt;
  return [{ id: doubtId, up: stretched(1 + fraction), down: stretched(1 - fraction), movesMembers: true }];
}

/** The point that stays when the length is in doubt, as a share of it: an end that stands on a surface, else the middle. */
function fixedShare(shape: Shape): number {
  if (!isMemberShape(shape) || shape.ends[0] === shape.ends[1]) return 0.5;
  if (shape.ends[0] === 'surface') return 0;
  return shape.ends[1] === 'surface' ? 1 : 0.5;
}

/** The member with its length times `factor`; the point at `fixed` stays. */
function stretch(member: PlacedMember, factor: number, fixed: number): PlacedMember {
  const { start, end } = member;
  const [dx, dy, dz] = [end[0] - start[0], end[1] - start[1], end[2] - start[2]];
  const [back, on] = [(factor - 1) * fixed, (factor - 1) * (1 - fixed)];
  return {
    ...member,
    start: boatVector(start[0] - back * dx, start[1] - back * dy, start[2] - back * dz),
    end: boatVector(end[0] + on * dx, end[1] + on * dy, end[2] + on * dz),
  };
}

function exposureVariants(fitting: FittingInput): FittingVariant[] {
  const { exposure, exposureLeeward } = fitting;
  if (exposure.low === exposure.high && exposureLeeward.low === exposureLeeward.high) return [];
  const at = (side: 'low' | 'high'): FittingInput => ({
    ...fitting,
    exposure: atSide(exposure, side),
    exposureLeeward: atSide(exposureLeeward, side),
  });
  return [{ id: fitting.exposureDoubtId, up: at('high'), down: at('low'), movesMembers: false }];
}

function atSide(value: Ranged, side: 'low' | 'high'): Ranged {
  return { ...value, best: value[side] };
}
