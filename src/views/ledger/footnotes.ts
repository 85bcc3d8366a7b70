import { isOutsideValidity } from '../../charts/ledgerBarScale';
import type { Notice } from '../../physics/fitting/notice';
import type { RowResult } from '../../physics/ledger/ledgerSums';
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
  const names = conditionNames(ledger);
  const course = names.size > 1 ? 'Over the whole course: ' : '';
  const notices = [
    ...rowFootnotes(ledger.rows, names),
    ...ledger.notices.map((notice) => wholeBoat(notice, course)),
  ];
  return [
    ...safetyFootnotes(ledger),
    ...notices.filter(({ isOutside }) => isOutside),
    ...notices.filter(({ isOutside }) => !isOutside),
  ];
}

function wholeBoat(notice: Notice, opening: string): Footnote {
  return { about: '', text: opening + noticeText(notice), isOutside: isOutsideValidity([notice]) };
}

type ConditionNames = ReadonlyMap<string, string>;

/** Names of the conditions of a course; of a single condition nobody need be told. */
function conditionNames({ parts }: ProjectLedger): ConditionNames {
  const names = parts.map(({ summary: { condition } }) => [condition.id, condition.name] as const);
  return new Map(names.length > 1 ? names : []);
}

interface KnownKind {
  readonly footnote: Footnote;
  /** Rows that say the same with other values. */
  readonly others: readonly string[];
}

/** One note for each kind: in the words of the first row that has it, and the rows that have it with other values. */
function rowFootnotes(rows: readonly LedgerRow[], names: ConditionNames): Footnote[] {
  const byKind = new Map<string, KnownKind>();
  for (const row of rows) {
    for (const { kind, text, isOutside, where } of remarksOf(row, names)) {
      const name = `${row.number} ${row.fitting.name}`;
      const known = byKind.get(kind);
      byKind.set(kind, joined(known, name, where, { about: name, text, isOutside }));
    }
  }
  return [...byKind.values()].map(({ footnote, others }) =>
    others.length === 0
      ? footnote
      : { ...footnote, text: `${footnote.text} Likewise, with other values: ${others.join(', ')}.` },
  );
}

function joined(known: KnownKind | undefined, name: string, where: string, footnote: Footnote): KnownKind {
  if (known === undefined) return { footnote, others: [] };
  if (known.footnote.text !== footnote.text) return { ...known, others: [...known.others, name + where] };
  return { ...known, footnote: { ...footnote, about: `${known.footnote.about}, ${name}` } };
}

interface Remark {
  readonly kind: string;
  readonly text: string;
  readonly isOutside: boolean;
  /** " in “Upwind”, “Run”"; '' for a single condition. */
  readonly where: string;
}

/** A row's notices before, and those that only the plan brings, said so. */
function remarksOf({ notices, before, after }: LedgerRow, names: ConditionNames): Remark[] {
  const isBefore = ({ code }: Notice): boolean => before.notices.some((notice) => notice.code === code);
  return notices.map((notice) => {
    if (isBefore(notice)) return remarkOf(notice, notice.code, '', arising(notice, before, names));
    // What lost its shelter says so itself.
    const opening = notice.code === 'shelter-removed' ? '' : 'After the plan: ';
    return remarkOf(notice, `after:${notice.code}`, opening, arising(notice, after, names));
  });
}

/** The conditions of a course in which a notice arises; no names for a single condition. */
interface Arising {
  readonly names: readonly string[];
  readonly isAll: boolean;
}

function arising({ code }: Notice, { parts }: RowResult, names: ConditionNames): Arising {
  const ids = parts
    .filter(({ trace }) => trace.notices.some((notice) => notice.code === code))
    .map(({ conditionId }) => conditionId);
  const own = [...names].filter(([id]) => ids.includes(id)).map(([, name]) => `“${name}”`);
  return { names: own, isAll: own.length > 0 && own.length === names.size };
}

/** The values are those of the first condition; the others are named after it. */
function remarkOf(notice: Notice, kind: string, opening: string, { names, isAll }: Arising): Remark {
  const [first, ...others] = names;
  const also = isAll ? ' Also in every other condition.' : ` Also in ${others.join(', ')}.`;
  const isIn = first === undefined ? '' : `In ${first}: `;
  return {
    kind,
    text: opening + isIn + noticeText(notice) + (others.length === 0 ? '' : also),
    isOutside: isOutsideValidity([notice]),
    where: first === undefined ? '' : isAll ? ' in every condition' : ` in ${names.join(', ')}`,
  };
}

function safetyFootnotes(ledger: ProjectLedger): Footnote[] {
  const numbers = new Map(ledger.rows.map(({ fittingId, number }) => [fittingId, number]));
  const items = [...(ledger.plan?.items ?? []), ...(ledger.against?.items ?? [])];
  const footnotes = items.flatMap((account) => {
    const text = safetyText(account);
    if (text === null || account.fitting === null) return [];
    const number = numbers.get(account.fitting.id);
    return [{ about: `${number ?? ''} ${account.fitting.name}`.trim(), text, isOutside: false }];
  });
  return withoutRepeats(footnotes);
}

/** What both plans need said in the same words is said once. */
function withoutRepeats(footnotes: readonly Footnote[]): Footnote[] {
  const byWords = new Map(footnotes.map((footnote) => [`${footnote.about}: ${footnote.text}`, footnote]));
  return [...byWords.values()];
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
