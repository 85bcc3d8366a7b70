import { useState } from 'react';
import type { Project } from '../../project/file/schema';
import { heaviestPart } from '../../project/ledger/heaviestPart';
import type { BasisPart, LedgerRow, ProjectLedger } from '../../project/ledger/ledgerTypes';
import { exclusionText } from '../../project/wording/noReason';
import { useAppStore, useLedger } from '../../state/appStore';
import { fittingSize } from '../../ui/fittingSize';
import { OneOfLine } from '../../ui/OneOf';
import { formatQuantity } from '../../units/print';
import { asTyped } from './asTyped';
import { Chain } from './Chain';
import { NoticeList } from './NoticeList';
import { PlanItems } from './PlanItems';
import './working.css';

/** The working of the selected row: the chain from wind to watts, before and after. */
export function WorkingPane() {
  const project = useAppStore((state) => state.project);
  const ledger = useLedger();
  const fittingId = useAppStore((state) => state.selectedFittingId);
  const row = ledger?.rows.find((each) => each.fittingId === fittingId);
  if (project === null || ledger === null || row === undefined) {
    return <p className="working-empty muted">Choose a row of the ledger to see its working.</p>;
  }
  return <Working key={row.fittingId} project={project} ledger={ledger} row={row} />;
}

interface WorkingProps {
  readonly project: Project;
  readonly ledger: ProjectLedger;
  readonly row: LedgerRow;
}

function Working({ project, ledger, row }: WorkingProps) {
  const [wantedId, setWantedId] = useState('');
  const part =
    ledger.parts.find(({ summary }) => summary.condition.id === wantedId) ?? heaviestPart(ledger.parts);
  const items = (ledger.plan?.items ?? []).filter(({ item }) => item.fittingId === row.fittingId);
  return (
    <article className="working" aria-label={`Working of ${row.fitting.name}`}>
      <Head project={project} row={row} />
      {row.excludedReason !== null ? (
        <p>Left out of the sums: {exclusionText(row.excludedReason)}</p>
      ) : (
        <>
          <NoticeList row={row} />
          <PlanItems items={items} />
          {ledger.parts.length > 1 && part !== undefined && (
            <ConditionChoice parts={ledger.parts} chosen={part} onChoose={setWantedId} />
          )}
          {part !== undefined && <Chain project={project} ledger={ledger} row={row} part={part} />}
        </>
      )}
    </article>
  );
}

function Head({ project, row }: { readonly project: Project; readonly row: LedgerRow }) {
  const { fitting, fittingAfter, isChanged } = row;
  const size = fittingSize(fitting, project.boat);
  const sizeAfter = isChanged && fittingAfter !== null ? fittingSize(fittingAfter, project.boat) : size;
  return (
    <header className="working-head">
      <h2 className="working-title">
        <span className="working-number">{row.number}</span> {fitting.name}{' '}
        <span className="working-size">
          {size}
          {sizeAfter === size ? '' : `, after ${sizeAfter}`}
        </span>
      </h2>
      <p className="fine">
        As typed: {asTyped(fitting).join('; ')}.{fitting.note === '' ? '' : ` ${fitting.note}`}
      </p>
    </header>
  );
}

interface ConditionChoiceProps {
  readonly parts: readonly BasisPart[];
  readonly chosen: BasisPart;
  readonly onChoose: (conditionId: string) => void;
}

/** Under a course profile: whose chain is shown. The ledger's numbers are the weighted mean. */
function ConditionChoice({ parts, chosen, onChoose }: ConditionChoiceProps) {
  return (
    <OneOfLine
      label="working in"
      chosenId={chosen.summary.condition.id}
      onChoose={onChoose}
      options={parts.map(({ summary, weight }) => ({
        id: summary.condition.id,
        label: summary.condition.name,
        note: `${formatQuantity(weight, '%')} of the time`,
      }))}
    />
  );
}
