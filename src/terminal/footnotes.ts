import type { Notice } from '../physics/fitting/notice';
import type { RowResult } from '../physics/ledger/ledgerSums';
import type { LedgerRow, ProjectLedger } from '../project/ledger/ledgerTypes';
import { noticeText } from '../project/wording/noticeText';
import { formatQuantity } from '../units/print';
import { formatCount } from './figures';
import { wrap } from './textTable';

/** What a reader must know about some rows: one note for each kind, in the words of the first row that has it. */
export interface Footnote {
  readonly text: string;
  readonly numbers: readonly number[];
  /** False when the other rows say the same with other values. */
  readonly isSameForAll: boolean;
}

/** Names of the ledger's conditions by id. */
type ConditionNames = ReadonlyMap<string, string>;

interface Remark {
  /** Remarks of one kind share a footnote. */
  readonly kind: string;
  readonly text: string;
}

/** All footnotes in the order in which the file's rows first need them. */
export function footnotesOf({ rows, question, parts }: ProjectLedger): Footnote[] {
  const names = new Map(parts.map(({ summary }) => [summary.condition.id, summary.condition.name]));
  const byKind = new Map<string, Footnote>();
  for (const row of rows) {
    for (const { kind, text } of remarksOf(row, question.planId !== null, names)) {
      const known = byKind.get(kind) ?? { text, numbers: [], isSameForAll: true };
      byKind.set(kind, {
        text: known.text,
        numbers: [...known.numbers, row.number],
        isSameForAll: known.isSameForAll && known.text === text,
      });
    }
  }
  return [...byKind.values()];
}

/** "[1][3]": the marks of a row. */
export function marksOf(row: LedgerRow, footnotes: readonly Footnote[]): string {
  return footnotes
    .map(({ numbers }, i) => (numbers.includes(row.number) ? `[${formatCount(i + 1)}]` : ''))
    .join('');
}

export function footnoteLines(footnotes: readonly Footnote[]): string[] {
  return footnotes.flatMap(({ text, numbers, isSameForAll }, i) => {
    const [first, ...others] = numbers.map(formatCount);
    const rows = isSameForAll
      ? `No. ${numbers.map(formatCount).join(', ')}`
      : `No. ${first ?? ''}; with other values No. ${others.join(', ')}`;
    return wrap(`[${formatCount(i + 1)}] ${text} (${rows})`, '    ');
  });
}

/** A row's remarks before, and those that only the plan brings. */
function remarksOf(row: LedgerRow, hasPlan: boolean, names: ConditionNames): Remark[] {
  const before = onePerKind([
    ...row.notices.map((notice) => fromNotice(notice, row.before, names)),
    ...emptyWhenStowed(row.before),
    ...(row.fitting.flags.safetyRequired ? [{ kind: 'safety-required', text: 'Safety-required.' }] : []),
  ]);
  if (!hasPlan || !row.isChanged) return before;
  const after = onePerKind([
    ...row.after.notices.map((notice) => fromNotice(notice, row.after, names)),
    ...emptyWhenStowed(row.after),
  ]);
  const brought = after.filter(({ kind }) => !before.some((remark) => remark.kind === kind));
  return [
    ...before,
    ...brought.map(({ kind, text }) => ({ kind: `after:${kind}`, text: `After the plan: ${text}` })),
  ];
}

/** A notice that holds in some conditions of a profile only says in which. */
function fromNotice(notice: Notice, { parts }: RowResult, names: ConditionNames): Remark {
  const text = noticeText(notice);
  const where = parts.filter(({ trace }) => trace.notices.some(({ code }) => code === notice.code));
  if (where.length === 0 || where.length === parts.length) return { kind: notice.code, text };
  const named = where.map(({ conditionId }) => names.get(conditionId) ?? conditionId);
  return { kind: notice.code, text: `${named.join('; ')}: ${text}` };
}

function onePerKind(remarks: readonly Remark[]): Remark[] {
  return remarks.filter(({ kind }, i) => remarks.findIndex((other) => other.kind === kind) === i);
}

/** A fitting that is out of use at times and leaves nothing then: a default that must be said. */
function emptyWhenStowed({ parts }: RowResult): Remark[] {
  const idle = parts.filter(
    ({ trace }) =>
      trace.dutyFraction < 1 && trace.stowed.airPowerW === 0 && trace.stowed.dragAgainstTrackN === 0,
  );
  if (idle.length === 0) return [];
  const share = idle.reduce((sum, part) => sum + part.weight * (1 - part.trace.dutyFraction), 0);
  return [
    {
      kind: 'empty-when-stowed',
      text: `Out of use ${formatQuantity(share, '%')} of the time; stowed it is counted with no drag area.`,
    },
  ];
}
