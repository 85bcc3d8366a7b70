import { smoothStep } from '../numerics/smoothStep';
import { sectionOffAxisBand, sectionOffAxisShare } from './rectangle';
import { roundBarDrag, roundBarSurface, type RoundBarDrag } from './roundBar';

/** What is wrong with the two axes of an ellipse, or null. */
export type EllipseProblem = 'not-positive' | 'thicker-than-chord';

export function ellipseProblem(chordM: number, thicknessM: number): EllipseProblem | null {
  if (!(chordM > 0 && thicknessM > 0)) return 'not-positive';
  return thicknessM > chordM ? 'thicker-than-chord' : null;
}

/** What a thickness ratio does to the round bar's curve, computed once per section. */
export interface EllipseShape {
  /** Thickness over chord, 0 to 1. */
  readonly ratio: number;
  /** Frontal coefficient of the ellipse with the wind along its chord over that of the round bar, laminar layer. */
  readonly laminarShare: number;
  /** The same with a turbulent layer. */
  readonly turbulentShare: number;
  /** 0 for a circle, whose band is the round bar's own; 1 from a ratio of 0.85 down. */
  readonly fewSources: number;
}

/** Coefficients on chord x length in the section's plane. */
export interface EllipseCoefficients {
  drag: number;
  dragLow: number;
  dragHigh: number;
  lift: number;
  liftLow: number;
  liftHigh: number;
  /** Index into `roundBarRegimes`. */
  regime: number;
  logCrisisReynolds: number;
}

export function emptyEllipse(): EllipseCoefficients {
  return {
    drag: 0,
    dragLow: 0,
    dragHigh: 0,
    lift: 0,
    liftLow: 0,
    liftHigh: 0,
    regime: 0,
    logCrisisReynolds: 0,
  };
}

/** 90 % half-width beside the round bar's own band: few sources. Assumed. */
const fewSourcesHalfWidth = 0.2;
/** The rule of components knows nothing of circulation: half-width of the lift. Assumed. */
const liftHalfWidth = 0.5;
/** Thin plate across the wind: between 1.98 (Hoerner) and 2.2 (large eddies). Source: flat-plate-2d. */
const plateAcross = { low: 1.9, best: 1.99, high: 2.2 } as const;

/** Frontal coefficient of an ellipse along the wind with a laminar layer: 0.015 (1 + c/t) + 1.1 t/c. Source: hoerner-ellipse. */
export function laminarEllipseFormula(ratio: number): number {
  return 0.015 * (1 + 1 / ratio) + 1.1 * ratio;
}

/** Of the round bar behind its crisis, the share that an ellipse keeps: drawn through White's and Hoerner's values. Source: white-ellipse. */
function turbulentEllipseShape(ratio: number): number {
  return 0.03 / ratio + 0.97 * ratio;
}

/** The section of a chord and a thickness; the ratio is taken as 1 where the thickness is larger (see `ellipseProblem`). */
export function ellipseShape(chordM: number, thicknessM: number): EllipseShape {
  const ratio = Math.min(thicknessM / chordM, 1);
  return {
    ratio,
    laminarShare: laminarEllipseFormula(ratio) / laminarEllipseFormula(1),
    turbulentShare: turbulentEllipseShape(ratio) / turbulentEllipseShape(1),
    fewSources: smoothStep(0, 0.15, 1 - ratio),
  };
}

const logCrisisFrom = Math.log10(2e5);
const logCrisisTo = Math.log10(5e5);
/** The round bar's low edge goes through its crisis from here to here, in turbulent air. */
const logLowCrisisFrom = Math.log10(7.5e4);
const logLowCrisisTo = Math.log10(2e5);
const logRecoveryFrom = logCrisisTo;
const logRecoveryTo = Math.log10(7e5);
/**
 * The round bar where its recovery begins, Re 5e5 to 7e5: an ellipse stays near it, a circle goes on. The high edge is the
 * bar's own at 5e5: behind the crisis two sources differ by a factor of two at t/c 0.125.
 */
const behindCrisis = { low: 0.27, best: 0.33, high: 0.52 } as const;

const smooth = roundBarSurface(0, 1);
const bar: RoundBarDrag = { best: 0, low: 0, high: 0, regime: 0, logCrisisReynolds: 0 };

