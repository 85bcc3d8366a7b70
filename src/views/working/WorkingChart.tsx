import { CoefficientChart } from '../../charts/CoefficientChart';
import { coefficientChartGeometry } from '../../charts/coefficientChartGeometry';
import { useWidth } from '../../charts/useWidth';
import type { SailingState } from '../../physics/condition/sailingState';
import type { FairingSurface } from '../../physics/section/fairingAligned';
import { chartGroups } from './chartSides';
import type { WorkingSide } from './workingSides';

/** Width of the pane's text where the page has not been laid out yet. */
const firstWidthPx = 352;

interface WorkingChartProps {
  readonly sides: readonly WorkingSide[];
  readonly surface: FairingSurface;
  readonly state: SailingState;
}

/** The chart of a shape's coefficient, one for each of what it is drawn against; nothing for what has no curve. */
export function WorkingChart({ sides, surface, state }: WorkingChartProps) {
  const [ref, widthPx] = useWidth<HTMLDivElement>(firstWidthPx);
  const groups = chartGroups(sides, surface, state);
  if (groups.length === 0) return null;
  return (
    <div ref={ref} className="working-chart">
      {groups.map((group) => (
        <CoefficientChart
          key={group.map(({ name }) => name).join()}
          chart={coefficientChartGeometry(group, widthPx)}
        />
      ))}
    </div>
  );
}
