import { doubtedKeys, type Change, type DoubtedKey } from '../physics/fitting/change';
import { outcomeQuantities } from '../physics/fitting/outcome';
import type { Ranges } from '../physics/doubt/doubts';
import type { ProjectLedger } from '../project/ledger/ledgerTypes';
import { formatQuantity, printUnit } from '../units/print';
import { formatAt, formatRangeAt, placesOf } from './figures';
import { hasTwoSides } from './rowTable';
import { layTable, type Column, type TableLine } from './textTable';

interface Side {
  readonly head: string;
  readonly value: Change;
  readonly ranges: Ranges;
}

/** Totals of the forces that act; the range that the fittings make apart from the one that wind and density make. */
export function totalsTable(ledger: ProjectLedger): string[] {
  const { before, after, saving } = ledger.forces;
  const sides: Side[] = [{ head: 'before', value: before.outcome, ranges: before.ranges }];
  if (hasTwoSides(ledger)) {
    sides.push({ head: 'after', value: after.outcome, ranges: after.ranges });
    sides.push({ head: 'saving', value: saving.change, ranges: saving.ranges });
  }
  const keys = doubtedKeys.filter((key) => key !== 'fullPriceW' || ledger.hasFullPrice);
  const columns: Column[] = [
    { head: 'Forces that act, total', align: 'left' },
    ...sides.flatMap(({ head }): Column[] => [
      { head, align: 'right' },
      { head: 'fittings', align: 'right' },
      { head: 'wind, density', align: 'right' },
    ]),
  ];
  return [
    ...layTable(
      columns,
      keys.map((key) => quantityLine(key, sides)),
    ),
    ...yardstick(ledger),
  ];
}

function quantityLine(key: DoubtedKey, sides: readonly Side[]): TableLine {
  const { label, unit } = outcomeQuantities[key];
  const [name = label] = label.split(' about the ');
  const decimals = placesOf(
    sides.map(({ value }) => value[key]),
    unit,
  );
  const cells = sides.flatMap(({ value, ranges }) => [
    formatAt(value[key], unit, decimals),
    formatRangeAt(ranges.item[key], unit, decimals),
    formatRangeAt(ranges.air[key], unit, decimals),
  ]);
  return { kind: 'cells', cells: [`${name}, ${printUnit(unit)}`, ...cells] };
}

/** The total as a share of what the boat pays in all, where that was given. */
function yardstick({ forces, totalPaidW }: ProjectLedger): string[] {
  if (totalPaidW === null || totalPaidW === 0) return [];
  const share = formatQuantity(forces.before.outcome.trackPowerW / totalPaidW, '%');
  return [
    `Track power before is ${share} of the ${formatQuantity(totalPaidW, 'W')} that the boat pays in all.`,
  ];
}
