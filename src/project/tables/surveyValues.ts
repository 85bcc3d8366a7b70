import type { Basis } from '../../physics/fitting/fittingInput';
import { parseQuantity } from '../../units/parse';
import { defaultUnits, type Unit } from '../../units/unitTable';
import { quoted } from '../file/fieldErrors';
import { isTwoWays, shownMark, withPoint, type DecimalMark } from './decimalMark';
import { dimensionOf } from './mapColumns';
import { isPhoto } from './photoNote';
import { surveyColumns, surveyKeys, type SurveyKey, type SurveyTexts } from './surveyColumns';
import {
  basisFor,
  choicesInWords,
  liesFor,
  shapeFor,
  sideFor,
  type SurveyLies,
  type SurveyShape,
  type SurveySide,
} from './surveyWords';

/** A row's cells read: SI and words, null for a blank cell. */
export interface SurveyValues {
  readonly item: string;
  readonly zone: string | null;
  readonly shape: SurveyShape | null;
  readonly width: number | null;
  readonly length: number | null;
  readonly thickness: number | null;
  readonly dragArea: number | null;
  readonly aboveDeck: number | null;
  readonly aftOfStem: number | null;
  readonly lastAftOfStem: number | null;
  readonly side: SurveySide | null;
  readonly lies: SurveyLies | null;
  readonly count: number | null;
  readonly photo: string | null;
  readonly basis: Basis | null;
  readonly note: string | null;
}

export type CellErrors = Readonly<Partial<Record<SurveyKey, string>>>;

/** How the numbers of a table are read. */
export interface NumberReading {
  /** Of each column; null where nothing says it. */
  readonly units: Readonly<Partial<Record<SurveyKey, Unit | null>>>;
  readonly decimalMark: DecimalMark | null;
}

type Cell<Value> = { readonly value: Value | null } | { readonly error: string };

/** Reads the cells of a row, each for itself: what is wrong with one says nothing of the others. */
export function valuesOf(
  texts: SurveyTexts,
  reading: NumberReading,
): { readonly values: SurveyValues; readonly errors: CellErrors } {
  const errors: Partial<Record<SurveyKey, string>> = {};
  const values: Partial<Record<SurveyKey, unknown>> = {};
  for (const key of surveyKeys) {
    const cell = readCell(key, texts[key], reading);
    if ('error' in cell) errors[key] = cell.error;
    values[key] = 'error' in cell ? null : cell.value;
  }
  if (texts.item.trim() === '') errors.item = 'Name the item.';
  // Each key was read by the reader that fits its type.
  return { values: { ...values, item: texts.item.trim() } as unknown as SurveyValues, errors };
}

function readCell(key: SurveyKey, text: string, reading: NumberReading): Cell<unknown> {
  if (key === 'note') return { value: text.trim() === '' ? null : text };
  const bare = text.trim();
  if (bare === '' || (key !== 'item' && /^[-–—?/]$/.test(bare))) return { value: null };
  if (dimensionOf(key) !== null) return numberCell(key, bare, reading);
  switch (key) {
    case 'shape':
      return wordCell(bare, shapeFor(bare), choicesInWords.shape);
    case 'side':
      return wordCell(bare, sideFor(bare), choicesInWords.side);
    case 'lies':
      return wordCell(bare, liesFor(bare), choicesInWords.lies);
    case 'basis':
      return wordCell(bare, basisFor(bare), choicesInWords.basis);
    case 'count':
      return countCell(bare);
    case 'photo':
      return isPhoto(bare)
        ? { value: bare }
        : { error: 'A photo is named in one line of at most 60 characters, without a point at its end.' };
    default:
      return { value: bare };
  }
}

function wordCell<Value>(text: string, value: Value | null, choices: string): Cell<Value> {
  return value === null ? { error: `${quoted(text)} is not known here; use ${choices}.` } : { value };
}

const mostInRow = 500;

/** "14", "x 14", "14 off". */
function countCell(text: string): Cell<number> {
  const match = /^(?:x|×)?\s*(\d{1,6})(?:[.,]0+)?\s*(?:x|×|off|pcs|pieces)?$/i.exec(text);
  const count = Number(match?.[1]);
  if (match === null || count < 1 || count > mostInRow)
    return { error: `A count is a whole number from 1 to ${mostInRow}; ${quoted(text)} is none.` };
  return { value: count };
}

function numberCell(key: SurveyKey, text: string, { units, decimalMark }: NumberReading): Cell<number> {
  const dimension = dimensionOf(key) ?? 'length';
  const unit = units[key] ?? null;
  const mark = shownMark([text]) ?? decimalMark;
  if (mark === null && isTwoWays(text))
    return { error: `${quoted(text)} can be a thousand and some, or one and some: choose the decimal mark.` };
  const read = parseQuantity(
    mark === null ? text : withPoint(text, mark),
    dimension,
    unit ?? defaultUnits[dimension],
  );
  if (read.kind === 'problem') return { error: read.message };
  if (unit === null && !read.isUnitTyped && read.value !== 0)
    return { error: `In which unit? Choose one for ${quoted(surveyColumns[key].label)}, or write it here.` };
  return { value: read.valueSi };
}
