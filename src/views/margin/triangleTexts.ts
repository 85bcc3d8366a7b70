import type { ConditionSummary } from '../../project/ledger/conditionSummary';
import { fromSi } from '../../units/convert';
import { formatQuantity } from '../../units/print';
import { shownUnit } from '../../units/shownUnits';

/** What the two ends of the triangle say to those who listen. */
export function triangleTexts({ condition, trueWindAt10Ms, trueWindAngleRad }: ConditionSummary): {
  readonly wind: string;
  readonly boat: string;
} {
  const apart = formatQuantity(trueWindAngleRad, 'deg');
  return {
    wind: `${formatQuantity(trueWindAt10Ms, 'kn')} at 10 m, ${apart} off the course, ${condition.tack} tack`,
    boat: formatQuantity(condition.boatSpeedMs, 'kn'),
  };
}

/** A speed in the reader's unit with one decimal, as a slider's number. */
export function sliderSpeed(speedMs: number): number {
  return Math.round(fromSi(speedMs, shownUnit('kn')) * 10) / 10;
}
