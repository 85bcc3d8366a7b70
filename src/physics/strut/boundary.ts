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
  const halves = bothHalves((u, out) => upperPlace(outline, u, out), 0, Math.PI);
  return tail.yM > 1e-12 * tail.xM ? [...halves, ...straight(tail.xM, tail.yM)] : halves;
}

/**
 * The inside of a wall of constant thickness: every point that lies deeper than the wall below the outer outline, which
 * is the outline moved inwards, without the parts that would cross the chord where the two sides of a thin tail (or of a
 * sharp nose) meet, or reach into the wall behind a blunt tail. Empty where the wall fills the section.
 */
export function innerBoundary(outline: SectionOutline, wallM: number): BoundaryNode[] {
  const curve = (u: number, out: OutlinePlace): OutlinePlace => movedInwards(outline, wallM, u, out);
  const place = emptyPlace();
  const lastXM = outline.kind === 'fairing' ? chordOf(outline) - wallM : Infinity;
  const isInside = (u: number): boolean => {
    const { xM, yM } = curve(u, place);
    return yM > 0 && xM < lastXM;
  };
  const insides = Array.from({ length: searchSteps - 1 }, (_, i) => (Math.PI * (i + 1)) / searchSteps).filter(
    isInside,
  );
  const [first, last] = [insides[0], insides.at(-1)];
  if (first === undefined || last === undefined) return [];
  const from = lastInside(isInside, first, first - Math.PI / searchSteps);
  const to = lastInside(isInside, last, last + Math.PI / searchSteps);
  const { xM, yM } = curve(to, place);
  return [...bothHalves(curve, from, to), ...straight(xM, yM)];
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

function lastInside(isInside: (u: number) => boolean, inside: number, outside: number): number {
  let [held, beyond] = [inside, outside];
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
): BoundaryNode[] {
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
  return [...upper.reverse(), ...lower];
}

/** The straight piece that closes a tail, upwards. */
function straight(xM: number, halfM: number): BoundaryNode[] {
  const { nodes, weights } = gaussLegendre(straightPoints);
  return Array.from(nodes, (node, i) => ({
    xM,
    yM: (2 * node - 1) * halfM,
    dxM: 0,
    dyM: 2 * halfM * weights[i]!,
  }));
}
