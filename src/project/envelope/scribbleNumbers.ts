import { parseQuantity } from '../../units/parse';
import type { EnvelopeFieldId } from './envelopeTexts';
import type { NumberFieldId } from './readEnvelope';
import { asTyped, fill, isHorsepower, neighbour, numberOf, puzzle, suits, type Draft } from './scribbleDraft';
import type { NumberMeaning } from './scribbleTokens';

const twoWays = (number: string): string =>
  `“${number}” can be read in two ways. Write it without a mark between thousands, or with a decimal point.`;

/** Numbers that nobody can be sure of, said before anything is made of them. */
export function setAsideAmbiguous(draft: Draft): void {
  draft.tokens.forEach((token, i) => {
    const number = numberOf(token);
    if (number?.isAmbiguous === true) puzzle(draft, i, i, twoWays(number.number));
  });
}

/** "20-40 kn": neither end is the number. A hyphen with spaces about it is a dash. */
export function setAsideRanges(draft: Draft): void {
  draft.tokens.forEach((token, i) => {
    const isBetween = numberOf(draft.tokens[i - 1]) !== null && numberOf(draft.tokens[i + 1]) !== null;
    if (!/^[-\u2012-\u2015\u2212]$/.test(token.text) || !isBetween || draft.taken.has(i - 1)) return;
    puzzle(draft, i - 1, i + 1, 'A range: type one number, and the other in a second check.');
  });
}

/** "-3 posts" are not 3. A minus touches its number, and no number or word before it; a dash has a space after it. */
export function setAsideMinuses(draft: Draft): void {
  draft.tokens.forEach((token, i) => {
    const before = draft.tokens[i - 1]?.meaning.kind ?? 'space';
    const isSign = /^[-\u2212]$/.test(token.text) && ['space', 'break', 'equals'].includes(before);
    if (!isSign || numberOf(draft.tokens[i + 1]) === null || draft.taken.has(i + 1)) return;
    puzzle(draft, i, i + 1, 'A minus sign: only a temperature goes below zero. After a dash, leave a space.');
  });
}

/** "1/4 hp" is no 4 hp. What has a unit before the stroke is no fraction, nor are 0.6 / 12 m/s with spaces between. */
export function setAsideFractions(draft: Draft): void {
  draft.tokens.forEach((token, i) => {
    if (!/^[/\u2044\u2215]$/.test(token.text)) return;
    const from = neighbour(draft, i, -1, false);
    const to = neighbour(draft, i, 1, false);
    const over = numberOf(draft.tokens[from]);
    const under = numberOf(draft.tokens[to]);
    if (over?.unit !== null || under === null || draft.taken.has(from)) return;
    const isTouching = to - from === 2;
    const isOnRule = /^\d{1,2}$/.test(over.number) && /^(?:2|4|8|16|32|64)$/.test(under.number);
    if (isTouching || isOnRule)
      puzzle(draft, from, to, 'A fraction: write it with a decimal point, such as 0.25 in for 1/4 in.');
  });
}

const mixed =
  'It can be read in two ways: write one size with a decimal point, such as 2.25 in for 2 1/4 in, or “2 x 1/4 in” for two of them.';

/** "2 1/4 in poles": two of them, or thicker than two inches. */
export function setAsideMixedFractions(draft: Draft): void {
  draft.tokens.forEach((token, i) => {
    const before = neighbour(draft, i, -1, false);
    const whole = numberOf(draft.tokens[before]);
    const isMixed = whole?.unit === null && /^\d{1,3}$/.test(whole.number) && !draft.taken.has(before);
    const isFraction = /[/\u2044\u2215½¼¾⅛⅜⅝⅞]/.test(numberOf(token)?.number ?? '');
    if (isFraction && isMixed && !draft.taken.has(i)) puzzle(draft, before, i, mixed);
  });
}

const feetAndInches = 'It can be read in two ways: write 4.5 ft for 4 ft 6 in, or a comma between two sizes.';

/** "4 ft 6 in" is one length, and "10 ft 4 in" a long pole or a length. */
export function setAsideFeetAndInches(draft: Draft): void {
  draft.tokens.forEach((token, i) => {
    const next = neighbour(draft, i, 1, false);
    const inches = numberOf(draft.tokens[next]);
    if (numberOf(token)?.unit !== 'ft' || inches?.unit !== 'in' || draft.taken.has(i)) return;
    puzzle(draft, i, next, feetAndInches);
  });
}

const isWorking =
  'Worked out on the paper: only the answer is read, after the equals sign and with its unit.';

/**
 * "0.5 x 1.2 x 100 x 0.4 = 24 N", "0.8 m² + 0.6 m² = 1.4 m²": a factor or a part is not the value of what stands before it.
 * A chain of lengths alone, as in "16 x 25 mm x 0.7 m", is no working but sizes.
 */
