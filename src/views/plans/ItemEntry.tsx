import { useId } from 'react';
import { deleteItems, duplicateItem, moveItem, switchItem } from '../../project/edit/itemEdits';
import type { Project } from '../../project/file/schema';
import type { ItemAccount } from '../../project/ledger/ledgerTypes';
import { itemChangeLabel, itemReasons, itemStatusLabel } from '../../project/wording/itemText';
import { CheckField } from '../../ui/fields/CheckField';
import { formatQuantity, formatRange } from '../../units/print';
import { ItemFields } from './ItemFields';
import { savesBothText } from './planWords';
import { SafetyFields } from './SafetyFields';
import type { ItemEditor } from './usePlanEdits';

interface ItemEntryProps {
  readonly project: Project;
  readonly account: ItemAccount;
  readonly number: number;
  readonly decimals: number;
  readonly editor: ItemEditor;
  /** The item before it; null for the first. */
  readonly previousId: string | null;
  /** What it stands before once moved down, null for the end; undefined for the last, which cannot. */
  readonly nextButOneId: string | null | undefined;
  readonly isOpen: boolean;
  readonly onToggle: () => void;
}

/** One item: what it is and what became of it, and when open everything about it that can be changed. */
export function ItemEntry(props: ItemEntryProps) {
  const { project, account, number, decimals, editor, isOpen, onToggle } = props;
  const { item, fitting, status, savingInOrder } = account;
  const bodyId = useId();
  const both = savesBothText(account);
  return (
    <li className={status === 'counted' ? 'plans-item' : 'plans-item plans-item-out'}>
      <div className="plans-item-line">
        <span className="plans-item-number muted">{number}</span>
        <CheckField
          key={`${editor.key}.on`}
          label={`${item.name}: on`}
          labelHidden
          value={item.on}
          onCommit={(on) => {
            editor.run(`Switch ${item.name} ${on ? 'on' : 'off'}`, (current) =>
              switchItem(current, editor.planId, item.id, on),
            );
          }}
        />
        <button
          type="button"
          className="plans-item-name"
          aria-expanded={isOpen}
          aria-controls={bodyId}
          onClick={onToggle}
        >
          {item.name}
        </button>
        <span className={savingTone(account)}>
          {savingInOrder === null ? '' : formatQuantity(savingInOrder.change.trackPowerW, 'W', { decimals })}
        </span>
      </div>
      <div className="plans-item-notes">
        <p className="muted">
          {fitting?.name ?? 'no fitting'}: {itemChangeLabel(item.change.kind)}; {itemStatusLabel(status)}
          <SavingText account={account} decimals={decimals} />
        </p>
        {itemReasons(account).map((reason) => (
          <p key={reason}>{reason}</p>
        ))}
        {both !== null && <p className="plans-both">{both}</p>}
      </div>
      <div id={bodyId} className="plans-item-body" hidden={!isOpen}>
        {isOpen && (
          <>
            <SafetyFields account={account} editor={editor} />
            <ItemFields project={project} account={account} editor={editor} />
            <ItemActions {...props} />
          </>
        )}
      </div>
    </li>
  );
}

function savingTone({ status, savingInOrder }: ItemAccount): string {
  const tone =
    status !== 'counted' ? 'muted' : (savingInOrder?.change.trackPowerW ?? 0) < 0 ? 'adds' : 'saves';
  return `plans-item-saving ${tone}`;
}

function SavingText({ account, decimals }: { readonly account: ItemAccount; readonly decimals: number }) {
  const { savingInOrder, savingAlone, status } = account;
  if (savingInOrder === null) return null;
  const { low, high } = savingInOrder.ranges.item.trackPowerW;
  const alone =
    savingAlone === null
      ? 'cannot stand alone'
      : `alone ${formatQuantity(savingAlone.change.trackPowerW, 'W', { decimals })}`;
  return (
    <>
      {status === 'withheld' ? '; would save ' : '; '}
      {formatRange(low, high, 'W', { decimals })}, {alone}
    </>
  );
}

function ItemActions({ account, editor, previousId, nextButOneId, onToggle }: ItemEntryProps) {
  const { item } = account;
  const { planId, run } = editor;
  const move = (words: string, beforeId: string | null): void => {
    run(`Move ${item.name} ${words}`, (current) => moveItem(current, planId, item.id, beforeId));
  };
  return (
    <p className="plans-actions">
      <button
        type="button"
        className="plain-action"
        disabled={previousId === null}
        onClick={() => {
          move('up', previousId);
        }}
      >
        Move up
      </button>
      <button
        type="button"
        className="plain-action"
        disabled={nextButOneId === undefined}
        onClick={() => {
          move('down', nextButOneId ?? null);
        }}
      >
        Move down
      </button>
      <button
        type="button"
        className="plain-action"
        onClick={() => {
          run(`Copy ${item.name}`, (current) => duplicateItem(current, planId, item.id));
        }}
      >
        Copy
      </button>
      <button
        type="button"
        className="plain-action"
        onClick={() => {
          onToggle();
          run(`Delete ${item.name}`, (current) => deleteItems(current, planId, [item.id]));
        }}
      >
        Delete
      </button>
    </p>
  );
}
