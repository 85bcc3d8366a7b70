import { quantityIn, rangeIn, valueIn, valueRangeIn } from '../../units/printIn';
import type { Ranged } from '../../physics/fitting/fittingInput';
import type { EnvelopeVerdict } from './envelopeCheck';

const coefficientOptions = { decimals: 2 } as const;

/** "0.94 (0.81–1.03)". */
export function coefficientText({ best, low, high }: Ranged): string {
  return `${valueIn(best, '1', coefficientOptions)} (${valueRangeIn(low, high, '1', coefficientOptions)})`;
}

/** From a ratio above 1: "by about two", "by a factor of 3.4". */
function byFactor(ratio: number): string {
  if (ratio >= 1.75 && ratio < 2.25) return 'by about two';
  return `by a factor of ${valueIn(ratio, '1', { decimals: 1 })}`;
}

/** Which way a number is off a better one: "low by about two", "high by 14 %" of the better one. */
export function offBy(value: number, better: number): string {
  const share = Math.abs(value / better - 1);
  if (share < 0.005) return 'the same within half a percent';
  const direction = value < better ? 'low' : 'high';
  const ratio = value < better ? better / value : value / better;
  if (ratio >= 1.4) return `${direction} ${byFactor(ratio)}`;
  return `${direction} by ${valueIn(100 * share, '1', { decimals: share < 0.02 ? 1 : 0 })} %`;
}

/** The same, and whether the range holds it: a right answer is not to read like a wrong one. */
export function offRange(value: number, range: Ranged): string {
  const isWithin = value >= range.low && value <= range.high;
  return isWithin ? `${offBy(value, range.best)} and within the range` : offBy(value, range.best);
}

const subjects = {
  coefficient: (value: number) => `Cd ${valueIn(value, '1', coefficientOptions)}`,
  implied: (value: number) =>
    `Cd ${valueIn(value, '1', coefficientOptions)}, which the numbers as written imply,`,
};

/** Whether a coefficient stands with the handbook's. */
export function verdictOf(coefficient: number, isImplied: boolean, handbook: Ranged): EnvelopeVerdict {
  const subject = subjects[isImplied ? 'implied' : 'coefficient'](coefficient);
  const used = `a handbook uses ${coefficientText(handbook)} here.`;
  if (coefficient >= handbook.low && coefficient <= handbook.high)
    return { kind: 'within', sentence: `${subject} lies within the handbook’s range: ${used}` };
  const kind = coefficient < handbook.best ? 'low' : 'high';
  return { kind, sentence: `${subject} is ${offBy(coefficient, handbook.best)}: ${used}` };
}

export function forceText({ best, low, high }: Ranged): string {
  return `${quantityIn(best, 'N')} (${rangeIn(low, high, 'N')})`;
}

export function powerText({ best, low, high }: Ranged): string {
  return `${quantityIn(best, 'W')} (${rangeIn(low, high, 'W')})`;
}

/** A Reynolds number to three figures. */
export function reynoldsText(reynolds: number): string {
  return valueIn(Number(reynolds.toPrecision(3)), '1');
}
