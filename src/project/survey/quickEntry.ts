import { parseQuantity } from '../../units/parse';
import type { Unit } from '../../units/unitTable';
import {
  isQuickBar,
  quickSizeNames,
  quickSizesOf,
  type QuickBasis,
  type QuickShape,
  type QuickSize,
} from './quickShapes';

/** Athwartships: `both` is a pair, the count on each side. */
export const quickSides = ['centreline', 'starboard', 'port', 'both'] as const;
export type QuickSide = (typeof quickSides)[number];

/** How a bar lies. */
export const quickLies = ['upright', 'along', 'across'] as const;
export type QuickLie = (typeof quickLies)[number];

/** What stays for the next entry. */
export interface QuickChoices {
  readonly shape: QuickShape;
  readonly zoneId: string;
  readonly side: QuickSide;
  readonly lie: QuickLie;
  /** How the sizes were obtained; the place along the boat is always estimated. */
  readonly basis: QuickBasis;
}

/** A field in which something is typed. */
export type QuickField = 'name' | QuickSize | 'length' | 'count' | 'height';
export type QuickTexts = Readonly<Partial<Record<QuickField, string>>>;
export type QuickErrors = Readonly<Partial<Record<QuickField, string>>>;

/** What a bare number is taken for. */
export interface QuickUnits {
  /** Of a section, a ball, a box. */
  readonly size: Unit;
  /** Of a bar's length and the height above the deck. */
  readonly length: Unit;
}

/** What was typed, in metres. */
export interface QuickEntry extends QuickChoices {
  readonly name: string;
  readonly sizesM: Readonly<Partial<Record<QuickSize, number>>>;
  /** Of a bar; 0 for what stands at a point. */
  readonly lengthM: number;
  /** Of a row along the boat; 1 for no row. */
  readonly count: number;
  /** Above the deck edge, m: of a bar's or a box's foot, or of the middle of a ball or of what lies. Null: it stands on the deck. */
  readonly heightM: number | null;
}

export type QuickReading =
  | { readonly ok: true; readonly entry: QuickEntry }
  /** Every field that cannot be taken, and why, in one sentence each. */
  | { readonly ok: false; readonly errors: QuickErrors };

/** The fields of a shape in the order in which they are filled in. */
export function quickFieldsOf(shape: QuickShape): readonly QuickField[] {
  return [
    'name',
    ...quickSizesOf(shape),
    ...(isQuickBar(shape) ? (['length'] as const) : []),
    'count',
    'height',
  ];
}

/** What the project file holds, m; and what makes sense on a deck. */
const sizeRange = { leastM: 0.0001, mostM: 200, words: '0.1 mm to 200 m' };
const lengthRange = { leastM: 0.001, mostM: 200, words: '1 mm to 200 m' };
const heightRange = { leastM: -20, mostM: 150, words: '−20 m to 150 m' };
const mostInRow = 500;

type Range = typeof sizeRange;
type Read<Value> = { readonly value: Value } | { readonly error: string };

/** Reads the fields of the chosen shape; what is typed in those of another is neither read nor lost. */
export function readQuickEntry(texts: QuickTexts, choices: QuickChoices, units: QuickUnits): QuickReading {
  const textOf = (field: QuickField): string => (texts[field] ?? '').trim();
  const isBar = isQuickBar(choices.shape);
  const name: Read<string> = textOf('name') === '' ? { error: 'Type a name.' } : { value: textOf('name') };
  const length: Read<number> = isBar
    ? readLength(textOf('length'), units.length, lengthRange, 'Type the length, such as 1.2 m.')
    : { value: 0 };
  const count = readCount(textOf('count'));
  const height: Read<number | null> =
    textOf('height') === '' ? { value: null } : readLength(textOf('height'), units.length, heightRange, '');
  const sizes = quickSizesOf(choices.shape).map((size) => {
    const wanted = `Type the ${quickSizeNames[size].toLowerCase()}, such as 25 mm.`;
    return [size, readLength(textOf(size), units.size, sizeRange, wanted)] as const;
  });
  const errors = errorsOf([
    ['name', name],
    ...sizes,
    ['length', length],
    ['count', count],
    ['height', height],
  ]);
  if ('error' in name || 'error' in length || 'error' in count || 'error' in height || errors !== null) {
    return { ok: false, errors: errors ?? {} };
  }
  const sizesM = Object.fromEntries(
    sizes.flatMap(([size, read]) => ('value' in read ? [[size, read.value]] : [])),
  );
  const read = { name: name.value, sizesM, lengthM: length.value, count: count.value, heightM: height.value };
  return { ok: true, entry: { ...choices, ...read } };
}

function errorsOf(readings: readonly (readonly [QuickField, Read<unknown>])[]): QuickErrors | null {
  const wrong = readings.flatMap(([field, read]) => ('error' in read ? [[field, read.error] as const] : []));
  return wrong.length === 0 ? null : Object.fromEntries(wrong);
}

function readLength(text: string, unit: Unit, { leastM, mostM, words }: Range, wanted: string): Read<number> {
  if (text === '') return { error: wanted };
  const parsed = parseQuantity(text, 'length', unit);
  if (parsed.kind === 'problem') return { error: parsed.message };
  const valueM = parsed.valueSi + 0;
  if (valueM < leastM || valueM > mostM) return { error: `“${text}” is not in the range from ${words}.` };
  return { value: valueM };
}

/** How many a text means, as far as it can be read by now; else one. */
export function countSoFar(texts: QuickTexts): number {
  const read = readCount((texts.count ?? '').trim());
  return 'value' in read ? read.value : 1;
}

function readCount(text: string): Read<number> {
  if (text === '') return { value: 1 };
  const parsed = parseQuantity(text, 'none', '1');
  const isCount =
    parsed.kind === 'quantity' &&
    Number.isInteger(parsed.valueSi) &&
    parsed.valueSi >= 1 &&
    parsed.valueSi <= mostInRow;
  return isCount
    ? { value: parsed.valueSi }
    : { error: `“${text}” is not a whole number from 1 to ${mostInRow}.` };
}
