import { quantityIn } from '../../units/printIn';
import type { EnvelopeSlip } from './envelopeCheck';
import { claimNames, failedClaims, listed, shownRoute, type ClaimId } from './claims';
import type { EnvelopeNumbers } from './readEnvelope';
import { slipHypotheses, type SlipHypothesis } from './slipHypotheses';
import { workOut, type WorkedEnvelope } from './workOut';

interface Explained {
  readonly slip: EnvelopeSlip;
  readonly explains: readonly ClaimId[];
}

/** "The force would be 39.3 N, as written, with 12.0 kn taken as 12.0 m/s." */
function sentence(
  explains: readonly ClaimId[],
  changed: WorkedEnvelope,
  { condition }: SlipHypothesis,
): string {
  const values = explains.map((id) => {
    const route = shownRoute(changed[id]);
    const unit = changed[id].written?.unit ?? '1';
    return `${claimNames[id]} ${quantityIn(route?.valueSi ?? NaN, unit)}`;
  });
  const text = `with ${condition}, ${listed(values)} would follow, which agrees with what is written.`;
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function explanation(
  numbers: EnvelopeNumbers,
  failed: readonly ClaimId[],
  hypothesis: SlipHypothesis,
): Explained[] {
  const changed = workOut(numbers, hypothesis.change);
  const explains = failed.filter((id) => changed[id].agrees === true);
  if (explains.length === 0) return [];
  const { id, label } = hypothesis;
  return [{ explains, slip: { id, label, explains, sentence: sentence(explains, changed, hypothesis) } }];
}

function isLess(a: readonly ClaimId[], b: readonly ClaimId[]): boolean {
  return a.length < b.length && a.every((id) => b.includes(id));
}

/**
 * The slips that fit: each is the written numbers with one thing changed, and makes a claim follow that does not follow
 * without it, by the same rule of agreement. One that explains less than another is left out; of those that explain as
 * much, nobody can tell which it was.
 */
export function slipsOf(numbers: EnvelopeNumbers, envelope: WorkedEnvelope): readonly EnvelopeSlip[] {
  const failed = failedClaims(envelope);
  if (failed.length === 0) return [];
  const found = slipHypotheses(numbers).flatMap((hypothesis) => explanation(numbers, failed, hypothesis));
  return found
    .filter(({ explains }) => !found.some((other) => isLess(explains, other.explains)))
    .map(({ slip }) => slip);
}
