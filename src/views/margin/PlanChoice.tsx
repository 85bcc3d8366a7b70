import type { Project } from '../../project/file/schema';
import { useAppStore, type Shown } from '../../state/appStore';
import { OneOfLine, OneOfList, OneOfWords, type Option } from '../../ui/OneOf';
import { useMediaQuery } from '../../ui/useMediaQuery';
import { formatValue } from '../../units/print';

/** No plan's id: ids hold no colon. */
const asSailed = 'as:sailed';
/** As sailed and four plans. */
const mostListed = 5;

const shownOptions: readonly Option<Shown>[] = [
  { id: 'before', label: 'before' },
  { id: 'both', label: 'both' },
  { id: 'after', label: 'after' },
];

/** Which plan is tried, against what, and which state of the boat is shown. A project without plans has no such choice. */
export function PlanChoice({ project }: { readonly project: Project }) {
  const { planId, againstPlanId } = useAppStore((state) => state.question);
  const shown = useAppStore((state) => state.shown);
  const isLow = useMediaQuery('(max-height: 799px), (max-width: 599px)');
  if (project.plans.length === 0) return null;
  const sailed: Option<string> = { id: asSailed, label: 'As sailed' };
  const plans = project.plans.map(({ id, name, items }) => ({
    id,
    label: name,
    note: formatValue(items.length, '1', { decimals: 0 }),
  }));
  const isLine = plans.length >= mostListed || isLow;
  const Choice = isLine ? OneOfLine : OneOfList;
  return (
    <div className="plan-choice">
      <Choice
        label={isLine ? 'Plan' : 'Refit plan, number of items'}
        options={[sailed, ...plans]}
        chosenId={planId ?? asSailed}
        onChoose={(id) => {
          useAppStore.getState().choosePlan(id === asSailed ? null : id);
          // As sailed is held against nothing: what another plan brings is seen by choosing it.
          if (id === asSailed) useAppStore.getState().chooseAgainst(null);
        }}
      />
      {planId !== null && (
        <>
          <OneOfLine
            label="against"
            options={[
              { id: asSailed, label: 'as sailed' },
              ...plans.filter(({ id }) => id !== planId).map(({ id, label }) => ({ id, label })),
            ]}
            chosenId={againstPlanId ?? asSailed}
            onChoose={(id) => {
              useAppStore.getState().chooseAgainst(id === asSailed ? null : id);
            }}
          />
          <OneOfWords
            label="Shown state"
            options={shownOptions}
            chosenId={shown}
            onChoose={(state) => {
              useAppStore.getState().show(state);
            }}
          />
        </>
      )}
    </div>
  );
}
