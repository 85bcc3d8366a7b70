import type { WaterfallInput, WaterfallStep } from '../../charts/waterfallGeometry';
import type { ItemAccount, PlanAccount, ProjectLedger } from '../../project/ledger/ledgerTypes';

/**
 * A plan as the waterfall takes it: always from the boat as sailed, whatever the ledger compares with, because the
 * items' savings are reckoned from there. Items that are off or contradict others have no saving and no bar.
 */
export function waterfallInput({ items }: PlanAccount, { forces }: ProjectLedger): WaterfallInput {
  const counted = items.filter(({ status }) => status === 'counted');
  return {
    before: counted[0]?.totalBefore ?? forces.after,
    after: counted.at(-1)?.totalAfter ?? forces.after,
    steps: items.flatMap(stepOf),
  };
}

function stepOf({ item, status, savingInOrder, savingAlone }: ItemAccount): WaterfallStep[] {
  if (savingInOrder === null) return [];
  return [
    { id: item.id, name: item.name, isCounted: status === 'counted', saving: savingInOrder, savingAlone },
  ];
}
