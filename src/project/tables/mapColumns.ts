import { definitionOf, unitsOf, type Dimension, type Unit } from '../../units/unitTable';
import { needsMark, shownMark, type DecimalMark } from './decimalMark';
import type { Table, TableRecord } from './readTable';
import { surveyColumns, surveyKeys, type SurveyKey } from './surveyColumns';
import { plainWords } from './surveyWords';

/** What a column of the table is: one of the survey's, or none; and its unit, null where nothing says it. */
export interface ColumnMeaning {
  readonly key: SurveyKey | null;
  readonly unit: Unit | null;
}

/** How a table is read. Everything in it is a suggestion that the reader may change. */
export interface Mapping {
  readonly columns: readonly ColumnMeaning[];
  /** Numbers of the records that are heads, not rows. */
  readonly headNumbers: readonly number[];
  /** The head of each column in words, '' for none. */
  readonly heads: readonly string[];
  readonly decimalMark: DecimalMark | null;
  /** Word of the shape that rows have which say none and are not in the catalogue; null asks at each. */
  readonly blankShape: string | null;
}

/** What has to be asked before the numbers can be read. */
export type MappingQuestion =
  | { readonly kind: 'item' }
  | { readonly kind: 'unit'; readonly column: number; readonly key: SurveyKey }
  | { readonly kind: 'decimalMark' };

/** The survey's columns that hold a length or an area. */
export function dimensionOf(key: SurveyKey): Dimension | null {
  const { unit } = surveyColumns[key];
  return unit === null ? null : definitionOf(unit).dimension;
}

/** In which units a column may be. */
export function unitChoices(key: SurveyKey): readonly Unit[] {
  const dimension = dimensionOf(key);
  return dimension === null ? [] : unitsOf(dimension).filter((unit) => unit !== 'nmi');
}

/** Suggests how to read a table, from the words and units of its heads. */
export function suggestMapping(table: Table): Mapping {
  const heads = findHeads(table);
  const meanings = meaningsOf(heads.texts);
  const columns = meanings.map((key, i): ColumnMeaning => {
    const unit = key === null ? null : unitIn(heads.texts[i] ?? '', heads.units[i] ?? '', key);
    return { key, unit };
  });
  const bare = { columns, headNumbers: heads.numbers, heads: heads.texts, blankShape: null };
  return { ...bare, decimalMark: suggestedMark(table, { ...bare, decimalMark: null }) };
}

/** What a mapping leaves open. */
export function mappingQuestions(table: Table, mapping: Mapping): readonly MappingQuestion[] {
  const questions: MappingQuestion[] = mapping.columns.some(({ key }) => key === 'item')
    ? []
    : [{ kind: 'item' }];
  for (const [column, { key, unit }] of mapping.columns.entries()) {
    if (key === null || unit !== null || dimensionOf(key) === null) continue;
    if (cellsOf(table, mapping, column).some(isBareNumber)) questions.push({ kind: 'unit', column, key });
  }
  if (mapping.decimalMark === null && needsMark(numbersOf(table, mapping)))
    questions.push({ kind: 'decimalMark' });
  return questions;
}

/** The records that are rows of the survey. */
export function bodyOf(table: Table, { headNumbers }: Mapping): readonly TableRecord[] {
  return table.records.filter(({ number }) => !headNumbers.includes(number));
}

function cellsOf(table: Table, mapping: Mapping, column: number): readonly string[] {
  return bodyOf(table, mapping).map(({ cells }) => cells[column] ?? '');
}

