import { useId } from 'react';
import { deleteItems, duplicateItem, moveItem, switchItem } from '../../project/edit/itemEdits';
import type { Project, RefitItem } from '../../project/file/schema';
import type { ItemAccount } from '../../project/ledger/ledgerTypes';
import { itemChangeLabel, itemReasons, itemStatusLabel } from '../../project/wording/itemText';
import { CheckField } from '../../ui/fields/CheckField';
import { UnfinishedMark } from '../../ui/fields/UnfinishedMark';
import { MoveButtons, moveKeys, type Movable } from '../../ui/MoveButtons';
import { formatQuantity, formatRange } from '../../units/print';
import { itemButtonId } from './focusIds';
import { savingTone } from '../../ui/savingTone';
import { ItemFields } from './ItemFields';
import { savesBothText } from './planWords';
import { SafetyFields } from './SafetyFields';
import { wholeItem, type ItemEditor } from './usePlanEdits';

interface ItemEntryProps {
  readonly project: Project;
  readonly account: ItemAccount;
  readonly number: number;
  readonly decimals: number;
  readonly editor: ItemEditor;
  /** What the last edit did besides what was asked. */
  readonly said: string;
  /** The plan's items in their order. */
  readonly order: readonly RefitItem[];
  readonly isOpen: boolean;
  readonly onToggle: () => void;
  readonly onDeleted: () => void;
}

/** One item: what it is and what became of it, and when open everything about it that can be changed. */
export function ItemEntry(props: ItemEntryProps) {
  const { project, account, number, decimals, editor, said, isOpen, onToggle } = props;
  const { item, fitting, status, savingInOrder } = account;
  const bodyId = useId();
  const both = savesBothText(account);
  return (
    <li
      className={status === 'counted' ? 'plans-item' : 'plans-item plans-item-out'}
      onKeyDown={moveKeys(itemMove(props))}
    >
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
          id={itemButtonId(item.id)}
          type="button"
          className="plans-item-name"
          aria-expanded={isOpen}
          aria-controls={bodyId}
          onClick={onToggle}
        >
          {item.name}
        </button>
        <span className={savingClass(account)}>
          {savingInOrder === null ? '' : formatQuantity(savingInOrder.change.trackPowerW, 'W', { decimals })}
        </span>
      </div>
      <div className="plans-item-notes">
        <p className="muted">
          {fitting?.name ?? 'no fitting'}: {itemChangeLabel(item.change)}; {itemStatusLabel(status)}
          <SavingText account={account} decimals={decimals} />
        </p>
        {itemReasons(account).map((reason) => (
          <p key={reason}>{reason}</p>
        ))}
        {both !== null && <p className="plans-both">{both}</p>}
        <UnfinishedMark within={`plan/${editor.key}.`} />
      </div>
      <div id={bodyId} className="plans-item-body" hidden={!isOpen}>
        {isOpen && (
          <>
            <p className="plans-said" role="status">
              {editor.errorAt(wholeItem) ?? said}
            </p>
            <SafetyFields account={account} editor={editor} />
            <ItemFields project={project} account={account} editor={editor} />
            <ItemActions {...props} />
          </>
        )}
      </div>
    </li>
  );
}

function savingClass({ status, savingInOrder }: ItemAccount): string {
  const tone = status === 'counted' ? savingTone(savingInOrder?.change.trackPowerW ?? 0) : 'muted';
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

/** The item's steps in its plan, for its buttons and keys. */
function itemMove({ account: { item }, editor, order }: ItemEntryProps): Movable {
  return {
    list: order,
    id: item.id,
    onMove: (beforeId, way) => {
      editor.run(`Move ${item.name} ${way}`, (current) =>
        moveItem(current, editor.planId, item.id, beforeId),
      );
    },
  };
}

function ItemActions(props: ItemEntryProps) {
  const { item } = props.account;
  const { planId, run } = props.editor;
  return (
    <p className="plans-actions">
      <MoveButtons {...itemMove(props)} />
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
          const answer = run(`Delete ${item.name}`, (current) => deleteItems(current, planId, [item.id]));
          if (!('refused' in answer)) props.onDeleted();
        }}
      >
        Delete
      </button>
    </p>
  );
}
