import type { Saving } from '../physics/ledger/ledgerSums';
import type { Project } from '../project/file/schema';
import type { ItemAccount, PlanAccount } from '../project/ledger/ledgerTypes';
import { itemChangeLabel, itemReasons, itemStatusLabel } from '../project/wording/itemText';
import { formatQuantity, formatValue } from '../units/print';
import { formatAt, formatCount, formatRangeAt, placesOf } from './figures';
import { layTable, wrap, type TableLine } from './textTable';

/** Decimals that the columns of a plan share. */
interface Places {
  readonly watts: number;
  readonly mass: number;
  readonly cost: number;
}

/** A plan's items with their savings against the boat as sailed, what they weigh and cost, and why they count or not. */
export function planLines(project: Project, account: PlanAccount): string[] {
  const plan = project.plans.find(({ id }) => id === account.planId);
  const { balance, together, items } = account;
  const places = placesOfPlan(account);
  const lines: TableLine[] = items.map((item, i) => itemLine(item, i + 1, places));
  if (account.isTogetherNamed) {
    const cells = ['', 'together (beyond the savings alone)', '', '', ...savingCells(together, places.watts)];
    lines.push({ kind: 'cells', cells });
  }
  lines.push({ kind: 'rule' });
  const sums = [formatAt(balance.massChangeKg, 'kg', places.mass), formatAt(balance.cost, '1', places.cost)];
  lines.push({ kind: 'cells', cells: ['', 'Counted items', '', '', '', '', '', ...sums] });
  return [
    `Plan ${plan?.name ?? account.planId}: track power saved against the boat as sailed`,
    ...layTable(columns(project.currency), lines),
    ...reasonLines(items),
    ...momentLines(account),
  ];
}

function placesOfPlan({ items, together, balance }: PlanAccount): Places {
  const savings = [together, ...items.flatMap(savingsOf)];
  const masses = [balance.massChangeKg, ...items.map(({ item }) => item.massChangeKg)];
  return {
    watts: placesOf(
      savings.map(({ change }) => change.trackPowerW),
      'W',
    ),
    mass: placesOf(masses, 'kg'),
    cost: items.every(({ item }) => Number.isInteger(item.cost)) ? 0 : 2,
  };
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

function itemLine(account: ItemAccount, place: number, places: Places): TableLine {
  const { item, fitting, status, savingInOrder, savingAlone } = account;
  return {
    kind: 'cells',
    cells: [
      formatCount(place),
      item.name,
      `${fitting?.name ?? item.fittingId}: ${itemChangeLabel(item.change)}`,
      itemStatusLabel(status),
      ...savingCells(savingInOrder, places.watts),
      savingAlone === null ? '' : formatAt(savingAlone.change.trackPowerW, 'W', places.watts),
      formatAt(item.massChangeKg, 'kg', places.mass),
      formatAt(item.cost, '1', places.cost),
    ],
  };
}

function savingCells(saving: Saving | null, decimals: number): string[] {
  if (saving === null) return ['', ''];
  return [
    formatAt(saving.change.trackPowerW, 'W', decimals),
    formatRangeAt(saving.ranges.item.trackPowerW, 'W', decimals),
  ];
}

function reasonLines(items: readonly ItemAccount[]): string[] {
  return items.flatMap((account, i) => {
    const reasons = itemReasons(account);
    return reasons.length === 0 ? [] : wrap(`Item ${formatCount(i + 1)}: ${reasons.join(' ')}`);
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
