import type { EnvelopeFieldId, EnvelopeTexts } from './envelopeTexts';
import { draftOf, fill, neighbour, numberOf, puzzle, type Claim, type Draft } from './scribbleDraft';
import {
  nameNumbers,
  readByUnit,
  readChains,
  readCounts,
  readLengths,
  setAsideAmbiguous,
  setAsideFeetAndInches,
  setAsideFractions,
  setAsideMixedFractions,
  setAsidePressures,
  setAsideMinuses,
  setAsideRanges,
  setAsideWorking,
} from './scribbleNumbers';
import { tokensOf, type Token } from './scribbleTokens';

/** A stretch of the text that went into a field. */
export interface UnderstoodPiece {
  readonly kind: 'understood';
  readonly text: string;
  readonly fieldId: EnvelopeFieldId;
  /** What now stands in that field. */
  readonly value: string;
  /** "Length: 0.7 m (the larger of the two lengths)": how it was read, in words. */
  readonly how: string;
}

/** Commas, bullets, line ends, "and": nothing to understand. */
export interface FillerPiece {
  readonly kind: 'filler';
  readonly text: string;
}

export interface PuzzlingPiece {
  readonly kind: 'notUnderstood';
  readonly text: string;
  /** One sentence: an unknown word, a second value for a field that is filled, a number that could be several things. */
  readonly reason: string;
}

export type ScribblePiece = UnderstoodPiece | FillerPiece | PuzzlingPiece;

export interface ScribbleReading {
  readonly texts: EnvelopeTexts;
  /** Every stretch of the text exactly once and in order: their texts joined are the text. */
  readonly pieces: readonly ScribblePiece[];
}

/** No envelope is longer; also bounds the time. */
export const longestScribble = 2000;

/**
 * Reads an estimate as people scribble it: "16 posts 25 mm 0.7 m, Cd 0.6, 12 m/s, 170 W". Labels and units decide; a
 * number that could be several things is left, with the reason. Never throws, whatever the text.
 */
export function readScribble(text: string): ScribbleReading {
  const draft = draftOf(tokensOf(text.slice(0, longestScribble)));
  setAsideAmbiguous(draft);
  setAsideRanges(draft);
  setAsideMinuses(draft);
  setAsideFractions(draft);
  setAsideMixedFractions(draft);
  setAsideFeetAndInches(draft);
  setAsidePressures(draft);
  setAsideWorking(draft);
  readChoices(draft);
  nameNumbers(draft);
  readCounts(draft);
  readChains(draft);
  readByUnit(draft);
  readNamedByChoice(draft);
  readLengths(draft);
  readWindKinds(draft);
  readShares(draft);
  const pieces = piecesOf(draft);
  const rest = text.slice(longestScribble);
  if (rest !== '') pieces.push({ kind: 'notUnderstood', text: rest, reason: tooLong });
  return { texts: draft.texts, pieces };
}

const tooLong = `Only the first ${longestScribble} characters are read.`;

function readChoices(draft: Draft): void {
  draft.tokens.forEach(({ meaning }, i) => {
    if (meaning.kind === 'choice') fill(draft, [i, i], meaning.fieldId, meaning.value, meaning.note);
    if (meaning.kind === 'refused') refuse(draft, i, meaning.reason);
  });
}

/** A word that is refused takes its number with it, so that a radius is not read as the diameter; of two, both. */
function refuse(draft: Draft, i: number, reason: string): void {
  const isFree = (at: number): boolean =>
    numberOf(draft.tokens[at])?.dimension === 'length' && !draft.taken.has(at);
  const next = neighbour(draft, i, 1, true);
  const previous = neighbour(draft, i, -1, false);
  const after = draft.tokens[neighbour(draft, next, 1, false)]?.meaning;
  const isNamed = after?.kind === 'label' && after.side === 'after';
  const takesNext = isFree(next) && !(isFree(previous) && isNamed);
  puzzle(draft, isFree(previous) ? previous : i, takesNext ? next : i, reason);
}

/** "AWS 12": the bare number after a choice that names one. A number with a unit finds its own way. */
function readNamedByChoice(draft: Draft): void {
  draft.tokens.forEach(({ meaning }, i) => {
    if (meaning.kind !== 'choice' || meaning.names === undefined) return;
    const next = neighbour(draft, i, 1, true);
    const number = numberOf(draft.tokens[next]);
    if (number?.unit === null && !draft.taken.has(next))
      fill(draft, [next, next], meaning.names, number.number);
  });
}

/** "apparent", "true": of the speed or the angle beside it, of the speed when neither stands there. */
function readWindKinds(draft: Draft): void {
  draft.tokens.forEach(({ meaning }, i) => {
    if (meaning.kind !== 'windKind') return;
    const beside = [neighbour(draft, i, 1, true), neighbour(draft, i, -1, false)].map(
      (at) => numberOf(draft.tokens[at])?.dimension ?? null,
    );
    const dimension = beside.find((one) => one === 'angle' || one === 'speed');
    fill(draft, [i, i], dimension === 'angle' ? 'windAngleKind' : 'windKind', meaning.value);
  });
}

const eachOfAll = 'Force and power are those of all of them here: type the sum.';

/** "each", "together": of the area before it. */
function readShares(draft: Draft): void {
  draft.tokens.forEach(({ meaning }, i) => {
    if (meaning.kind !== 'each' && meaning.kind !== 'together') return;
    const dimension = numberOf(draft.tokens[neighbour(draft, i, -1, false)])?.dimension;
    if (dimension === 'area') fill(draft, [i, i], 'areaOf', meaning.kind === 'each' ? 'each' : 'all');
    else if (meaning.kind === 'each' && (dimension === 'force' || dimension === 'power'))
      puzzle(draft, i, i, eachOfAll);
  });
}

const noUnit = 'A number without a unit or a name: it could be more than one thing.';

function left({ meaning, text }: Token): ScribblePiece {
  switch (meaning.kind) {
    case 'number':
      return { kind: 'notUnderstood', text, reason: noUnit };
    case 'unknown':
      return { kind: 'notUnderstood', text, reason: `“${text}” is not a word that is known here.` };
    case 'label':
      return meaning.fieldIds.includes('speed')
        ? { kind: 'filler', text }
        : { kind: 'notUnderstood', text, reason: `No number that fits stands beside “${text}”.` };
    default:
      return { kind: 'filler', text };
  }
}

function claimed(draft: Draft, claim: Claim): ScribblePiece {
  const text = draft.tokens
    .slice(claim.from, claim.to + 1)
    .map((token) => token.text)
    .join('');
  return claim.kind === 'understood'
    ? { kind: 'understood', text, fieldId: claim.fieldId, value: claim.value, how: claim.how }
    : { kind: 'notUnderstood', text, reason: claim.reason };
}

function piecesOf(draft: Draft): ScribblePiece[] {
  const starts = new Map(draft.claims.map((claim) => [claim.from, claim]));
  const pieces: ScribblePiece[] = [];
  for (let i = 0; i < draft.tokens.length;) {
    const claim = starts.get(i);
    const token = draft.tokens[i];
    if (token === undefined) break;
    add(pieces, claim === undefined ? left(token) : claimed(draft, claim));
    i = claim === undefined ? i + 1 : claim.to + 1;
  }
  return pieces;
}

/** Filler beside filler is one piece. */
function add(pieces: ScribblePiece[], piece: ScribblePiece): void {
  const last = pieces.at(-1);
  if (piece.kind === 'filler' && last?.kind === 'filler') {
    pieces[pieces.length - 1] = { kind: 'filler', text: last.text + piece.text };
  } else pieces.push(piece);
}
