import { neighbourId } from '../../project/edit/lists';
import type { Project } from '../../project/file/schema';
import type { PlanAccount } from '../../project/ledger/ledgerTypes';
import type { FormEdit } from '../../ui/useFormEdit';
import { columnDecimals } from '../../units/print';
import { itemButtonId, planTitleId } from './focusIds';
import { ItemEntry } from './ItemEntry';
import { itemEditor } from './usePlanEdits';

interface ItemListProps {
  readonly project: Project;
  readonly account: PlanAccount;
  readonly form: FormEdit;
  readonly openId: string | null;
  readonly onOpen: (itemId: string | null) => void;
  readonly onFocus: (id: string) => void;
}

/** The items in their order; one at a time is open for editing. */
export function ItemList({ project, account, form, openId, onOpen, onFocus }: ItemListProps) {
  const { items, planId } = account;
  const order = items.map(({ item }) => item);
  const decimals = columnDecimals(
    items.flatMap(({ savingInOrder }) => (savingInOrder === null ? [] : [savingInOrder.change.trackPowerW])),
    'W',
  );
  return (
    <ol className="plans-items" aria-label="Items in their order">
      {items.map((each, i) => (
        <ItemEntry
          key={`${planId}/${each.item.id}`}
          project={project}
          account={each}
          number={i + 1}
          decimals={decimals}
          editor={itemEditor(form, planId, each.item)}
          said={form.said}
          order={order}
          isOpen={openId === each.item.id}
          onToggle={() => {
            onOpen(openId === each.item.id ? null : each.item.id);
          }}
          onDeleted={() => {
            onOpen(null);
            const nextId = neighbourId(order, each.item.id);
            onFocus(nextId === null ? planTitleId : itemButtonId(nextId));
          }}
        />
      ))}
    </ol>
  );
}
