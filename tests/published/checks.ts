import { airChecks } from './air';
import { apparentWindChecks } from './apparentWind';
import { endEffectChecks } from './endEffect';
import { envelopeChecks } from './envelope';
import { inclinedChecks } from './inclined';
import { ledgerArithmeticChecks } from './ledgerArithmetic';
import type { PublishedCheck } from './publishedCheck';
import { rectangleChecks } from './rectangle';
import { roundBarChecks } from './roundBar';
import { roundBarCurveChecks } from './roundBarCurves';
import { unitChecks } from './units';
import { windOverSeaChecks } from './windOverSea';
import { workedExampleChecks } from './workedExamples';

/** Every published check, topic by topic, in the order of the validation document. */
export const publishedChecks: readonly PublishedCheck[] = [
  ...workedExampleChecks,
  ...envelopeChecks,
  ...ledgerArithmeticChecks,
  ...airChecks,
  ...windOverSeaChecks,
  ...apparentWindChecks,
  ...roundBarChecks,
  ...roundBarCurveChecks,
  ...endEffectChecks,
  ...rectangleChecks,
  ...inclinedChecks,
  ...unitChecks,
];
