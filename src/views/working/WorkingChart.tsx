import { CoefficientChart } from '../../charts/CoefficientChart';
import { coefficientChartGeometry } from '../../charts/coefficientChartGeometry';
import { useWidth } from '../../charts/useWidth';
import { chartSides } from './chartSides';
import type { WorkingSide } from './workingSides';

/** Width of the pane's text where the page has not been laid out yet. */
const firstWidthPx = 352;

/** The chart of a round bar; nothing for other kinds. */
export function WorkingChart({ sides }: { readonly sides: readonly WorkingSide[] }) {
  const [ref, widthPx] = useWidth<HTMLDivElement>(firstWidthPx);
  const charted = chartSides(sides);
  if (charted.length === 0) return null;
  return (
    <div ref={ref} className="working-chart">
      <CoefficientChart chart={coefficientChartGeometry(charted, widthPx)} />
    </div>
  );
}
