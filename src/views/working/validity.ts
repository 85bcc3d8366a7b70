import type { Shape } from '../../physics/fitting/fittingInput';
import { dnvEndNodes } from '../../physics/section/endEffect';
import { roundBarReynoldsRange } from '../../physics/section/roundBarTable';
import { formatValue, formatValueRange } from '../../units/print';
import { offAxisBand } from '../../physics/body/threeAxisBody';

/** Where the models behind a kind of fitting hold, in one sentence. */
export function validityText(shape: Shape): string {
  switch (shape.kind) {
    case 'roundBar':
      return `${barText(shape.coefficient === null)} Cross-flow principle: measured down to 45° between wind and axis, fair to 30°. End effect: from a slenderness of ${formatValue(dnvEndNodes[0]?.[0] ?? 0, '1', { decimals: 0 })}.`;
    case 'rectangularBar':
      return `${shape.coefficient === null ? 'Rectangle: EN’s diagram holds for wind square onto a side; between the sides the components’ rule is good to −15 and +25 %. A thin plate near its own plane lifts like a wing, which only the high edge of the range knows.' : 'Typed coefficient: held in every direction.'} Cross-flow principle: measured down to 45° between wind and axis, fair to 30°.`;
    case 'bluffBody':
      return `Three-axis rule: coefficients hold along the axes; between them ${formatValueRange(offAxisBand.low, offAxisBand.high, '%', { decimals: 0 })} %.`;
    case 'measuredArea':
      return 'A measured drag area holds for the direction and the speed it was measured at; here it is taken as the same from every side.';
  }
}

function barText(usesTable: boolean): string {
  if (!usesTable) return 'Typed coefficient: held at every Reynolds number.';
  const { from, to } = roundBarReynoldsRange;
  return `Round bar: Reynolds number ${formatValue(from, '1', { decimals: 0 })} to ${formatValue(to, '1')}.`;
}
