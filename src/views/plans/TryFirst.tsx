import type { EditAnswer } from '../../project/edit/answer';
import { addItem } from '../../project/edit/itemEdits';
import { addPlan } from '../../project/edit/planEdits';
import type { Project } from '../../project/file/schema';
import type { LedgerRow } from '../../project/ledger/ledgerTypes';
import { useAppStore, useLedger } from '../../state/appStore';
import type { FormEdit } from '../../ui/useFormEdit';
import { formatQuantity } from '../../units/print';
import { biggestCosts, firstTry } from './planWords';

interface TryFirstProps {
  readonly form: FormEdit;
  /** The plan to add to; null makes one. */
  readonly planId: string | null;
  readonly onAdded: (itemId: string) => void;
}

/** Beside what is offered stands why it was refused. */
const field = 'try';

/** An empty plan is no drawing of nothing: the three biggest costs are offered as things to try. */
export function TryFirst({ form, planId, onAdded }: TryFirstProps) {
  const ledger = useLedger();
  const rows = biggestCosts(ledger?.rows ?? [], 3);
  if (rows.length === 0) return null;
  const tryRow = (row: LedgerRow): void => {
    const { kind } = firstTry(row.fitting);
    const answer = form.act(field, `Try ${row.fitting.name}`, (project) =>
      planId === null
        ? planWith(project, row.fittingId, kind)
        : addItem(project, planId, row.fittingId, kind),
    );
    if ('refused' in answer) return;
    if (planId === null) useAppStore.getState().choosePlan(answer.newIds?.[0] ?? null);
    useAppStore.getState().select(row.fittingId);
    onAdded(answer.newIds?.at(-1) ?? '');
  };
  const { error } = form.at(field);
  return (
    <div className="plans-try">
      <p>What costs most, as things to try:</p>
      <ul>
        {rows.map((row) => (
          <li key={row.fittingId}>
            <button
              type="button"
              className="plans-try-action"
              onClick={() => {
                tryRow(row);
              }}
            >
              <span className="plans-try-name">{row.fitting.name}</span>
              <span className="muted">
                {' '}
                {formatQuantity(row.after.outcome.trackPowerW, 'W')}: {firstTry(row.fitting).words}
              </span>
            </button>
          </li>
        ))}
      </ul>
      {error !== undefined && <p>{error}</p>}
    </div>
  );
}

/** A new plan with its first item, as one step. Its new ids are the plan's and the item's. */
function planWith(project: Project, fittingId: string, kind: Parameters<typeof addItem>[3]): EditAnswer {
  const withPlan = addPlan(project);
  if ('refused' in withPlan) return withPlan;
  const planId = withPlan.newIds?.[0] ?? '';
  const withItem = addItem(withPlan.project, planId, fittingId, kind);
  return 'refused' in withItem ? withItem : { ...withItem, newIds: [planId, ...(withItem.newIds ?? [])] };
}
