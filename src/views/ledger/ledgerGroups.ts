import { savingOf, totalOf } from '../../physics/ledger/ledgerSums';
import type { LedgerRow, LedgerSide, ProjectLedger } from '../../project/ledger/ledgerTypes';

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
      sum: sumOf(rows),
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
    sum: sumOf(pushing),
    excluded: [],
  };
  return [...zones, push].filter(({ rows, excluded }) => rows.length + excluded.length > 0);
}

function byCost(a: LedgerRow, b: LedgerRow): number {
  return b.before.outcome.trackPowerW - a.before.outcome.trackPowerW || a.number - b.number;
}

function pushes({ before }: LedgerRow): boolean {
  return before.outcome.trackPowerW < 0;
}

function sumOf(rows: readonly LedgerRow[]): LedgerSide {
  const before = totalOf(rows.map((row) => row.before));
  const after = totalOf(rows.map((row) => row.after));
  return { before, after, saving: savingOf(before, after) };
}

/** The rows that can be selected, in the order in which they stand. */
export function selectableIds(groups: readonly LedgerGroup[]): string[] {
  return groups.flatMap(({ rows, excluded }) => [...rows, ...excluded].map(({ fittingId }) => fittingId));
}
