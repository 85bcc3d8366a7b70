import { noChange, type Change } from './change';
import { areaRuleOf, type AreaRule } from './envelopeShapes';
import type { EnvelopeNumbers, WrittenNumber } from './readEnvelope';
import { exactRoute, isAgreeing, writtenExactly, type Route } from './route';
import { primary, type Worked } from './worked';
import { quantityIn, valueIn } from '../../units/printIn';

/** How many, 1 when nobody says. */
export function countOf({ count }: EnvelopeNumbers): number {
  return count?.valueSi ?? 1;
}

function size(written: WrittenNumber): string {
  return quantityIn(written.valueSi, written.unit);
}

interface OneArea {
  readonly m2: number;
  readonly show: string;
  readonly equation: string;
}

function oneArea(numbers: EnvelopeNumbers, rule: AreaRule): OneArea | null {
  const { width, length } = numbers;
  if (width === null || rule === 'typed') return null;
  const w = width.valueSi;
  if (rule === 'disc')
    return { m2: (Math.PI / 4) * w ** 2, show: `π/4 × (${size(width)})²`, equation: 'π/4 · d²' };
  if (rule === 'square') return { m2: w ** 2, show: `(${size(width)})²`, equation: 'd²' };
  return length === null
    ? null
    : { m2: w * length.valueSi, show: `${size(width)} × ${size(length)}`, equation: 'd · l' };
}

/** Area of one from its sizes, m²; null when a size is missing. */
export function areaOfOneM2(numbers: EnvelopeNumbers): number | null {
  return oneArea(numbers, areaRuleOf(numbers.shape))?.m2 ?? null;
}

function sizedRoute(numbers: EnvelopeNumbers, change: Change): Route | null {
  const one = oneArea(numbers, areaRuleOf(numbers.shape));
  if (one === null) return null;
  const count = countOf(numbers) * change.countFactor;
  const show = count === 1 ? one.show : `${valueIn(count, '1', { decimals: 0 })} × ${one.show}`;
  const from = (['count', 'width', 'length'] as const).filter((fieldId) => numbers[fieldId] !== null);
  const equation = count === 1 ? `A = ${one.equation}` : `A = n · ${one.equation}`;
  return exactRoute(change.areaFactor * count * one.m2, 'm2', from, { show, equation });
}

function scaled(written: WrittenNumber, factor: number): WrittenNumber {
  const { valueSi, lowSi, highSi } = written;
  return { ...written, valueSi: factor * valueSi, lowSi: factor * lowSi, highSi: factor * highSi };
}

/**
 * Whether a written area is of each one: as said, or else as the sizes say, all of them first; null when nothing tells. With
 * one thing changed the sizes may say otherwise.
 */
export function isAreaOfEach(numbers: EnvelopeNumbers, change: Change = noChange): boolean | null {
  const { area, areaOf } = numbers;
  if (area === null || areaOf !== null) return areaOf === 'each';
  const count = countOf(numbers) * change.countFactor;
  if (count === 1) return false;
  const one = areaOfOneM2(numbers);
  if (one === null) return null;
  const isThat = (areaM2: number): boolean => isAgreeing({ lowSi: areaM2, highSi: areaM2 }, area);
  return !isThat(one * change.areaFactor * count) && isThat(one * change.areaFactor);
}

/**
 * The area of all of them together: from the sizes and as written. Where nothing tells whether the area is of one or of all,
 * both are routes.
 */
export function areaWorked(numbers: EnvelopeNumbers, change: Change): Worked {
  const { area } = numbers;
  const sized = sizedRoute(numbers, change);
  if (area === null) return primary(null, 'area', sized === null ? [] : [sized]);
  const count = countOf(numbers) * change.countFactor;
  const isEach = isAreaOfEach(numbers, change);
  const whole = scaled(area, isEach === true ? count : 1);
  const part = primary(whole, 'area', sized === null ? [] : [sized]);
  if (isEach !== null) return part;
  const other = writtenExactly(scaled(area, count), 'area');
  return { ...part, usable: [...part.usable, other] };
}
