import type { BasisPart } from './ledgerTypes';

/** The condition with the largest share of the time, the first of equals; undefined where there is none. */
export function heaviestPart(parts: readonly BasisPart[]): BasisPart | undefined {
  return [...parts].sort((a, b) => b.weight - a.weight)[0];
}
