import type { Project } from '../../project/file/schema';
import type { PlanAccount } from '../../project/ledger/ledgerTypes';
import { columnDecimals } from '../../units/print';
import { ItemEntry } from './ItemEntry';
import { itemEditor, type PlanEdits } from './usePlanEdits';

interface ItemListProps {
  readonly project: Project;
  readonly planIndex: number;
  readonly account: PlanAccount;
  readonly edits: PlanEdits;
  readonly openId: string | null;
  readonly onOpen: (itemId: string | null) => void;
}

/** The items in their order; one at a time is open for editing. */
export function ItemList({ project, planIndex, account, edits, openId, onOpen }: ItemListProps) {
  const { items, planId } = account;
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
          editor={itemEditor(edits, planId, planIndex, each.item, i)}
          previousId={items[i - 1]?.item.id ?? null}
          nextButOneId={i === items.length - 1 ? undefined : (items[i + 2]?.item.id ?? null)}
          isOpen={openId === each.item.id}
          onToggle={() => {
            onOpen(openId === each.item.id ? null : each.item.id);
          }}
        />
      ))}
    </ol>
  );
}
