import { useState } from 'react';
import type { Project, ProjectPlan } from '../../project/file/schema';
import type { ProjectLedger } from '../../project/ledger/ledgerTypes';
import { useAppStore, useLedger } from '../../state/appStore';
import { AddItem } from './AddItem';
import { ItemList } from './ItemList';
import { NewPlan, PlanHead } from './PlanHead';
import { PlanScatter } from './PlanScatter';
import { PlanSums } from './PlanSums';
import { PlanWaterfall } from './PlanWaterfall';
import './plans.css';
import { TryFirst } from './TryFirst';
import { usePlanEdits, type PlanEdits } from './usePlanEdits';

/** The plan chosen in the margin: its items, what they bring, and what they take. */
export function PlanPane() {
  const project = useAppStore((state) => state.project);
  const planId = useAppStore((state) => state.question.planId);
  const ledger = useLedger();
  const edits = usePlanEdits();
  const [openId, setOpenId] = useState<string | null>(null);
  if (project === null) return null;
  const planIndex = project.plans.findIndex(({ id }) => id === planId);
  const plan = project.plans[planIndex];
  if (plan === undefined) return <AsSailed project={project} edits={edits} onAdded={setOpenId} />;
  return (
    <article className="plans" aria-label={`Plan ${plan.name}`}>
      <PlanHead plan={plan} planIndex={planIndex} edits={edits} />
      {ledger === null ? (
        <p className="muted">
          Without a sailing condition nothing costs anything: add one to see what items save.
        </p>
      ) : (
        <Filled
          project={project}
          plan={plan}
          planIndex={planIndex}
          ledger={ledger}
          edits={edits}
          openId={openId}
          onOpen={setOpenId}
        />
      )}
    </article>
  );
}

interface AsSailedProps {
  readonly project: Project;
  readonly edits: PlanEdits;
  readonly onAdded: (itemId: string) => void;
}

function AsSailed({ project, edits, onAdded }: AsSailedProps) {
  return (
    <article className="plans" aria-label="No plan chosen">
      <h2 className="plans-title">As sailed</h2>
      <p>
        A refit plan is a list of changes, each to one fitting, in the order in which they would be made. Make
        one
        {project.plans.length === 0 ? '' : ', or choose one beside the condition,'} and the ledger shows
        before and after.
      </p>
      <p className="plans-actions">
        <NewPlan edits={edits} afterId={null} />
      </p>
      <TryFirst edits={edits} planId={null} onAdded={onAdded} />
    </article>
  );
}

interface FilledProps {
  readonly project: Project;
  readonly plan: ProjectPlan;
  readonly planIndex: number;
  readonly ledger: ProjectLedger;
  readonly edits: PlanEdits;
  readonly openId: string | null;
  readonly onOpen: (itemId: string | null) => void;
}

function Filled({ project, plan, planIndex, ledger, edits, openId, onOpen }: FilledProps) {
  const account = ledger.plan;
  const adding = (
    <AddItem project={project} plan={plan} planIndex={planIndex} edits={edits} onAdded={onOpen} />
  );
  if (account === null) return null;
  if (account.items.length === 0) {
    return (
      <>
        <p>This plan has no item yet.</p>
        {adding}
        <TryFirst edits={edits} planId={plan.id} onAdded={onOpen} />
      </>
    );
  }
  return (
    <>
      <ItemList
        project={project}
        planIndex={planIndex}
        account={account}
        edits={edits}
        openId={openId}
        onOpen={onOpen}
      />
      {adding}
      <PlanWaterfall plan={plan} account={account} ledger={ledger} />
      <PlanSums project={project} ledger={ledger} account={account} />
      <PlanScatter account={account} currency={project.currency} />
    </>
  );
}
