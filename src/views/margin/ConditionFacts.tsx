import { WindTriangle } from '../../charts/WindTriangle';
import { windTriangleGeometry } from '../../charts/windTriangleGeometry';
import type { ConditionSummary } from '../../project/ledger/conditionSummary';
import type { ProjectMethods } from '../../project/file/schema';
import { formatQuantity } from '../../units/print';
import { conditionLines } from './conditionLines';
import { ApparentWindLines } from './ApparentWindLines';

const triangleSize = { widthPx: 164, heightPx: 156 };

interface ConditionFactsProps {
  readonly summary: ConditionSummary;
  readonly windLaw: ProjectMethods['windLaw'];
}

/** One condition: its triangle, what it was given as, and the wind that follows. */
export function ConditionFacts({ summary, windLaw }: ConditionFactsProps) {
  return (
    <>
      <WindTriangle triangle={windTriangleGeometry(summary, triangleSize)} />
      <div className="margin-facts">
        <dl className="condition-lines">
          {conditionLines(summary, windLaw).map(({ label, text }) => (
            <div key={label}>
              <dt>{label}</dt>
              <dd>{text}</dd>
            </div>
          ))}
        </dl>
        <ApparentWindLines summary={summary} />
        <p className="fine">density {formatQuantity(summary.densityKgM3, 'kg/m3')}</p>
      </div>
    </>
  );
}
