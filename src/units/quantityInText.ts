import { definitionOf, isUnit, unitTable, type Dimension, type Unit } from './unitTable';

/** A number in running text, with the unit that follows it, if one does. */
export interface QuantityInText {
  readonly end: number;
  /** The number as it stands there. */
  readonly number: string;
  readonly unit: Unit | null;
  /** True when the number could be read in two ways: 1,200 is 1.2 or 1200. */
  readonly isAmbiguous: boolean;
}

/** Written out in running text; a field asks for the sign. */
const words: Readonly<Record<string, Unit>> = {
  watts: 'W',
  watt: 'W',
  kilowatts: 'kW',
  kilowatt: 'kW',
  newtons: 'N',
  newton: 'N',
  horsepower: 'hp',
  'horse power': 'hp',
  'metric horsepower': 'PS',
  'hp(metric)': 'PS',
  'hp(mechanical)': 'hp',
  'mechanical horsepower': 'hp',
  'square metres': 'm2',
  'square meters': 'm2',
  millimetres: 'mm',
  millimeters: 'mm',
  centimetres: 'cm',
  centimeters: 'cm',
  'metres per second': 'm/s',
  'meters per second': 'm/s',
  'm / s': 'm/s',
  'km / h': 'km/h',
  'kg / m3': 'kg/m3',
};

interface Spelling {
  readonly text: string;
  readonly unit: Unit;
}

function spellingsOf(unit: Unit): Spelling[] {
  const { printed, typed } = definitionOf(unit);
  return [unit, printed, ...typed].filter((text) => text !== '').map((text) => ({ text, unit }));
}

/** Longest first, so that "m2" is not metres and "hp metric" not the other horsepower. */
function spellings(dimensions: readonly Dimension[]): readonly Spelling[] {
  const units = Object.keys(unitTable).filter(isUnit);
  const known = units.filter((unit) => unit !== '1' && dimensions.includes(definitionOf(unit).dimension));
  return [
    ...known.flatMap(spellingsOf),
    ...Object.entries(words).map(([text, unit]) => ({ text, unit })),
  ].sort((a, b) => b.text.length - a.text.length);
}

const number =
  /(?:\d{1,3}(?:['\u2009\u202f]\d{3})+|\d{1,20})(?:[.,]\d{1,20})?(?:e[+-]?\d{1,3})?|[.,]\d{1,20}/iy;
/** Only as an inch rule has it, so that 20/40 stays two numbers, and a bare ½ the one of a formula. */
const slashFraction = /(\d{1,2})[/\u2044\u2215](2|4|8|16|32|64)(?![\d/]|[.,]\d)/y;
const signFraction = /\d{0,2}[½¼¾⅛⅜⅝⅞]/y;
const twoWays = /^(?!0,)\d{1,3},\d{3}$/;
const gap = /[ \t\u00a0\u2009\u202f]{0,3}/y;
const joined = /[\p{L}\p{N}²³^]/u;

function matchAt(pattern: RegExp, text: string, at: number): string | null {
  pattern.lastIndex = at;
  return pattern.exec(text)?.[0] ?? null;
}

/** A fraction in its lowest terms, below one: 3/4, and ½ or 1½ by its sign. */
function fractionAt(text: string, at: number): string | null {
  slashFraction.lastIndex = at;
  const [written, over, under] = slashFraction.exec(text) ?? [];
  if (written === undefined) return matchAt(signFraction, text, at);
  return Number(over) % 2 === 1 && Number(over) < Number(under) ? written : null;
}

/** Feet and inches by their marks touch the number; a word's apostrophe or a quotation does not. */
const marks = ['"', '″', "'", '′'];

/**
 * A reader of numbers with units in running text, for units of the given dimensions. A decimal comma is one that digits
 * touch on both sides. The reader answers null where no number begins at `at`; it looks no further than that one number.
 */
export function quantityReader(
  dimensions: readonly Dimension[],
): (text: string, at: number) => QuantityInText | null {
  const known = spellings(dimensions);
  const unitAt = (text: string, at: number, isTouching: boolean): Spelling | null => {
    const rest = text.slice(at, at + 24);
    const lower = rest.toLowerCase();
    const fits = ({ text: spelling }: Spelling, exact: boolean): boolean =>
      (exact ? rest.startsWith(spelling) : lower.startsWith(spelling.toLowerCase())) &&
      !joined.test(rest.charAt(spelling.length)) &&
      (isTouching || !marks.includes(spelling));
    return known.find((one) => fits(one, true)) ?? known.find((one) => fits(one, false)) ?? null;
  };
  const withUnit = (text: string, at: number, digits: string): QuantityInText => {
    const numberEnd = at + digits.length;
    const spaces = matchAt(gap, text, numberEnd)?.length ?? 0;
    const found = unitAt(text, numberEnd + spaces, spaces === 0);
    return {
      end: found === null ? numberEnd : numberEnd + spaces + found.text.length,
      number: digits,
      unit: found?.unit ?? null,
      isAmbiguous: twoWays.test(digits),
    };
  };
  return (text, at) => {
    const fraction = fractionAt(text, at);
    if (fraction !== null) {
      const quantity = withUnit(text, at, fraction);
      if (quantity.unit === 'in' || quantity.unit === 'ft') return quantity;
    }
    const digits = matchAt(number, text, at);
    return digits === null ? null : withUnit(text, at, digits);
  };
}
