import { useMemo, useRef, type CSSProperties, type ReactNode } from 'react';
import { useWidth } from '../../charts/useWidth';
import type { Project } from '../../project/file/schema';
import type { ProjectLedger } from '../../project/ledger/ledgerTypes';
import { cautions } from '../../project/wording/cautions';
import { useAppStore, useLedger } from '../../state/appStore';
import { ledgerOf } from '../../state/ledgerOf';
import { usePreferences } from '../../state/preferences';
import { useMediaQuery } from '../../ui/useMediaQuery';
import { toSi } from '../../units/convert';
import { formatQuantity } from '../../units/print';
import { ColumnsChoice } from './ColumnsChoice';
import { LedgerFoot } from './LedgerFoot';
import { ledgerGroups, selectableIds } from '../../project/ledger/ledgerGroups';
import { LedgerTable } from './LedgerTable';
import { PlanSection } from './PlanSection';
import { RowActions } from './RowActions';
import { runRowCommand } from './rowCommands';
import { rowSetting, type RowSetting } from './rowSetting';
import type { LedgerActions } from './useLedgerKeys';
import { useRowSaid } from './useRowSaid';
import './ledger.css';
import './ledgerFoot.css';
import './ledgerRows.css';
import './ledgerWide.css';
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

/** Wider than any page: until it is measured, and where nothing is laid out, all columns fit. */
const unknownWidthPx = 10_000;

function FilledLedger({ project, ledger, onPick, renderInPlace }: FilledLedgerProps) {
  const shown = useAppStore((state) => state.shown);
  const selectedId = useAppStore((state) => state.selectedFittingId);
  const pickedIds = useAppStore((state) => state.selectedIds);
  const isCompact = usePreferences((state) => state.isCompact);
  const groups = useMemo(() => ledgerGroups(ledger), [ledger]);
  const setting = useRowSetting(project, ledger);
  const [said, setSaid] = useRowSaid();
  const actions = useLedgerActions(onPick, renderInPlace, setSaid);
  const [scrollRef, widthPx] = useWidth<HTMLDivElement>(unknownWidthPx);
  const totalBox = useRef<HTMLDivElement>(null);
  const total = shown === 'after' ? ledger.forces.after : ledger.forces.before;
  return (
    <div
      className={classesOf(setting, widthPx)}
      data-compact={isCompact}
      style={ledgerStyle(setting, widthPx)}
    >
      <div
        className="ledger-scroll"
        ref={scrollRef}
        onScroll={({ currentTarget }) => {
          totalBox.current?.scrollTo({ left: currentTarget.scrollLeft });
        }}
      >
        <div className="ledger-sheet">
          <div className="ledger-head">
            <p className="ledger-title">
              <Question project={project} ledger={ledger} />
            </p>
            <ColumnsChoice />
          </div>
          <RowActions onCommand={actions.onCommand} onEdit={actions.onEdit} said={said} />
          <LedgerTable
            groups={groups}
            setting={setting}
            fittings={project.fittings}
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
      </div>
      <LedgerFoot project={project} ledger={ledger} setting={setting} totalBox={totalBox} />
    </div>
  );
}

/** What upright paper has room for without making the table smaller, px. */
const paperWidthPx = 680;
/** Made smaller than this, about 7 points, figures are hard to read: the paper is laid across. */
const leastPaperZoom = 0.75;

function paperZoom({ leastWidthPx }: RowSetting): number {
  return Math.min(1, paperWidthPx / leastWidthPx);
}

/** The table wider than its box on the screen, and than upright paper. */
function classesOf(setting: RowSetting, widthPx: number): string {
  const wide = setting.leastWidthPx > widthPx ? ' ledger-wide' : '';
  return `ledger${wide}${paperZoom(setting) < leastPaperZoom ? ' ledger-broad' : ''}`;
}

/** Lengths that only the script knows, for the style sheet. */
function ledgerStyle(setting: RowSetting, widthPx: number): CSSProperties {
  const { leastWidthPx, rowHeightPx, columns, widthsPx, flagsWidthPx } = setting;
  return {
    ...Object.fromEntries(columns.map((id, i) => [`--${id}-width`, `${widthsPx[i] ?? 0}px`])),
    '--flags-width': `${flagsWidthPx}px`,
    '--row': `${rowHeightPx}px`,
    '--table-width': `${leastWidthPx}px`,
    '--box-width': `${widthPx}px`,
    '--paper-zoom': paperZoom(setting),
  } as CSSProperties;
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

/** The rows that can be selected, as they stand on the page now. */
function shownIds(): string[] {
  const { project, question } = useAppStore.getState();
  const ledger = project === null ? null : ledgerOf(project, question);
  return ledger === null ? [] : selectableIds(ledgerGroups(ledger));
}

/** What clicks, keys and words do to the rows of the store. One object that outlives edits, so that rows stay drawn. */
function useLedgerActions(
  onPick: () => void,
  renderInPlace: LedgerActions['renderInPlace'],
  say: (said: string) => void,
): LedgerActions {
  return useMemo(
    () => ({
      onGo: (fittingId, picks) => {
        const store = useAppStore.getState();
        if (picks === 'range') pickRange(fittingId, shownIds());
        else if (picks === 'keep') store.moveFocus(fittingId);
        else store.select(fittingId);
      },
      onPick: (fittingId, kind) => {
        const store = useAppStore.getState();
        if (kind === 'range') pickRange(fittingId, shownIds());
        else if (kind === 'toggle') store.toggleSelected(fittingId);
        else {
          store.select(fittingId);
          onPick();
        }
      },
      onCommand: (command) => {
        say(runRowCommand(command, shownIds()));
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
    }),
    [onPick, renderInPlace, say],
  );
}

function useRowSetting({ boat }: Project, ledger: ProjectLedger): RowSetting {
  const shown = useAppStore((state) => state.shown);
  const preferences = usePreferences();
  const isPhone = useMediaQuery('(max-width: 599px)');
  // Paper is as narrow, and has every column in sight.
  const isNarrow = useMediaQuery('screen and (max-width: 799px)');
  const isRoomy = useMediaQuery('(min-width: 1560px)');
  const barWidthPx = isPhone ? 104 : isRoomy ? 132 : 110;
  return useMemo(
    () => rowSetting({ boat, ledger, shown, preferences, isPhone, isNarrow, barWidthPx }),
    [boat, ledger, shown, preferences, isPhone, isNarrow, barWidthPx],
  );
}

/** What the ledger is about, in one line. */
function Question({ project, ledger }: { readonly project: Project; readonly ledger: ProjectLedger }) {
  const { basis, planId, againstPlanId } = ledger.question;
  const where =
    basis.kind === 'profile'
      ? `over the course profile ${project.profile?.name ?? ''}, ${hoursText(ledger)} in all`
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

function hoursText({ parts }: ProjectLedger): string {
  const hours = parts.reduce((sum, part) => sum + (part.hours ?? 0), 0);
  return formatQuantity(toSi(hours, 'h'), 'h');
}
