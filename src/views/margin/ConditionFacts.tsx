import type { ConditionSummary } from '../../project/ledger/conditionSummary';
import type { ProjectMethods } from '../../project/file/schema';
import { conditionLines } from './conditionLines';
import { ApparentWindLines } from './ApparentWindLines';
import { DraggedTriangle } from './DraggedTriangle';
import { ValueLine } from './ValueLine';

interface ConditionFactsProps {
  readonly summary: ConditionSummary;
  readonly windLaw: ProjectMethods['windLaw'];
}

/** One condition: its triangle, what it was given as, and the wind that follows. */
export function ConditionFacts({ summary, windLaw }: ConditionFactsProps) {
  return (
    <>
      <DraggedTriangle key={summary.condition.id} summary={summary} />
      <div className="margin-facts">
        <dl className="condition-lines">
          {conditionLines(summary, windLaw).map((line) => (
            <ValueLine key={line.label} line={line} />
          ))}
        </dl>
        <ApparentWindLines summary={summary} />
      </div>
    </>
  );
}
