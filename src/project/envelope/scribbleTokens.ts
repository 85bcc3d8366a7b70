import { quantityReader } from '../../units/quantityInText';
import { definitionOf, type Dimension, type Unit } from '../../units/unitTable';
import { isSymbol, scribbleWords, symbolOfArea, type WordMeaning } from './scribbleWords';

export interface NumberMeaning {
  readonly kind: 'number';
  readonly number: string;
  readonly unit: Unit | null;
  readonly dimension: Dimension | null;
  readonly isAmbiguous: boolean;
}

export type TokenMeaning =
  WordMeaning | NumberMeaning | { readonly kind: 'space' | 'break' | 'times' | 'equals' | 'unknown' };

/** A stretch of the text; tokens cover it without gaps. */
export interface Token {
  readonly start: number;
  readonly end: number;
  readonly text: string;
  readonly meaning: TokenMeaning;
}

const quantityAt = quantityReader([
  'speed',
  'length',
  'angle',
  'force',
  'power',
  'area',
  'temperature',
  'density',
]);

function escaped(phrase: string): string {
  return phrase.replace(/[*+.()[\]^$|\\]/g, '\\$&').replaceAll(' ', '[ \\t-]{1,3}');
}

const phrases = [...scribbleWords.keys()].sort((a, b) => b.length - a.length).map(escaped);
/** Digits may touch a symbol, as in Cd0.6. */
const phrase = new RegExp(`(?:${phrases.join('|')})(?![\\p{L}\\p{M}_])`, 'iuy');
const space = /[^\S\r\n]+/uy;
const equals = /[=:≈~]+/uy;
const times = /[×*]|x(?![\p{L}\p{M}_])/iuy;
/** A minus that touches a number stands for itself. */
const separator = /(?:[,;.!?()[\]{}<>@→⇒•·|\r\n+\u2012-\u2015&/]|[-\u2212](?!\d))+|[-\u2212]/uy;
const word = /[\p{L}\p{M}\p{N}_'’]+/uy;
const anything = /[^]/uy;

function endOf(pattern: RegExp, text: string, at: number): number | null {
  pattern.lastIndex = at;
  return pattern.test(text) ? pattern.lastIndex : null;
}

const plain = [
  [space, 'space'],
  [equals, 'equals'],
  [times, 'times'],
] as const;

type Found = { readonly end: number; readonly meaning: TokenMeaning };

/** "d 25 mm" names its number across a space; "a 25 mm tube" and "c 25 mm" do not. */
function assignment(symbol: string): RegExp {
  return /[dlvwh]/.test(symbol) ? /^\s{0,3}[=:≈]|^[ \t]{0,3}\d/ : /^\s{0,3}[=:≈]|^\d/;
}

function wordAt(text: string, at: number): Found | null {
  const end = endOf(phrase, text, at);
  if (end === null) return null;
  const key = text
    .slice(at, end)
    .toLowerCase()
    .replace(/[ \t-]+/g, ' ');
  const meaning = scribbleWords.get(key);
  if (meaning === undefined) return null;
  if (!isSymbol(key)) return { end, meaning };
  const isAssigned = assignment(key).test(text.slice(end, end + 5));
  if (key === 'a') return { end, meaning: isAssigned ? symbolOfArea : meaning };
  return isAssigned ? { end, meaning } : null;
}

function numberAt(text: string, at: number): Found | null {
  const found = quantityAt(text, at);
  if (found === null) return null;
  const { number, unit, isAmbiguous, end } = found;
  const dimension = unit === null ? null : definitionOf(unit).dimension;
  return { end, meaning: { kind: 'number', number, unit, dimension, isAmbiguous } };
}

const minus = /[-\u2212]/uy;

/** "-5 °C": of the numbers that a scribble can have, a temperature alone may lie below zero. */
function belowZeroAt(text: string, at: number): Found | null {
  const end = endOf(minus, text, at);
  if (end === null || /[\p{L}\p{N}]/u.test(text[at - 1] ?? ' ')) return null;
  const found = numberAt(text, end);
  if (found?.meaning.kind !== 'number' || found.meaning.dimension !== 'temperature') return null;
  return { end: found.end, meaning: { ...found.meaning, number: `-${found.meaning.number}` } };
}

function tokenAt(text: string, at: number): Found {
  for (const [pattern, kind] of plain) {
    const end = endOf(pattern, text, at);
    if (end !== null) return { end, meaning: { kind } };
  }
  const named = wordAt(text, at) ?? numberAt(text, at) ?? belowZeroAt(text, at);
  if (named !== null) return named;
  const breakEnd = endOf(separator, text, at);
  if (breakEnd !== null) return { end: breakEnd, meaning: { kind: 'break' } };
  const end = endOf(word, text, at) ?? endOf(anything, text, at) ?? at + 1;
  return { end, meaning: { kind: 'unknown' } };
}

/** Cuts a scribble into tokens. Each looks a bounded way ahead, so the time grows with the length alone. */
export function tokensOf(text: string): Token[] {
  const tokens: Token[] = [];
  for (let start = 0; start < text.length;) {
    const { end, meaning } = tokenAt(text, start);
    tokens.push({ start, end, text: text.slice(start, end), meaning });
    start = end;
  }
  return tokens;
}
