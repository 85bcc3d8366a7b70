import type { ItemAccount } from '../../project/ledger/ledgerTypes';
import { formatQuantity, formatValue } from '../../units/print';

/** A change of mass with its sign said in words. */
export function massText(massChangeKg: number): string {
  if (massChangeKg === 0) return 'no change of mass';
  const size = formatQuantity(Math.abs(massChangeKg), 'kg');
  return massChangeKg > 0 ? `${size} more mass` : `${size} less mass`;
}

/** Money to the whole unit; a project may count in no currency. */
export function moneyText(cost: number, currency: string): string {
  const amount = formatValue(cost, '1', { decimals: 0 });
  return currency === '' ? `a cost of ${amount}` : `${currency} ${amount}`;
}

/** A mass moment, printed without a unit of the table: no other number of the tool is one. */
export function momentText(momentKgM: number): string {
  return `${formatValue(momentKgM, '1')} kg m`;
}

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
