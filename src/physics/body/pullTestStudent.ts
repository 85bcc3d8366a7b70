/** 95 % quantile of Student's t (90 % between the two tails) for 1 to 30 degrees of freedom. Source: student-t. */
export const studentTable95: readonly number[] = [
  6.314, 2.92, 2.353, 2.132, 2.015, 1.943, 1.895, 1.86, 1.833, 1.812, 1.796, 1.782, 1.771, 1.761, 1.753,
  1.746, 1.74, 1.734, 1.729, 1.725, 1.721, 1.717, 1.714, 1.711, 1.708, 1.706, 1.703, 1.701, 1.699, 1.697,
];

/** 95 % quantile of the normal distribution. */
const normal95 = 1.644854;

/**
 * 95 % quantile of Student's t: the table, and beyond it the expansion about the normal quantile z,
 * z + (z^3 + z) / (4 n) + (5 z^5 + 16 z^3 + 3 z) / (96 n^2), which the table's last entry agrees with. Source: student-t.
 * @param degrees degrees of freedom: one less than the number of readings; at least 1.
 */
export function studentQuantile95(degrees: number): number {
  const tabled = studentTable95[degrees - 1];
  if (tabled !== undefined) return tabled;
  const z = normal95;
  return z + (z ** 3 + z) / (4 * degrees) + (5 * z ** 5 + 16 * z ** 3 + 3 * z) / (96 * degrees * degrees);
}
