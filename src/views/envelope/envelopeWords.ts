import { textsFromWords, textsToWords } from '../../project/envelope/envelopeAddress';
import type { EnvelopeTexts } from '../../project/envelope/envelopeTexts';

/** What is written: the numbers in their fields, and the scribble that they may have come from. */
export interface Written {
  readonly texts: EnvelopeTexts;
  readonly scribble: string;
}

/** A scribble is a few lines. */
export const longestScribble = 600;

const scribbleWord = 'scribble';

export function writtenFrom(words: string): Written {
  const scribble = new URLSearchParams(words).get(scribbleWord) ?? '';
  return { texts: textsFromWords(words), scribble: scribble.slice(0, longestScribble) };
}

export function wordsOf({ texts, scribble }: Written): string {
  const numbers = textsToWords(texts);
  if (scribble === '') return numbers;
  const text = new URLSearchParams([[scribbleWord, scribble]]).toString();
  return numbers === '' ? text : `${numbers}&${text}`;
}
