import { addPlan, deletePlan, duplicatePlan, patchPlan } from '../../project/edit/planEdits';
import type { ProjectPlan } from '../../project/file/schema';
import { useAppStore } from '../../state/appStore';
import { NoteField, TextField } from '../../ui/fields/TextField';
import { endStep, refusalAt, type PlanEdits } from './usePlanEdits';

interface PlanHeadProps {
  readonly plan: ProjectPlan;
  readonly planIndex: number;
  readonly edits: PlanEdits;
}

/** A plan's name and note, and what can be done with the plan as a whole. */
export function PlanHead({ plan, planIndex, edits }: PlanHeadProps) {
  const { id, name, note } = plan;
  const copy = (): void => {
    const answer = edits.run(`Copy the plan ${name}`, (project) => duplicatePlan(project, id));
    choose(answer);
  };
  return (
    <header className="plans-head">
      <h2 className="plans-title">Refit plan</h2>
      <TextField
        key={`${id}.name`}
        kind="name"
        label="Name of the plan"
        value={name}
        error={refusalAt(edits.refused, `plans[${planIndex}].name`)}
        onCommit={(next) => {
          edits.run(
            `Rename the plan ${name}`,
            (project) => patchPlan(project, id, { name: next }),
            `${id}.name`,
          );
        }}
        onDone={endStep}
      />
      <NoteField
        key={`${id}.note`}
        kind="note"
        label="Note"
        rows={2}
        value={note}
        error={refusalAt(edits.refused, `plans[${planIndex}].note`)}
        onCommit={(next) => {
          edits.run(
            `Change the note of ${name}`,
            (project) => patchPlan(project, id, { note: next }),
            `${id}.note`,
          );
        }}
        onDone={endStep}
      />
      <p className="plans-actions">
        <NewPlan edits={edits} afterId={id} />
        <button type="button" className="plain-action" onClick={copy}>
          Copy this plan
        </button>
        <button
          type="button"
          className="plain-action"
          onClick={() => {
            edits.run(`Delete the plan ${name}`, (project) => deletePlan(project, id));
          }}
        >
          Delete this plan
        </button>
      </p>
    </header>
  );
}

/** Makes an empty plan and chooses it. */
export function NewPlan({ edits, afterId }: { readonly edits: PlanEdits; readonly afterId: string | null }) {
  return (
    <button
      type="button"
      className="plain-action"
      onClick={() => {
        choose(edits.run('Make a plan', (project) => addPlan(project, afterId)));
      }}
    >
      {afterId === null ? 'Make a plan' : 'New plan'}
    </button>
  );
}

function choose(answer: ReturnType<PlanEdits['run']>): void {
  if (!('refused' in answer)) useAppStore.getState().choosePlan(answer.newIds?.[0] ?? null);
}
