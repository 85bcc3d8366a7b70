import type { Change, DoubtedKey } from '../fitting/change';
import { addSource, combinedEnds, emptySum, endsOf } from './combinedEnds';
import { DoubtChange } from './doubtChange';
import { doubtGroup, type DoubtGroup } from './doubtSource';

/** Low and high end of a 90 % range. */
export interface Range {
  readonly low: number;
  readonly high: number;
}

/** Ranges of the doubted entries. `item` leaves wind and density out, `air` holds only them, `all` has both. */
export interface Ranges {
  readonly item: Readonly<Record<DoubtedKey, Range>>;
  readonly air: Readonly<Record<DoubtedKey, Range>>;
  readonly all: Readonly<Record<DoubtedKey, Range>>;
}

/**
 * A weighted sum of doubts: within a source the changes add with their signs. A source that is met once, as most are in
 * a total, is handed on as it is. A part without a weight counts once.
 */
export function sumDoubts(
  parts: readonly { readonly doubts: readonly DoubtChange[]; readonly weight?: number }[],
): DoubtChange[] {
  const byId = new Map<string, DoubtChange>();
  const sums = new Map<string, DoubtChange>();
  for (const { doubts, weight = 1 } of parts) {
    for (const doubt of doubts) {
      const { id } = doubt;
      const first = byId.get(id);
      if (first === undefined && weight === 1) {
        byId.set(id, doubt);
        continue;
      }
      const sum = sums.get(id) ?? sumFrom(id, first);
      sums.set(id, sum);
      byId.set(id, sum);
      sum.add(doubt, weight);
    }
  }
  return [...byId.values()];
}

/** A sum of its own, so that what it begins with stays as it is. */
function sumFrom(id: string, first: DoubtChange | undefined): DoubtChange {
  const sum = new DoubtChange(id);
  if (first !== undefined) sum.add(first, 1);
  return sum;
}

/** Doubts of a difference, a - b, source by source: what both share cancels. */
export function differenceOfDoubts(a: readonly DoubtChange[], b: readonly DoubtChange[]): DoubtChange[] {
  return sumDoubts([
    { doubts: a, weight: 1 },
    { doubts: b, weight: -1 },
  ]);
}

/**
 * The ends of the range of a difference, a - b, in one entry: those of `differenceOfDoubts`, without the other entries.
 * Each list names a source once, as those of a result do.
 */
export function endsOfDifference(
  a: readonly DoubtChange[],
  b: readonly DoubtChange[],
  key: DoubtedKey,
): Range {
  const sum = emptySum();
  for (const doubt of a) {
    const shared = b.find(({ id }) => id === doubt.id);
    const [up, down] = [shared?.upIn(key) ?? 0, shared?.downIn(key) ?? 0];
    addSource(sum, doubt.upIn(key) - up, doubt.downIn(key) - down);
  }
  for (const doubt of b) {
    if (!a.some(({ id }) => id === doubt.id)) addSource(sum, -doubt.upIn(key), -doubt.downIn(key));
  }
  return endsOf(sum);
}

/**
 * Combines doubts into ranges. Each source gives its largest change upwards and its largest downwards; both are the
 * ends of a 90 % range, half the chance to each side. See `combinedEnds` for the sum. A range is worked out when it is
 * first read: a ledger carries many more than a reader looks at.
 */
export function rangesOf(best: Change, doubts: readonly DoubtChange[]): Ranges {
  return new LazyRanges(best, doubts);
}

/** A class, as its parts are: a ledger holds thousands, and getters of plain objects cost each its own. */
class LazyRanges implements Ranges {
  readonly #best: Change;
  readonly #doubts: readonly DoubtChange[];
  #item: GroupRanges | null = null;
  #air: GroupRanges | null = null;
  #all: GroupRanges | null = null;

  constructor(best: Change, doubts: readonly DoubtChange[]) {
    this.#best = best;
    this.#doubts = doubts;
  }

  get item(): Ranges['item'] {
    return (this.#item ??= new GroupRanges(this.#best, this.#doubts, itemOnly));
  }

  get air(): Ranges['air'] {
    return (this.#air ??= new GroupRanges(this.#best, this.#doubts, airOnly));
  }

  get all(): Ranges['all'] {
    return (this.#all ??= new GroupRanges(this.#best, this.#doubts, bothGroups));
  }
}

const itemOnly: readonly DoubtGroup[] = ['item'];
const airOnly: readonly DoubtGroup[] = ['air'];
const bothGroups: readonly DoubtGroup[] = ['item', 'air'];

class GroupRanges implements Record<DoubtedKey, Range> {
  readonly #best: Change;
  readonly #doubts: readonly DoubtChange[];
  readonly #groups: readonly DoubtGroup[];
  readonly #known: Partial<Record<DoubtedKey, Range>> = {};

  constructor(best: Change, doubts: readonly DoubtChange[], groups: readonly DoubtGroup[]) {
    this.#best = best;
    this.#doubts = doubts;
    this.#groups = groups;
  }

  #of(key: DoubtedKey): Range {
    return (this.#known[key] ??= rangeIn(this.#best[key], this.#doubts, this.#groups, key));
  }

  get dragAgainstTrackN(): Range {
    return this.#of('dragAgainstTrackN');
  }

  get sideForceN(): Range {
    return this.#of('sideForceN');
  }

  get heelingMomentNm(): Range {
    return this.#of('heelingMomentNm');
  }

  get airPowerW(): Range {
    return this.#of('airPowerW');
  }

  get trackPowerW(): Range {
    return this.#of('trackPowerW');
  }

  get fullPriceW(): Range {
    return this.#of('fullPriceW');
  }
}

function rangeIn(
  best: number,
  doubts: readonly DoubtChange[],
  groups: readonly DoubtGroup[],
  key: DoubtedKey,
): Range {
  const { low, high } = combinedEnds(doubts, key, ({ id }) => groups.includes(doubtGroup(id)));
  return { low: best + low, high: best + high };
}

/** True when zero lies outside the range: the sign of a difference, and so the order of two rows, is safe. */
export function excludesZero(range: Range): boolean {
  return range.low > 0 || range.high < 0;
}
