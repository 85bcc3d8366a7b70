import type { Range } from '../../physics/doubt/doubts';
import type { Project } from '../../project/file/schema';
import type { LedgerSide, ProjectLedger } from '../../project/ledger/ledgerTypes';
import type { Shown } from '../../state/appStore';
import { massText, moneyText } from '../../ui/balanceTexts';
import {
  formatQuantity,
  formatValue,
  formatValueRange,
  printUnit,
  type PrintOptions,
} from '../../units/print';
import { savingTone } from '../../ui/savingTone';
import { shortUnit } from './columnWidths';
import type { LedgerPlaces } from './ledgerPlaces';
import { planHeadingId } from './planTexts';
import { shareOf } from './shares';

interface LedgerTotalsProps {
  readonly project: Project;
  readonly ledger: ProjectLedger;
  readonly places: LedgerPlaces;
  readonly shown: Shown;
}

/** The three figures that the whole ledger is for, with the spread of the items and, apart, of wind and density. */
export function LedgerTotals({ project, ledger, places, shown }: LedgerTotalsProps) {
  const { forces, plan, against, totalPaidW } = ledger;
  const hasPlan = plan !== null || against !== null;
  const nameOf = (planId: string | undefined): string =>
    project.plans.find(({ id }) => id === planId)?.name ?? 'as sailed';
  const facts = factsOf(forces, totalPaidW);
  return (
    <div className="ledger-totals">
      {shown !== 'after' && (
        <Figure
          label={hasPlan ? `before (${nameOf(against?.planId)})` : 'as sailed'}
          valueW={forces.before.outcome.trackPowerW}
          item={forces.before.ranges.item.trackPowerW}
          air={forces.before.ranges.air.trackPowerW}
          places={places}
        />
      )}
      {hasPlan && shown !== 'before' && (
        <Figure
          label={`after (${nameOf(plan?.planId)})`}
          valueW={forces.after.outcome.trackPowerW}
          item={forces.after.ranges.item.trackPowerW}
          air={forces.after.ranges.air.trackPowerW}
          places={places}
        />
      )}
      {hasPlan && shown === 'both' && (
        <Figure
          label="saving"
          valueW={forces.saving.change.trackPowerW}
          item={forces.saving.ranges.item.trackPowerW}
          air={forces.saving.ranges.air.trackPowerW}
          places={places}
          isSaving
        />
      )}
      <div className="total-facts">
        {facts.map((fact) => (
          <span key={fact}>{fact}</span>
        ))}
        {plan !== null && (
          <span className="plan-fact">
            <span>
              for {massText(plan.balance.massChangeKg - (against?.balance.massChangeKg ?? 0))} and{' '}
              {moneyText(plan.balance.cost - (against?.balance.cost ?? 0), project.currency)}{' '}
            </span>
            <PlanLink planId={plan.planId} count={plan.items.length} />
          </span>
        )}
      </div>
    </div>
  );
}

/** The plan's table stands below all rows, out of sight. */
function PlanLink({ planId, count }: { readonly planId: string; readonly count: number }) {
  return (
    <button
      type="button"
      className="plan-link"
      onClick={() => {
        const heading = document.getElementById(planHeadingId(planId));
        heading?.focus({ preventScroll: true });
        scrollToTop(heading);
      }}
    >
      plan: {count === 1 ? 'one item' : `${count} items`}, below
    </button>
  );
}

function factsOf({ before, saving }: LedgerSide, totalPaidW: number | null): string[] {
  const facts: string[] = [];
  const ofFittings = shareOf(saving.change.trackPowerW, before.outcome.trackPowerW);
  if (ofFittings !== null) facts.push(`saves ${formatQuantity(ofFittings, '%')} of the fittings’ power`);
  if (totalPaidW === null) return facts;
  const ofAll = shareOf(before.outcome.trackPowerW, totalPaidW);
  if (ofAll !== null) facts.push(`before is ${formatQuantity(ofAll, '%')} of what she pays in all`);
  return facts;
}

/** Moves the rows alone: the page around them must not scroll. */
function scrollToTop(heading: HTMLElement | null): void {
  const box = heading?.closest('.ledger-scroll');
  if (heading === null || box === undefined || box === null) return;
  box.scrollTop += heading.getBoundingClientRect().top - box.getBoundingClientRect().top - roomAbovePx;
}

const roomAbovePx = 10;

interface FigureProps {
  readonly label: string;
  readonly valueW: number;
  readonly item: Range;
  readonly air: Range;
  readonly places: LedgerPlaces;
  readonly isSaving?: boolean;
}

function Figure({ label, valueW, item, air, places, isSaving = false }: FigureProps) {
  const decimals = { decimals: places.trackW };
  return (
    <div className="total-figure">
      <span className="total-label muted" title={label}>
        {label}
      </span>
      <span className="total-value">
        <span className={isSaving ? `figure ${savingTone(valueW)}` : 'figure'}>
          {formatValue(valueW, 'W', decimals)}
        </span>{' '}
        {printUnit('W')}
      </span>
      <span className="fine">{rangeText(item, decimals)} by the fittings</span>
      <span className="fine">{rangeText(air, decimals)} by wind and density</span>
    </div>
  );
}

/** Under a figure that names its unit in full. */
function rangeText({ low, high }: Range, decimals: PrintOptions): string {
  return `${formatValueRange(low, high, 'W', decimals)}\u00a0${shortUnit('W')}`;
}
