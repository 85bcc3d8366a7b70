import type { MemberTrace } from '../physics/fitting/memberTrace';
import type { OutcomeKey } from '../physics/fitting/outcome';
import { savingOf, totalOf, type Result, type RowResult, type Saving } from '../physics/ledger/ledgerSums';
import type { LedgerRow, ProjectLedger } from '../project/ledger/ledgerTypes';
import { formatQuantity } from '../units/print';
import { formatAt, formatCount, formatRangeAt, placesOf } from './figures';
import { marksOf, type Footnote } from './footnotes';
import { layTable, type Column, type TableLine } from './textTable';

interface Group {
  readonly name: string;
  readonly rows: readonly LedgerRow[];
}

/** Decimals of the newtons and of the watts: one place down the whole table, so that the eye can add and subtract. */
interface Places {
  readonly newtons: number;
  readonly watts: number;
}

/** Which of the optional columns stand in the table. */
interface Shown {
  readonly fullPrice: boolean;
  readonly after: boolean;
}

/** The rows by zone, each zone's sum on its head, dearest first; what pushes the boat along stands by itself. */
export function rowTable(ledger: ProjectLedger, footnotes: readonly Footnote[]): string[] {
  const shown: Shown = { fullPrice: ledger.hasFullPrice, after: hasTwoSides(ledger) };
  const places = placesOfRows(ledger.rows);
  const lines: TableLine[] = [];
  for (const { name, rows } of groupsOf(ledger)) {
    lines.push({ kind: 'cells', cells: sumCells(name, ledger.rows, rows, shown, places) });
    for (const row of rows) lines.push({ kind: 'cells', cells: rowCells(row, footnotes, shown, places) });
  }
  lines.push({ kind: 'rule' });
  lines.push({ kind: 'cells', cells: sumCells('Total', ledger.rows, counted(ledger.rows), shown, places) });
  return layTable(columnsOf(shown), lines);
}

/** True when the ledger compares two states of the boat. */
export function hasTwoSides({ question }: ProjectLedger): boolean {
  return question.planId !== null || question.againstPlanId !== null;
}

function columnsOf(shown: Shown): Column[] {
  const number = (head: string): Column => ({ head, align: 'right' });
  return [
    number('No.'),
    { head: 'fitting', align: 'left', most: 34 },
    number('rank'),
    number('force, N'),
    number('track, W'),
    number('90 % range'),
    number('air, W'),
    ...(shown.fullPrice ? [number('full price, W')] : []),
    { head: 'Cd (range), or CdA', align: 'left' },
    { head: 'regime', align: 'left', most: 18 },
    ...(shown.after ? [number('after, W'), number('saving, W'), number('90 % range')] : []),
    { head: '', align: 'left' },
  ];
}

function counted(rows: readonly LedgerRow[]): LedgerRow[] {
  return rows.filter(({ excludedReason }) => excludedReason === null);
}

function groupsOf({ zones, rows }: ProjectLedger): Group[] {
  const dearestFirst = counted(rows).sort(
    (a, b) =>
      b.before.outcome.trackPowerW - a.before.outcome.trackPowerW ||
      b.before.outcome.dragAgainstTrackN - a.before.outcome.dragAgainstTrackN ||
      a.number - b.number,
  );
  const pushing = dearestFirst.filter(pushes);
  const groups = zones.map(({ zone }) => ({
    name: zone.name,
    rows: dearestFirst.filter((row) => row.fitting.zoneId === zone.id && !pushes(row)),
  }));
  // The strongest push first.
  groups.push({ name: 'Pushing the boat along', rows: pushing.reverse() });
  return groups.filter((group) => group.rows.length > 0);
}

function pushes({ before }: LedgerRow): boolean {
  return before.outcome.trackPowerW < 0;
}

function placesOfRows(rows: readonly LedgerRow[]): Places {
  const of = (key: OutcomeKey): number[] =>
    rows.flatMap(({ before, after }) => [before.outcome[key], after.outcome[key]]);
  return {
    newtons: placesOf(of('dragAgainstTrackN'), 'N'),
    watts: placesOf(of('trackPowerW'), 'W'),
  };
}

