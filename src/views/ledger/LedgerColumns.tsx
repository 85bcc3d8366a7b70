import type { NumberWidths } from './ledgerPlaces';

/** Widths of the ledger's columns, shared by the rows and the total, which stands in a table of its own. */
export function LedgerColumns({ barWidthPx, hasFullPrice, widths }: ColumnsProps) {
  const watts = { width: widths.trackPx };
  return (
    <colgroup>
      <col className="column-number" />
      <col className="column-name" />
      <col className="column-flags" />
      <col className="column-coefficient" />
      <col className="column-spread" />
      <col className="column-regime" />
      <col className="column-drag" style={{ width: widths.dragPx }} />
      <col className="column-air" style={{ width: widths.airPx }} />
      <col className="column-before" style={watts} />
      <col className="column-after" style={watts} />
      {hasFullPrice && <col className="column-price" style={watts} />}
      <col className="column-bar" style={{ width: barWidthPx + barGapPx }} />
      <col className="column-saving" style={watts} />
    </colgroup>
  );
}

export interface ColumnsProps {
  readonly barWidthPx: number;
  readonly hasFullPrice: boolean;
  readonly widths: NumberWidths;
}

/** Room between the bars and the numbers to their left. */
const barGapPx = 14;
