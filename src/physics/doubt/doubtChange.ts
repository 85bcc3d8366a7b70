import type { SailingState } from '../condition/sailingState';
import {
  changeAt,
  doubtedKeys,
  numbersPerChange,
  writeChange,
  type Change,
  type DoubtedKey,
} from '../fitting/change';
import type { Sums } from '../fitting/outcome';

/** Up and down. */
const numbersPerDoubt = 2 * numbersPerChange;
const doubtsPerStretch = 256;

/**
 * Doubts stand one after the other in stretches of numbers. A ledger keeps thousands of doubts and every key of the wind
 * makes them anew: as objects of their own they cost more in collecting garbage than in working them out.
 */
let stretch = new Float64Array(0);
let used = 0;

const placeOf = Object.fromEntries(doubtedKeys.map((key, i) => [key, i])) as Record<DoubtedKey, number>;

/**
 * What one doubt changes: the outcome with the doubt at its high state less the best outcome, and the same for its low
 * state. Either may have either sign; for a doubt between methods the two states are the two other methods.
 */
export class DoubtChange {
  readonly id: string;
  readonly #numbers: Float64Array;
  readonly #from: number;

  /** A doubt that changes nothing until it is written. */
  constructor(id: string) {
    if (used === stretch.length) {
      stretch = new Float64Array(doubtsPerStretch * numbersPerDoubt);
      used = 0;
    }
    this.id = id;
    this.#numbers = stretch;
    this.#from = used;
    used += numbersPerDoubt;
  }

  get up(): Change {
    return changeAt(this.#numbers, this.#from);
  }

  get down(): Change {
    return changeAt(this.#numbers, this.#from + numbersPerChange);
  }

  /** One entry of `up`. */
  upIn(key: DoubtedKey): number {
    return this.#numbers[this.#from + placeOf[key]]!;
  }

  /** One entry of `down`. */
  downIn(key: DoubtedKey): number {
    return this.#numbers[this.#from + numbersPerChange + placeOf[key]]!;
  }

  /** The change of the sums at the high state, priced by a state. */
  writeUp(change: Sums, state: SailingState): void {
    writeChange(change, state, this.#numbers, this.#from);
  }

  /** The change of the sums at the low state, priced by a state. */
  writeDown(change: Sums, state: SailingState): void {
    writeChange(change, state, this.#numbers, this.#from + numbersPerChange);
  }

  /** Adds `weight` times both changes of another doubt. */
  add(other: DoubtChange, weight: number): void {
    const [into, from] = [this.#numbers, this.#from];
    const [added, addedFrom] = [other.#numbers, other.#from];
    for (let i = 0; i < numbersPerDoubt; i += 1) into[from + i]! += weight * added[addedFrom + i]!;
  }

  /** Sets both changes. */
  set(up: Change, down: Change): void {
    for (const [i, key] of doubtedKeys.entries()) {
      this.#numbers[this.#from + i] = up[key];
      this.#numbers[this.#from + numbersPerChange + i] = down[key];
    }
  }
}

/** A doubt of two changes that are at hand. */
export function doubtChange(id: string, up: Change, down: Change): DoubtChange {
  const doubt = new DoubtChange(id);
  doubt.set(up, down);
  return doubt;
}
