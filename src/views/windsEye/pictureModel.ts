import type { CalloutWish } from '../../charts/windsEye/callouts';
import type { PictureMeaning } from '../../charts/windsEye/paints';
import { tintScale } from '../../charts/windsEye/tints';
import type { SailingState } from '../../physics/condition/sailingState';
import type { DeckLine } from '../../physics/placement/deckLine';
import { ledgerGroups } from '../../project/ledger/ledgerGroups';
import type { LedgerRow, ProjectLedger } from '../../project/ledger/ledgerTypes';
import { dutyIn } from '../../project/ledger/rowEvaluator';
import type { ProjectBoat, ProjectFitting } from '../../project/file/schema';
import { hullFaces, hullFitting } from '../../project/picture/hull';
import { solidsOf, type Solid } from '../../project/picture/solids';
import { formatQuantity } from '../../units/print';

/** Which state of the boat is drawn. */
export type PictureSide = 'before' | 'after';

/** What the colours are about. */
export const measureIds = ['trackPower', 'fullPrice', 'dragArea', 'saving'] as const;
export type MeasureId = (typeof measureIds)[number];

export const measureLabels: Readonly<Record<MeasureId, string>> = {
  trackPower: 'track power',
  fullPrice: 'full price',
  dragArea: 'drag area',
  saving: 'saving of the plan',
};

/** A row as the picture takes it. */
export interface PictureRow {
  readonly row: LedgerRow;
  /** As it stands on the side that is drawn, or stood before where nothing is left of it; null for none at all. */
  readonly drawn: ProjectFitting | null;
  readonly isGhost: boolean;
  readonly isChanged: boolean;
  readonly value: number;
  readonly valueText: string;
}

/** The rows in the order of the ledger, with what the picture says of each. */
export function pictureRows(
  ledger: ProjectLedger,
  conditionId: string,
  side: PictureSide,
  measure: MeasureId,
): PictureRow[] {
  return ledgerGroups(ledger)
    .flatMap(({ rows, excluded }) => [...rows, ...excluded])
    .map((row) => {
      const own = side === 'before' ? row.fittingBefore : row.fittingAfter;
      const drawn = own ?? row.fittingBefore;
      const isOut = own === null || dutyIn(own.dutyFraction, conditionId) === 0;
      const value = row.excludedReason === null ? valueOf(row, conditionId, side, measure) : 0;
      return {
        row,
        drawn,
        isGhost: row.excludedReason !== null || isOut,
        isChanged: side === 'after' && row.isChanged,
        value,
        valueText: formatQuantity(value, measure === 'dragArea' ? 'm2' : 'W'),
      };
    });
}

function valueOf(row: LedgerRow, conditionId: string, side: PictureSide, measure: MeasureId): number {
  const result = row[side];
  switch (measure) {
    case 'trackPower':
      return result.outcome.trackPowerW;
    case 'fullPrice':
      return result.outcome.fullPriceW;
    case 'saving':
      return row.saving.change.trackPowerW;
    case 'dragArea': {
      const trace = result.parts.find((part) => part.conditionId === conditionId)?.trace;
      const deployed = trace?.members.reduce((sum, { dragAreaM2 }) => sum + dragAreaM2, 0) ?? 0;
      return (trace?.dutyFraction ?? 0) * deployed;
    }
  }
}

export function meaningOf(rows: readonly PictureRow[], measure: MeasureId): PictureMeaning {
  const values = new Map(rows.map(({ row, value }) => [row.fittingId, value]));
  return {
    values,
    scale: tintScale([...values.values()]),
    hue: measure === 'saving' ? 'saving' : 'cost',
    changedIds: idsWhere(rows, ({ isChanged }) => isChanged),
    ghostIds: idsWhere(rows, ({ isGhost }) => isGhost),
  };
}

function idsWhere(rows: readonly PictureRow[], holds: (row: PictureRow) => boolean): ReadonlySet<string> {
  return new Set(rows.filter(holds).map(({ row }) => row.fittingId));
}

/** Who is called out, the largest first; what is not there costs nothing and is not. */
export function wishesOf(rows: readonly PictureRow[]): CalloutWish[] {
  return rows
    .filter(({ isGhost, value }) => !isGhost && value !== 0)
    .sort((a, b) => Math.abs(b.value) - Math.abs(a.value))
    .map(({ row, valueText }) => ({
      fittingId: row.fittingId,
      number: row.number,
      name: row.fitting.name,
      value: valueText,
    }));
}

let known: {
  readonly line: DeckLine;
  readonly state: SailingState;
  readonly solids: WeakMap<ProjectFitting, readonly Solid[]>;
} | null = null;

/** The solids of hull and fittings; those of a fitting that no edit has touched are known already. */
export function solidsOfRows(
  boat: ProjectBoat,
  rows: readonly PictureRow[],
  line: DeckLine,
  state: SailingState,
): Solid[] {
  if (known?.line !== line || known.state !== state) known = { line, state, solids: new WeakMap() };
  const { solids } = known;
  const shown = rows.flatMap(({ drawn }) => (drawn === null ? [] : [drawn]));
  const hull = hullFitting(boat, shown);
  const own = shown.filter((fitting) => fitting !== hull).flatMap(solidsOfOne);
  return [...hullFaces(boat, hull?.id ?? null), ...own];

  function solidsOfOne(drawn: ProjectFitting): readonly Solid[] {
    const own = solids.get(drawn) ?? solidsOf(drawn, line, state);
    solids.set(drawn, own);
    return own;
  }
}
