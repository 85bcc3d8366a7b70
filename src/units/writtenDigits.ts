import { definitionOf, type Unit } from './unitTable';

const writtenNumber = /^\s*[+\-\u2212]?\s*([\d' \u00a0\u2009\u202f]*)(?:[.,](\d*))?(?:e([+-]?\d{1,3}))?/i;

/**
 * Half a unit of the last digit that counts, SI: how far a rounded number may lie from what it stands for.
 *
 * Behind a decimal mark every digit counts. Zeros at the end of a whole number do not, but two figures always do: 170 W
 * is 165 to 175, 100 N is 95 to 105, 24 N is 23.5 to 24.5, 5275 N is 5274.5 to 5275.5. A fraction such as 1/4 is exact.
 */
export function halfLastDigitSi(text: string, unit: Unit): number {
  const { numerator, denominator } = definitionOf(unit);
  return (halfLastDigit(text) * numerator) / denominator;
}

function halfLastDigit(text: string): number {
  if (/[/\u2044\u2215½¼¾⅛⅜⅝⅞]/.test(text.slice(0, firstLetter(text)))) return 0;
  const [, grouped = '', decimals, exponent = '0'] = writtenNumber.exec(text) ?? [];
  const power = Number(exponent);
  if (decimals !== undefined) return 0.5 * 10 ** (power - decimals.length);
  const whole = grouped.replace(/\D/g, '').replace(/^0+/, '');
  const zeros = /0*$/.exec(whole)?.[0].length ?? 0;
  return 0.5 * 10 ** (power + Math.max(Math.min(zeros, whole.length - 2), 0));
}

/** Where the unit begins: "m/s" is no fraction. */
function firstLetter(text: string): number {
  const at = text.search(/[a-z°%µ"']/i);
  return at === -1 ? text.length : at;
}
