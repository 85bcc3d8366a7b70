import type { EditAnswer } from '../../project/edit/answer';
import { neighbourId } from '../../project/edit/lists';
import { addPlan, deletePlan, duplicatePlan, movePlan, patchPlan } from '../../project/edit/planEdits';
import type { Project, ProjectPlan } from '../../project/file/schema';
import { useAppStore } from '../../state/appStore';
import { NoteField, TextField } from '../../ui/fields/TextField';
import { MoveButtons } from '../../ui/MoveButtons';
import type { FormEdit } from '../../ui/useFormEdit';
import { planNameId, planTitleId } from './focusIds';

interface PlanHeadProps {
  readonly project: Project;
  readonly plan: ProjectPlan;
  readonly form: FormEdit;
  /** Gives the focus to an element once it is there. */
  readonly onFocus: (id: string) => void;
}

/** A plan's name and note, and what can be done with the plan as a whole. */
export function PlanHead({ project, plan, form, onFocus }: PlanHeadProps) {
  const { id, name, note } = plan;
  return (
    <header className="plans-head">
      <h2 id={planTitleId} className="plans-title" tabIndex={-1}>
        Refit plan
      </h2>
      <TextField
        key={`${id}.name`}
        id={planNameId}
        kind="name"
        label="Name of the plan"
        value={name}
        {...form.at(`${id}.name`)}
        onCommit={(next) => {
          form.run(`${id}.name`, `Rename the plan ${name}`, (before) =>
            patchPlan(before, id, { name: next }),
          );
        }}
      />
      <NoteField
        key={`${id}.note`}
        kind="note"
        label="Note"
        rows={2}
        value={note}
        {...form.at(`${id}.note`)}
        onCommit={(next) => {
          form.run(`${id}.note`, `Change the note of ${name}`, (before) =>
            patchPlan(before, id, { note: next }),
          );
        }}
      />
      <PlanActions project={project} plan={plan} form={form} onFocus={onFocus} />
    </header>
  );
}

function PlanActions({ project, plan: { id, name }, form, onFocus }: PlanHeadProps) {
  const field = `${id}.actions`;
  const remove = (): void => {
    const answer = form.act(field, `Delete the plan ${name}`, (before) => deletePlan(before, id));
    if ('refused' in answer) return;
    useAppStore.getState().choosePlan(neighbourId(project.plans, id));
    onFocus(planTitleId);
  };
  return (
    <div className="plans-actions">
      <NewPlan form={form} field={field} afterId={id} onFocus={onFocus} />
      <button
        type="button"
        className="plain-action"
        onClick={() => {
          choose(
            form.act(field, `Copy the plan ${name}`, (before) => duplicatePlan(before, id)),
            onFocus,
          );
        }}
      >
        Copy this plan
      </button>
      <MoveButtons
        list={project.plans}
        id={id}
        what="this plan"
        onMove={(beforeId, way) => {
          form.act(field, `Move the plan ${name} ${way}`, (before) => movePlan(before, id, beforeId));
        }}
      />
      <button type="button" className="plain-action" onClick={remove}>
        Delete this plan
      </button>
      <p className="plans-said" role="status">
        {form.at(field).error}
      </p>
    </div>
  );
}

interface NewPlanProps extends Pick<PlanHeadProps, 'form' | 'onFocus'> {
  /** Beside which a refusal stands. */
  readonly field: string;
  readonly afterId: string | null;
}

/** Makes an empty plan and chooses it; its name waits to be typed over. */
export function NewPlan({ form, field, afterId, onFocus }: NewPlanProps) {
  return (
    <button
      type="button"
      className="plain-action"
      onClick={() => {
        choose(
          form.act(field, 'Make a plan', (before) => addPlan(before, afterId)),
          onFocus,
        );
      }}
    >
      {afterId === null ? 'Make a plan' : 'New plan'}
    </button>
  );
}

function choose(answer: EditAnswer, onFocus: PlanHeadProps['onFocus']): void {
  if ('refused' in answer) return;
  useAppStore.getState().choosePlan(answer.newIds?.[0] ?? null);
  onFocus(planNameId);
}