export function setAsideWorking(draft: Draft): void {
  const { tokens, taken } = draft;
  for (let i = 0; i < tokens.length; i += 1) {
    const chain = chainFrom(draft, i);
    const last = chain.at(-1) ?? i;
    if (chain.length > 1 && !isOfSizes(draft, chain) && !chain.some((at) => taken.has(at)))
      puzzle(draft, i, last, isWorking);
    i = last;
  }
}

const isPressure = 'A pressure: it is worked out here from the speed.';

/** "F = 60 Pa x 0.4 m²": the 60 is no force. */
export function setAsidePressures(draft: Draft): void {
  draft.tokens.forEach((token, i) => {
    const at = neighbour(draft, i, -1, false);
    if (!/^[hk]?pa$/i.test(token.text) || numberOf(draft.tokens[at]) === null || draft.taken.has(at)) return;
    puzzle(draft, at, i, isPressure);
  });
}

/** Indices of the numbers from `i` on that a times sign joins, or a plus between numbers of one kind. */
function chainFrom(draft: Draft, i: number): number[] {
  const number = numberOf(draft.tokens[i]);
  if (number === null) return [];
  const sign = neighbour(draft, i, 1, false);
  const next = neighbour(draft, sign, 1, false);
  const token = draft.tokens[sign];
  const isTimes = token?.meaning.kind === 'times' || token?.text === '·';
  const isSum = token?.text === '+' && number.dimension === numberOf(draft.tokens[next])?.dimension;
  return isTimes || isSum ? [i, ...chainFrom(draft, next)] : [i];
}

/** Lengths, perhaps with a count or with the unit on the last alone, and no sum. */
function isOfSizes({ tokens }: Draft, chain: readonly number[]): boolean {
  const numbers = chain.map((at) => numberOf(tokens[at]));
  const isSum = tokens.slice(chain[0], chain.at(-1)).some(({ text }) => text === '+');
  return (
    !isSum &&
    numbers.some((number) => number?.dimension === 'length') &&
    numbers.every((number) => number?.unit === null || number?.dimension === 'length')
  );
}

/** A number beside a label, if it is free and one of the fields suits it. */
function free(
  draft: Draft,
  i: number,
  fieldIds: readonly NumberFieldId[],
  bare: boolean,
): NumberFieldId | null {
  const number = numberOf(draft.tokens[i]);
  if (number === null || draft.taken.has(i) || (number.unit === null && !bare)) return null;
  return fieldIds.find((fieldId) => suits(number, fieldId)) ?? null;
}

/** Gives the number beside the token at `i` to one of the fields; false when there is none. */
function labelNumber(
  draft: Draft,
  i: number,
  fieldIds: readonly NumberFieldId[],
  side: 'before' | 'after',
): boolean {
  const next = neighbour(draft, i, 1, true);
  const previous = neighbour(draft, i, -1, false);
  const isAssigned = draft.tokens.slice(i + 1, next).some(({ meaning }) => meaning.kind === 'equals');
  const onNext = free(draft, next, fieldIds, true);
  const onPrevious = isAssigned ? null : free(draft, previous, fieldIds, fieldIds[0] === 'count');
  const takesPrevious = onPrevious !== null && (side === 'after' || onNext === null);
  const fieldId = takesPrevious ? onPrevious : onNext;
  const at = takesPrevious ? previous : next;
  const number = numberOf(draft.tokens[at]);
  if (fieldId === null || number === null) return false;
  fill(draft, [Math.min(i, at), Math.max(i, at)], fieldId, asTyped(number));
  return true;
}

export function nameNumbers(draft: Draft): void {
  draft.tokens.forEach(({ meaning }, i) => {
    if (meaning.kind === 'label' && !draft.taken.has(i))
      labelNumber(draft, i, meaning.fieldIds, meaning.side);
  });
}

const unsureCount = 'No unit, and it could be how many there are or a size: write the unit, or “16 posts”.';

/** "16 x 25 mm x 0.7 m": the bare number of a chain of lengths is the count, and "25 x 700 mm" shares its unit. */
export function readChains(draft: Draft): void {
  const lengths = draft.tokens.filter((token) => numberOf(token)?.dimension === 'length').length;
  draft.tokens.forEach((token, i) => {
    const number = numberOf(token);
    if (number === null || number.unit !== null || draft.taken.has(i)) return;
    const ahead = lengthBeyondTimes(draft, i, 1);
    const behind = lengthBeyondTimes(draft, i, -1);
    if (ahead === null && behind === null) return;
    const isCount = /^\d{1,3}$/.test(number.number) && draft.texts.count === undefined;
    const isAlone = lengths < 2 && draft.texts.shape !== 'sphere' && draft.texts.shape !== 'disc';
    if (isCount && isAlone) puzzle(draft, i, i, unsureCount);
    else if (isCount) fill(draft, [i, i], 'count', number.number);
    else if (ahead !== null) shareUnit(draft, i, number, ahead);
  });
}

