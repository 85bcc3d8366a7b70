import { isOutsideValidity } from '../../charts/ledgerBarScale';
import type { Notice } from '../../physics/fitting/notice';
import type { LedgerRow } from '../../project/ledger/ledgerTypes';
import { noticeText } from '../../project/wording/noticeText';
import { OutsideMark } from '../../ui/OutsideMark';

interface Told {
  readonly text: string;
  readonly isOutside: boolean;
}

/** What a reader must know about the row's numbers: what lies outside its valid range first, with the diamond. */
export function NoticeList({ row }: { readonly row: LedgerRow }) {
  const told = toldOf(row);
  if (told.length === 0) return null;
  return (
    <ul className="working-notices" aria-label="Notices">
      {told.map(({ text, isOutside }) => (
        <li key={text} className={isOutside ? 'working-outside' : undefined}>
          {isOutside && <OutsideMark label="outside its valid range:" />} {text}
        </li>
      ))}
    </ul>
  );
}

function toldOf({ notices, after, isChanged }: LedgerRow): Told[] {
  const before = notices.map(tell);
  const known = new Set(before.map(({ text }) => text));
  const added = isChanged ? after.notices.map(tell).filter(({ text }) => !known.has(text)) : [];
  return [...before, ...added.map((told) => ({ ...told, text: `After the plan: ${told.text}` }))].sort(
    (a, b) => Number(b.isOutside) - Number(a.isOutside),
  );
}

function tell(notice: Notice): Told {
  return { text: noticeText(notice), isOutside: isOutsideValidity([notice]) };
}
