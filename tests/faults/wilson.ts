/** Of a share seen in a sample, the 95 % range of the share in the whole by Wilson's score. */
export function wilsonRange(noticed: number, tried: number): { readonly low: number; readonly high: number } {
  const z = 1.959964;
  const share = noticed / tried;
  const scale = 1 + (z * z) / tried;
  const middle = (share + (z * z) / (2 * tried)) / scale;
  const half = (z / scale) * Math.sqrt((share * (1 - share)) / tried + (z * z) / (4 * tried * tried));
  return { low: middle - half, high: middle + half };
}
