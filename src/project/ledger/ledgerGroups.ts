import { savingOf, totalOf, zeroSaving } from '../../physics/ledger/ledgerSums';
import type { LedgerRow, LedgerSide, ProjectLedger } from './ledgerTypes';

/** A stretch of the ledger with a head and a sum of its own: a zone, or the rows that push the boat along. */
export interface LedgerGroup {
  readonly id: string;
  readonly name: string;
  /** How many rows of the zone stand among those that push instead. */
  readonly pushingElsewhere: number;
  /** What is summed, the costliest first. */
  readonly rows: readonly LedgerRow[];
  readonly sum: LedgerSide;
  /** Left out of every sum, with a reason. */
  readonly excluded: readonly LedgerRow[];
}

/** The rows as the ledger shows them: zone by zone in the file's order, then those that push; empty groups are left out. */
export function ledgerGroups(ledger: ProjectLedger): LedgerGroup[] {
  const counted = ledger.rows.filter(({ excludedReason }) => excludedReason === null).sort(byCost);
  const zones = ledger.zones.map(({ zone, fittingIds }) => {
    const own = counted.filter(({ fittingId }) => fittingIds.includes(fittingId));
    const rows = own.filter((row) => !pushes(row));
    return {
      id: `zone-${zone.id}`,
      name: zone.name,
      pushingElsewhere: own.length - rows.length,
      rows,
      sum: rememberedSum(rows),
      excluded: ledger.rows.filter(
        ({ fittingId, excludedReason }) => excludedReason !== null && fittingIds.includes(fittingId),
      ),
    };
  });
  const pushing = counted.filter(pushes).reverse();
  const push: LedgerGroup = {
    id: 'pushing',
    name: 'Rows that push the boat along',
    pushingElsewhere: 0,
    rows: pushing,
    sum: rememberedSum(pushing),
    excluded: [],
  };
  lastSums = [...zones, push];
  return [...zones, push].filter(({ rows, excluded }) => rows.length + excluded.length > 0);
}

function byCost(a: LedgerRow, b: LedgerRow): number {
  return b.before.outcome.trackPowerW - a.before.outcome.trackPowerW || a.number - b.number;
}

function pushes({ before }: LedgerRow): boolean {
  return before.outcome.trackPowerW < 0;
}

let lastSums: readonly { readonly rows: readonly LedgerRow[]; readonly sum: LedgerSide }[] = [];

/** The sum of a group that no edit touched is the one before: neither its ranges nor its head are worked out anew. */
function rememberedSum(rows: readonly LedgerRow[]): LedgerSide {
  return lastSums.find((last) => haveSameResults(last.rows, rows))?.sum ?? sumOf(rows);
}

function haveSameResults(a: readonly LedgerRow[], b: readonly LedgerRow[]): boolean {
  return (
    a.length === b.length && a.every((row, i) => row.before === b[i]?.before && row.after === b[i].after)
  );
}

function sumOf(rows: readonly LedgerRow[]): LedgerSide {
  const before = totalOf(rows.map((row) => row.before));
  // Most groups are not touched by the plan.
  if (rows.every((row) => row.before === row.after)) return { before, after: before, saving: zeroSaving };
  const after = totalOf(rows.map((row) => row.after));
  return { before, after, saving: savingOf(before, after) };
}

/** The rows that can be selected, in the order in which they stand. */
export function selectableIds(groups: readonly LedgerGroup[]): string[] {
  return groups.flatMap(({ rows, excluded }) => [...rows, ...excluded].map(({ fittingId }) => fittingId));
}
