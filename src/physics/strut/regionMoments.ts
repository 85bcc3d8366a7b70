import type { BoundaryNode } from './boundary';

/** Area and its first and second moments about the axes through the origin. */
export interface RegionMoments {
  readonly areaM2: number;
  /** Integral of x and of y over the area. */
  readonly firstXM3: number;
  readonly firstYM3: number;
  /** Integral of x^2, of y^2 and of x y. */
  readonly squareXM4: number;
  readonly squareYM4: number;
  readonly productM4: number;
}

/**
 * Moments of the region inside a closed boundary, by Green's theorem: A = sum x dy, and so on with x^2/2, x^3/3, -y^2/2 dx,
 * -y^3/3 dx, x^2 y/2 dy. All zero without a boundary.
 */
export function regionMoments(boundary: readonly BoundaryNode[]): RegionMoments {
  let [area, firstX, firstY, squareX, squareY, product] = [0, 0, 0, 0, 0, 0];
  for (const { xM: x, yM: y, dxM, dyM } of boundary) {
    area += x * dyM;
    firstX += (x * x * dyM) / 2;
    firstY -= (y * y * dxM) / 2;
    squareX += (x ** 3 * dyM) / 3;
    squareY -= (y ** 3 * dxM) / 3;
    product += (x * x * y * dyM) / 2;
  }
  return {
    areaM2: area,
    firstXM3: firstX,
    firstYM3: firstY,
    squareXM4: squareX,
    squareYM4: squareY,
    productM4: product,
  };
}

/** Length of a boundary, m. */
export function boundaryLengthM(boundary: readonly BoundaryNode[]): number {
  return boundary.reduce((sum, { dxM, dyM }) => sum + Math.hypot(dxM, dyM), 0);
}

/** What is left of a region when another is taken out of it. */
export function without(whole: RegionMoments, hole: RegionMoments): RegionMoments {
  return {
    areaM2: whole.areaM2 - hole.areaM2,
    firstXM3: whole.firstXM3 - hole.firstXM3,
    firstYM3: whole.firstYM3 - hole.firstYM3,
    squareXM4: whole.squareXM4 - hole.squareXM4,
    squareYM4: whole.squareYM4 - hole.squareYM4,
    productM4: whole.productM4 - hole.productM4,
  };
}

/** The centroid, and the second moments about it, which bending follows. */
export interface CentroidalMoments {
  readonly centroidXM: number;
  readonly centroidYM: number;
  /** For bending about the axis along the chord (of y^2), and about the one across it (of x^2). */
  readonly aboutChordM4: number;
  readonly acrossChordM4: number;
  readonly productM4: number;
  /** The smallest about any axis in the section: I_m - sqrt(I_d^2 + I_xy^2), half sum and half difference. */
  readonly weakM4: number;
}

export function aboutCentroid(moments: RegionMoments): CentroidalMoments {
  const { areaM2, firstXM3, firstYM3 } = moments;
  const [x, y] = [firstXM3 / areaM2, firstYM3 / areaM2];
  const aboutChordM4 = moments.squareYM4 - areaM2 * y * y;
  const acrossChordM4 = moments.squareXM4 - areaM2 * x * x;
  const productM4 = moments.productM4 - areaM2 * x * y;
  const halfDifference = (aboutChordM4 - acrossChordM4) / 2;
  const weakM4 = (aboutChordM4 + acrossChordM4) / 2 - Math.hypot(halfDifference, productM4);
  return { centroidXM: x, centroidYM: y, aboutChordM4, acrossChordM4, productM4, weakM4 };
}
