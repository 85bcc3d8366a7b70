import { checkEnvelope } from '../../../src/project/envelope/checkEnvelope';
import type {
  EnvelopeCheck,
  EnvelopeStep,
  EnvelopeStepId,
} from '../../../src/project/envelope/envelopeCheck';
import type { EnvelopeTexts } from '../../../src/project/envelope/envelopeTexts';
import { readEnvelope } from '../../../src/project/envelope/readEnvelope';
import { readScribble } from '../../../src/project/envelope/readScribble';

/** The check of fields as typed; a field that cannot be read is a mistake of the test. */
export function checkOf(texts: EnvelopeTexts): EnvelopeCheck {
  const { numbers, problems } = readEnvelope(texts);
  if (Object.keys(problems).length > 0) throw new Error(JSON.stringify(problems));
  return checkEnvelope(numbers);
}

/** The check of a scribble, all of which must be understood. */
export function checkOfScribble(text: string): EnvelopeCheck {
  const { texts, pieces } = readScribble(text);
  const puzzling = pieces.filter(({ kind }) => kind === 'notUnderstood');
  if (puzzling.length > 0) throw new Error(JSON.stringify(puzzling));
  return checkOf(texts);
}

export function stepOf({ steps }: EnvelopeCheck, id: EnvelopeStepId): EnvelopeStep {
  const found = steps.find((step) => step.id === id);
  if (found === undefined) throw new Error(`no step ${id}`);
  return found;
}

/** The value of a step, SI. */
export function computed(check: EnvelopeCheck, id: EnvelopeStepId): number {
  const { computedSi } = stepOf(check, id);
  if (computedSi === null) throw new Error(`step ${id} has no value`);
  return computedSi;
}

export function slipIds({ slips }: EnvelopeCheck): string[] {
  return slips.map(({ id }) => id);
}
