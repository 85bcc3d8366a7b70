import { useState } from 'react';
import type { Project, ProjectPlan } from '../../project/file/schema';
import type { ProjectLedger } from '../../project/ledger/ledgerTypes';
import { useAppStore, useLedger } from '../../state/appStore';
import { useFormEdit, type FormEdit } from '../../ui/useFormEdit';
import { useFocusNext } from '../../ui/useFocusNext';
import { AddItem } from './AddItem';
import { itemButtonId, planTitleId } from './focusIds';
import { ItemList } from './ItemList';
import { NewPlan, PlanHead } from './PlanHead';
import { PlanScatter } from './PlanScatter';
import { PlanSums } from './PlanSums';
import { PlanWaterfall } from './PlanWaterfall';
import './plans.css';
import { TryFirst } from './TryFirst';
import { useWantedItem } from './useWantedItem';

/** The plan chosen in the margin: its items, what they bring, and what they take. */
export function PlanPane() {
  const project = useAppStore((state) => state.project);
  const planId = useAppStore((state) => state.question.planId);
  const ledger = useLedger();
  const form = useFormEdit('plan');
  const focusNext = useFocusNext();
  const [openId, setOpenId] = useState<string | null>(null);
  useWantedItem(planId, setOpenId);
  if (project === null) return null;
  const openNew = (itemId: string): void => {
    setOpenId(itemId);
    focusNext(itemButtonId(itemId));
  };
  const plan = project.plans.find(({ id }) => id === planId);
  if (plan === undefined) {
    return <AsSailed project={project} form={form} onAdded={openNew} onFocus={focusNext} />;
  }
  return (
    <article className="plans" aria-label={`Plan ${plan.name}`}>
      <PlanHead project={project} plan={plan} form={form} onFocus={focusNext} />
      {ledger === null ? (
        <p className="muted">
          Without a sailing condition nothing costs anything: add one to see what items save.
        </p>
      ) : (
        <Filled
          project={project}
          plan={plan}

          ledger={ledger}
          form={form}
          openId={openId}
          onOpen={setOpenId}
          onAdded={openNew}
          onFocus={focusNext}
        />
      )}
    </article>
  );
}

interface AsSailedProps {
  readonly project: Project;
  readonly form: FormEdit;
  readonly onAdded: (itemId: string) => void;
  readonly onFocus: (id: string) => void;
}

function AsSailed({ project, form, onAdded, onFocus }: AsSailedProps) {
  return (
    <article className="plans" aria-label="No plan chosen">
      <h2 id={planTitleId} className="plans-title" tabIndex={-1}>
        As sailed
      </h2>
      <p>
        A refit plan is a list of changes, each to one fitting, in the order in which they would be made. Make
        one
        {project.plans.length === 0 ? '' : ', or choose one beside the condition,'} and the ledger shows
        before and after.
      </p>
      <p className="plans-actions">
        <NewPlan form={form} field="plans" afterId={null} onFocus={onFocus} />
      </p>
      {form.at('plans').error !== undefined && <p>{form.at('plans').error}</p>}
      <TryFirst form={form} planId={null} onAdded={onAdded} />
    </article>
  );
}

interface FilledProps {
  readonly project: Project;
  readonly plan: ProjectPlan;
  readonly ledger: ProjectLedger;
  readonly form: FormEdit;
  readonly openId: string | null;
  readonly onOpen: (itemId: string | null) => void;
  readonly onAdded: (itemId: string) => void;
  readonly onFocus: (id: string) => void;
}

function Filled({ project, plan, ledger, form, openId, onOpen, onAdded, onFocus }: FilledProps) {
  const account = ledger.plan;
  const adding = <AddItem project={project} plan={plan} form={form} onAdded={onAdded} />;
  if (account === null) return null;
  if (account.items.length === 0) {
    return (
      <>
        <p>This plan has no item yet.</p>
        {adding}
        <TryFirst form={form} planId={plan.id} onAdded={onAdded} />
      </>
    );
  }
  return (
    <>
      <ItemList
        project={project}

        account={account}
        form={form}
        openId={openId}
        onOpen={onOpen}
        onFocus={onFocus}
      />
      {adding}
      <PlanWaterfall plan={plan} account={account} ledger={ledger} />
      <PlanSums project={project} ledger={ledger} account={account} />
      <PlanScatter account={account} currency={project.currency} />
    </>
  );
}
