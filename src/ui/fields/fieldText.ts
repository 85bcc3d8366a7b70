import { fromSi, toSi } from '../../units/convert';
import type { ParseProblem } from '../../units/parse';
import { parseQuantity } from '../../units/parse';
import { typedNumber } from '../../units/typedNumber';
import { unitSign } from '../../units/printIn';
import { dimensionNames, unitsOf, type Dimension, type Unit } from '../../units/unitTable';
import type { Reading } from './useDraft';

/** Both ends are accepted. */
export interface SiRange {
  readonly fromSi: number;
  readonly toSi: number;
}

const storedFigures = 13;
const rangeFigures = 4;

function signed(value: number): string {
  return String(value === 0 ? 0 : value).replaceAll('-', '\u2212');
}

function withUnit(number: string, unit: Unit): string {
  const printed = unitSign(unit);
  if (printed === '') return number;
  return unit === 'deg' || unit === '%' ? number + printed : `${number} ${printed}`;
}

/** A value as it stands in a field: what was typed, not the three figures of a printed result. */
export function fieldText(valueSi: number | null, unit: Unit, isUnitShown = true): string {
  if (valueSi === null || !Number.isFinite(valueSi)) return '';
  const number = signed(typedNumber(valueSi, unit));
  return isUnitShown ? withUnit(number, unit) : number;
}

/**
 * A value in a unit without the last bits that a conversion there and back leaves: for files that hold degrees, so that
 * 28 typed is 28 stored.
 */
export function inUnit(valueSi: number, unit: Unit): number {
  return Number(fromSi(valueSi, unit).toPrecision(storedFigures));
}

/** "0 to 116.6 kn": rounded inwards, so that each end that is read here is also accepted. */
function rangeText({ fromSi: lowSi, toSi: highSi }: SiRange, unit: Unit): string {
  const low = rounded(fromSi(lowSi, unit), Math.ceil);
  const high = rounded(fromSi(highSi, unit), Math.floor);
  return withUnit(`${signed(low)} to ${signed(high)}`, unit);
}

function rounded(value: number, toWhole: (value: number) => number): number {
  const tidy = Number(value.toPrecision(storedFigures));
  if (tidy === 0 || !Number.isFinite(tidy)) return tidy;
  // Whole numbers are short enough to be told in full.
  if (Number.isInteger(tidy)) return tidy;
  const place = 10 ** (rangeFigures - 1 - Math.floor(Math.log10(Math.abs(tidy))));
  const nearest = Math.round(tidy * place) / place;
  return Math.abs(nearest - tidy) <= Math.abs(tidy) * 1e-12
    ? nearest
    : Number((toWhole(tidy * place) / place).toPrecision(rangeFigures));
}

export interface QuantityRule {
  readonly dimension: Dimension;
  readonly unit: Unit;
  readonly range: SiRange;
  readonly isWhole: boolean;
  readonly isRequired: boolean;
  /** What stays in force while the text is wrong; null for an empty field. */
  readonly lastGoodSi: number | null;
}

/** What was typed, by a field's rule: a value, null for an emptied field that may be empty, or one sentence. */
export function readQuantity(text: string, rule: QuantityRule): Reading<number | null> {
  const { dimension, unit, range, isWhole, isRequired } = rule;
  if (!isRequired && text.trim() === '') return { ok: true, value: null };
  const parsed = parseQuantity(text, dimension, unit);
  if (parsed.kind === 'problem') return refused(problemWords(parsed.problem, text, dimension), rule);
  // Minus zero is no value of its own.
  const valueSi = parsed.valueSi + 0;
  if (valueSi < range.fromSi || valueSi > range.toSi) return refused(`${quoted(text)} lies outside`, rule);
  if (isWhole && !Number.isInteger(valueSi)) return refused(`${quoted(text)} is not whole`, rule);
  return { ok: true, value: valueSi };
}

function refused(reason: string, rule: QuantityRule): Reading<number | null> {
  const { dimension, unit, range, isWhole, lastGoodSi } = rule;
  const wanted = isWhole ? 'a whole number' : dimensionNames[dimension];
  return {
    ok: false,
    message: `${reason}: ${wanted} from ${rangeText(range, unit)} is accepted${inForce(fieldText(lastGoodSi, unit))}.`,
  };
}

/** "; 22 kn stays in force", or nothing where nothing was. */
export function inForce(lastGood: string): string {
  return lastGood === '' ? '' : `; ${lastGood} stays in force`;
}

const longestQuote = 24;

export function quoted(text: string): string {
  const tidy = text.trim();
  return tidy.length > longestQuote ? `"${tidy.slice(0, longestQuote)}…"` : `"${tidy}"`;
}

function problemWords(problem: ParseProblem, text: string, dimension: Dimension): string {
  switch (problem) {
    case 'empty':
      return 'This may not be empty';
    case 'tooLong':
      return 'This is too long';
    case 'notANumber':
      return `${quoted(text)} does not start with a number`;
    case 'ambiguous':
      return `${quoted(text)} can be read in more than one way`;
    case 'dividesByZero':
      return `${quoted(text)} divides by zero`;
    case 'outOfReach':
      return `${quoted(text)} is too large`;
    case 'unknownUnit':
    case 'wrongUnit':
      return `${quoted(text)} has ${unitWords(dimension)}`;
  }
}

function unitWords(dimension: Dimension): string {
  const units = unitsOf(dimension).filter((unit) => unit !== '1');
  return `no unit of ${dimensionNames[dimension]} (${units.map((unit) => unitSign(unit)).join(', ')})`;
}

/** One press of an arrow key, in the shown unit; what is not named steps by the width of its range. */
const steps: Partial<Record<Unit, number>> = {
  'm/s': 0.5,
  kn: 0.5,
  'km/h': 1,
  mph: 1,
  m: 0.05,
  mm: 1,
  cm: 1,
  in: 0.125,
  ft: 0.25,
  deg: 1,
  '%': 1,
  C: 1,
  K: 1,
  hPa: 1,
  Pa: 100,
  kg: 0.5,
  N: 10,
  kgf: 1,
  lbf: 2,
  W: 10,
  hp: 0.01,
  PS: 0.01,
  h: 0.5,
};

/** The value one step up (1) or down (-1), ten for `steps` 10, held inside the range. */
export function stepped(fromValueSi: number | null, stepCount: number, rule: QuantityRule): number {
  const { unit, range, isWhole } = rule;
  const size = isWhole ? 1 : (steps[unit] ?? stepOfRange(range, unit));
  const start = fromValueSi ?? Math.min(Math.max(0, range.fromSi), range.toSi);
  // From what the field shows, so that 21.5 becomes 22.
  const next = Number((typedNumber(start, unit) + stepCount * size).toPrecision(12));
  return Math.min(Math.max(toSi(next, unit), range.fromSi), range.toSi);
}

/** A hundredth of the range, as a power of ten; 1 for wide ones. */
function stepOfRange(range: SiRange, unit: Unit): number {
  const width = fromSi(range.toSi, unit) - fromSi(range.fromSi, unit);
  if (!(width > 0) || width > 1000) return 1;
  return 10 ** Math.floor(Math.log10(width) - 2 + 1e-9);
}

/** Equal but for what a conversion there and back leaves. */
export function isSameQuantity(a: number | null, b: number | null): boolean {
  if (a === null || b === null) return a === b;
  return Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b));
}
