import type { Notice } from '../fitting/notice';
import type { Result } from './ledgerSums';

/**
 * One notice per condition: deck height lies among the waves, where no wind law holds. Its value says how far the laws
 * differ in the total: the span of the laws' air power over the air power, which keeps its size on a run, where track
 * power passes through zero. Null when no air moves past the boat.
 */
export function windLawNotice(total: Result): Notice | null {
  const law = total.doubts.find(({ id }) => id === 'wind-law');
  const size = Math.abs(total.outcome.airPowerW);
  if (law === undefined || size === 0) return null;
  const changes = [0, law.up.airPowerW, law.down.airPowerW];
  return {
    code: 'deck-among-waves',
    values: { spanShare: (Math.max(...changes) - Math.min(...changes)) / size },
  };
}
