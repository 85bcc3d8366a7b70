import { noseForward } from '../file/directions';
import type { ProjectDimension, ProjectShape } from '../file/schema';

/** The few shapes that a list made on a dock needs; the editor of a row has the others. */
export const quickShapes = ['tube', 'wire', 'rope', 'flat', 'ball', 'box'] as const;
export type QuickShape = (typeof quickShapes)[number];

export const quickShapeNames: Readonly<Record<QuickShape, string>> = {
  tube: 'round bar or tube',
  wire: 'wire, 1 × 19',
  rope: 'rope, braided',
  flat: 'flat or square bar',
  ball: 'ball',
  box: 'box or bag',
};

/** A size that a tape measures, in the words that stand beside its field. */
export type QuickSize = 'diameter' | 'width' | 'thickness' | 'foreAndAft' | 'across' | 'high';

export const quickSizeNames: Readonly<Record<QuickSize, string>> = {
  diameter: 'Diameter',
  width: 'Width, fore and aft',
  thickness: 'Thickness, across the boat',
  foreAndAft: 'Length, fore and aft',
  across: 'Width, across the boat',
  high: 'Height of the box',
};

const sizesByShape: Readonly<Record<QuickShape, readonly QuickSize[]>> = {
  tube: ['diameter'],
  wire: ['diameter'],
  rope: ['diameter'],
  flat: ['width', 'thickness'],
  ball: ['diameter'],
  box: ['foreAndAft', 'across', 'high'],
};

/** The sizes that a shape is told by, besides the length of a bar. */
export function quickSizesOf(shape: QuickShape): readonly QuickSize[] {
  return sizesByShape[shape];
}

/** True for what runs from one point to another, and so has a length and lies some way. */
export function isQuickBar(shape: QuickShape): boolean {
  return shape !== 'ball' && shape !== 'box';
}

export type QuickBasis = 'measured' | 'estimated';
type SizesM = Readonly<Partial<Record<QuickSize, number>>>;

/**
 * The shape that the sizes make: a smooth surface, square edges, coefficients by the model.
 * @param isOnDeck a bar whose foot stands on the deck: that end is no free one.
 */
export function quickShape(
  shape: QuickShape,
  sizesM: SizesM,
  basis: QuickBasis,
  isOnDeck: boolean,
): ProjectShape {
  const size = (which: QuickSize): ProjectDimension => ({ m: sizesM[which] ?? 0, basis });
  const bar = {
    coefficient: null,
    friction: 'model',
    ends: isOnDeck ? (['surface', 'free'] as const) : (['free', 'free'] as const),
  } as const;
  switch (shape) {
    case 'tube':
      return { kind: 'roundBar', diameter: size('diameter'), surface: { kind: 'smooth' }, ...bar };
    case 'wire':
    case 'rope': {
      const construction = shape === 'wire' ? 'spiralStrand' : 'braidedRope';
      return { kind: 'wire', construction, diameter: size('diameter'), coefficient: null, friction: 'model' };
    }
    case 'flat': {
      const sides = { chord: size('width'), thickness: size('thickness') };
      return { kind: 'rectangularBar', ...sides, direction: noseForward, cornerRadiusM: 0, ...bar };
    }
    case 'ball':
      return { kind: 'sphere', diameter: size('diameter'), surface: { kind: 'smooth' }, coefficient: null };
    case 'box': {
      const sides = { length: size('foreAndAft'), width: size('across'), height: size('high') };
      return { kind: 'bluffBody', ...sides, cornerRadiusM: 0, coefficients: { x: null, y: null, z: null } };
    }
  }
}
