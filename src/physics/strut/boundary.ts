import { gaussLegendre } from '../numerics/gaussLegendre';
import { chordOf, emptyPlace, upperPlace, type OutlinePlace, type SectionOutline } from './sectionOutline';

/** A point of a closed boundary with the piece of it that the point stands for; anticlockwise with y up. */
export interface BoundaryNode {
  readonly xM: number;
  readonly yM: number;
  readonly dxM: number;
  readonly dyM: number;
}

/** Gauss points of half an outline: an ellipse of 1:12 is closed in to 1e-9. */
const arcPoints = 48;
/** A straight piece needs the third power of x or y, which two points integrate. */
const straightPoints = 2;
/** Places at which the inside of a wall is looked for, before its ends are closed in by halving. */
const searchSteps = 200;
const halvings = 60;

/** The outer outline. A fairing's blunt tail is closed by a straight piece. */
export function outerBoundary(outline: SectionOutline): BoundaryNode[] {
  const tail = upperPlace(outline, Math.PI, emptyPlace());
  const { upper, lower } = bothHalves((u, out) => upperPlace(outline, u, out), 0, Math.PI);
  const isBlunt = tail.yM > 1e-12 * tail.xM;
  return [...upper, ...lower, ...(isBlunt ? straight(tail.xM, tail.yM) : [])];
}

/**
 * The inside of a wall of constant thickness: every point that lies deeper than the wall below the outer outline, which
 * is the outline moved inwards, from the thickest place outwards until it would cross the chord, where the two sides of a thin
 * tail (or of a sharp nose) meet, or reach into the wall behind a blunt tail. Empty where the wall fills the section.
 *
 * A four-digit section is most curved a little behind its nose. Where the wall lies between the two radii, the
 * moved outline folds there, and the sliver ahead of the fold counts as wall: under 1e-5 of its area.
 */
export function innerBoundary(outline: SectionOutline, wallM: number): BoundaryNode[] {
  const curve = (u: number, out: OutlinePlace): OutlinePlace => movedInwards(outline, wallM, u, out);
  const place = emptyPlace();
  const lastXM = outline.kind === 'fairing' ? chordOf(outline) - wallM : Infinity;
  const isInside = (u: number): boolean => {
    const { xM, yM, curvaturePerM } = curve(u, place);
    return yM > 0 && xM < lastXM && wallM * curvaturePerM < 1;
  };
  const thickest = thickestPlace(outline);
  if (!isInside(thickest)) return [];
  const from = lastInside(isInside, thickest, -1);
  const to = lastInside(isInside, thickest, 1);
  const nose = { ...curve(from, place) };
  const tail = { ...curve(to, place) };
  const { upper, lower } = bothHalves(curve, from, to);
  return [...upper, ...straight(nose.xM, -nose.yM), ...lower, ...straight(tail.xM, tail.yM)];
}

/** Parameter of the thickest place: the middle of an ellipse, three tenths of the chord of a four-digit section. */
function thickestPlace({ kind }: SectionOutline): number {
  return kind === 'fairing' ? Math.acos(1 - 2 * 0.3) : Math.PI / 2;
}

function movedInwards(outline: SectionOutline, wallM: number, u: number, out: OutlinePlace): OutlinePlace {
  upperPlace(outline, u, out);
  const stretch = Math.hypot(out.dxM, out.dyM);
  const shrink = 1 - wallM * out.curvaturePerM;
  out.xM += (wallM * out.dyM) / stretch;
  out.yM -= (wallM * out.dxM) / stretch;
  out.dxM *= shrink;
  out.dyM *= shrink;
  return out;
}

/** How far the inside goes from a place that is inside, backwards (-1) or on (1): a step at a time, then by halving. */
function lastInside(isInside: (u: number) => boolean, start: number, direction: -1 | 1): number {
  const step = (direction * Math.PI) / searchSteps;
  const end = direction < 0 ? 0 : Math.PI;
  const isOn = (u: number): boolean => direction * (end - u) > 0 && isInside(u);
  let held = start;
  while (isOn(held + step)) held += step;
  let beyond = direction * (end - held - step) > 0 ? held + step : end;
  for (let i = 0; i < halvings; i += 1) {
    const middle = (held + beyond) / 2;
    if (isInside(middle)) held = middle;
    else beyond = middle;
  }
  return held;
}

/** From tail to nose along the top, and back along its mirror image. */
function bothHalves(
  curve: (u: number, out: OutlinePlace) => OutlinePlace,
  from: number,
  to: number,
): { readonly upper: BoundaryNode[]; readonly lower: BoundaryNode[] } {
  const { nodes, weights } = gaussLegendre(arcPoints);
  const out = emptyPlace();
  const upper: BoundaryNode[] = [];
  const lower: BoundaryNode[] = [];
  nodes.forEach((node, i) => {
    const step = (to - from) * weights[i]!;
    const { xM, yM, dxM, dyM } = curve(from + (to - from) * node, out);
    upper.push({ xM, yM, dxM: -step * dxM, dyM: -step * dyM });
    lower.push({ xM, yM: -yM, dxM: step * dxM, dyM: -step * dyM });
  });
  return { upper: upper.reverse(), lower };
}

/** The straight piece that closes an end: upwards at the tail, downwards (half below nothing) at the nose. */
function straight(xM: number, halfM: number): BoundaryNode[] {
  const { nodes, weights } = gaussLegendre(straightPoints);
  return Array.from(nodes, (node, i) => ({
    xM,
    yM: (2 * node - 1) * halfM,
    dxM: 0,
    dyM: 2 * halfM * weights[i]!,
  }));
}
