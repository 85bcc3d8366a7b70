import { outerBoundary } from './boundary';
import { boundaryLengthM } from './regionMoments';
import type { SectionOutline } from './sectionOutline';

/** A skin on an outline, thin beside it: everything per metre of length. */
export interface Skin {
  readonly perimeterM: number;
  readonly massPerLengthKgM: number;
  /** Behind the nose, m. */
  readonly massCentreM: number;
}

/**
 * Perimeter, mass and centre of mass of a skin of constant areal density laid on an outline (its own thickness left out).
 * Example: a round tube of 0.1 m with 2 kg/m2: 0.628 kg/m, centre 0.05 m behind the nose. Source: green-theorem.
 */
export function skinOf(outline: SectionOutline, arealDensityKgM2: number): Skin {
  const boundary = outerBoundary(outline);
  const perimeterM = boundaryLengthM(boundary);
  const firstM2 = boundary.reduce((sum, { xM, dxM, dyM }) => sum + xM * Math.hypot(dxM, dyM), 0);
  return {
    perimeterM,
    massPerLengthKgM: arealDensityKgM2 * perimeterM,
    massCentreM: firstM2 / perimeterM,
  };
}
