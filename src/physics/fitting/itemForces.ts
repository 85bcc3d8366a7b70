import type { SailingState } from '../condition/sailingState';
import { endsDoubtId, endTableDoubtId } from '../doubt/doubtSource';
import { DoubtChange } from '../doubt/doubtChange';
import { CoefficientDoubts } from './coefficientDoubts';
import { isMemberShape, type FittingInput } from './fittingInput';
import { addSums, clearSums, zeroSums, type Sums } from './outcome';
import { ownVariants } from './ownDoubts';
import {
  layMembers,
  sumDeployed,
  sumMean,
  sumStowed,
  type LaidMembers,
  type MemberVisitor,
  type Methods,
} from './sumFitting';

interface LaidVariant {
  readonly id: string;
  readonly up: FittingInput;
  readonly upLaid: LaidMembers;
  readonly down: FittingInput;
  readonly downLaid: LaidMembers;
}

/** A fitting and its own doubts laid in the track's frame: serves every state of the same heel, leeway, tack and rise. */
export interface LaidFitting {
  readonly fitting: FittingInput;
  readonly laid: LaidMembers;
  readonly variants: readonly LaidVariant[];
}

/** What a fitting does in one state of the air, with the doubts that come with the sum. */
export interface ItemForces {
  readonly deployed: Sums;
  readonly stowed: Sums;
  /** d x deployed + (1 - d) x stowed. */
  readonly mean: Sums;
  /** Of the coefficients: collected on the way. */
  readonly coefficientDoubts: readonly DoubtChange[];
}

const deployedDoubts = new CoefficientDoubts();
const stowedDoubts = new CoefficientDoubts();
const scratchSums = zeroSums();

export function layFitting(fitting: FittingInput, state: SailingState): LaidFitting {
  const laid = layMembers(fitting, state);
  const variants = ownVariants(fitting).map(({ id, up, down, movesMembers }) => ({
    id,
    up,
    upLaid: movesMembers ? layMembers(up, state) : laid,
    down,
    downLaid: movesMembers ? layMembers(down, state) : laid,
  }));
  return { fitting, laid, variants };
}

/** Sums a laid fitting with the doubts of its coefficients. */
export function itemForces(
  laidFitting: LaidFitting,
  state: SailingState,
  methods: Methods,
  dutyFraction: number,
  visit: MemberVisitor | null = null,
): ItemForces {
  const { fitting, laid } = laidFitting;
  deployedDoubts.clear();
  stowedDoubts.clear();
  const deployed = sumDeployed(fitting, laid, state, methods, deployedDoubts, visit);
  const stowed = sumStowed(fitting, state, stowedDoubts);
  const mean = zeroSums();
  addSums(mean, deployed, dutyFraction);
  addSums(mean, stowed, 1 - dutyFraction);
  return {
    deployed,
    stowed,
    mean,
    coefficientDoubts: [
      ...collected(deployedDoubts, dutyFraction, state),
      ...collected(stowedDoubts, 1 - dutyFraction, state),
    ],
  };
}

/**
 * The doubts that ask for the sum once more, with another input: ends, sizes, length, residual error, exposure. Each costs
 * one or two sums; those of the air are not among them.
 * @param mean the sum with the best input, of {@link itemForces}.
 */
export function inputDoubts(
  laidFitting: LaidFitting,
  state: SailingState,
  methods: Methods,
  dutyFraction: number,
  mean: Sums,
): DoubtChange[] {
  return [
    ...endDoubts(laidFitting.fitting, laidFitting.laid, state, methods, dutyFraction, mean),
    ...ownDoubts(laidFitting, state, methods, dutyFraction, mean),
  ];
}

function collected(doubts: CoefficientDoubts, weight: number, state: SailingState): DoubtChange[] {
  if (weight === 0) return [];
  return doubts.map((id, { up, down }) => {
    const doubt = new DoubtChange(id);
    doubt.writeUp(weighted(up, weight), state);
    doubt.writeDown(weighted(down, weight), state);
    return doubt;
  });
}

/** A factor times sums, in sums that are used again. */
function weighted(sums: Sums, weight: number): Sums {
  if (weight === 1) return sums;
  clearSums(scratchSums);
  addSums(scratchSums, sums, weight);
  return scratchSums;
}

/** Published end-effect tables of free ends scatter by about this much, whichever method is chosen (assumed). */
const endTableDoubt = 0.04;

/** The other published end effect, one state, the chosen method being the best value; and the tables' own scatter. */
function endDoubts(
  fitting: FittingInput,
  laid: LaidMembers,
  state: SailingState,
  methods: Methods,
  duty: number,
  mean: Sums,
): DoubtChange[] {
  const { shape } = fitting;
  if (!isMemberShape(shape) || !shape.ends.includes('free')) return [];
  const other: Methods = { ...methods, ends: methods.ends === 'dnv' ? 'en' : 'dnv' };
  const method = new DoubtChange(endsDoubtId);
  method.writeUp(changeFrom(mean, fitting, laid, state, other, duty), state);
  const deployed = zeroSums();
  addSums(deployed, mean, 1);
  addSums(deployed, sumStowed(fitting, state), duty - 1);
  const table = new DoubtChange(endTableDoubtId);
  table.writeUp(weighted(deployed, endTableDoubt), state);
  table.writeDown(weighted(deployed, -endTableDoubt), state);
  return [method, table];
}

function ownDoubts(
  { variants }: LaidFitting,
  state: SailingState,
  methods: Methods,
  duty: number,
  mean: Sums,
): DoubtChange[] {
  if (duty === 0) return [];
  return variants.map(({ id, up, upLaid, down, downLaid }) => {
    const doubt = new DoubtChange(id);
    doubt.writeUp(changeFrom(mean, up, upLaid, state, methods, duty), state);
    doubt.writeDown(changeFrom(mean, down, downLaid, state, methods, duty), state);
    return doubt;
  });
}

/**
 * What changes when the mean is summed of another fitting, laying, state of the air or choice of methods.
 * @param mean the sum that it changes from.
 * @returns sums that are used again: they are read before the next call.
 */
export function changeFrom(
  mean: Sums,
  fitting: FittingInput,
  laid: LaidMembers,
  state: SailingState,
  methods: Methods,
  duty: number,
): Sums {
  const change = sumMean(fitting, laid, state, methods, duty, scratchSums);
  addSums(change, mean, -1);
  return change;
}