/** A number alone; one with letters or signs after it names its unit. */
function isBareNumber(text: string): boolean {
  return /^[\s+\u2212-]*[\d.,][\d\s.,'/½¼¾⅛⅜⅝⅞]*$/.test(text);
}

function numbersOf(table: Table, mapping: Mapping): readonly string[] {
  return mapping.columns.flatMap(({ key }, column) =>
    key === null || dimensionOf(key) === null ? [] : cellsOf(table, mapping, column),
  );
}

/** Between commas without quotation marks a comma cannot be a decimal mark. */
function suggestedMark(table: Table, mapping: Mapping): DecimalMark | null {
  const numbers = numbersOf(table, mapping);
  const shown = shownMark(numbers);
  if (shown !== null || table.delimiter !== ',') return shown;
  return numbers.some((text) => text.includes(',')) ? null : 'point';
}

/** No head is longer; looking through a long text for units takes more than its length in time. */
const longestHead = 200;

function asHeads(cells: readonly string[]): readonly string[] {
  return cells.map((cell) => (cell.length > longestHead ? '' : cell.trim()));
}

interface Heads {
  readonly numbers: readonly number[];
  readonly texts: readonly string[];
  /** The cell of a row of units below the heads, '' for none. */
  readonly units: readonly string[];
}

/** A title, a date and an empty line may stand above the heads. */
const searchedRecords = 12;

/** The record of which most cells are known heads, with the merged heads above it and a row of units below it. */
function findHeads({ records, columnCount }: Table): Heads {
  const none = Array.from({ length: columnCount }, () => '');
  const searched = records.slice(0, searchedRecords).map(({ cells }) => asHeads(cells));
  const candidates = searched.map((cells, i) => headTexts(cells, searched[i - 1] ?? none));
  const counts = candidates.map((texts, i) =>
    looksLikeHeads(texts, records[i]?.cells) ? knownIn(texts) : 0,
  );
  const at = counts.indexOf(Math.max(...counts));
  if ((counts[at] ?? 0) === 0) return { numbers: [], texts: none, units: none };
  const below = asHeads(records[at + 1]?.cells ?? none);
  const hasUnits = isRowOfUnits(below);
  const numbers = records.slice(0, hasUnits ? at + 2 : at + 1).map(({ number }) => number);
  return { numbers, texts: candidates[at] ?? none, units: hasUnits ? below : none };
}

/** Two known heads, or one that names the item; a row of numbers is none. */
function looksLikeHeads(texts: readonly string[], cells: readonly string[] = []): boolean {
  const known = knownIn(texts);
  const namesItem = texts.some((text) => bestKey(text)?.key === 'item');
  return (known >= 2 || (known === 1 && namesItem)) && !cells.some((cell) => /^[\d.,]+$/.test(cell));
}

function knownIn(cells: readonly string[]): number {
  return new Set(cells.flatMap((cell) => bestKey(cell)?.key ?? [])).size;
}

/** A merged cell comes as its text and empty cells after it. */
function spread(cells: readonly string[]): readonly string[] {
  let last = '';
  return cells.map((cell) => (last = cell === '' ? last : cell));
}

/**
 * The heads of a record. Below merged heads, which leave cells empty, one that says nothing by itself ("(mm)", "first",
 * nothing at all) takes the one above it along.
 */
function headTexts(cells: readonly string[], above: readonly string[]): readonly string[] {
  const isBelowMerged =
    above.some((cell) => cell.trim() === '') && above.some((cell) => bestKey(cell) !== null);
  const saysMore = knownIn(cells) >= 2 || cells.some((cell) => /^[([].*[)\]]$/.test(cell));
  if (!isBelowMerged || !saysMore) return cells;
  const merged = spread(above);
  return cells.map((cell, i) => {
    if (bestKey(cell) !== null) return cell;
    const both = `${(cell === '' ? above[i] : merged[i]) ?? ''} ${cell}`.trim();
    return bestKey(both) === null ? cell : both;
  });
}

function isRowOfUnits(cells: readonly string[]): boolean {
  const filled = cells.filter((cell) => cell !== '');
  const units = filled.filter(
    (cell) => unitNamed(cell.replace(/^[\s([]+|[\s)\]]+$/g, ''), 'length') !== null,
  );
  return units.length >= 1 && units.length * 2 >= filled.length && !filled.some((cell) => /\d{2}/.test(cell));
}

interface Match {
  readonly key: SurveyKey;
  readonly score: number;
}

const namesByKey = surveyKeys.map(
  (key) => [key, [surveyColumns[key].label, ...surveyColumns[key].aliases].map(plainWords)] as const,
);

/** Our own name of a column first, then another that is all of the head, then the longest that stands in it. */
function bestKey(head: string): Match | null {
  const words = plainWords(withoutUnit(head));
  if (words === '') return null;
  let best: Match | null = null;
  for (const [key, names] of namesByKey) {
    const score = Math.max(0, ...names.map((name, i) => scoreOf(words, name, i === 0)));
    if (score > (best?.score ?? 0)) best = { key, score };
  }
  return best;
}

function scoreOf(words: string, name: string, isOurs: boolean): number {
  if (words === name) return (isOurs ? 2000 : 1000) + name.length;
  // One letter inside of other words says nothing.
  return name.length > 1 && ` ${words} `.includes(` ${name} `) ? name.length : 0;
}

/** Each of the survey's columns once: the better match has it. */
function meaningsOf(heads: readonly string[]): readonly (SurveyKey | null)[] {
  const matches = heads
    .map((head, column) => ({ column, match: bestKey(head) }))
    .sort((a, b) => (b.match?.score ?? 0) - (a.match?.score ?? 0));
  const keys: (SurveyKey | null)[] = heads.map(() => null);
  for (const { column, match } of matches) {
    if (match !== null && !keys.includes(match.key)) keys[column] = match.key;
  }
  return keys;
}

const bracketed = /[([]\s*([^()[\]]*?)\s*[)\]]\s*$/;
const trailing = /(?:,|\/|\s+in)\s+([^\s,]+)\s*$/i;

/** "Length (m)", "Length [m]", "Length, m", "Length in m", "Length m". */
function unitIn(head: string, below: string, key: SurveyKey): Unit | null {
  const dimension = dimensionOf(key);
  if (dimension === null) return null;
  const candidates = [below, bracketed.exec(head)?.[1], trailing.exec(head)?.[1], head.split(/\s+/).at(-1)];
  for (const text of candidates) {
    const unit = unitNamed((text ?? '').replace(/^[\s([]+|[\s)\]]+$/g, ''), dimension);
    if (unit !== null) return unit;
  }
  return null;
}

function withoutUnit(head: string): string {
  return head.replace(bracketed, '');
}

function unitNamed(text: string, dimension: Dimension): Unit | null {
  const wanted = text.trim().toLowerCase().replace(/\.$/, '');
  if (wanted === '') return null;
  const spellings = (unit: Unit): readonly string[] => {
    const { printed, typed } = definitionOf(unit);
    return [unit, printed, ...typed].map((spelling) => spelling.toLowerCase());
  };
  return unitsOf(dimension).find((unit) => spellings(unit).includes(wanted)) ?? null;
}
