import type { Saving } from '../physics/ledger/ledgerSums';
import type { Project } from '../project/file/schema';
import type { ItemAccount, PlanAccount } from '../project/ledger/ledgerTypes';
import { itemChangeLabel, itemReasons, itemStatusLabel } from '../project/wording/itemText';
import { columnDecimals, formatQuantity, formatValue, formatValueRange } from '../units/print';
import { layTable, wrap, type TableLine } from './textTable';

/** A plan's items with their savings against the boat as sailed, what they weigh and cost, and why they count or not. */
export function planLines(project: Project, account: PlanAccount): string[] {
  const plan = project.plans.find(({ id }) => id === account.planId);
  const decimals = columnDecimals(
    [account.together, ...account.items.flatMap(savingsOf)].map(({ change }) => change.trackPowerW),
    'W',
  );
  const lines: TableLine[] = account.items.map((item, i) => itemLine(item, i + 1, decimals));
  if (account.isTogetherNamed) {
    const cells = [
      '',
      'together (beyond the savings alone)',
      '',
      '',
      ...savingCells(account.together, decimals),
    ];
    lines.push({ kind: 'cells', cells });
  }
  const { balance } = account;
  lines.push({ kind: 'rule' });
  lines.push({
    kind: 'cells',
    cells: ['', 'Counted items', '', '', '', '', '', mass(balance.massChangeKg), money(balance.cost)],
  });
  return [
    `Plan ${plan?.name ?? account.planId}: track power saved against the boat as sailed`,
    ...layTable(columns(project.currency), lines),
    ...reasonLines(account.items),
    ...momentLines(account),
  ];
}

function columns(currency: string) {
  const number = (head: string) => ({ head, align: 'right' as const });
  return [
    number('item'),
    { head: 'name', align: 'left' as const, most: 44 },
    { head: 'fitting', align: 'left' as const, most: 40 },
    { head: 'status', align: 'left' as const },
    number('in order, W'),
    number('90 % range'),
    number('alone, W'),
    number('mass, kg'),
    number(currency === '' ? 'cost' : `cost, ${currency}`),
  ];
}

function savingsOf({ savingInOrder, savingAlone }: ItemAccount): Saving[] {
  return [savingInOrder, savingAlone].filter((saving): saving is Saving => saving !== null);
}

function itemLine(account: ItemAccount, place: number, decimals: number): TableLine {
  const { item, fitting, status, savingInOrder, savingAlone } = account;
  return {
    kind: 'cells',
    cells: [
      formatValue(place, '1'),
      item.name,
      `${fitting?.name ?? item.fittingId}: ${itemChangeLabel(item.change.kind)}`,
      itemStatusLabel(status),
      ...savingCells(savingInOrder, decimals),
      savingAlone === null ? '' : formatValue(savingAlone.change.trackPowerW, 'W', { decimals }),
      mass(item.massChangeKg),
      money(item.cost),
    ],
  };
}

function savingCells(saving: Saving | null, decimals: number): string[] {
  if (saving === null) return ['', ''];
  const { low, high } = saving.ranges.item.trackPowerW;
  return [
    formatValue(saving.change.trackPowerW, 'W', { decimals }),
    formatValueRange(low, high, 'W', { decimals }),
  ];
}

function mass(massKg: number): string {
  return formatValue(massKg, 'kg', { decimals: 1 });
}

function money(cost: number): string {
  return formatValue(cost, '1', { decimals: Number.isInteger(cost) ? 0 : 2 });
}

function reasonLines(items: readonly ItemAccount[]): string[] {
  return items.flatMap((account, i) => {
    const reasons = itemReasons(account);
    return reasons.length === 0 ? [] : wrap(`Item ${formatValue(i + 1, '1')}: ${reasons.join(' ')}`);
  });
}

/** Where the changed mass sits, as moments about the boat's origin; mass without a place is said to be left out. */
function momentLines({ balance }: PlanAccount): string[] {
  const { massChangeKg, momentXKgM, momentYKgM, momentZKgM, massWithoutPlaceKg } = balance;
  if (massChangeKg === 0 && momentXKgM === 0 && momentYKgM === 0 && momentZKgM === 0) return [];
  const moments = [momentXKgM, momentYKgM, momentZKgM].map((value) => formatValue(value, '1')).join(', ');
  const placeless =
    massWithoutPlaceKg === 0
      ? ''
      : `; without the ${formatQuantity(massWithoutPlaceKg, 'kg')} whose place is not given`;
  return wrap(`Mass moments forward, to port, up: ${moments} kg m${placeless}.`);
}
