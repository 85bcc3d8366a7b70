import type { RowSetting } from './rowSetting';

/** Widths of the ledger's columns, shared by the rows and the total, which stands in a table of its own. */
export function LedgerColumns({ setting }: { readonly setting: RowSetting }) {
  const { columns, widthsPx, flagsWidthPx } = setting;
  return (
    <colgroup>
      <col className="column-number" />
      <col className="column-name" />
      <col className="column-flags" style={{ width: flagsWidthPx }} />
      {columns.map((id, i) => (
        <col key={id} className={`column-${id}`} style={{ width: widthsPx[i] }} />
      ))}
    </colgroup>
  );
}
