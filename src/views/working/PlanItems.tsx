import type { ItemAccount } from '../../project/ledger/ledgerTypes';
import { itemChangeLabel, itemReasons, itemStatusLabel } from '../../project/wording/itemText';
import { formatQuantity } from '../../units/print';

/** What the plan's items do to this fitting, and what became of each. */
export function PlanItems({ items }: { readonly items: readonly ItemAccount[] }) {
  if (items.length === 0) return null;
  return (
    <ul className="working-items" aria-label="Refit items about this fitting">
      {items.map((account) => (
        <li key={account.item.id}>
          <PlanItem account={account} />
        </li>
      ))}
    </ul>
  );
}

function PlanItem({ account }: { readonly account: ItemAccount }) {
  const { item, status, savingInOrder } = account;
  const saving =
    savingInOrder === null ? '' : `, saves ${formatQuantity(savingInOrder.change.trackPowerW, 'W')}`;
  return (
    <>
      <span className="working-item-name">{item.name}</span>
      <span className="muted">
        {' '}
        {itemChangeLabel(item.change)}
        {saving}; {itemStatusLabel(status)}
      </span>
      {itemReasons(account).map((reason) => (
        <span key={reason} className="working-note">
          {reason}
        </span>
      ))}
    </>
  );
}
