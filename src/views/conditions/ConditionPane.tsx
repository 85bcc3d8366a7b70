import { useState } from 'react';
import { neighbourId } from '../../project/edit/lists';
import { solveProjectCondition } from '../../project/ledger/conditionSummary';
import type { LedgerBasis } from '../../project/ledger/ledgerTypes';
import type { Project, ProjectCondition } from '../../project/file/schema';
import { useAppStore } from '../../state/appStore';
import { UnfinishedMark } from '../../ui/fields/UnfinishedMark';
import { OneOfLine } from '../../ui/OneOf';
import { ConditionActions, conditionMove } from './ConditionActions';
import { ConditionFields } from './ConditionFields';
import { ProfileEditor } from './ProfileEditor';
import { moveKeys } from '../../ui/MoveButtons';
import { useFocusNext } from '../../ui/useFocusNext';
import { useFormEdit } from '../../ui/useFormEdit';
import { useOpenField } from './useOpenField';
import './conditions.css';

/** Where the sailing condition and the course are changed. */
export function ConditionPane() {
  const project = useAppStore((state) => state.project);
  const basis = useAppStore((state) => state.question.basis);
  return project === null ? null : <ConditionEditor project={project} basis={basis} />;
}

interface ConditionEditorProps {
  readonly project: Project;
  readonly basis: LedgerBasis;
}

/** The head of the pane takes the focus when what had it is gone. */
const titleId = 'condition-title';

function ConditionEditor({ project, basis }: ConditionEditorProps) {
  const form = useFormEdit('condition');
  const focusNext = useFocusNext();
  /** Which condition is edited while the ledger is about the whole course. */
  const [courseConditionId, setCourseConditionId] = useState<string | null>(null);
  useOpenField();
  const isCourse = basis.kind === 'profile';
  const condition = conditionOf(project, isCourse ? courseConditionId : basis.conditionId);
  if (condition === null) return <p className="muted">The project has no sailing condition.</p>;
  const goToTitle = (): void => {
    focusNext(titleId);
  };
  const goToNeighbour = (): void => {
    const conditionId = neighbourId(project.conditions, condition.id) ?? '';
    if (isCourse) setCourseConditionId(conditionId);
    else useAppStore.getState().chooseBasis({ kind: 'condition', conditionId });
    goToTitle();
  };
  const profileEditor = <ProfileEditor project={project} form={form} onGone={goToTitle} />;
  return (
    <div className="conditions" onKeyDown={moveKeys(conditionMove(project, condition.id, form))}>
      <h2 id={titleId} className="condition-title" tabIndex={-1}>
        {isCourse ? project.profile?.name : condition.name}
      </h2>
      <UnfinishedMark within={`condition/${condition.id}.`} />
      {isCourse && profileEditor}
      {isCourse && (
        <OneOfLine
          label="Condition to change"
          options={project.conditions.map(({ id, name }) => ({ id, label: name }))}
          chosenId={condition.id}
          onChoose={setCourseConditionId}
        />
      )}
      <ConditionActions project={project} conditionId={condition.id} form={form} onDeleted={goToNeighbour} />
      <ConditionFields summary={solveProjectCondition(project, condition).summary} form={form} />
      {!isCourse && profileEditor}
    </div>
  );
}

/** The condition with an id, else the first of the course, else the project's first. */
function conditionOf({ conditions, profile }: Project, id: string | null): ProjectCondition | null {
  const withId = (wanted: string | null | undefined): ProjectCondition | undefined =>
    conditions.find((condition) => condition.id === wanted);
  return withId(id) ?? withId(profile?.entries[0]?.conditionId) ?? conditions[0] ?? null;
}
