/** A part as a fraction of a whole; null where either is no cost: a boat that is pushed along pays nothing. */
export function shareOf(part: number, whole: number): number | null {
  return whole > 0 && part > 0 ? part / whole : null;
}
