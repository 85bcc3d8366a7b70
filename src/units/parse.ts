import { toSi } from './convert';
import { defaultUnits, definitionOf, dimensionNames, isUnit, unitTable, unitsOf } from './unitTable';
import type { Dimension, Unit } from './unitTable';

export type ParseProblem =
  | 'empty'
  | 'tooLong'
  | 'notANumber'
  | 'ambiguous'
  | 'outOfReach'
  | 'dividesByZero'
  | 'unknownUnit'
  | 'wrongUnit';

export type ParsedQuantity =
  | {
      readonly kind: 'quantity';
      readonly valueSi: number;
      /** The number as typed, in `unit`. */
      readonly value: number;
      readonly unit: Unit;
      readonly isUnitTyped: boolean;
    }
  | {
      readonly kind: 'problem';
      readonly problem: ParseProblem;
      /** One sentence: what is wrong and what would be accepted. */
      readonly message: string;
    };

type Parsed<Value> = { readonly value: Value } | { readonly problem: ParseProblem; readonly message: string };

/** No quantity needs more; also bounds what a message can echo. */
const longestText = 60;

const fractions: Readonly<Record<string, string>> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/** Signs that people paste from a printed page become those that a keyboard has. */
function tidy(text: string): string {
  return text
    .replace(/[½¼¾⅛⅜⅝⅞]/g, (sign) => ` ${fractions[sign] ?? sign}`)
    .replace(/[\u2212\u2013]/g, '-')
    .replace(/[\u2044\u2215]/g, '/')
    .replace(/\s+/g, ' ')
    .trim();
}

const number = String.raw`[+-]?(?:\d[\d.,' ]*\d(?! ?/)|\d)[.,]?(?:e[+-]?\d+)?|[+-]?[.,]\d+(?:e[+-]?\d+)?`;
const mixedFraction = /^([+-]?)(?:(\d+) )?(\d+) ?\/ ?(\d+)(?!\d)/;
const leadingNumber = new RegExp(`^(?:${number})`, 'i');

function notANumber(text: string, dimension: Dimension): Parsed<never> {
  return {
    problem: 'notANumber',
    message: `"${text}" does not start with a number. Type ${dimensionNames[dimension]}, such as "${exampleOf(dimension)}".`,
  };
}

function exampleOf(dimension: Dimension): string {
  const { printed } = definitionOf(defaultUnits[dimension]);
  return dimension === 'angle' ? '12.5°' : `12.5 ${printed}`.trim();
}

/** "12 345", "12'345" and "12,5" are read; a comma and a point together could mean two things, and are not. */
function readDecimal(text: string): Parsed<number> {
  const ungrouped = text.replace(/(\d)[ '](?=\d{3}(?!\d))/g, '$1');
  const marks = ungrouped.match(/[.,]/g) ?? [];
  if (marks.length > 1 || /[ ']/.test(ungrouped))
    return {
      problem: 'ambiguous',
      message: `"${text}" can be read in more than one way. Write it with one decimal point and nothing else, such as "1234.5".`,
    };
  return { value: Number(ungrouped.replace(',', '.')) };
}

function readFraction(match: RegExpExecArray): Parsed<number> {
  const [text, sign, whole = '0', over = '0', under = '0'] = match;
  if (Number(under) === 0) return { problem: 'dividesByZero', message: `"${text}" divides by zero.` };
  const size = Number(whole) + Number(over) / Number(under);
  return { value: sign === '-' ? -size : size };
}

interface NumberAndRest {
  readonly value: number;
  readonly rest: string;
}

function readNumber(text: string, dimension: Dimension): Parsed<NumberAndRest> {
  const fraction = mixedFraction.exec(text);
  const matched = fraction?.[0] ?? leadingNumber.exec(text)?.[0];
  if (matched === undefined) return notANumber(text, dimension);
  const read = fraction === null ? readDecimal(matched) : readFraction(fraction);
  if ('problem' in read) return read;
  if (!Number.isFinite(read.value)) return { problem: 'outOfReach', message: `"${matched}" is too large.` };
  return { value: { value: read.value, rest: text.slice(matched.length).trim() } };
}

function listUnits(dimension: Dimension): string {
  return unitsOf(dimension)
    .filter((unit) => unit !== '1')
    .join(', ');
}

/** Exact spelling first; then without regard to capitals, which no dimension here needs to tell units apart. */
function findUnit(text: string, candidates: readonly Unit[]): Unit | undefined {
  const spellings = (unit: Unit) => [unit, definitionOf(unit).printed, ...definitionOf(unit).typed];
  const lower = text.toLowerCase();
  return (
    candidates.find((unit) => spellings(unit).includes(text)) ??
    candidates.find((unit) => spellings(unit).some((spelling) => spelling.toLowerCase() === lower))
  );
}

function readUnit(text: string, dimension: Dimension): Parsed<Unit> {
  const found = findUnit(text, unitsOf(dimension));
  if (found !== undefined) return { value: found };
  const accepted = listUnits(dimension);
  const wanted = accepted === '' ? 'No unit is needed here.' : `Use ${accepted}.`;
  const foreign = findUnit(text, Object.keys(unitTable).filter(isUnit));
  if (foreign === undefined)
    return { problem: 'unknownUnit', message: `"${text}" is not a unit that is known here. ${wanted}` };
  const isWhat = dimensionNames[definitionOf(foreign).dimension];
  return {
    problem: 'wrongUnit',
    message: `"${text}" makes this ${isWhat}, and ${dimensionNames[dimension]} is wanted. ${wanted}`,
  };
}

/**
 * Reads what somebody typed into a field: a number (decimal point or comma, thin or plain spaces between
 * thousands, a fraction such as `1/4` or `1 1/4`) and perhaps a unit; without one, `defaultUnit` is taken.
 * A single comma is a decimal comma. Never throws, whatever the text.
 */
export function parseQuantity(
  text: string,
  dimension: Dimension,
  defaultUnit: Unit = defaultUnits[dimension],
): ParsedQuantity {
  if (text.length > longestText)
    return {
      kind: 'problem',
      problem: 'tooLong',
      message: `A quantity has at most ${longestText} characters.`,
    };
  const tidied = tidy(text);
  if (tidied === '')
    return {
      kind: 'problem',
      problem: 'empty',
      message: `Type ${dimensionNames[dimension]}, such as "${exampleOf(dimension)}".`,
    };
  const read = readNumber(tidied, dimension);
  if ('problem' in read) return { kind: 'problem', ...read };
  const { value, rest } = read.value;
  const unit: Parsed<Unit> = rest === '' ? { value: defaultUnit } : readUnit(rest, dimension);
  if ('problem' in unit) return { kind: 'problem', ...unit };
  const valueSi = toSi(value, unit.value);
  if (!Number.isFinite(valueSi))
    return { kind: 'problem', problem: 'outOfReach', message: `"${tidied}" is too large.` };
  return { kind: 'quantity', valueSi, value, unit: unit.value, isUnitTyped: rest !== '' };
}
