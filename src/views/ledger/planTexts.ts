import type { ItemAccount } from '../../project/ledger/ledgerTypes';

/** What became of an item, in words. */
export function statusText({ status, item, contradiction }: ItemAccount): string {
  switch (status) {
    case 'counted':
      return item.safetyReason === null
        ? 'counted'
        : `counted; ${item.safetyReason.person}: ${item.safetyReason.reason}`;
    case 'withheld':
      return 'not counted: safety-required, waits for a named person’s reason';
    case 'off':
      return 'not counted: switched off';
    case 'contradiction':
      return `not counted: ${contradiction?.message ?? ''}`;
  }
}
