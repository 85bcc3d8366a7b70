import { totalOf, type Result } from './ledgerSums';

/**
 * Losses against a named reference (heel, foot gap, lifted hull): watts that the boat does not get, as against forces
 * that act on her. They have no air power and no drag area and are summed only among themselves.
 */
export interface Loss {
  readonly id: string;
  readonly label: string;
  /** What the loss is measured against, in words. */
  readonly reference: string;
  readonly result: Result;
}

/** The block of losses with its own sum, kept apart from the forces. */
export interface LossBlock {
  readonly losses: readonly Loss[];
  readonly total: Result;
}

export function lossBlock(losses: readonly Loss[]): LossBlock {
  return { losses, total: totalOf(losses.map(({ result }) => result)) };
}
