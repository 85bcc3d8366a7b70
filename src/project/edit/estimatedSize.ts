import type { ProjectDimension } from '../file/schema';
import { neat } from './neat';

/** Where nothing tells a size: a length of one metre, and a tenth of it across. */
export const plainLengthM = 1;
export const plainWidthM = 0.1;

/** A size guessed from another kind of shape, within what the file holds; nothing told gives the plain width. */
export function estimated(sizeM: number): ProjectDimension {
  const withinM = sizeM > 0 ? Math.min(Math.max(neat(sizeM), 0.0001), 200) : plainWidthM;
  return { m: withinM, basis: 'estimated' };
}
