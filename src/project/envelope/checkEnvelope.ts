import { assumptionsOf } from './assumptions';
import { claimNames, failedClaims, hasChecked, listed } from './claims';
import type { EnvelopeCheck, EnvelopeSlip } from './envelopeCheck';
import { handbookOf } from './handbook';
import { mismatchesOf } from './mismatches';
import type { EnvelopeNumbers } from './readEnvelope';
import { slipsOf } from './slips';
import { speedTableOf } from './speedTable';
import { stepsOf } from './steps';
import { trackOf } from './trackPower';
import { workOut, type WorkedEnvelope } from './workOut';

/**
 * Checks an estimate: works every number from those beside it, says what does not follow and which slips would explain it,
 * and what a handbook uses. Pure; the rule of agreement stands at `Route`.
 */
export function checkEnvelope(numbers: EnvelopeNumbers): EnvelopeCheck {
  const envelope = workOut(numbers);
  const { handbook, missing } = handbookOf(numbers, envelope);
  const slips = slipsOf(numbers, envelope);
  const { track, missing: trackMissing } = trackOf(numbers, envelope, handbook);
  return {
    summary: summaryOf(envelope, slips),
    assumptions: assumptionsOf(numbers, envelope),
    steps: stepsOf(numbers, envelope),
    mismatches: mismatchesOf(envelope),
    slips,
    slipLead: leadOf(slips),
    handbook,
    handbookMissing: missing,
    speedTable: speedTableOf(numbers, envelope),
    track,
    trackMissing,
  };
}

function leadOf(slips: readonly EnvelopeSlip[]): string | null {
  if (slips.length === 0) return null;
  return slips.length === 1
    ? 'One slip fits the numbers:'
    : 'One of these slips fits; the numbers do not tell which:';
}

function summaryOf(envelope: WorkedEnvelope, slips: readonly EnvelopeSlip[]): string {
  const failed = failedClaims(envelope).map((id) => claimNames[id]);
  const isEmpty =
    envelope.area.usable.length + envelope.force.usable.length + envelope.speed.usable.length === 0;
  if (isEmpty) return 'Type the numbers of an estimate.';
  if (!hasChecked(envelope)) return 'Nothing to compare yet: the numbers written do not give each other.';
  if (failed.length === 0) return 'Every number that the others give follows from them.';
  const doNot = failed.length === 1 ? 'does' : 'do';
  const [slip] = slips;
  const why =
    slip === undefined
      ? ' No usual slip explains it.'
      : slips.length === 1
        ? ` The numbers fit this slip: ${slip.label}.`
        : '';
  const names = listed(failed);
  return `${names.charAt(0).toUpperCase()}${names.slice(1)} ${doNot} not follow from the other numbers.${why}`;
}
