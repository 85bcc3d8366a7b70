import type { Band, PublishedCheck } from './publishedCheck';

export interface Verdict {
  readonly computed: number;
  readonly difference: number;
  /** (computed - printed) / |printed|; null where zero was printed. */
  readonly relative: number | null;
  readonly limit: number;
  readonly band: Band | null;
  readonly agrees: boolean;
}

/** Doubles lose a little where a difference equals its tolerance, as 0.76 - 0.74 against 0.02. */
const rounding = 1e-12;

/** Runs a check and compares. */
export function judgeCheck(check: PublishedCheck): Verdict {
  const { printed, tolerance } = check;
  const computed = check.compute();
  const difference = computed - printed;
  const limit = 'absolute' in tolerance ? tolerance.absolute : tolerance.relative * Math.abs(printed);
  const band = check.band?.() ?? null;
  const slack = limit + rounding * Math.max(1, Math.abs(printed)) * (limit > 0 ? 1 : 0);
  const agrees =
    band === null
      ? Math.abs(difference) <= slack
      : band.low <= computed &&
        computed <= band.high &&
        printed >= band.low - slack &&
        printed <= band.high + slack;
  return {
    computed,
    difference,
    relative: printed === 0 ? null : difference / Math.abs(printed),
    limit,
    band,
    agrees,
  };
}

/** Percentage points within which a known disagreement must keep its stated size. */
const disagreementDrift = 0.005;

/** True when a check agrees, or still disagrees by what was written down. */
export function isAsStated(check: PublishedCheck, verdict: Verdict): boolean {
  const { knownDisagreement } = check;
  if (knownDisagreement === undefined) return verdict.agrees;
  return (
    !verdict.agrees &&
    verdict.relative !== null &&
    Math.abs(verdict.relative - knownDisagreement.relative) <= disagreementDrift
  );
}
