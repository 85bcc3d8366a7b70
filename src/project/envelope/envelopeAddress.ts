import { envelopeFieldIds, type EnvelopeFieldId, type EnvelopeTexts } from './envelopeTexts';

/** A field's text beyond this is no number; also bounds an address that somebody made up. */
export const longestFieldText = 200;
const longestAddress = 20_000;

/** Halves of characters cannot stand in an address; they become the replacement character. */
function wellFormed(text: string): string {
  return text.replace(/\p{Surrogate}/gu, '\ufffd');
}

function encoded(text: string): string {
  return encodeURIComponent(wellFormed(text)).replaceAll('%20', '+');
}

function decoded(text: string): string | null {
  try {
    return decodeURIComponent(text.replaceAll('+', ' '));
  } catch {
    return null;
  }
}

/** Cut between characters. */
function bounded(text: string): string {
  return text.slice(0, longestFieldText).replace(/[\uD800-\uDBFF]$/, '');
}

/** "speed=12+m%2Fs&count=16": the texts as the query of an address, empty fields left out. */
export function textsToWords(texts: EnvelopeTexts): string {
  return envelopeFieldIds
    .flatMap((id) => {
      const text = bounded(texts[id] ?? '');
      return text === '' ? [] : [`${id}=${encoded(text)}`];
    })
    .join('&');
}

function isFieldId(name: string): name is EnvelopeFieldId {
  return (envelopeFieldIds as readonly string[]).includes(name);
}

/** The texts from an address; unknown words and broken ones are ignored, a word met twice counts once, texts are bounded. */
export function textsFromWords(words: string): EnvelopeTexts {
  const texts: Partial<Record<EnvelopeFieldId, string>> = {};
  for (const word of words.slice(0, longestAddress).replace(/^[?#]/, '').split('&')) {
    const at = word.indexOf('=');
    const name = word.slice(0, Math.max(at, 0));
    const text = bounded(decoded(word.slice(at + 1)) ?? '');
    if (isFieldId(name) && text !== '') texts[name] ??= text;
  }
  return texts;
}
