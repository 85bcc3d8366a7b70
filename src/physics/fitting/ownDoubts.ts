import type { Dimension, FittingInput, PlacedMember, Ranged, Shape } from './fittingInput';
import { basisDoubt } from './fittingInput';
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
  if (shape.kind === 'roundBar') {
    return [sizeVariant(fitting, shape.diameter, (diameter) => ({ ...shape, diameter }))];
  }
  return [
    sizeVariant(fitting, shape.length, (length) => ({ ...shape, length })),
    sizeVariant(fitting, shape.width, (width) => ({ ...shape, width })),
    sizeVariant(fitting, shape.height, (height) => ({ ...shape, height })),
  ];
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
    members: fitting.members.map((member) => stretch(member, factor)),
  });
  const { fraction, doubtId } = lengthDoubt;
  return [{ id: doubtId, up: stretched(1 + fraction), down: stretched(1 - fraction), movesMembers: true }];
}

/** The member with its length times `factor`, about its middle. */
function stretch({ start, end }: PlacedMember, factor: number): PlacedMember {
  const grow = (factor - 1) / 2;
  const [dx, dy, dz] = [end[0] - start[0], end[1] - start[1], end[2] - start[2]];
  return {
    start: boatVector(start[0] - grow * dx, start[1] - grow * dy, start[2] - grow * dz),
    end: boatVector(end[0] + grow * dx, end[1] + grow * dy, end[2] + grow * dz),
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
