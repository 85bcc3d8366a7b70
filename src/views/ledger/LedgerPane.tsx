import { useCallback, useMemo, type ReactNode } from 'react';
import { trackPowerScale } from '../../charts/ledgerBarScale';
import type { Project } from '../../project/file/schema';
import type { ProjectLedger } from '../../project/ledger/ledgerTypes';
import { useAppStore, useLedger } from '../../state/appStore';
import { useMediaQuery } from '../../ui/useMediaQuery';
import { LedgerFoot } from './LedgerFoot';
import { ledgerGroups } from './ledgerGroups';
import { ledgerPlaces, numberWidths } from './ledgerPlaces';
import type { RowSetting } from './LedgerRowView';
import { LedgerTable } from './LedgerTable';
import { PlanSection } from './PlanSection';
import './ledger.css';
import './ledgerFoot.css';
import './plan.css';

interface LedgerPaneProps {
  /** A row was picked by hand: where panes swap, the working comes up. */
  readonly onPick: () => void;
}

/** The drag ledger of the open project for the question asked. */
export function LedgerPane({ onPick }: LedgerPaneProps) {
  const project = useAppStore((state) => state.project);
  const ledger = useLedger();
  if (project === null) return null;
  if (ledger === null) {
    return (
      <Sentence>
        This project has no sailing condition, and without wind nothing costs anything. Add a condition to the
        file and open it again.
      </Sentence>
    );
  }
  if (ledger.rows.length === 0) {
    return <Sentence>This project has no fittings yet: the ledger lists what stands in the wind.</Sentence>;
  }
  return <FilledLedger project={project} ledger={ledger} onPick={onPick} />;
}

function Sentence({ children }: { readonly children: ReactNode }) {
  return <p className="ledger-sentence">{children}</p>;
}

function selectRow(fittingId: string): void {
  useAppStore.getState().select(fittingId);
}

interface FilledLedgerProps extends LedgerPaneProps {
  readonly project: Project;
  readonly ledger: ProjectLedger;
}

function FilledLedger({ project, ledger, onPick }: FilledLedgerProps) {
  const shown = useAppStore((state) => state.shown);
  const selectedId = useAppStore((state) => state.selectedFittingId);
  const groups = useMemo(() => ledgerGroups(ledger), [ledger]);
  const setting = useRowSetting(project, ledger);
  const pick = useCallback(
    (fittingId: string) => {
      selectRow(fittingId);
      onPick();
    },
    [onPick],
  );
  return (
    <div className="ledger" data-shown={shown}>
      <div className="ledger-scroll">
        <p className="ledger-title">
          <Question project={project} ledger={ledger} />
        </p>
        <LedgerTable
          groups={groups}
          setting={setting}
          selectedId={selectedId}
          onSelect={selectRow}
          onPick={pick}
        />
        {ledger.losses.losses.length === 0 && (
          <p className="no-losses fine">Losses against a reference: none in this project.</p>
        )}
        {ledger.plan !== null && <PlanSection project={project} account={ledger.plan} />}
        {ledger.against !== null && <PlanSection project={project} account={ledger.against} />}
      </div>
      <LedgerFoot project={project} ledger={ledger} setting={setting} />
    </div>
  );
}

function useRowSetting(project: Project, ledger: ProjectLedger): RowSetting {
  const shown = useAppStore((state) => state.shown);
  const isPhone = useMediaQuery('(max-width: 599px)');
  const isWide = useMediaQuery('(min-width: 1240px)');
  const barWidthPx = isPhone ? 104 : isWide ? 132 : 110;
  return useMemo(() => {
    const places = ledgerPlaces(ledger);
    return {
      boat: project.boat,
      shown,
      places,
      widths: numberWidths(ledger, places),
      scale: trackPowerScale(ledger.rows, barWidthPx),
      hasFullPrice: ledger.hasFullPrice,
      rowHeightPx: isPhone ? 44 : 24,
    };
  }, [project, ledger, shown, barWidthPx, isPhone]);
}

/** What the ledger is about, in one line. */
function Question({ project, ledger }: { readonly project: Project; readonly ledger: ProjectLedger }) {
  const { basis, planId, againstPlanId } = ledger.question;
  const where =
    basis.kind === 'profile'
      ? `over the course profile ${project.profile?.name ?? ''}`
      : `in ${project.conditions.find(({ id }) => id === basis.conditionId)?.name ?? ''}`;
  const planName = (id: string | null): string => project.plans.find((plan) => plan.id === id)?.name ?? '';
  const saves = planId === null ? '' : `, and what ${planName(planId)} saves`;
  const against = againstPlanId === null ? '' : ` against ${planName(againstPlanId)}`;
  return (
    <>
      <strong>What each fitting costs</strong>{' '}
      <span className="muted">
        {where}
        {saves}
        {against}; sorted by cost, zone by zone
      </span>
    </>
  );
}
