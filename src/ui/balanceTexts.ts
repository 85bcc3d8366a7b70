import { formatQuantity, formatValue } from '../units/print';

/** A change of mass with its sign said in words. */
export function massText(massChangeKg: number): string {
  if (massChangeKg === 0) return 'no change of mass';
  const size = formatQuantity(Math.abs(massChangeKg), 'kg');
  return massChangeKg > 0 ? `${size} more mass` : `${size} less mass`;
}

/** Money to the whole unit; a project may count in no currency. */
export function moneyText(cost: number, currency: string): string {
  const amount = formatValue(cost, '1', { decimals: 0 });
  return currency === '' ? `a cost of ${amount}` : `${currency}\u00a0${amount}`;
}

/** A mass moment, printed without a unit of the table: no other number of the tool is one. */
export function momentText(momentKgM: number): string {
  return `${formatValue(momentKgM, '1')} kg m`;
}
