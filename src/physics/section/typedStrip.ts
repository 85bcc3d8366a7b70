import type { StripCoefficients } from './memberFamily';
import type { TypedCoefficient } from './roundBarSection';

/** A typed coefficient in place of a directed section's own: drag on the reference width from every side, no lift. */
export function fillTyped({ best, low, high }: TypedCoefficient, out: StripCoefficients): void {
  out.regime = 0;
  out.drag = best;
  out.dragLow = low;
  out.dragHigh = high;
  out.lift = 0;
  out.liftLow = 0;
  out.liftHigh = 0;
}
