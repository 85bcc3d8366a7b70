import { quantityIn } from '../../units/printIn';
import { failedClaims, shownRoute, type ClaimId } from './claims';
import type { EnvelopeMismatch } from './envelopeCheck';
import { offBy } from './handbookWords';
import type { WorkedEnvelope } from './workOut';

/** How far off, in a sentence; none beside nothing, which is off by no factor and has no sign. */
function difference(givenSi: number, computedSi: number): string {
  if (givenSi === 0 || computedSi === 0) return '';
  const isComparable = givenSi > 0 && computedSi > 0;
  return isComparable ? ` It is ${offBy(givenSi, computedSi)}.` : ' The two differ in sign.';
}

function mismatch(id: ClaimId, envelope: WorkedEnvelope): EnvelopeMismatch[] {
  const part = envelope[id];
  const route = shownRoute(part);
  const { written } = part;
  if (route === null || written === null) return [];
  const { valueSi: givenSi, unit } = written;
  const { valueSi: computedSi, fromFieldIds, show } = route;
  const given = quantityIn(givenSi, unit);
  const computed = quantityIn(computedSi, unit);
  const sentence = `${given} does not follow: ${show} is ${computed}.${difference(givenSi, computedSi)}`;
  return [{ fieldId: id, fromFieldIds, givenSi, computedSi, unit, sentence }];
}

/** What does not follow from what, in words. */
export function mismatchesOf(envelope: WorkedEnvelope): readonly EnvelopeMismatch[] {
  return failedClaims(envelope).flatMap((id) => mismatch(id, envelope));
}
