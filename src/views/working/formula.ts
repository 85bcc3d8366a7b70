import { memberQuantities } from '../../physics/fitting/memberTrace';
import type { SiUnit } from '../../physics/quantity';
import { fromSi, toSi } from '../../units/convert';
import { printNumber, unitSign } from '../../units/printIn';
import type { Unit } from '../../units/unitTable';

/** A stretch of a formula as it is set: variables in italics, units, functions and figures upright. */
export interface FormulaPiece {
  readonly text: string;
  readonly style: 'upright' | 'italic';
  readonly sub?: string;
  readonly sup?: string;
}

/** A number behind a symbol. `decimals` gives it the place of the column it stands in. */
export interface SymbolValue {
  readonly value: number;
  readonly unit: SiUnit;
  readonly decimals?: number;
}

export type KnownSymbols = ReadonlyMap<string, SymbolValue>;

/** Angles are read in degrees; everything else in its own SI unit. */
export function displayUnit(unit: SiUnit): Unit {
  return unit === 'rad' ? 'deg' : unit;
}

/** Nobody sets or reads an incidence finer than to a tenth of a degree. */
const noIncidenceRad = toSi(0.05, 'deg');

/** The value to be read: of a section that follows the wind, an incidence that is none to a tenth of a degree is none. */
export function readableSi(valueSi: number, symbol: string): number {
  return symbol === memberQuantities.incidenceRad.symbol && Math.abs(valueSi) < noIncidenceRad ? 0 : valueSi;
}

const tokenPattern =
  /\s+|\d+(?:\.\d+)?|log10|C_dA|\)_[A-Za-z]+|\p{L}+(?:[’']\p{L}+)*\*?(?:_[A-Za-z0-9]+)?|./gu;
const functions = ['sin', 'cos', 'ln', 'log10'];
const greek: Readonly<Record<string, string>> = { rho: 'ρ', nu: 'ν', kappa: 'κ', alpha: 'α' };
const pairsOfLetters = ['Re', 'dF', 'dL'];

function tokensOf(equation: string): string[] {
  return equation.match(tokenPattern) ?? [];
}

function isVariable(token: string): boolean {
  if (token === 'x') return false;
  return (
    /^\p{L}(?:\*|_\w+)?$/u.test(token) || token in greek || pairsOfLetters.includes(token.split('_')[0] ?? '')
  );
}

/** An equation of a quantity table, set as a formula. */
export function formulaPieces(equation: string): FormulaPiece[] {
  const tokens = tokensOf(equation);
  const pieces: FormulaPiece[] = [];
  for (let i = 0; i < tokens.length; i += 1) {
    if (tokens[i] === '^') {
      i += 1;
      raise(pieces, tokens[i] ?? '');
      continue;
    }
    pieces.push(...symbolPieces(tokens[i] ?? ''));
  }
  return pieces;
}

function raise(pieces: FormulaPiece[], sup: string): void {
  const base = pieces.pop();
  if (base !== undefined) pieces.push({ ...base, sup });
}

function symbolPieces(token: string): FormulaPiece[] {
  if (token === 'C_dA') return [...symbolPieces('C_d'), ...symbolPieces('A')];
  if (token.startsWith(')_')) return [{ text: ')', style: 'upright', sub: token.slice(2) }];
  if (token === 'log10') return [{ text: 'log', style: 'upright', sub: '10' }];
  if (!isVariable(token)) return [{ text: signs[token] ?? token, style: 'upright' }];
  const [name = '', sub] = token.split('_');
  return [{ text: greek[name] ?? name, style: 'italic', ...(sub === undefined ? {} : { sub }) }];
}

const signs: Readonly<Record<string, string>> = { '-': '\u2212', '.': '·', x: '×', sum: 'Σ' };

/**
 * The last member of an equation with its numbers in place of the symbols: "u_n d / nu" becomes "11.0 × 0.095 / 1.46 ×
 * 10^-5". Null when some symbol has no number here (a vector, a sum along the bar).
 */
export function withNumbers(equation: string, known: KnownSymbols): FormulaPiece[] | null {
  const tokens = tokensOf(equation.split('=').at(-1)?.trim() ?? '');
  const pieces: FormulaPiece[] = [];
  let endsFactor = false;
  for (let i = 0; i < tokens.length; i += 1) {
    const token = tokens[i] ?? '';
    if (/^\s+$/.test(token)) {
      pieces.push({ text: ' ', style: 'upright' });
      continue;
    }
    if (token === '^') {
      i += 1;
      raise(pieces, numeralOf(tokens[i] ?? '', known));
      continue;
    }
    const piece = numberPieces(token, known, pieces.length > 0);
    if (piece === null) return null;
    const beginsFactor = token === '(' || /^[\p{L}\d]/u.test(token);
    if (endsFactor && beginsFactor) joinWithTimes(pieces);
    pieces.push(...piece);
    endsFactor = token === ')' || (beginsFactor && token !== '(' && !functions.includes(token));
  }
  return pieces.some(({ text }) => /\d/.test(text)) ? pieces : null;
}

function joinWithTimes(pieces: FormulaPiece[]): void {
  if (pieces.at(-1)?.text === ' ') pieces.pop();
  pieces.push({ text: ' × ', style: 'upright' });
}

function numeralOf(token: string, known: KnownSymbols): string {
  const symbol = known.get(token);
  return symbol === undefined ? token : printNumber(symbol.value).digits;
}

function numberPieces(token: string, known: KnownSymbols, isInside: boolean): FormulaPiece[] | null {
  const symbol = known.get(token);
  if (symbol !== undefined) {
    const value = readableSi(symbol.value, token);
    return inBrackets(valuePieces({ ...symbol, value }), value < 0 && isInside);
  }
  if (functions.includes(token) || !/\p{L}/u.test(token)) return symbolPieces(token);
  return null;
}

function inBrackets(pieces: FormulaPiece[], isNegative: boolean): FormulaPiece[] {
  if (!isNegative) return pieces;
  return [{ text: '(', style: 'upright' }, ...pieces, { text: ')', style: 'upright' }];
}

function valuePieces({ value, unit, decimals }: SymbolValue): FormulaPiece[] {
  const shown = displayUnit(unit);
  const number = fromSi(value, shown);
  const { digits, exponent } = printNumber(number, decimals === undefined ? {} : { decimals });
  const degrees = shown === 'deg' ? unitSign(shown) : '';
  return exponent === undefined
    ? [{ text: digits + degrees, style: 'upright' }]
    : [{ text: `${digits} × 10`, style: 'upright', sup: exponent }];
}
