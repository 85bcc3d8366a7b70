/** Why a fitting is left out of the sums; a single key leaves it out before anybody has typed a reason. */
export function exclusionText(reason: string): string {
  return reason.trim() === '' ? 'no reason given yet' : reason;
}
