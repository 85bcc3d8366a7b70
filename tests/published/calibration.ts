import { judgeCheck } from './judgeCheck';
import type { Band, PublishedCheck, SeriesBasis } from './publishedCheck';

/**
 * Would a source that was not read have fallen inside the band? Every source is left out in turn and the band of its
 * regime is built again from the others by one rule; a published number is placed by what it is over the model's best
 * value under the same conditions, so that sources at different Reynolds numbers, incidences or thicknesses compare.
 *
 * The rule. From the lowest to the highest place of any source, and half of that range further to each side, so twice
 * as wide as the range. Fewer than three sources say little about their spread: at least 15 % and at most 50 % of the
 * middle to each side (one source alone: 15 %). No width that ships enters, so none can know the source left out.
 *
 * Half the range to each side of three or more was chosen before the points were placed, the 15 and 50 % of fewer with a
 * first count known (calibrationHistory.ts). For sources drawn from one normal distribution half the range holds the next
 * one in 55 % of cases for two others, 76 % for three, 86 % for four, 91 % for five and 97 % for eight (the test draws
 * them): a 90 % band where five or six sources speak. Where sources scatter by a tenth, 15 % to each side at least lift
 * two others to 81 % and one alone to 71 %.
 */
const enoughSources = 3;
const widening = 0.5;
const fewSourcesHalfWidth = { least: 0.15, most: 0.5 } as const;

export interface PlacedPoint {
  readonly id: string;
  /** Published value over the model's best. */
  readonly place: number;
  /** The shipped band there, over the model's best. */
  readonly shipped: Band;
}

export interface SourceInRegime {
  readonly source: string;
  readonly basis: SeriesBasis;
  readonly points: readonly PlacedPoint[];
}

/** One source left out of one regime. */
export interface LeftOut {
  readonly source: string;
  readonly basis: SeriesBasis;
  readonly points: number;
  /** Points inside the band of the others; null where there is no other. */
  readonly insideRule: number | null;
  /** Points inside the shipped band moved with the others: its margins beyond the outermost source are kept. */
  readonly insideMargins: number | null;
  /** Points inside the band as it ships, which knows this source. */
  readonly insideShipped: number;
}

export interface CalibratedRegime {
  readonly regime: string;
  readonly sources: readonly SourceInRegime[];
  readonly isFewSources: boolean;
  /** Lowest and highest place of any source. */
  readonly range: Band;
  /** The rule's band on all sources. */
  readonly rule: Band;
  /** The shipped band, its edges averaged over the points. */
  readonly shipped: Band;
  readonly leftOut: readonly LeftOut[];
}

function placed(check: PublishedCheck): PlacedPoint {
  const { computed, band } = judgeCheck(check);
  const shipped = check.series?.range?.() ?? band;
  if (shipped === null) throw new Error(`${check.id} speaks for a band that it does not name`);
  return {
    id: check.id,
    place: check.printed / computed,
    shipped: { low: shipped.low / computed, high: shipped.high / computed },
  };
}

function grouped<T>(items: readonly T[], keyOf: (item: T) => string): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const item of items) {
    const key = keyOf(item);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [item]);
    else group.push(item);
  }
  return groups;
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

function rangeOf(sources: readonly SourceInRegime[]): Band {
  const places = sources.flatMap(({ points }) => points.map(({ place }) => place));
  return { low: Math.min(...places), high: Math.max(...places) };
}

/** From the lowest to the highest place, and half of the range further to each side. */
export function widenedRange(sources: readonly SourceInRegime[]): Band {
  const { low, high } = rangeOf(sources);
  const more = widening * (high - low);
  return { low: low - more, high: high + more };
}

/** The band that a regime gets from these sources. */
export function ruleBand(sources: readonly SourceInRegime[]): Band {
  const band = widenedRange(sources);
  if (sources.length >= enoughSources) return band;
  const middle = (band.low + band.high) / 2;
  const { least, most } = fewSourcesHalfWidth;
  const half = Math.min(Math.max((band.high - band.low) / 2, least * middle), most * middle);
  return { low: middle - half, high: middle + half };
}

/** The shipped band moved with the remaining sources: as far beyond the outermost as it lies beyond the outermost of all. */
function movedBand(all: Band, others: Band, shipped: Band): Band {
  return { low: others.low - (all.low - shipped.low), high: others.high + (shipped.high - all.high) };
}

function countInside(points: readonly PlacedPoint[], band: Band): number {
  return points.filter(({ place }) => place >= band.low && place <= band.high).length;
}