function lengthBeyondTimes(draft: Draft, i: number, step: 1 | -1): NumberMeaning | null {
  const times = neighbour(draft, i, step, false);
  if (draft.tokens[times]?.meaning.kind !== 'times') return null;
  const number = numberOf(draft.tokens[neighbour(draft, times, step, false)]);
  return number?.dimension === 'length' ? number : null;
}

function shareUnit(draft: Draft, i: number, number: NumberMeaning, ahead: NumberMeaning): void {
  if (draft.texts.width !== undefined) return;
  fill(
    draft,
    [i, i],
    'width',
    asTyped({ ...number, unit: ahead.unit }),
    'with the unit of the number after it',
  );
}

/** Words that may stand between a count and what is counted. */
const between = new Set(['space', 'filler', 'unknown', 'label', 'times']);

/** "16 posts", "16 thin posts", "16 tall posts", "16 x posts". */
export function readCounts(draft: Draft): void {
  draft.tokens.forEach(({ meaning }, i) => {
    if (meaning.kind === 'count') fill(draft, [i, i], 'count', meaning.value);
    const number = numberOf(draft.tokens[i]);
    if (number === null || number.unit !== null || draft.taken.has(i)) return;
    let next = i + 1;
    while (next < i + 6 && !draft.taken.has(next) && between.has(draft.tokens[next]?.meaning.kind ?? ''))
      next += 1;
    const noun = draft.tokens[next]?.meaning;
    if (noun?.kind !== 'choice' || noun.fieldId !== 'shape') return;
    if (/^\d{1,3}$/.test(number.number)) fill(draft, [i, i], 'count', number.number);
  });
}

const fieldOfDimension: Readonly<Partial<Record<string, EnvelopeFieldId>>> = {
  speed: 'speed',
  angle: 'windAngle',
  force: 'force',
  power: 'power',
  area: 'area',
  temperature: 'temperature',
  density: 'density',
};

/** What the unit alone decides. */
export function readByUnit(draft: Draft): void {
  draft.tokens.forEach((token, i) => {
    const number = numberOf(token);
    if (number === null || number.dimension === null || draft.taken.has(i)) return;
    const fieldId = isHorsepower(number) ? 'horsepower' : fieldOfDimension[number.dimension];
    if (fieldId === undefined) return;
    const note = number.unit === 'hp' ? 'mechanical, because which horsepower is not said' : undefined;
    fill(draft, [i, i], fieldId, asTyped(number), note);
  });
}

const shapesOfOneSize = new Set(['sphere', 'disc', 'cubeFace', 'cubeCorner', 'squarePlate']);

/** Lengths without a name: the smaller of two is the width, and one alone is what is still missing. */
export function readLengths(draft: Draft): void {
  const open = draft.tokens.flatMap((token, i) => {
    const number = numberOf(token);
    return number?.dimension === 'length' && !draft.taken.has(i) ? [{ i, number }] : [];
  });
  const sizeOf = ({ number }: (typeof open)[number]): number => {
    const parsed = parseQuantity(asTyped(number), 'length');
    return parsed.kind === 'quantity' ? parsed.valueSi : 0;
  };
  const { texts } = draft;
  const wanted = (['width', 'length'] as const).filter((fieldId) => texts[fieldId] === undefined);
  const isOneSize = texts.shape !== undefined && shapesOfOneSize.has(texts.shape);
  if (open.length === 2 && wanted.length === 2 && !isOneSize) {
    const [small, large] = [...open].sort((a, b) => sizeOf(a) - sizeOf(b));
    if (small === undefined || large === undefined) return;
    fill(draft, [small.i, small.i], 'width', asTyped(small.number), 'the smaller of the two lengths');
    fill(draft, [large.i, large.i], 'length', asTyped(large.number), 'the larger of the two lengths');
    return;
  }
  const [only] = open;
  const target = isOneSize
    ? wanted.find((fieldId) => fieldId === 'width')
    : wanted.length === 1
      ? wanted[0]
      : undefined;
  if (open.length === 1 && only !== undefined && target !== undefined) {
    fill(draft, [only.i, only.i], target, asTyped(only.number));
    return;
  }
  for (const { i } of open) puzzle(draft, i, i, unsureLength);
}

const unsureLength = 'It could be more than one size: write “diameter”, “long” or “chord” beside it.';
