import { useEffect, useId, useState } from 'react';
import type { Project } from '../../project/file/schema';
import type { ProjectLedger } from '../../project/ledger/ledgerTypes';
import { useAppStore, useLedger } from '../../state/appStore';
import { useMediaQuery } from '../../ui/useMediaQuery';
import { ConditionChoice } from './ConditionChoice';
import { ConditionFacts } from './ConditionFacts';
import { PlanChoice } from './PlanChoice';
import { ProfileFacts } from './ProfileFacts';
import { basisLine, planLine } from './marginLine';
import './margin.css';

/** What is true everywhere: the boat, the sailing condition, the wind at deck and masthead, and the plan. */
export function MarginPane() {
  const project = useAppStore((state) => state.project);
  const ledger = useLedger();
  const isNarrow = useMediaQuery('(max-width: 999px)');
  if (project === null) return null;
  return isNarrow ? (
    <FoldedMargin project={project} ledger={ledger} />
  ) : (
    <div className="margin">
      <MarginContent project={project} ledger={ledger} />
    </div>
  );
}

interface MarginProps {
  readonly project: Project;
  readonly ledger: ProjectLedger | null;
}

/** One line on top that opens. */
function FoldedMargin({ project, ledger }: MarginProps) {
  const [isOpen, setIsOpen] = useState(false);
  const contentId = useId();
  useEffect(
    () =>
      // A line of the margin asked for its field: the margin makes room for it.
      useAppStore.subscribe((state, previous) => {
        const isAsked = state.openField !== null && state.openField !== previous.openField;
        if (isAsked || state.sidePane !== previous.sidePane) setIsOpen(false);
      }),
    [],
  );
  return (
    <div className="margin folded">
      <button
        type="button"
        className="margin-line"
        aria-expanded={isOpen}
        aria-controls={contentId}
        onClick={() => {
          setIsOpen(!isOpen);
        }}
      >
        <span className="margin-line-text">
          <b>{basisLine(project, ledger)}</b>
          <span className="muted">{planLine(project, ledger)}</span>
        </span>
        <svg className="turn-mark" width="10" height="7" viewBox="0 0 10 7" aria-hidden="true">
          <path d={isOpen ? 'M0 7 5 0l5 7Z' : 'M0 0l5 7 5-7Z'} />
        </svg>
      </button>
      <div id={contentId} className="margin-content" hidden={!isOpen}>
        {/* Always there: on paper the margin is unfolded. */}
        <MarginContent project={project} ledger={ledger} />
      </div>
    </div>
  );
}

function MarginContent({ project, ledger }: MarginProps) {
  const { boat } = project;
  const parts = ledger?.parts ?? [];
  const [only] = parts;
  return (
    <>
      <div className="margin-choices">
        <h2 className="boat-name">{boat.name}</h2>
        <p className="muted boat-kind">{boat.kind}</p>
        <ConditionChoice project={project} />
        <PlanChoice project={project} />
      </div>
      {ledger?.question.basis.kind === 'profile' ? (
        <ProfileFacts parts={parts} />
      ) : (
        only !== undefined && <ConditionFacts summary={only.summary} windLaw={project.methods.windLaw} />
      )}
      <p className="margin-caution fine">
        A preliminary estimate. Class rules, local codes and a licensed engineer decide; no watt is worth a
        life.
      </p>
    </>
  );
}
