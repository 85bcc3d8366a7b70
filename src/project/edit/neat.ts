/** To a millionth of its unit: far finer than a tape, and without the tail that binary fractions leave (0.30000000000000004). */
export function neat(value: number): number {
  return Math.round(value * 1e6) / 1e6 + 0;
}
