import type { EnvelopeStep } from '../../project/envelope/envelopeCheck';
import { quantityIn } from '../../units/printIn';

/** Each step of the sum with its formula: what was written, and what follows. */
export function StepsTable({ steps }: { readonly steps: readonly EnvelopeStep[] }) {
  if (steps.length === 0) return null;
  return (
    <section aria-labelledby="envelope-steps">
      <h3 id="envelope-steps">The sum, worked again</h3>
      <table className="envelope-table">
        <thead>
          <tr>
            <th scope="col">step</th>
            <th scope="col" className="envelope-number">
              written
            </th>
            <th scope="col" className="envelope-number">
              follows
            </th>
          </tr>
        </thead>
        <tbody>
          {steps.map((step) => (
            <Step key={step.id} step={step} />
          ))}
        </tbody>
      </table>
    </section>
  );
}

function Step({ step }: { readonly step: EnvelopeStep }) {
  const { label, formula, givenSi, computedSi, agrees } = step;
  const isContrary = agrees === false;
  return (
    <tr>
      <th scope="row">
        {label}
        <span className="envelope-formula muted">{formula}</span>
      </th>
      <td className="envelope-number">
        {isContrary ? <s>{valueText(step, givenSi)}</s> : valueText(step, givenSi)}
      </td>
      <td className="envelope-number">
        {isContrary ? <b>{valueText(step, computedSi)}</b> : valueText(step, computedSi)}
      </td>
    </tr>
  );
}

/** Three figures of a bare number too, as in the formula beside it. */
function valueText({ unit }: EnvelopeStep, valueSi: number | null): string {
  if (valueSi === null) return '';
  return quantityIn(unit === '1' ? Number(valueSi.toPrecision(3)) : valueSi, unit);
}
