import type { EnvelopeCheck } from '../../project/envelope/envelopeCheck';
import { OutsideMark } from '../../ui/OutsideMark';

/** How the envelope stands, what does not follow from what, and the slip that would explain it. */
export function Verdict({ check }: { readonly check: EnvelopeCheck }) {
  const { summary, mismatches, slips, slipLead } = check;
  const coefficient = check.handbook?.verdict ?? null;
  return (
    <section className="envelope-verdict" aria-label="How it stands">
      <div className="envelope-summary" role="status">
        <p>{summary}</p>
        {coefficient !== null && (
          <p className={coefficient.kind === 'within' ? undefined : 'envelope-outside'}>
            {coefficient.kind !== 'within' && <OutsideMark />}
            {coefficient.sentence}
          </p>
        )}
      </div>
      {mismatches.length > 0 && (
        <ul className="envelope-lines">
          {mismatches.map(({ fieldId, sentence }) => (
            <li key={fieldId}>{sentence}</li>
          ))}
        </ul>
      )}
      {slips.length > 0 && (
        <>
          {slipLead !== null && <p className="muted">{slipLead}</p>}
          <ul className="envelope-lines">
            {slips.map(({ id, label, sentence }) => (
              <li key={id}>
                <b>{label}</b>: {sentence}
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}
