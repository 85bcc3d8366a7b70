import { fromSi } from './convert';
import type { Unit } from './unitTable';

/**
 * For files: the shortest plain ASCII text that reads back as the same number ("-0.1", "1e-7"), never grouped,
 * never rounded. The sign of zero is dropped.
 */
export function formatPlain(valueSi: number, unit?: Unit): string {
  const value = unit === undefined ? valueSi : fromSi(valueSi, unit);
  return String(value === 0 ? 0 : value);
}
