import { airChecks } from './air';
import { apparentWindChecks } from './apparentWind';
import { ellipseChecks } from './ellipse';
import { endEffectChecks } from './endEffect';
import { envelopeChecks } from './envelope';
import { envelopeTypedChecks } from './envelopeTyped';
import { fairingChecks } from './fairing';
import { fairingAbbottChecks } from './fairingAbbott';
import { fairingHandbookChecks } from './fairingHandbook';
import { fairingMeasuredChecks } from './fairingMeasured';
import { inclinedChecks } from './inclined';
import { ledgerArithmeticChecks } from './ledgerArithmetic';
import { namedBodyChecks } from './namedBodies';
import { netChecks } from './net';
import type { PublishedCheck } from './publishedCheck';
import { pullTestChecks } from './pullTest';
import { rectangleChecks } from './rectangle';
import { roundBarChecks } from './roundBar';
import { roundBarCurveChecks } from './roundBarCurves';
import { sphereChecks } from './sphere';
import { sphereMeasuredChecks } from './sphereMeasured';
import { strutChecks } from './strut';
import { unitChecks } from './units';
import { vibrationChecks } from './vibration';
import { windOverSeaChecks } from './windOverSea';
import { wireChecks } from './wire';
import { workedExampleChecks } from './workedExamples';

/** Every published check, topic by topic, in the order of the validation document. */
export const publishedChecks: readonly PublishedCheck[] = [
  ...workedExampleChecks,
  ...envelopeChecks,
  ...envelopeTypedChecks,
  ...ledgerArithmeticChecks,
  ...airChecks,
  ...windOverSeaChecks,
  ...apparentWindChecks,
  ...roundBarChecks,
  ...roundBarCurveChecks,
  ...endEffectChecks,
  ...rectangleChecks,
  ...wireChecks,
  ...ellipseChecks,
  ...sphereChecks,
  ...sphereMeasuredChecks,
  ...netChecks,
  ...pullTestChecks,
  ...namedBodyChecks,
  ...inclinedChecks,
  ...fairingChecks,
  ...fairingMeasuredChecks,
  ...fairingAbbottChecks,
  ...fairingHandbookChecks,
  ...strutChecks,
  ...vibrationChecks,
  ...unitChecks,
];
