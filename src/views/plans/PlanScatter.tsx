import { Scatter } from '../../charts/Scatter';
import { scatterGeometry, type ScatterGeometry, type ScatterItem } from '../../charts/scatterGeometry';
import { useWidth } from '../../charts/useWidth';
import type { ItemAccount, PlanAccount } from '../../project/ledger/ledgerTypes';
import { formatValue, printUnit } from '../../units/print';

interface PlanScatterProps {
  readonly account: PlanAccount;
  readonly currency: string;
}

const firstWidthPx = 352;

/** Every item alone: saving against mass and against cost, to see which another item beats in both. */
export function PlanScatter({ account, currency }: PlanScatterProps) {
  const [ref, widthPx] = useWidth<HTMLDivElement>(firstWidthPx);
  const money = currency === '' ? 'cost' : `cost, ${currency}`;
  const byMass = itemsOf(account, ({ massChangeKg }) => massChangeKg);
  const byCost = itemsOf(account, ({ cost }) => cost);
  if (byMass.length < 2) return null;
  return (
    <div ref={ref} className="plans-scatters">
      <ScatterFigure
        title="Saving of each item against its mass"
        unit={`${printUnit('W')} against kg`}
        chart={scatterGeometry(byMass, 'change of mass, kg', widthPx)}
      />
      <ScatterFigure
        title="Saving of each item against its cost"
        unit={`${printUnit('W')} against ${currency === '' ? 'money' : currency}`}
        chart={scatterGeometry(byCost, money, widthPx)}
      />
    </div>
  );
}

/** The items that can be weighed: those with a saving, alone where they can stand alone. */
function itemsOf({ items }: PlanAccount, priceOf: (item: ItemAccount['item']) => number): ScatterItem[] {
  return items.flatMap(({ item, savingAlone, savingInOrder }, i) => {
    const saving = savingAlone ?? savingInOrder;
    if (saving === null) return [];
    const mark = formatValue(i + 1, '1', { decimals: 0 });
    return [{ id: item.id, name: item.name, mark, savingW: saving.change.trackPowerW, price: priceOf(item) }];
  });
}

interface ScatterFigureProps {
  readonly title: string;
  readonly unit: string;
  readonly chart: ScatterGeometry;
}

function ScatterFigure({ title, unit, chart }: ScatterFigureProps) {
  return (
    <figure className="plans-chart">
      <h3 className="chart-title">
        {title} <span className="chart-title-unit">{unit}</span>
      </h3>
      <Scatter chart={chart} />
      <p className="fine">Numbers are the items'. Hollow: another saves at least as much for no more.</p>
      <details>
        <summary>as a table</summary>
        <table className="plans-table">
          <caption className="visually-hidden">{title}</caption>
          <thead>
            <tr>
              <th scope="col">item</th>
              <th scope="col">saving, {printUnit('W')}</th>
              <th scope="col">{chart.priceLabel}</th>
            </tr>
          </thead>
          <tbody>
            {chart.points.map(({ id, name, mark, savingW, price, beatenBy }) => (
              <tr key={id}>
                <th scope="row">
                  {mark} {name}
                  {beatenBy !== null && <span className="muted">, beaten by {beatenBy}</span>}
                </th>
                <td>{formatValue(savingW, 'W')}</td>
                <td>{formatValue(price, '1')}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </details>
    </figure>
  );
}
