import { useState } from 'react';
import { addCandidateItem } from '../../project/bench/candidateItem';
import { useAppStore } from '../../state/appStore';
import type { BenchModel } from './benchModel';

interface UsePartProps {
  readonly model: BenchModel;
  readonly hasProblems: boolean;
  readonly onShowItem: (planId: string, itemId: string) => void;
}

const newPlan = '';

/** Makes the chosen candidate a refit item. */
export function UsePart({ model, hasProblems, onShowItem }: UsePartProps) {
  const { project, member, chosen, basis } = model;
  const askedPlanId = useAppStore((state) => state.question.planId);
  const [wantedId, setWantedId] = useState<string | null>(null);
  const [refusal, setRefusal] = useState('');
  const planId = project.plans.find(({ id }) => id === (wantedId ?? askedPlanId))?.id ?? newPlan;
  const reason = reasonNot(model, hasProblems);
  const use = (): void => {
    if (reason !== '') return;
    const answer = useAppStore.getState().edit(`Use ${chosen.name} for ${member.fitting.name}`, (before) =>
      addCandidateItem(before, {
        member,
        candidate: chosen,
        planId: planId === newPlan ? null : planId,
        basis,
      }),
    );
    if ('refused' in answer) {
      setRefusal(`Not done: ${answer.refused.message}.`);
      return;
    }
    const ids = answer.newIds ?? [];
    const inPlanId = planId === newPlan ? ids[0] : planId;
    const itemId = ids.at(-1);
    if (inPlanId !== undefined && itemId !== undefined) onShowItem(inPlanId, itemId);
  };
  return (
    <section className="bench-use" aria-label="Use it">
      <button type="button" className="plain-action" aria-disabled={reason !== ''} onClick={use}>
        Use this
      </button>
      <label className="one-of-line">
        <span className="muted">in</span>
        <select
          value={planId}
          onChange={(event) => {
            setWantedId(event.target.value);
          }}
        >
          {project.plans.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
          <option value={newPlan}>a new plan</option>
        </select>
      </label>
      <p className="fine" role="status">
        {reason === '' ? refusal : reason}
      </p>
    </section>
  );
}

function reasonNot({ chosen, member }: BenchModel, hasProblems: boolean): string {
  if (chosen.kind === 'bare') return 'The member as it stands is no change.';
  if (member.isTyped) return 'A typed member is in no ledger: add it there, then put it on the bench.';
  return hasProblems ? 'A field of it is wrong; what, stands beside it.' : '';
}