/**
 * Drag and lift of an elliptical section, on chord x length, from the Reynolds number on the chord. Few sources.
 *
 * Along the chord: the round bar's curve times the ellipse's share of it, laminar before the crisis and turbulent behind
 * (from Re 2e5 to 5e5 the one fades into the other), times t/c, since the coefficient is on the chord. Read on the chord, the crisis comes at
 * a smaller thickness for a slimmer section. Behind it an ellipse recovers less than a circle: the recovery is taken
 * away by 1 - (t/c)^4 (assumed). Across the chord: bar^(t/c) plate^(1 - t/c), from the round bar to the flat plate
 * (assumed). Between the axes F_i = q C_i c |u| u_i: drag C_x + (C_y - C_x) sin^2 a, lift (C_y - C_x) sin a cos a.
 *
 * With t = c everything is the smooth round bar's. Range: t/c 0.125 to 1, Re 1e4 to 2e6; outside it the same formula.
 * Source: round-bar-table, hoerner-ellipse, white-ellipse, flat-plate-2d.
 */
export function ellipseCoefficients(
  reynolds: number,
  shape: EllipseShape,
  incidenceRad: number,
  inclinationCosine: number,
  out: EllipseCoefficients,
  withBand = true,
): EllipseCoefficients {
  const { ratio, fewSources } = shape;
  roundBarDrag(reynolds, smooth, inclinationCosine, bar, withBand);
  out.regime = bar.regime;
  out.logCrisisReynolds = bar.logCrisisReynolds;
  const along = alongShare(shape, smoothStep(logCrisisFrom, logCrisisTo, bar.logCrisisReynolds));
  const held = (1 - ratio ** 4) * smoothStep(logRecoveryFrom, logRecoveryTo, bar.logCrisisReynolds);
  const sine = Math.sin(incidenceRad);
  const sineSquared = sine * sine;
  const chordwise = along * withoutRecovery(bar.best, behindCrisis.best, held);
  const difference = across(bar.best, plateAcross.best, ratio) - chordwise;
  out.drag = chordwise + difference * sineSquared;
  out.lift = difference * sine * Math.cos(incidenceRad);
  if (!withBand) return out;
  const off = fewSources * sectionOffAxisShare(incidenceRad);
  const lowShare = (1 - fewSourcesHalfWidth * fewSources) * (1 + sectionOffAxisBand.low * off);
  const highShare = (1 + fewSourcesHalfWidth * fewSources) * (1 + sectionOffAxisBand.high * off);
  const turbulentLow = smoothStep(logLowCrisisFrom, logLowCrisisTo, bar.logCrisisReynolds);
  const chordwiseLow = alongShare(shape, turbulentLow) * withoutRecovery(bar.low, behindCrisis.low, held);
  const chordwiseHigh = along * withoutRecovery(bar.high, behindCrisis.high, held);
  const acrossLow = across(bar.low, plateAcross.low, ratio);
  const acrossHigh = across(bar.high, plateAcross.high, ratio);
  out.dragLow = lowShare * (chordwiseLow + (acrossLow - chordwiseLow) * sineSquared);
  out.dragHigh = highShare * (chordwiseHigh + (acrossHigh - chordwiseHigh) * sineSquared);
  out.liftLow = out.lift * (1 - liftHalfWidth);
  out.liftHigh = out.lift * (1 + liftHalfWidth);
  return out;
}

/** Coefficient on the chord with the wind along it, over the round bar's. */
function alongShare({ ratio, laminarShare, turbulentShare }: EllipseShape, turbulent: number): number {
  return ratio * laminarShare ** (1 - turbulent) * turbulentShare ** turbulent;
}

function withoutRecovery(value: number, reference: number, share: number): number {
  return value * (reference / value) ** share;
}

function across(round: number, plate: number, ratio: number): number {
  return round ** ratio * plate ** (1 - ratio);
}

/** Width of the ellipse across the wind over its chord: sqrt(sin^2 a + (t/c)^2 cos^2 a). */
export function ellipseWidthShare(ratio: number, incidenceRad: number): number {
  const sine = Math.sin(incidenceRad);
  return Math.sqrt(ratio * ratio + (1 - ratio * ratio) * sine * sine);
}

/** Circumference, m, by Ramanujan's second approximation; exact for a circle. */
export function ellipsePerimeterM(chordM: number, thicknessM: number): number {
  const sum = chordM / 2 + thicknessM / 2;
  const h = ((chordM - thicknessM) / (chordM + thicknessM)) ** 2;
  return Math.PI * sum * (1 + (3 * h) / (10 + Math.sqrt(4 - 3 * h)));
}
