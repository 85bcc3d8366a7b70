/** The places of the page in the order of their words. */
export const placeIds = ['ledger', 'fairing', 'envelope', 'survey'] as const;
export type PlaceId = (typeof placeIds)[number];

/** What an address asks for: a place, and what stands behind its name. */
export interface PlaceRequest {
  readonly place: PlaceId;
  readonly words: string;
}

const placeWord = /^#?place=([a-z]+)(?:&|$)/;

/** `#place=envelope&speed=12+m%2Fs`; the ledger's address has no place, as before there were others. */
export function placeAddress(place: PlaceId, words = ''): string {
  return `#place=${place}${words === '' ? '' : `&${words}`}`;
}

/** Where an address leads: a place that is not known is the ledger. */
export function placeFrom(hash: string): PlaceRequest {
  const match = placeWord.exec(hash);
  const place = placeIds.find((id) => id === match?.[1]);
  if (match === null || place === undefined) return { place: 'ledger', words: '' };
  return { place, words: hash.slice(match[0].length) };
}
