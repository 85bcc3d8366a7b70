import { doubtedKeys, type Change, type DoubtedKey } from '../../physics/fitting/change';
import { outcomeQuantities } from '../../physics/fitting/outcome';
import type { Ranges } from '../../physics/doubt/doubts';
import type { Project } from '../file/schema';
import type { LedgerRow, ProjectLedger } from '../ledger/ledgerTypes';
import { shapeNames } from '../wording/shapeNames';
import { writeCsv, type CsvCell } from './writeCsv';

interface LedgerColumn {
  readonly head: string;
  readonly cell: (row: LedgerRow) => CsvCell;
}

/**
 * The ledger as a CSV file: one row for each fitting in the project's order, in SI at full precision, units in the heads.
 * For before, after and saving each quantity has its best value and both ends of its 90 % range by the fitting's own
 * doubts (wind and density apart, as in the ledger). A fitting that is left out of the sums has no numbers.
 */
export function ledgerCsv(project: Project, ledger: ProjectLedger): string {
  const columns = [...namingColumns(project, ledger), ...quantityColumns(ledger)];
  return writeCsv([
    columns.map(({ head }) => head),
    ...ledger.rows.map((row) => columns.map(({ cell }) => cell(row))),
  ]);
}

function namingColumns(project: Project, ledger: ProjectLedger): LedgerColumn[] {
  const zoneNames = new Map(project.zones.map(({ id, name }) => [id, name]));
  const [basis, plan, against] = questionTexts(project, ledger);
  return [
    { head: 'Number', cell: ({ number }) => number },
    { head: 'Fitting', cell: ({ fitting }) => fitting.name },
    { head: 'Zone', cell: ({ fitting }) => zoneNames.get(fitting.zoneId) ?? '' },
    { head: 'Shape', cell: ({ fitting }) => shapeNames[fitting.shape.kind] },
    { head: 'Mass (kg)', cell: ({ fitting }) => fitting.massKg },
    { head: 'Safety-required', cell: ({ fitting }) => yesOrNo(fitting.flags.safetyRequired) },
    { head: 'Left out because', cell: ({ excludedReason }) => excludedReason },
    { head: 'Rank before', cell: ({ rank }) => rank },
    { head: 'Changed', cell: ({ isChanged }) => yesOrNo(isChanged) },
    { head: 'Saving waits for a reason', cell: ({ withheldItemIds }) => yesOrNo(withheldItemIds.length > 0) },
    { head: 'Condition or course', cell: () => basis },
    { head: 'Plan', cell: () => plan },
    { head: 'Against plan', cell: () => against },
  ];
}

function yesOrNo(isSo: boolean): string {
  return isSo ? 'yes' : 'no';
}

/** Names of the condition or course, the plan, and the plan compared with; '' for the boat as sailed. */
function questionTexts(
  project: Project,
  { question, parts }: ProjectLedger,
): readonly [string, string, string] {
  const planName = (id: string | null): string => project.plans.find((plan) => plan.id === id)?.name ?? '';
  const basis =
    question.basis.kind === 'profile'
      ? (project.profile?.name ?? '')
      : (parts[0]?.summary.condition.name ?? '');
  return [basis, planName(question.planId), planName(question.againstPlanId)];
}

interface Side {
  readonly name: string;
  readonly values: (row: LedgerRow) => { readonly best: Change; readonly ranges: Ranges };
}

const sides: readonly Side[] = [
  { name: 'before', values: ({ before }) => ({ best: before.outcome, ranges: before.ranges }) },
  { name: 'after', values: ({ after }) => ({ best: after.outcome, ranges: after.ranges }) },
  { name: 'saving', values: ({ saving }) => ({ best: saving.change, ranges: saving.ranges }) },
];

function quantityColumns({ hasFullPrice }: ProjectLedger): LedgerColumn[] {
  const keys = doubtedKeys.filter((key) => key !== 'fullPriceW' || hasFullPrice);
  return keys.flatMap((key) => sides.flatMap((side) => columnsOf(key, side)));
}

function columnsOf(key: DoubtedKey, { name, values }: Side): LedgerColumn[] {
  const { label, unit } = outcomeQuantities[key];
  const column = (part: string, of: (row: LedgerRow) => number): LedgerColumn => ({
    head: `${label}, ${name}${part} (${unit})`,
    cell: (row) => (row.excludedReason === null ? of(row) : null),
  });
  return [
    column('', (row) => values(row).best[key]),
    column(', low', (row) => values(row).ranges.item[key].low),
    column(', high', (row) => values(row).ranges.item[key].high),
  ];
}
