import { smoothStep } from '../numerics/smoothStep';

/** An end in open air, an end on a large surface (deck, hull, sail), an end joined to another member. */
export type EndKind = 'free' | 'surface' | 'joined';
export type EndMethod = 'dnv' | 'en';

/** DNV-RP-C205 reduction for finite length, circular cylinder, both ends free: [l/d, Re < 2e5, Re >= 2e5]. Source: dnv-rp-c205. */
export const dnvEndNodes: readonly (readonly [
  slenderness: number,
  subcritical: number,
  supercritical: number,
])[] = [
  [2, 0.58, 0.8],
  [5, 0.62, 0.8],
  [10, 0.68, 0.82],
  [20, 0.74, 0.9],
  [40, 0.82, 0.98],
  [50, 0.87, 0.99],
  [100, 0.98, 1.0],
  // 1 from l/d 200 up: assumed, the table ends at 100.
  [200, 1.0, 1.0],
];

/** The table changes column at Re 2e5; a step there would be none of the air's doing, so it is a ramp a factor of two wide. */
const columnRampFrom = Math.log10(2e5 / Math.SQRT2);
const columnRampTo = Math.log10(2e5 * Math.SQRT2);

/** Largest slenderness that EN's table 7.16 hands on for members under 15 m. */
export const enLargestSlenderness = 70;

/**
 * Slenderness the tables are entered with: length over diameter, doubled when one end is closed (on a large surface
 * the flow is mirrored there; joined, the other member closes it), infinite when both are.
 */
export function effectiveSlenderness(lengthOverWidth: number, ends: readonly [EndKind, EndKind]): number {
  const closed = (ends[0] === 'free' ? 0 : 1) + (ends[1] === 'free' ? 0 : 1);
  return closed === 2 ? Infinity : lengthOverWidth * (1 + closed);
}

/**
 * Factor on the two-dimensional coefficient by DNV-RP-C205, straight lines against log10(l/d); held below l/d 2.
 * @param logCrisisReynolds log10 of the member's Reynolds number, as it counts towards the crisis.
 */
export function dnvEndFactor(slenderness: number, logCrisisReynolds: number): number {
  if (slenderness >= 200) return 1;
  const supercriticalShare = smoothStep(columnRampFrom, columnRampTo, logCrisisReynolds);
  let i = 0;
  while (i < dnvEndNodes.length - 2 && dnvEndNodes[i + 1]![0] <= slenderness) i += 1;
  const [left, leftSub, leftSuper] = dnvEndNodes[i]!;
  const [right, rightSub, rightSuper] = dnvEndNodes[i + 1]!;
  const share = Math.max(Math.log(slenderness / left) / Math.log(right / left), 0);
  const subcritical = leftSub + share * (rightSub - leftSub);
  const supercritical = leftSuper + share * (rightSuper - leftSuper);
  return subcritical + supercriticalShare * (supercritical - subcritical);
}

/**
 * psi_lambda of EN 1991-1-4:2005 fig. 7.36 for a solid item, straight lines against log10(lambda) through (1, 0.60),
 * (10, 0.70), (70, 0.91). Members under 15 m enter with at most 70. Source: en-1991-1-4.
 */
export function enEndFactor(slenderness: number): number {
  const lambda = Math.min(Math.max(slenderness, 1), enLargestSlenderness);
  if (lambda <= 10) return 0.6 + 0.1 * Math.log10(lambda);
  return 0.7 + (0.21 * Math.log10(lambda / 10)) / Math.log10(7);
}

/**
 * EN's factor where EN has one; from slenderness 70, where its rule stops at 0.91, fading to 1 at 200, so that a long
 * wire is not charged with the edge of a table.
 */
function enEndFactorExtended(slenderness: number): number {
  if (slenderness >= 200) return 1;
  if (slenderness <= enLargestSlenderness) return enEndFactor(slenderness);
  return 0.91 + (0.09 * Math.log(slenderness / enLargestSlenderness)) / Math.log(200 / enLargestSlenderness);
}

/** The chosen method's factor. */
export function endFactor(method: EndMethod, slenderness: number, logCrisisReynolds: number): number {
  return method === 'dnv' ? dnvEndFactor(slenderness, logCrisisReynolds) : enEndFactorExtended(slenderness);
}
