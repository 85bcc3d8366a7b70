import type { CurveChartInput, XAxisInput } from '../../charts/curves/curveChartTypes';
import type { ThicknessRow } from '../../physics/section/thicknessCurve';
import type { ThicknessCurveAnswer } from '../../project/bench/benchTypes';
import { valueIn } from '../../units/printIn';
import type { Unit } from '../../units/unitTable';

export type ThicknessCurve = Extract<ThicknessCurveAnswer, { ok: true }>;

/** What is drawn against the thickness ratio, each on a chart of its own. */
export const thicknessMeasures = [
  { id: 'drag', label: 'Drag, nose into the wind', unit: 'N' },
  { id: 'mass', label: 'Mass', unit: 'kg' },
  { id: 'area', label: 'Wetted area', unit: 'm2' },
] as const satisfies readonly { readonly id: string; readonly label: string; readonly unit: Unit }[];

export type ThicknessMeasure = (typeof thicknessMeasures)[number];

/** Best, low and high of a measure; only the drag has a doubt. */
export function measureOf(row: ThicknessRow, id: ThicknessMeasure['id']): readonly [number, number, number] {
  switch (id) {
    case 'drag':
      return [row.dragN, row.dragLowN, row.dragHighN];
    case 'mass':
      return [row.massKg, row.massKg, row.massKg];
    case 'area':
      return [row.wettedAreaM2, row.wettedAreaM2, row.wettedAreaM2];
  }
}

/** A measure against the thickness ratio; the flat stretch of the drag runs through all of them. */
export function thicknessChartInput(
  curve: ThicknessCurve,
  { id, unit, label }: ThicknessMeasure,
  widthPx: number,
): CurveChartInput {
  const { rows, flat, presentRatio } = curve;
  const values = rows.map((row) => measureOf(row, id));
  return {
    xs: rows.map(({ thicknessRatio }) => thicknessRatio),
    xAxis: ratioAxis(rows),
    unit,
    isLogarithmic: false,
    curves: [
      {
        id,
        name: label.toLowerCase(),
        look: 'chosen',
        dashIndex: 0,
        best: values.map(([best]) => best),
        low: values.map(([, low]) => low),
        high: values.map(([, , high]) => high),
      },
    ],
    rings: [],
    stretches: [{ fromX: flat.from, toX: flat.to, kind: 'flat', label: 'flat' }],
    now:
      presentRatio === null
        ? null
        : { x: presentRatio, label: `now ${valueIn(presentRatio, '1', { decimals: 2 })}` },
    widthPx,
    heightPx: id === 'drag' ? 190 : 130,
  };
}

const tickStep = 0.05;

function ratioAxis(rows: readonly ThicknessRow[]): XAxisInput {
  const from = rows[0]?.thicknessRatio ?? 0.1;
  const to = rows.at(-1)?.thicknessRatio ?? 0.4;
  const first = Math.ceil(from / tickStep - 1e-9);
  const last = Math.floor(to / tickStep + 1e-9);
  const ticks = Array.from({ length: last - first + 1 }, (_, i) => {
    const at = (first + i) * tickStep;
    return { at, label: valueIn(at, '1', { decimals: 2 }) };
  });
  return { from, to, ticks, name: 'thickness over chord' };
}
