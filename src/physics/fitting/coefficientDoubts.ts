import { clearSums, zeroSums, type Sums } from './outcome';

/** What one coefficient changes: the sums of (state - best) for its high and its low state. */
export interface CoefficientEntry {
  readonly up: Sums;
  readonly down: Sums;
}

/**
 * Collects what each coefficient of a fitting changes, source by source. A fitting has a handful of sources, so they are
 * looked through one by one; what is collected is used again after `clear`, since a ledger asks for hundreds of fittings.
 */
export class CoefficientDoubts {
  readonly #ids: string[] = [];
  readonly #entries: CoefficientEntry[] = [];
  #count = 0;

  clear(): void {
    this.#count = 0;
  }

  /** The entry of a source, nothing in it at first use. */
  entry(source: string): CoefficientEntry {
    for (let i = 0; i < this.#count; i += 1) {
      if (this.#ids[i] === source) return this.#entries[i]!;
    }
    return this.#begin(source);
  }

  /** In the order of first use. */
  map<Answer>(answer: (id: string, entry: CoefficientEntry) => Answer): Answer[] {
    return this.#ids.slice(0, this.#count).map((id, i) => answer(id, this.#entries[i]!));
  }

  #begin(source: string): CoefficientEntry {
    const at = this.#count;
    this.#count += 1;
    this.#ids[at] = source;
    const entry = (this.#entries[at] ??= { up: zeroSums(), down: zeroSums() });
    clearSums(entry.up);
    clearSums(entry.down);
    return entry;
  }
}
