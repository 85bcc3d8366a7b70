import { envelopeLabels, envelopeOptions, type ChoiceFieldId, type EnvelopeFieldId } from './envelopeTexts';
import { numberRules, type NumberFieldId } from './readEnvelope';
import type { NumberMeaning, Token } from './scribbleTokens';

/** What became of the tokens `from` to `to`, both included. */
export type Claim = { readonly from: number; readonly to: number } & (
  | {
      readonly kind: 'understood';
      readonly fieldId: EnvelopeFieldId;
      readonly value: string;
      readonly how: string;
    }
  | { readonly kind: 'notUnderstood'; readonly reason: string }
);

/** A scribble while it is being read: its tokens, the fields so far, and which tokens are spoken for. */
export interface Draft {
  readonly tokens: readonly Token[];
  readonly texts: Partial<Record<EnvelopeFieldId, string>>;
  readonly claims: Claim[];
  readonly taken: Set<number>;
}

export function draftOf(tokens: readonly Token[]): Draft {
  return { tokens, texts: {}, claims: [], taken: new Set() };
}

export function numberOf(token: Token | undefined): NumberMeaning | null {
  return token?.meaning.kind === 'number' ? token.meaning : null;
}

function take(draft: Draft, claim: Claim): void {
  for (let i = claim.from; i <= claim.to; i += 1) draft.taken.add(i);
  draft.claims.push(claim);
}

export function puzzle(draft: Draft, from: number, to: number, reason: string): void {
  take(draft, { kind: 'notUnderstood', from, to, reason });
}

/** "25 mm", "35°", "16": as a field takes it. */
export function asTyped({ number, unit }: NumberMeaning): string {
  if (unit === null) return number;
  if (unit === 'deg') return `${number}°`;
  return `${number} ${unit === 'C' ? '°C' : unit}`;
}

function optionLabel(fieldId: EnvelopeFieldId, value: string): string {
  const options = fieldId in envelopeOptions ? envelopeOptions[fieldId as ChoiceFieldId] : [];
  return options.find(({ id }) => id === value)?.label ?? value;
}

/** Puts a value into a field, or says that the field has one. */
export function fill(
  draft: Draft,
  [from, to]: readonly [from: number, to: number],
  fieldId: EnvelopeFieldId,
  value: string,
  note?: string,
): void {
  const held = draft.texts[fieldId];
  const label = envelopeLabels[fieldId];
  if (held !== undefined && held !== value) {
    puzzle(draft, from, to, `${label} has a value already: ${optionLabel(fieldId, held)}.`);
    return;
  }
  draft.texts[fieldId] = value;
  const how = `${label}: ${optionLabel(fieldId, value)}${note === undefined ? '' : ` (${note})`}`;
  take(draft, { kind: 'understood', from, to, fieldId, value, how });
}

/** Whether a number with its unit can stand in a field. A bare one can, if a label says so. */
export function suits(number: NumberMeaning, fieldId: NumberFieldId): boolean {
  const { dimension } = numberRules[fieldId];
  if (fieldId === 'power' && isHorsepower(number)) return false;
  if (fieldId === 'horsepower' && !isHorsepower(number)) return false;
  return number.dimension === null || number.dimension === dimension;
}

export function isHorsepower({ unit }: NumberMeaning): boolean {
  return unit === 'hp' || unit === 'PS';
}

/** The nearest token to a side that is not a space or (with `links`) a word such as "of" or an equals sign. */
export function neighbour(draft: Draft, from: number, step: 1 | -1, links: boolean): number {
  let i = from + step;
  for (; i >= 0 && i < draft.tokens.length; i += step) {
    const kind = draft.tokens[i]?.meaning.kind;
    if (kind === 'space') continue;
    if (links && (kind === 'link' || kind === 'equals')) continue;
    break;
  }
  return i;
}
