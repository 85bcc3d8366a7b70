import type { EnvelopeCheck } from '../../project/envelope/envelopeCheck';
import type { EnvelopeFieldId } from '../../project/envelope/envelopeTexts';
import type { EnvelopeNumbers } from '../../project/envelope/readEnvelope';
import { quantityIn, rangeIn } from '../../units/printIn';

/** What stands beside a field. */
export interface Aside {
  readonly text: string;
  /** True where the written number is struck, and this stands for it. */
  readonly isContrary: boolean;
}

/** What the other numbers make of a field: the value that follows, what a handbook has, or the same in SI. */
export function asideOf(id: EnvelopeFieldId, numbers: EnvelopeNumbers, check: EnvelopeCheck): Aside | null {
  const mismatch = check.mismatches.find(({ fieldId }) => fieldId === id);
  if (mismatch !== undefined)
    return { text: quantityIn(mismatch.computedSi, mismatch.unit), isContrary: true };
  if (id === 'coefficient' && check.handbook !== null) {
    const { low, high } = check.handbook.coefficient;
    return { text: `${rangeIn(low, high, '1')} in the handbook`, isContrary: false };
  }
  return computed(id, check) ?? inSi(id, numbers);
}

/** For an empty field, or one that agrees. */
function computed(id: EnvelopeFieldId, { steps }: EnvelopeCheck): Aside | null {
  const step = steps.find(({ fieldId }) => fieldId === id);
  if (step === undefined || step.computedSi === null) return null;
  const text = quantityIn(step.computedSi, step.unit);
  if (step.givenSi === null) return { text: `gives ${text}`, isContrary: false };
  return step.agrees === true ? { text: 'follows', isContrary: false } : null;
}

/** A speed or a density in the unit that the formulas use, where it was written in another. */
function inSi(id: EnvelopeFieldId, numbers: EnvelopeNumbers): Aside | null {
  if (id !== 'speed' && id !== 'boatSpeed') return null;
  const written = numbers[id];
  if (written === null || written.unit === 'm/s') return null;
  return { text: quantityIn(written.valueSi, 'm/s'), isContrary: false };
}
