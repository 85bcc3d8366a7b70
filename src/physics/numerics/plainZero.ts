/** The value, with 0 for −0: a force that is none points nowhere, and a table must not print it with a sign. */
export function plainZero(value: number): number {
  return value + 0;
}
