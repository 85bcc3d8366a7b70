import type { Confidence } from '../../src/physics/sources';

/**
 * Three kinds, counted apart, because they prove different things.
 * - transcription: a formula or table against the values printed with it; a slip of the pen is found, nothing more.
 * - external: somebody else's worked answer, handbook value or program.
 * - measurement: data that the model was not made from.
 */
export const checkKinds = ['transcription', 'external', 'measurement'] as const;
export type CheckKind = (typeof checkKinds)[number];

export interface CheckSource {
  readonly title: string;
  /** Page, figure, table or equation. */
  readonly where: string;
}

export type Tolerance = { readonly absolute: number } | { readonly relative: number };

export interface Band {
  readonly low: number;
  readonly high: number;
}

/** The model and the published value differ by more than the tolerance, and the model stays as it is. */
export interface KnownDisagreement {
  readonly reason: string;
  /** (computed - printed) / printed when this was written down; the tests notice a change. */
  readonly relative: number;
}

/** What stands behind a source's number: its own measurements, a formula through measurements, a handbook, a computation. */
export type SeriesBasis = 'measured' | 'fit' | 'handbook' | 'computed';

/**
 * A number that speaks for the air, so that it can judge a band; design curves and tables that the model is made of have
 * none. Points of one source in one regime belong together.
 */
export interface SeriesPoint {
  /** One author and one work, whoever reads it out. */
  readonly source: string;
  readonly regime: string;
  readonly basis: SeriesBasis;
  /** Low and high of the model there; the check's own band where it has one. */
  readonly range?: () => Band;
}

/** One published number and the code that should give it. */
export interface PublishedCheck {
  readonly id: string;
  readonly topic: string;
  readonly kind: CheckKind;
  readonly source: CheckSource;
  readonly confidence: Confidence;
  readonly what: string;
  readonly unit: string;
  readonly printed: number;
  /** The number as it stands on the page. */
  readonly printedText: string;
  readonly tolerance: Tolerance;
  readonly toleranceReason: string;
  readonly compute: () => number;
  /** Where the model claims a range: the printed value must lie in it, give or take the tolerance. */
  readonly band?: () => Band;
  readonly knownDisagreement?: KnownDisagreement;
  readonly series?: SeriesPoint;
  /** Why the point, though it has a source and a regime, is not in the count of the calibration. */
  readonly leftOut?: string;
}

/** Half a unit of the last digit of a number as printed: '1.2250' gives 0.00005, '1.7894e-5' gives 0.5e-9. */
export function halfLastDigit(printedText: string): number {
  const [mantissa = '', exponent = '0'] = printedText.toLowerCase().split('e');
  const decimals = mantissa.split('.')[1]?.length ?? 0;
  return 0.5 * 10 ** (Number(exponent) - decimals);
}

type Common = Pick<PublishedCheck, 'topic' | 'kind' | 'source' | 'confidence' | 'unit'>;
export type Row = readonly [id: string, what: string, printedText: string, compute: () => number];

/** Checks of one source that hold to the last printed digit. */
export function toLastDigit(common: Common, rows: readonly Row[]): PublishedCheck[] {
  return rows.map(([id, what, printedText, compute]) => ({
    ...common,
    id,
    what,
    printed: Number(printedText),
    printedText,
    tolerance: { absolute: halfLastDigit(printedText) },
    toleranceReason: 'half a unit of the last printed digit',
    compute,
  }));
}

/** The same checks as points of a source. */
export function inSeries(
  checks: readonly PublishedCheck[],
  pointAt: (index: number) => SeriesPoint,
): PublishedCheck[] {
  return checks.map((check, index) => ({ ...check, series: pointAt(index) }));
}

/** Checks of one source with a tolerance of their own. */
export function within(
  common: Common,
  tolerance: Tolerance,
  toleranceReason: string,
  rows: readonly Row[],
): PublishedCheck[] {
  return toLastDigit(common, rows).map((check) => ({ ...check, tolerance, toleranceReason }));
}
