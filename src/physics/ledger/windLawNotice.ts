import type { Notice } from '../fitting/notice';
import type { Result } from './ledgerSums';

/**
 * One notice per condition: deck height lies among the waves, where no wind law holds. Its value says how far the laws
 * differ in the total: the span of the laws' track power over the total's size, or null when there is no wind doubt.
 */
export function windLawNotice(total: Result): Notice | null {
  const law = total.doubts.find(({ id }) => id === 'wind-law');
  const size = Math.abs(total.outcome.trackPowerW);
  if (law === undefined || size === 0) return null;
  const changes = [0, law.up.trackPowerW, law.down.trackPowerW];
  return {
    code: 'deck-among-waves',
    values: { spanShare: (Math.max(...changes) - Math.min(...changes)) / size },
  };
}
