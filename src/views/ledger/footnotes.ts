import { isOutsideValidity } from '../../charts/ledgerBarScale';
import type { Notice } from '../../physics/fitting/notice';
import type { ItemAccount, LedgerRow, ProjectLedger } from '../../project/ledger/ledgerTypes';
import { noticeText } from '../../project/wording/noticeText';
import { formatQuantity } from '../../units/print';

/** One line at the foot of the ledger. */
export interface Footnote {
  /** Numbers and names of the rows it is about: "4 Bowsprit, 7 Guard wires"; '' for the whole boat. */
  readonly about: string;
  readonly text: string;
  /** True for what lies outside its valid range: it carries the diamond. */
  readonly isOutside: boolean;
}

/** Safety first, then what lies outside its range, then the rest; rows with the same words share a line. */
export function footnotesOf(ledger: ProjectLedger): Footnote[] {
  const notices = [...rowFootnotes(ledger.rows), ...ledger.notices.map(wholeBoat)];
  return [
    ...safetyFootnotes(ledger),
    ...notices.filter(({ isOutside }) => isOutside),
    ...notices.filter(({ isOutside }) => !isOutside),
  ];
}

function wholeBoat(notice: Notice): Footnote {
  return { about: '', text: noticeText(notice), isOutside: isOutsideValidity([notice]) };
}

interface KnownKind {
  readonly footnote: Footnote;
  /** Rows that say the same with other values. */
  readonly others: readonly string[];
}

/** One note for each kind: in the words of the first row that has it, and the rows that have it with other values. */
function rowFootnotes(rows: readonly LedgerRow[]): Footnote[] {
  const byKind = new Map<string, KnownKind>();
  for (const row of rows) {
    for (const { kind, text, isOutside } of remarksOf(row)) {
      const name = `${row.number} ${row.fitting.name}`;
      byKind.set(kind, joined(byKind.get(kind), name, { about: name, text, isOutside }));
    }
  }
  return [...byKind.values()].map(({ footnote, others }) =>
    others.length === 0
      ? footnote
      : { ...footnote, text: `${footnote.text} Likewise, with other values: ${others.join(', ')}.` },
  );
}

function joined(known: KnownKind | undefined, name: string, footnote: Footnote): KnownKind {
  if (known === undefined) return { footnote, others: [] };
  if (known.footnote.text !== footnote.text) return { ...known, others: [...known.others, name] };
  return { ...known, footnote: { ...footnote, about: `${known.footnote.about}, ${name}` } };
}

interface Remark {
  readonly kind: string;
  readonly text: string;
  readonly isOutside: boolean;
}

/** A row's notices as sailed, and those that only the plan brings, said so. */
function remarksOf({ notices, after, isChanged }: LedgerRow): Remark[] {
  const before = notices.map((notice) => remarkOf(notice, notice.code, ''));
  if (!isChanged) return before;
  const brought = after.notices.filter(({ code }) => !before.some(({ kind }) => kind === code));
  return [
    ...before,
    ...brought.map((notice) => remarkOf(notice, `after:${notice.code}`, 'After the plan: ')),
  ];
}

function remarkOf(notice: Notice, kind: string, opening: string): Remark {
  return { kind, text: opening + noticeText(notice), isOutside: isOutsideValidity([notice]) };
}

function safetyFootnotes(ledger: ProjectLedger): Footnote[] {
  const numbers = new Map(ledger.rows.map(({ fittingId, number }) => [fittingId, number]));
  const items = [...(ledger.plan?.items ?? []), ...(ledger.against?.items ?? [])];
  return items.flatMap((account) => {
    const text = safetyText(account);
    if (text === null || account.fitting === null) return [];
    const number = numbers.get(account.fitting.id);
    return [{ about: `${number ?? ''} ${account.fitting.name}`.trim(), text, isOutside: false }];
  });
}

/** What a plan's touching of a safety-required fitting needs said; null where it touches none. */
function safetyText({ item, fitting, status, savingInOrder }: ItemAccount): string | null {
  if (fitting?.flags.safetyRequired !== true) return null;
  const power = savingInOrder === null ? '' : formatQuantity(savingInOrder.change.trackPowerW, 'W');
  if (status === 'withheld') {
    return `safety-required: the ${power} of “${item.name}” stay out of every total and wait for a named person’s reason.`;
  }
  if (status !== 'counted' || item.safetyReason === null) return null;
  const { person, reason } = item.safetyReason;
  return `safety-required: the ${power} of “${item.name}” are counted for the reason that ${person} gives: ${reason}`;
}
