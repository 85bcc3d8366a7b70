import type { RowResult } from '../physics/ledger/ledgerSums';
import type { LedgerRow, ProjectLedger } from '../project/ledger/ledgerTypes';
import { noticeText } from '../project/wording/noticeText';
import { formatQuantity } from '../units/print';

/** What a reader must know about some rows: the text once, the numbers of its fittings. */
export interface Footnote {
  readonly text: string;
  readonly numbers: readonly number[];
}

/** All footnotes in the order in which the rows first need them. */
export function footnotesOf({ rows, question }: ProjectLedger): Footnote[] {
  const byText = new Map<string, number[]>();
  for (const row of rows) {
    for (const text of textsOf(row, question.planId !== null)) {
      byText.set(text, [...(byText.get(text) ?? []), row.number]);
    }
  }
  return [...byText].map(([text, numbers]) => ({ text, numbers }));
}

/** "[1][3]": the marks of a row. */
export function marksOf(row: LedgerRow, footnotes: readonly Footnote[]): string {
  return footnotes.map(({ numbers }, i) => (numbers.includes(row.number) ? `[${i + 1}]` : '')).join('');
}

function textsOf(row: LedgerRow, hasPlan: boolean): string[] {
  const before = [...row.notices.map(noticeText), ...emptyWhenStowed(row.before)];
  if (row.fitting.flags.safetyRequired) before.push('Safety-required.');
  if (!hasPlan || !row.isChanged) return unique(before);
  const after = [...row.after.notices.map(noticeText), ...emptyWhenStowed(row.after)];
  const added = after.filter((text) => !before.includes(text));
  return unique([...before, ...added.map((text) => `After the plan: ${text}`)]);
}

function unique(texts: readonly string[]): string[] {
  return [...new Set(texts)];
}

/** A fitting that is out of use at times and leaves nothing then: a default that must be said. */
function emptyWhenStowed({ parts }: RowResult): string[] {
  const idle = parts.filter(
    ({ trace }) =>
      trace.dutyFraction < 1 && trace.stowed.airPowerW === 0 && trace.stowed.dragAgainstTrackN === 0,
  );
  const weight = idle.reduce((sum, part) => sum + part.weight, 0);
  if (weight === 0) return [];
  const share = idle.reduce((sum, part) => sum + part.weight * (1 - part.trace.dutyFraction), 0);
  return [`Out of use ${formatQuantity(share, '%')} of the time; stowed it is counted with no drag area.`];
}
