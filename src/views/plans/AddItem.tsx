import { useState } from 'react';
import { addItem } from '../../project/edit/itemEdits';
import type { ItemChange, Project, ProjectPlan } from '../../project/file/schema';
import { useAppStore } from '../../state/appStore';
import { ChoiceField } from '../../ui/fields/ChoiceField';
import { changeChoices } from './planWords';
import { refusalAt, type PlanEdits } from './usePlanEdits';

interface AddItemProps {
  readonly project: Project;
  readonly plan: ProjectPlan;
  readonly planIndex: number;
  readonly edits: PlanEdits;
  readonly onAdded: (itemId: string) => void;
}

/** Adds an item about the row that is selected in the ledger. */
export function AddItem({ project, plan, planIndex, edits, onAdded }: AddItemProps) {
  const [wanted, setWanted] = useState<ItemChange['kind'] | null>(null);
  const fittingId = useAppStore((state) => state.selectedFittingId);
  const fitting = project.fittings.find(({ id }) => id === fittingId);
  if (fitting === undefined) {
    return <p className="muted">Select a row of the ledger to add an item about it.</p>;
  }
  const kind = wanted ?? (fitting.shape.kind === 'roundBar' ? 'slimmer' : 'retracted');
  return (
    <div className="plans-add">
      <ChoiceField
        label={`New item about ${fitting.name}`}
        value={kind}
        choices={changeChoices}
        error={refusalAt(edits.refused, `plans[${planIndex}].items[${plan.items.length}]`)}
        onCommit={setWanted}
      />
      <button
        type="button"
        className="plain-action"
        onClick={() => {
          const answer = edits.run(`Add an item about ${fitting.name}`, (current) =>
            addItem(current, plan.id, fitting.id, kind),
          );
          if (!('refused' in answer)) onAdded(answer.newIds?.[0] ?? '');
        }}
      >
        Add the item
      </button>
    </div>
  );
}
