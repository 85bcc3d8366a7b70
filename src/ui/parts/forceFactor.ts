import type { ProjectRanged } from '../../project/file/schema';
import { formatRange, formatValue } from '../../units/print';

/**
 * What a speed factor does to the force, in words: dynamic pressure goes with the square of the speed, so that a wind
 * at 0.7 of its speed pushes with 0.49 of its force.
 */
export function forceFactorText({ best, low, high }: ProjectRanged): string {
  const spread = low === high ? '' : `, from ${formatRange(low * low, high * high, '1')}`;
  return `Force factor e², the square of the speed factor: ${formatValue(best * best, '1')}${spread}.`;
}
