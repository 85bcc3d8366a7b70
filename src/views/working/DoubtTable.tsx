import type { RowResult } from '../../physics/ledger/ledgerSums';
import type { ProjectFitting } from '../../project/file/schema';
import { columnDecimals, formatRange, printUnit } from '../../units/print';
import { doubtRows, type DoubtRow } from './doubtRows';

interface DoubtTableProps {
  readonly result: RowResult;
  readonly fittings: readonly ProjectFitting[];
  readonly caption: string;
}

/** The doubts behind a row's range, source by source; those of wind and density apart. */
export function DoubtTable({ result, fittings, caption }: DoubtTableProps) {
  const rows = doubtRows(result.doubts, fittings);
  if (rows.length === 0) return null;
  const items = rows.filter(({ group }) => group === 'item');
  const air = rows.filter(({ group }) => group === 'air');
  const { ranges } = result;
  const range = (key: 'item' | 'air' | 'all'): string => {
    const { low, high } = ranges[key].trackPowerW;
    return formatRange(low, high, 'W', { decimals: columnDecimals([low, high], 'W') });
  };
  return (
    <table className="working-table">
      <caption>{caption}</caption>
      <thead>
        <tr>
          <th scope="col">source of doubt</th>
          <th scope="col">shared by rows?</th>
          <th scope="col">high {printUnit('W')}</th>
          <th scope="col">low {printUnit('W')}</th>
        </tr>
      </thead>
      <tbody>
        {items.map((row) => (
          <Row key={row.id} row={row} />
        ))}
        <RangeRow label="the item, together" range={range('item')} />
      </tbody>
      <tbody>
        {air.map((row) => (
          <Row key={row.id} row={row} />
        ))}
        <RangeRow label="wind and density alone" range={range('air')} />
        <RangeRow label="everything" range={range('all')} />
      </tbody>
    </table>
  );
}

function Row({ row }: { readonly row: DoubtRow }) {
  return (
    <tr>
      <th scope="row">{row.label}</th>
      <td>{row.scope}</td>
      <td>{row.up}</td>
      <td>{row.down}</td>
    </tr>
  );
}

function RangeRow({ label, range }: { readonly label: string; readonly range: string }) {
  return (
    <tr className="working-sum">
      <th scope="row">{label}</th>
      <td colSpan={3}>{range}</td>
    </tr>
  );
}
