import type { Project } from '../../project/file/schema';
import { useAppStore } from '../../state/appStore';
import { OneOfLine, OneOfList, type Option } from '../../ui/OneOf';
import { useMediaQuery } from '../../ui/useMediaQuery';

/** No condition's id: ids hold no colon. */
const profileChoice = 'course:profile';

/** Which condition the ledger is about, or the whole course. */
export function ConditionChoice({ project }: { readonly project: Project }) {
  const basis = useAppStore((state) => state.question.basis);
  const isLow = useMediaQuery('(max-height: 799px), (max-width: 599px)');
  const options: Option<string>[] = project.conditions.map(({ id, name }) => ({ id, label: name }));
  if (project.profile !== null) {
    options.push({ id: profileChoice, label: project.profile.name, note: 'course' });
  }
  if (options.length === 0) return null;
  const isLine = options.length > mostListed || isLow;
  const Choice = isLine ? OneOfLine : OneOfList;
  return (
    <Choice
      label={isLine ? 'Condition' : 'Sailing condition'}
      options={options}
      chosenId={basis.kind === 'profile' ? profileChoice : basis.conditionId}
      onChoose={(id) => {
        useAppStore
          .getState()
          .chooseBasis(id === profileChoice ? { kind: 'profile' } : { kind: 'condition', conditionId: id });
      }}
    />
  );
}

/** Four conditions and the course stand as a list; more become one line that opens. */
const mostListed = 5;
