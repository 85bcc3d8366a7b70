import { fromSi } from './convert';
import { definitionOf, type Unit } from './unitTable';

const trueMinus = '\u2212';
const thinSpace = '\u2009';
const noBreakSpace = '\u00a0';
const enDash = '\u2013';
const timesSign = '\u00d7';

/** A number for people that cannot be shown: an unfinished input, a division by zero. */
const noValue = enDash;

/** Outside of these, powers of ten read better: kinematic viscosity, a Reynolds number of ten million. */
const smallestWrittenOut = 1e-3;
const largestWrittenOut = 1e7;

export interface PrintOptions {
  /** Rounds to this many decimals instead of three figures, so that parts and total share a place. */
  readonly decimals?: number;
}

/** A printed number in parts: the typeface has no raised figures above 3, so a page sets the exponent itself. */
export interface PrintedNumber {
  readonly digits: string;
  /** Power of ten to be set raised after "× 10", if there is one. */
  readonly exponent?: string;
}

/** Three figures, and from 100 up no decimals: the decimals that this value wants. */
function decimalsFor(value: number): number {
  if (!Number.isFinite(value) || value === 0) return 0;
  // Rounding first: 99.96 is printed as 100, and so has no decimals.
  const rounded = Number(Math.abs(value).toPrecision(3));
  return Math.min(Math.max(2 - Math.floor(Math.log10(rounded)), 0), 100);
}

/**
 * The one place to which a column of parts and its total are rounded, so that the eye can add and subtract:
 * the decimals that the largest of them wants for three figures.
 */
export function decimalsIn(valuesSi: readonly number[], unit: Unit): number {
  const largest = valuesSi
    .map((valueSi) => Math.abs(fromSi(valueSi, unit)))
    .filter(Number.isFinite)
    .reduce((most, value) => Math.max(most, value), 0);
  return decimalsFor(largest);
}

/** Thin spaces from five digits on; four stay closed up. */
function groupThousands(wholeDigits: string): string {
  return wholeDigits.length < 5 ? wholeDigits : wholeDigits.replace(/\B(?=(?:\d{3})+$)/g, thinSpace);
}

function writeOut(value: number, decimals: number): string {
  const [whole = '', fraction] = Math.abs(value).toFixed(decimals).split('.');
  const digits = groupThousands(whole) + (fraction === undefined ? '' : `.${fraction}`);
  const isZero = !/[1-9]/.test(digits);
  return value < 0 && !isZero ? trueMinus + digits : digits;
}

function isWrittenOut(value: number): boolean {
  return value === 0 || (Math.abs(value) >= smallestWrittenOut && Math.abs(value) < largestWrittenOut);
}

/** Prints a bare number, already in the unit in which it is to be read. */
export function printNumber(value: number, options: PrintOptions = {}): PrintedNumber {
  if (!Number.isFinite(value)) return { digits: noValue };
  // Digits beyond the largest safe grouping would be invented, whatever the column asks for.
  const hasFixedPlace = options.decimals !== undefined && Math.abs(value) < largestWrittenOut;
  if (hasFixedPlace || isWrittenOut(value))
    return { digits: writeOut(value, options.decimals ?? decimalsFor(value)) };
  const [mantissa = '', exponent = '0'] = Math.abs(value).toExponential(2).split('e');
  return {
    digits: (value < 0 ? trueMinus : '') + mantissa,
    exponent: exponent.replace('+', '').replace('-', trueMinus),
  };
}

const raised: Readonly<Record<string, string>> = {
  [trueMinus]: '\u207b',
  ...Object.fromEntries(
    Array.from('\u2070\u00b9\u00b2\u00b3\u2074\u2075\u2076\u2077\u2078\u2079', (sign, digit) => [
      String(digit),
      sign,
    ]),
  ),
};

function joinNumber({ digits, exponent }: PrintedNumber): string {
  if (exponent === undefined) return digits;
  const power = Array.from(exponent, (sign) => raised[sign] ?? sign).join('');
  return `${digits}${noBreakSpace}${timesSign}${noBreakSpace}10${power}`;
}

/** "kn", "m²", "N m", "°": as it stands in the head of a column. */
export function unitSign(unit: Unit): string {
  return definitionOf(unit).printed.replaceAll(' ', noBreakSpace);
}

function withUnit(text: string, unit: Unit): string {
  const printed = unitSign(unit);
  if (printed === '') return text;
  return unit === 'deg' ? text + printed : text + noBreakSpace + printed;
}

/** A value for a column whose head names the unit: "1234", "−0.5", "12 345". */
export function valueIn(valueSi: number, unit: Unit, options: PrintOptions = {}): string {
  return joinNumber(printNumber(fromSi(valueSi, unit), options));
}

/** A value with its unit: "22.0 kn", "−5.0°", "12 345 N". Three figures unless a place is given. */
export function quantityIn(valueSi: number, unit: Unit, options: PrintOptions = {}): string {
  return withUnit(valueIn(valueSi, unit, options), unit);
}

/** Both ends rounded to one place; "to" instead of a dash where a minus sign would stand beside it. */
function joinRange(lowSi: number, highSi: number, unit: Unit, options: PrintOptions): string {
  const low = fromSi(lowSi, unit);
  const high = fromSi(highSi, unit);
  const widest = Math.max(Math.abs(low), Math.abs(high));
  const needsPower = !isWrittenOut(widest) && Number.isFinite(widest);
  const place = needsPower ? {} : { decimals: options.decimals ?? decimalsFor(widest) };
  const lowText = joinNumber(printNumber(low, place));
  const highText = joinNumber(printNumber(high, place));
  const isPlain = !(lowText + highText).includes(trueMinus) && !needsPower;
  return isPlain ? `${lowText}${enDash}${highText}` : `${lowText} to ${highText}`;
}

/** A spread for a column whose head names the unit: "0.90–1.30", "−5.0 to 12.0". */
export function valueRangeIn(lowSi: number, highSi: number, unit: Unit, options: PrintOptions = {}): string {
  return joinRange(lowSi, highSi, unit, options);
}

/** A spread with its unit once: "36–48 W". */
export function rangeIn(lowSi: number, highSi: number, unit: Unit, options: PrintOptions = {}): string {
  return withUnit(joinRange(lowSi, highSi, unit, options), unit);
}
