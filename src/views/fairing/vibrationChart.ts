import type { CurveChartInput, CurveInput } from '../../charts/curves/curveChartTypes';
import type { VibrationAnswer } from '../../project/bench/benchTypes';
import { fromSi, toSi } from '../../units/convert';
import { formatValue, printUnit } from '../../units/print';
import { shownUnit } from '../../units/shownUnits';
import { roundStep } from './sweepCharts';

export type Vibration = Extract<VibrationAnswer, { ok: true }>;

/** Shedding and own frequencies against the wind square to the member; where they meet is a warning band. */
export function vibrationChartInput({ cases, shedding }: Vibration, widthPx: number): CurveChartInput {
  const xs = shedding.map(({ crossSpeedMs }) => crossSpeedMs);
  const to = xs.at(-1) ?? 1;
  const own = cases.map(({ label, trace }, i): CurveInput => {
    const level = xs.map(() => trace.firstFrequencyHz);
    return { id: label, name: label, look: 'other', dashIndex: i, best: level, low: level, high: level };
  });
  return {
    xs,
    xAxis: { from: 0, to, ticks: speedTicks(to), name: `wind square to the member, ${printUnit('kn')}` },
    unit: 'Hz',
    isLogarithmic: false,
    curves: [
      {
        id: 'shedding',
        name: 'sheds',
        look: 'bare',
        dashIndex: 0,
        best: shedding.map(({ sheddingHz }) => sheddingHz),
        low: shedding.map(({ sheddingLowHz }) => sheddingLowHz),
        high: shedding.map(({ sheddingHighHz }) => sheddingHighHz),
      },
      ...own,
    ],
    rings: cases
      .filter(({ trace }) => trace.meetingSpeedMs <= to)
      .map(({ trace }) => ({
        x: trace.meetingSpeedMs,
        y: trace.firstFrequencyHz,
        lowX: trace.meetingSpeedLowMs,
        highX: Math.min(trace.meetingSpeedHighMs, to),
        label: '',
      })),
    stretches: cases
      .filter(({ trace }) => trace.meetingSpeedLowMs <= to)
      .map(({ trace }, i) => ({
        fromX: trace.meetingSpeedLowMs,
        toX: Math.min(trace.meetingSpeedHighMs, to),
        kind: 'warning',
        label: i === 0 ? 'may shake' : '',
      })),
    now: null,
    widthPx,
    heightPx: 190,
  };
}

function speedTicks(toMs: number): CurveChartInput['xAxis']['ticks'] {
  const unit = shownUnit('kn');
  const step = roundStep(fromSi(toMs, unit) / 5);
  return Array.from({ length: Math.floor(fromSi(toMs, unit) / step + 1e-9) + 1 }, (_, i) => ({
    at: toSi(i * step, unit),
    label: formatValue(toSi(i * step, unit), 'kn', { decimals: step < 1 ? 1 : 0 }),
  }));
}
