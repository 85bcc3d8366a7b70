import type { WireConstruction } from '../../physics/section/wire';
import type { ProjectShape } from '../file/schema';

/** Wire and rope by construction, as riggers say. */
export const wireNames: Readonly<Record<WireConstruction, string>> = {
  rod: 'smooth rod',
  spiralStrand: '1 × 19 strand',
  strandedWire: '7 × 19 wire',
  braidedRope: 'braided rope',
};

/** The kinds of shape in the words of a choice. */
export const shapeNames: Readonly<Record<ProjectShape['kind'], string>> = {
  roundBar: 'round bar',
  wire: 'wire or rope',
  ellipticalBar: 'elliptical bar',
  rectangularBar: 'flat or rectangular bar',
  fairing: 'fairing',
  sphere: 'sphere',
  net: 'net',
  bluffBody: 'body with edges',
  measuredArea: 'measured area',
};
