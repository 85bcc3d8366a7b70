/** The class of a printed saving: what the plan gives back or takes; none where it is nothing. */
export function savingTone(savedW: number): 'saves' | 'adds' | '' {
  if (savedW === 0) return '';
  return savedW < 0 ? 'adds' : 'saves';
}