function rowCells(row: LedgerRow, footnotes: readonly Footnote[], shown: Shown, places: Places): string[] {
  return [
    formatCount(row.number),
    `  ${row.fitting.name}`,
    rankText(row),
    ...resultCells(row.before, shown, places),
    coefficientText(row.before),
    [...new Set(membersOf(row.before).map(({ regime }) => regime))].join(', '),
    ...(shown.after ? rowAfterCells(row, places) : []),
    marksOf(row, footnotes),
  ];
}

/** "3", or "3~" where doubt could put the next row before this one. */
function rankText({ rank, isRankSafe }: LedgerRow): string {
  if (rank === null) return '';
  return `${formatCount(rank)}${isRankSafe === false ? '~' : ' '}`;
}

function sumCells(
  name: string,
  all: readonly LedgerRow[],
  rows: readonly LedgerRow[],
  shown: Shown,
  places: Places,
): string[] {
  const before = totalOf(rows.map((row) => row.before));
  const after = totalOf(rows.map((row) => row.after));
  const changed = all.some((row) => rows.includes(row) && row.isChanged);
  return [
    '',
    name,
    '',
    ...resultCells(before, shown, places),
    '',
    '',
    ...(shown.after ? afterCells(after, changed ? savingOf(before, after) : null, places) : []),
  ];
}

function resultCells({ outcome, ranges }: Result, shown: Shown, places: Places): string[] {
  const watts = (value: number): string => formatAt(value, 'W', places.watts);
  return [
    formatAt(outcome.dragAgainstTrackN, 'N', places.newtons),
    watts(outcome.trackPowerW),
    formatRangeAt(ranges.item.trackPowerW, 'W', places.watts),
    watts(outcome.airPowerW),
    ...(shown.fullPrice ? [watts(outcome.fullPriceW)] : []),
  ];
}

/** A row whose item waits for a reason says so where its saving would stand. */
function rowAfterCells(row: LedgerRow, places: Places): string[] {
  const [left = '', ...saved] = afterCells(row.after, row.isChanged ? row.saving : null, places);
  return row.withheldItemIds.length > 0 && !row.isChanged ? [left, 'waits', ''] : [left, ...saved];
}

/** After, and what it saves; the saving stays blank where nothing was changed. */
function afterCells(after: Result, saving: Saving | null, places: Places): string[] {
  const left = formatAt(after.outcome.trackPowerW, 'W', places.watts);
  if (saving === null) return [left, '', ''];
  return [
    left,
    formatAt(saving.change.trackPowerW, 'W', places.watts),
    formatRangeAt(saving.ranges.item.trackPowerW, 'W', places.watts),
  ];
}

function membersOf({ parts }: RowResult): MemberTrace[] {
  return parts.flatMap(({ trace }) => trace.members);
}

/** "1.17 (1.00–1.30)"; over several members or conditions from the least to the most; a measured area as such. */
function coefficientText(row: RowResult): string {
  const members = membersOf(row);
  const known = (key: 'coefficientBest' | 'coefficientLow' | 'coefficientHigh'): number[] =>
    members.map((member) => member[key]).filter((value): value is number => value !== null);
  const best = known('coefficientBest');
  if (best.length > 0) {
    const low = Math.min(...known('coefficientLow'));
    const high = Math.max(...known('coefficientHigh'));
    return `${spread(best, (value) => formatAt(value, '1', 2))} (${formatRangeAt({ low, high }, '1', 2)})`;
  }
  const areas = members.map(({ dragAreaM2 }) => dragAreaM2);
  return areas.length === 0 ? '' : spread(areas, (value) => formatQuantity(value, 'm2'));
}

/** One value, or "least to most" where they differ as printed. */
function spread(values: readonly number[], print: (value: number) => string): string {
  const least = print(Math.min(...values));
  const most = print(Math.max(...values));
  return least === most ? least : `${least} to ${most}`;
}
