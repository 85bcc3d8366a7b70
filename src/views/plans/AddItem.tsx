import { useState } from 'react';
import { addItem } from '../../project/edit/itemEdits';
import type { Project, ProjectPlan } from '../../project/file/schema';
import type { ItemStart } from '../../project/wording/itemText';
import { useAppStore } from '../../state/appStore';
import { ChoiceField } from '../../ui/fields/ChoiceField';
import type { FormEdit } from '../../ui/useFormEdit';
import { startChoices } from './planWords';

interface AddItemProps {
  readonly project: Project;
  readonly plan: ProjectPlan;
  readonly form: FormEdit;
  readonly onAdded: (itemId: string) => void;
}

/** Adds an item about the row that is selected in the ledger. */
export function AddItem({ project, plan, form, onAdded }: AddItemProps) {
  const [wanted, setWanted] = useState<ItemStart | null>(null);
  const fittingId = useAppStore((state) => state.selectedFittingId);
  const fitting = project.fittings.find(({ id }) => id === fittingId);
  if (fitting === undefined) {
    return <p className="muted">Select a row of the ledger to add an item about it.</p>;
  }
  const kind = wanted ?? (fitting.shape.kind === 'roundBar' ? 'slimmer' : 'retracted');
  const field = `${plan.id}.add`;
  return (
    <div className="plans-add">
      <ChoiceField
        label={`New item about ${fitting.name}`}
        value={kind}
        choices={startChoices}
        onCommit={setWanted}
        {...form.at(field)}
      />
      <button
        type="button"
        className="plain-action"
        onClick={() => {
          const answer = form.act(field, `Add an item about ${fitting.name}`, (current) =>
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
