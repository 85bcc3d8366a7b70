import type { ItemChange, ProjectFitting } from '../../project/file/schema';
import type { ItemAccount, LedgerRow } from '../../project/ledger/ledgerTypes';
import type { ItemStart } from '../../project/wording/itemText';
import { formatQuantity } from '../../units/print';

/** The kinds of change as a choice: what is done to the fitting. */
export const changeChoices: readonly { readonly value: ItemChange['kind']; readonly label: string }[] = [
  { value: 'slimmer', label: 'slimmer' },
  { value: 'shapeOf', label: "another fitting's shape" },
  { value: 'retracted', label: 'retracted part of the time' },
  { value: 'stowed', label: 'stowed for good' },
  { value: 'removed', label: 'removed' },
  { value: 'moved', label: 'moved' },
  { value: 'sheltered', label: 'sheltered' },
  { value: 'typed', label: 'a shape typed in' },
];

/** What an item can be added as: the kinds of change, with remedies of shape among them. */
export const startChoices: readonly { readonly value: ItemStart; readonly label: string }[] = [
  { value: 'slimmer', label: 'slimmer' },
  { value: 'fairedTurning', label: 'faired, turning with the wind' },
  { value: 'fairedFixed', label: 'faired, fixed' },
  { value: 'otherSection', label: 'another section' },
  { value: 'rounded', label: 'edges rounded' },
  ...changeChoices.filter(({ value }) => value !== 'slimmer'),
];

/** Where an item gives twice: power, and mass or money. Null where it does not. */
export function savesBothText({ item, savingInOrder }: ItemAccount): string | null {
  const savedW = savingInOrder?.change.trackPowerW ?? 0;
  if (savedW <= 0) return null;
  const lighter = item.massChangeKg < 0 ? `${formatQuantity(-item.massChangeKg, 'kg')} of mass` : null;
  const isFree = item.cost <= 0 && item.massChangeKg <= 0;
  const gains = [lighter, isFree ? (item.cost < 0 ? 'money' : null) : null].filter((gain) => gain !== null);
  // A range that holds zero is no promise.
  const isSure = (savingInOrder?.ranges.item.trackPowerW.low ?? 0) > 0;
  if (gains.length > 0) {
    const gained = gains.join(' and ');
    return isSure ? `Saves both: power and ${gained}.` : `Saves ${gained}, and perhaps power.`;
  }
  if (!isFree) return null;
  return isSure ? 'Saves power and is free.' : 'Perhaps saves power, and is free.';
}

/** What a newcomer may try on a fitting: a tube is made slimmer, all else is out half as long. */
export function firstTry({ shape }: ProjectFitting): {
  readonly kind: ItemChange['kind'];
  readonly words: string;
} {
  return shape.kind === 'roundBar'
    ? { kind: 'slimmer', words: 'try it a fifth slimmer' }
    : { kind: 'retracted', words: 'try it out half the time' };
}

/** The rows that cost most now, as a plan would find them. */
export function biggestCosts(rows: readonly LedgerRow[], count: number): LedgerRow[] {
  return rows
    .filter(({ after, excludedReason }) => excludedReason === null && after.outcome.trackPowerW > 0)
    .sort((a, b) => b.after.outcome.trackPowerW - a.after.outcome.trackPowerW)
    .slice(0, count);
}
