import { useMemo, useState, type ReactNode } from 'react';
import { trackPowerScale } from '../../charts/ledgerBarScale';
import type { Project } from '../../project/file/schema';
import type { ProjectLedger } from '../../project/ledger/ledgerTypes';
import { cautions } from '../../project/wording/cautions';
import { useAppStore, useLedger } from '../../state/appStore';
import { useMediaQuery } from '../../ui/useMediaQuery';
import { LedgerFoot } from './LedgerFoot';
import { ledgerGroups, selectableIds, type LedgerGroup } from './ledgerGroups';
import { ledgerPlaces, numberWidths } from './ledgerPlaces';
import type { RowSetting } from './LedgerRowView';
import { LedgerTable, type LedgerActions } from './LedgerTable';
import { PlanSection } from './PlanSection';
import { RowActions } from './RowActions';
import { runRowCommand } from './rowCommands';
import './ledger.css';
import './ledgerFoot.css';
import './plan.css';
import './rowActions.css';

interface LedgerPaneProps {
  /** A row was picked by hand: where panes swap, the working comes up. */
  readonly onPick: () => void;
  /** Draws name and size of a row as fields: a part that the page fetches when it is first needed. */
  readonly renderInPlace: LedgerActions['renderInPlace'];
}

/** The drag ledger of the open project for the question asked. */
export function LedgerPane({ onPick, renderInPlace }: LedgerPaneProps) {
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
    return (
      <>
        <Sentence>This project has no fittings yet: the ledger lists what stands in the wind.</Sentence>
        <AddLine />
      </>
    );
  }
  return <FilledLedger project={project} ledger={ledger} onPick={onPick} renderInPlace={renderInPlace} />;
}

function Sentence({ children }: { readonly children: ReactNode }) {
  return <p className="ledger-sentence">{children}</p>;
}

/** The next empty line of the ledger. */
function AddLine() {
  return (
    <p className="add-line">
      <button
        type="button"
        onClick={() => {
          useAppStore.getState().setAdding(true);
        }}
      >
        Add a fitting, from the catalogue or blank
      </button>
    </p>
  );
}

interface FilledLedgerProps extends LedgerPaneProps {
  readonly project: Project;
  readonly ledger: ProjectLedger;
}

function FilledLedger({ project, ledger, onPick, renderInPlace }: FilledLedgerProps) {
  const shown = useAppStore((state) => state.shown);
  const selectedId = useAppStore((state) => state.selectedFittingId);
  const pickedIds = useAppStore((state) => state.selectedIds);
  const groups = useMemo(() => ledgerGroups(ledger), [ledger]);
  const setting = useRowSetting(project, ledger);
  const [said, setSaid] = useState('');
  const actions = useLedgerActions(groups, onPick, renderInPlace, setSaid);
  const total = shown === 'after' ? ledger.forces.after : ledger.forces.before;
  return (
    <div className="ledger" data-shown={shown}>
      <div className="ledger-scroll">
        <p className="ledger-title">
          <Question project={project} ledger={ledger} />
        </p>
        <RowActions onCommand={actions.onCommand} onEdit={actions.onEdit} said={said} />
        <LedgerTable
          groups={groups}
          setting={setting}
          totalW={total.outcome.trackPowerW}
          selectedId={selectedId}
          pickedIds={pickedIds}
          actions={actions}
        />
        <AddLine />
        {ledger.losses.losses.length === 0 && (
          <p className="no-losses fine">Losses against a reference: none in this project.</p>
        )}
        {ledger.plan !== null && <PlanSection project={project} account={ledger.plan} />}
        {ledger.against !== null && <PlanSection project={project} account={ledger.against} />}
        <Cautions />
      </div>
      <LedgerFoot project={project} ledger={ledger} setting={setting} />
    </div>
  );
}

/** What a reader must hold beside every number; on paper too. */
function Cautions() {
  return (
    <section className="cautions" aria-label="Cautions">
      <h2>Cautions</h2>
      <ul>
        {cautions.map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
    </section>
  );
}

/** Picks all rows on the way; a range that begins here begins at the focus row. */
function pickRange(toFittingId: string, shownIds: readonly string[]): void {
  const store = useAppStore.getState();
  if (store.selectedIds.length === 0) store.select(store.selectedFittingId);
  store.selectRange(toFittingId, shownIds);
}

/** What clicks, keys and words do to the rows of the store. */
function useLedgerActions(
  groups: readonly LedgerGroup[],
  onPick: () => void,
  renderInPlace: LedgerActions['renderInPlace'],
  say: (said: string) => void,
): LedgerActions {
  return useMemo(() => {
    const ids = selectableIds(groups);
    return {
      onGo: (fittingId, picks) => {
        const store = useAppStore.getState();
        if (picks === 'range') pickRange(fittingId, ids);
        else if (picks === 'keep') store.moveFocus(fittingId);
        else store.select(fittingId);
      },
      onPick: (fittingId, kind) => {
        const store = useAppStore.getState();
        if (kind === 'range') pickRange(fittingId, ids);
        else if (kind === 'toggle') store.toggleSelected(fittingId);
        else {
          store.select(fittingId);
          onPick();
        }
      },
      onCommand: (command) => {
        say(runRowCommand(command, ids));
      },
      onEdit: () => {
        useAppStore.getState().openEdit();
        onPick();
      },
      onAdd: () => {
        useAppStore.getState().setAdding(true);
      },
      onLetGo: () => {
        useAppStore.getState().clearSelected();
      },
      renderInPlace,
    };
  }, [groups, onPick, renderInPlace, say]);
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