function leaveOut(sources: readonly SourceInRegime[], left: SourceInRegime, shipped: Band): LeftOut {
  const { source, basis, points } = left;
  const others = sources.filter((other) => other !== left);
  const moved = (): Band => movedBand(rangeOf(sources), rangeOf(others), shipped);
  return {
    source,
    basis,
    points: points.length,
    insideRule: others.length === 0 ? null : countInside(points, ruleBand(others)),
    insideMargins: others.length === 0 ? null : countInside(points, moved()),
    insideShipped: points.filter((point) => countInside([point], point.shipped) === 1).length,
  };
}

function calibratedRegime(regime: string, checks: readonly PublishedCheck[]): CalibratedRegime {
  const bySource = grouped(checks, ({ series }) => series?.source ?? '');
  const sources = [...bySource].map(([source, ofSource]) => ({
    source,
    basis: ofSource[0]?.series?.basis ?? 'measured',
    points: ofSource.map(placed),
  }));
  const points = sources.flatMap((one) => one.points);
  const shipped = {
    low: mean(points.map((point) => point.shipped.low)),
    high: mean(points.map((point) => point.shipped.high)),
  };
  return {
    regime,
    sources,
    isFewSources: sources.length < enoughSources,
    range: rangeOf(sources),
    rule: ruleBand(sources),
    shipped,
    leftOut: sources.map((left) => leaveOut(sources, left, shipped)),
  };
}

/** Every regime that a source speaks about, in the order of the checks. */
export function calibrate(checks: readonly PublishedCheck[]): CalibratedRegime[] {
  return allRegimes(checks.filter(({ leftOut }) => leftOut === undefined));
}

/** The same, what is left out of the count included. */
export function allRegimes(checks: readonly PublishedCheck[]): CalibratedRegime[] {
  const speaking = checks.filter(({ series }) => series !== undefined);
  return [...grouped(speaking, ({ series }) => series?.regime ?? '')].map(([regime, ofRegime]) =>
    calibratedRegime(regime, ofRegime),
  );
}

/** At least two thirds of a source's points. */
export function isCovered(inside: number, points: number): boolean {
  return 3 * inside >= 2 * points;
}

/** Full width over twice the range of the sources, which it may not pass; of few sources the half-width over the middle. */
export function widthOf({ isFewSources, shipped, range }: CalibratedRegime): number {
  const { low, high } = shipped;
  return isFewSources ? (high - low) / (high + low) : (high - low) / (2 * (range.high - range.low));
}

/** A hair for doubles: 0.85 to 1.15 of a best value is no less than 15 % to each side. */
const rounding = 1e-9;
/** A band drawn by hand may be narrower than the rule's by a tenth, but never under the least. */
const drawnByHand = 0.9;

/** A shipped width that is asked for: of few sources the rule's half-width, never under 15 %, and at most 50 %. */
export function isWidthAllowed(regime: CalibratedRegime): boolean {
  const width = widthOf(regime);
  if (!regime.isFewSources) return width <= 1 + rounding;
  const { low, high } = regime.rule;
  const { least, most } = fewSourcesHalfWidth;
  const asked = Math.max((drawnByHand * (high - low)) / (high + low), least);
  return width >= asked - rounding && width <= most + rounding;
}

/** By how much of its width the rule's band goes beyond the shipped one. */
function narrownessOf({ rule, shipped }: CalibratedRegime): number {
  const beyond = Math.max(shipped.low - rule.low, 0) + Math.max(rule.high - shipped.high, 0);
  return beyond / (rule.high - rule.low);
}

/** A shipped band narrower than the rule's by more than a tenth where three or more sources speak. */
export function isNarrow(regime: CalibratedRegime): boolean {
  return !regime.isFewSources && narrownessOf(regime) > 0.1;
}

/** Points of one source in one regime that are not counted, and what they would have come to. */
export interface NotCounted {
  readonly regime: string;
  readonly source: string;
  readonly reason: string;
  readonly points: readonly PlacedPoint[];
  /** Points inside the rule's band of the other sources, had all been counted; null where there is none. */
  readonly inside: number | null;
}

/** What was left out of the count, in the order of the checks. */
export function notCounted(checks: readonly PublishedCheck[]): NotCounted[] {
  const regimes = allRegimes(checks);
  const out = checks.filter(({ leftOut }) => leftOut !== undefined);
  return [...grouped(out, ({ series, leftOut }) => [series?.regime, series?.source, leftOut].join('|'))].map(
    ([, group]) => {
      const { series, leftOut = '' } = group[0] ?? {};
      const { regime = '', source = '' } = series ?? {};
      const others = (regimes.find((one) => one.regime === regime)?.sources ?? []).filter(
        (other) => other.source !== source,
      );
      const points = group.map(placed);
      const inside = others.length === 0 ? null : countInside(points, ruleBand(others));
      return { regime, source, reason: leftOut, points, inside };
    },
  );
}
