import { useWidth } from '../../charts/useWidth';
import { Waterfall } from '../../charts/Waterfall';
import { waterfallGeometry, type WaterfallInput } from '../../charts/waterfallGeometry';
import type { ProjectPlan } from '../../project/file/schema';
import type { PlanAccount, ProjectLedger } from '../../project/ledger/ledgerTypes';
import { columnDecimals, formatValue, formatValueRange, printUnit } from '../../units/print';
import { waterfallInput } from './waterfallInput';

interface PlanWaterfallProps {
  readonly plan: ProjectPlan;
  readonly account: PlanAccount;
  readonly ledger: ProjectLedger;
}

/** Width of the pane's text where the page has not been laid out yet. */
const firstWidthPx = 352;

/** From the boat as sailed to the boat after the plan, item by item. */
export function PlanWaterfall({ plan, account, ledger }: PlanWaterfallProps) {
  const [ref, widthPx] = useWidth<HTMLElement>(firstWidthPx);
  const input = waterfallInput(account, ledger);
  if (input.steps.length === 0) return null;
  const chart = waterfallGeometry(input, widthPx);
  return (
    <figure ref={ref} className="plans-chart">
      <h3 className="chart-title">
        Track power before and after {plan.name}, item by item{' '}
        <span className="chart-title-unit">{printUnit('W')}, against the boat as sailed</span>
      </h3>
      <Waterfall chart={chart} />
      <p className="fine">
        Hatched: saved; crossed: added; dashed: not counted. Line under a bar: its spread
        {chart.isSpreadCut ? '; an arrow: it runs on beyond the chart' : ''}.
      </p>
      <details>
        <summary>as a table</summary>
        <WaterfallTable input={input} planName={plan.name} />
      </details>
    </figure>
  );
}

function WaterfallTable({ input, planName }: { readonly input: WaterfallInput; readonly planName: string }) {
  const { before, after, steps } = input;
  const decimals = columnDecimals([before.outcome.trackPowerW, after.outcome.trackPowerW], 'W');
  const text = (powerW: number): string => formatValue(powerW, 'W', { decimals });
  const range = ({ low, high }: { readonly low: number; readonly high: number }): string =>
    formatValueRange(low, high, 'W', { decimals });
  return (
    <table className="plans-table">
      <caption className="visually-hidden">
        Track power before, saving of each item and after {planName}, {printUnit('W')}
      </caption>
      <thead>
        <tr>
          <th scope="col">{printUnit('W')}</th>
          <th scope="col">best</th>
          <th scope="col">low–high</th>
          <th scope="col">alone</th>
        </tr>
      </thead>
      <tbody>
        <tr>
          <th scope="row">before</th>
          <td>{text(before.outcome.trackPowerW)}</td>
          <td>{range(before.ranges.item.trackPowerW)}</td>
          <td />
        </tr>
        {steps.map(({ id, name, isCounted, saving, savingAlone }) => (
          <tr key={id}>
            <th scope="row">
              {name}, {isCounted ? 'saves' : 'would save'}
            </th>
            <td>{text(saving.change.trackPowerW)}</td>
            <td>{range(saving.ranges.item.trackPowerW)}</td>
            <td>{savingAlone === null ? '' : text(savingAlone.change.trackPowerW)}</td>
          </tr>
        ))}
        <tr>
          <th scope="row">after</th>
          <td>{text(after.outcome.trackPowerW)}</td>
          <td>{range(after.ranges.item.trackPowerW)}</td>
          <td />
        </tr>
      </tbody>
    </table>
  );
}
