import type { EnvelopeFieldId, EnvelopeTexts } from './envelopeTexts';

/** A stretch of the text that went into a field. */
export interface UnderstoodPiece {
  readonly kind: 'understood';
  readonly text: string;
  readonly fieldId: EnvelopeFieldId;
  /** What now stands in that field. */
  readonly value: string;
  /** "25 mm as the diameter": how it was read, in words. */
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

// readScribble(text: string): ScribbleReading follows here.
