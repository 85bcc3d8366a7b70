import { parseQuantity } from '../../units/parse';
import { quantityIn } from '../../units/printIn';
import type { Dimension, Unit } from '../../units/unitTable';
import { halfLastDigitSi } from '../../units/writtenDigits';
import {
  areaOfIds,
  endsIds,
  powerKindIds,
  shapeIds,
  windKindIds,
  type AreaOfId,
  type EndsId,
  type EnvelopeFieldId,
  type EnvelopeShapeId,
  type EnvelopeTexts,
  type PowerKindId,
  type WindKindId,
} from './envelopeTexts';

/** A number as written: its value, and how far its last written digit leaves it open. */
export interface WrittenNumber {
  readonly valueSi: number;
  /** Half a unit of the last written digit to each side, see `halfLastDigitSi`. */
  readonly lowSi: number;
  readonly highSi: number;
  readonly unit: Unit;
  /** False when a bare number was read in the field's own unit, which the check then lists. */
  readonly isUnitTyped: boolean;
}

/** An estimate's numbers; null where nothing, or nothing that could be read, stands. */
export interface EnvelopeNumbers {
  readonly speed: WrittenNumber | null;
  readonly windKind: WindKindId | null;
  readonly density: WrittenNumber | null;
  readonly temperature: WrittenNumber | null;
  readonly shape: EnvelopeShapeId | null;
  readonly count: WrittenNumber | null;
  readonly width: WrittenNumber | null;
  readonly length: WrittenNumber | null;
  readonly depth: WrittenNumber | null;
  readonly ends: EndsId | null;
  readonly area: WrittenNumber | null;
  readonly areaOf: AreaOfId | null;
  readonly coefficient: WrittenNumber | null;
  readonly dragArea: WrittenNumber | null;
  readonly force: WrittenNumber | null;
  readonly power: WrittenNumber | null;
  readonly powerKind: PowerKindId | null;
  readonly horsepower: WrittenNumber | null;
  readonly windAngle: WrittenNumber | null;
  readonly windAngleKind: WindKindId | null;
  readonly boatSpeed: WrittenNumber | null;
}

export interface EnvelopeReading {
  readonly numbers: EnvelopeNumbers;
  readonly problems: Readonly<Partial<Record<EnvelopeFieldId, string>>>;
}

/** What may stand in a field with a number. Ends are SI and both allowed. */
export interface NumberRule {
  readonly dimension: Dimension;
  readonly unit: Unit;
  /** A bare number is read in `unit`; false where that would be a guess. */
  readonly bare: boolean;
  readonly from: number;
  readonly to: number;
  readonly whole?: true;
}

const size = { dimension: 'length', unit: 'm', bare: false, from: 1e-5, to: 1000 } as const;
const speed = { dimension: 'speed', unit: 'm/s', bare: false, from: 0, to: 340 } as const;

/** The fields that hold numbers. Beyond the speed of sound, or of the size of a ship, no envelope is one of drag. */
export const numberRules = {
  speed: { ...speed, from: 0.01 },
  density: { dimension: 'density', unit: 'kg/m3', bare: true, from: 0.01, to: 20_000 },
  temperature: { dimension: 'temperature', unit: 'C', bare: true, from: 213.15, to: 373.15 },
  count: { dimension: 'none', unit: '1', bare: true, from: 1, to: 500, whole: true },
  width: size,
  length: size,
  depth: size,
  area: { dimension: 'area', unit: 'm2', bare: true, from: 1e-8, to: 1e6 },
  coefficient: { dimension: 'none', unit: '1', bare: true, from: 1e-4, to: 100 },
  dragArea: { dimension: 'area', unit: 'm2', bare: true, from: 1e-8, to: 1e6 },
  force: { dimension: 'force', unit: 'N', bare: true, from: 1e-6, to: 1e9 },
  power: { dimension: 'power', unit: 'W', bare: true, from: -1e12, to: 1e12 },
  horsepower: { dimension: 'power', unit: 'hp', bare: true, from: -1e12, to: 1e12 },
  windAngle: { dimension: 'angle', unit: 'deg', bare: true, from: 0, to: Math.PI },
  boatSpeed: { ...speed, to: 60 },
} as const satisfies Partial<Record<EnvelopeFieldId, NumberRule>>;
export type NumberFieldId = keyof typeof numberRules;

type Answer<Value> = { readonly value: Value } | { readonly problem: string };

function readNumber(id: NumberFieldId, text: string): Answer<WrittenNumber> {
  const rule: NumberRule = numberRules[id];
  const parsed = parseQuantity(text, rule.dimension, rule.unit);
  if (parsed.kind === 'problem') return { problem: parsed.message };
  const { valueSi, unit, isUnitTyped } = parsed;
  if (!isUnitTyped && !rule.bare) return { problem: unitMissing(text, rule.dimension) };
  if (rule.whole === true && !Number.isInteger(valueSi)) return { problem: 'Type a whole number.' };
  if (valueSi < rule.from || valueSi > rule.to) return { problem: outside(rule) };
  const half = rule.whole === true ? 0 : halfLastDigitSi(text, unit);
  return { value: { valueSi, lowSi: valueSi - half, highSi: valueSi + half, unit, isUnitTyped } };
}

function unitMissing(text: string, dimension: Dimension): string {
  const number = text.trim();
  return dimension === 'speed'
    ? `Say which unit: ${number} m/s, ${number} kn or ${number} km/h.`
    : `Say which unit: ${number} mm, ${number} cm or ${number} m.`;
}

function outside({ from, to, unit }: NumberRule): string {
  return `Type something from ${quantityIn(from, unit)} to ${quantityIn(to, unit)}.`;
}

function readChoice<Id extends string>(ids: readonly Id[], text: string): Answer<Id> {
  const found = ids.find((id) => id === text.trim());
  return found === undefined ? { problem: 'Choose one of the list, or leave it empty.' } : { value: found };
}

/**
 * The numbers of an estimate from the texts of its fields. A field that cannot be read is null with its message; the
 * others stay in force. Never throws.
 */
export function readEnvelope(texts: EnvelopeTexts): EnvelopeReading {
  const problems: Partial<Record<EnvelopeFieldId, string>> = {};
  const read = <Value>(id: EnvelopeFieldId, reader: (text: string) => Answer<Value>): Value | null => {
    const text = texts[id] ?? '';
    if (text.trim() === '') return null;
    const answer = reader(text);
    if ('value' in answer) return answer.value;
    problems[id] = answer.problem;
    return null;
  };
  const number = (id: NumberFieldId) => read(id, (text) => readNumber(id, text));
  const choice = <Id extends string>(id: EnvelopeFieldId, ids: readonly Id[]) =>
    read(id, (text) => readChoice(ids, text));
  const numbers: EnvelopeNumbers = {
    speed: number('speed'),
    windKind: choice('windKind', windKindIds),
    density: number('density'),
    temperature: number('temperature'),
    shape: choice('shape', shapeIds),
    count: number('count'),
    width: number('width'),
    length: number('length'),
    depth: number('depth'),
    ends: choice('ends', endsIds),
    area: number('area'),
    areaOf: choice('areaOf', areaOfIds),
    coefficient: number('coefficient'),
    dragArea: number('dragArea'),
    force: number('force'),
    power: number('power'),
    powerKind: choice('powerKind', powerKindIds),
    horsepower: number('horsepower'),
    windAngle: number('windAngle'),
    windAngleKind: choice('windAngleKind', windKindIds),
    boatSpeed: number('boatSpeed'),
  };
  return { numbers, problems };
}
