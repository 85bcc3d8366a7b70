/** The radio of a candidate in the comparison: where the focus goes when one was added or taken off. */
export function candidateRadioId(candidateId: string): string {
  return `bench-candidate-${candidateId}`;
}
