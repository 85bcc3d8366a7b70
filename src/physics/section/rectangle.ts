import { smoothStep } from '../numerics/smoothStep';

/** Names of the directions of the wind on a rectangular section: along the chord, between, and onto the broad side. */
export const rectangleRegimes = ['edge-on', 'oblique', 'broadside'] as const;

/**
 * Sharp rectangle across the wind, force coefficient on width across x length against depth along over width across.
 * EN 1991-1-4:2005 fig. 7.23, corner points; straight lines against log10(d/b), held outside. Source: en-rectangles.
 */
export const sharpRectangleNodes: readonly (readonly [depthOverWidth: number, coefficient: number])[] = [
  [0.2, 2.0],
  [0.6, 2.35],
  [0.7, 2.4],
  [1, 2.1],
  [2, 1.65],
  [5, 1.0],
  [10, 0.9],
];

/** The coefficient of a sharp rectangle at a depth over width; 2.0 for plates across the wind, 0.9 for long ones along it. */
export function sharpRectangleCoefficient(depthOverWidth: number): number {
  const nodes = sharpRectangleNodes;
  const x = Math.log(depthOverWidth);
  let i = 0;
  while (i < nodes.length - 2 && nodes[i + 1]![0] <= depthOverWidth) i += 1;
  const [left, from] = nodes[i]!;
  const [right, to] = nodes[i + 1]!;
  const share = (x - Math.log(left)) / (Math.log(right) - Math.log(left));
  return from + (to - from) * Math.min(Math.max(share, 0), 1);
}

/** EN 1991-1-4:2005 fig. 7.24: rounded corners take up to half of the force, at a radius of a fifth of the width. Source: en-rectangles. */
export function cornerFactor(radiusOverWidth: number): number {
  return Math.max(0.5, 1 - 2.5 * radiusOverWidth);
}

/**
 * 90 % edges about EN's diagram. Above: published sharp squares and plates reach 5 to 10 % higher (2.2 for both), and half
 * of the range of the plate's three sources further. Below: the turbulence of deck air lets the flow come back to the
 * sides and takes about a fifth off a square (from memory: Vickery 1966, Bearman and Morel 1983).
 */
const rectangleBand = { low: 0.8, high: 1.155 } as const;
/**
 * A plate across the wind has no sides for the flow to come back to, and turbulence leaves its drag or adds to it (from
 * memory: Bearman 1971): half of the range of its three sources below. From d/b 0.2, EN's plate, to 0.6, where its
 * diagram feels the sides.
 */
const plateLow = 0.935;
const plateTo = Math.log(0.2);
const sidesFrom = Math.log(0.6);

/** A handbook's 1.2 for a square with r/D 0.2 lies higher above EN's 1.05 than sharp ones do. Source: cengel-cimbala. */
const roundedHigh = 0.08;

/** Rounded corners pass a crisis: by Re 4e5 the low edge is down to half (from memory: Delany and Sorensen 1953). */
const roundedCrisisFrom = Math.log10(1e5);
const roundedCrisisTo = Math.log10(4e5);
export const roundedCrisisShare = 0.5;

/** Best, low and high of one axis of a rectangle on its width across the wind. */
export interface AxisCoefficient {
  best: number;
  low: number;
  high: number;
}

/**
 * One axis of the rectangle: wind square onto a side.
 * @param depthOverWidth depth along the wind over width across it.
 * @param radiusOverWidth corner radius over the width across the wind.
 * @param logReynolds log10 of the Reynolds number on the width across the wind.
 */
export function rectangleAxis(
  depthOverWidth: number,
  radiusOverWidth: number,
  logReynolds: number,
  out: AxisCoefficient,
): AxisCoefficient {
  const factor = cornerFactor(radiusOverWidth);
  const crisis = smoothStep(roundedCrisisFrom, roundedCrisisTo, logReynolds);
  const rounded = (1 - factor) / 0.5;
  out.best = factor * sharpRectangleCoefficient(depthOverWidth);
  const sides = smoothStep(plateTo, sidesFrom, Math.log(depthOverWidth));
  const sharpLow = plateLow + (rectangleBand.low - plateLow) * sides;
  out.low = out.best * sharpLow * (1 - roundedCrisisShare * rounded * crisis);
  out.high = out.best * (rectangleBand.high + roundedHigh * rounded);
  return out;
}

/** Between the axes the rule of components is good to -15 / +25 % (common practice, no source). */
export const sectionOffAxisBand = { low: -0.15, high: 0.25 } as const;

/** How far the wind lies off the section's axes: 0 along or across the chord, 1 at 45 deg. */
export function sectionOffAxisShare(incidenceRad: number): number {
  const sine = Math.sin(2 * incidenceRad);
  return sine * sine;
}

const regimeSine = Math.sin((15 * Math.PI) / 180);

/** Index into `rectangleRegimes`. */
export function rectangleRegime(incidenceRad: number): number {
  if (Math.abs(Math.sin(incidenceRad)) < regimeSine) return 0;
  return Math.abs(Math.cos(incidenceRad)) < regimeSine ? 2 : 1;
}

/** DNV-RP-C205, flat plate across the wind, both ends free: [L/b, factor]; 1 from 200 up assumed. Source: dnv-plate (from memory). */
export const plateEndNodes: readonly (readonly [slenderness: number, factor: number])[] = [
  [2, 0.62],
  [5, 0.66],
  [10, 0.69],
  [20, 0.81],
  [40, 0.87],
  [50, 0.9],
  [100, 0.95],
  [200, 1],
];

/** Factor of finite length of plates and rectangles, straight lines against log(L/b), held below 2. */
export function plateEndFactor(slenderness: number): number {
  if (slenderness >= 200) return 1;
  let i = 0;
  while (i < plateEndNodes.length - 2 && plateEndNodes[i + 1]![0] <= slenderness) i += 1;
  const [left, from] = plateEndNodes[i]!;
  const [right, to] = plateEndNodes[i + 1]!;
  const share = Math.max(Math.log(slenderness / left) / Math.log(right / left), 0);
  return from + share * (to - from);
}
