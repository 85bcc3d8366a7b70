import { useMemo } from 'react';
import { turningQuantities } from '../../physics/strut/turningQuantities';
import type { TurningSetting } from '../../project/bench/benchTypes';
import { candidateTurning } from '../../project/bench/turningOf';
import { changeBench } from '../../state/bench';
import { benchRanges } from '../../state/benchAddress';
import { NumberField } from '../../ui/fields/NumberField';
import { QuantityField } from '../../ui/fields/QuantityField';
import type { BenchModel } from './benchModel';
import { Notices } from './StrutPart';
import { TraceTable } from './TraceTable';

interface TurningPartProps {
  readonly model: BenchModel;
  readonly turning: TurningSetting;
}

const names = [
  'pivotM',
  'aerodynamicCentreM',
  'massCentreM',
  'balanceMassKg',
  'turningMomentNm',
  'weightMomentNm',
  'hangAngleRad',
  'residualRad',
  'endClearanceM',
  'neededClearanceM',
];

const shareRange = { fromSi: benchRanges.share[0], toSi: benchRanges.share[1] };

/** Whether a section that turns follows the wind, and what would keep it from doing so. */
export function TurningPart({ model, turning }: TurningPartProps) {
  const { project, member, chosen, conditionId } = model;
  const answer = useMemo(
    () => candidateTurning(project, member, chosen, turning, conditionId),
    [project, member, chosen, turning, conditionId],
  );
  return (
    <>
      {!answer.ok ? (
        <p>{answer.message}</p>
      ) : (
        <>
          <TurningFields turning={turning} />
          <Notices notices={answer.notices} />
          <TraceTable
            caption="One piece that turns"
            quantities={turningQuantities}
            names={names}
            columns={[{ head: chosen.name, values: { ...answer.trace } }]}
          />
        </>
      )}
    </>
  );
}

function TurningFields({ turning }: { readonly turning: TurningSetting }) {
  const change = (next: Partial<TurningSetting>): void => {
    changeBench({ turning: { ...turning, ...next } });
  };
  return (
    <div className="bench-fields">
      <NumberField
        label="Pivot behind the nose, of the chord"
        isPercent
        range={shareRange}
        valueSi={turning.pivotShare}
        onCommit={(pivotShare) => {
          change({ pivotShare });
        }}
      />
      <NumberField
        label="Mass centre, of the chord"
        describe="Empty: that of an even skin."
        isPercent
        required={false}
        range={shareRange}
        valueSi={turning.massCentreShare}
        onCommit={(massCentreShare) => {
          change({ massCentreShare });
        }}
      />
      <QuantityField
        label="Clearance at each end"
        dimension="length"
        unit="mm"
        range={{ fromSi: benchRanges.clearanceM[0], toSi: benchRanges.clearanceM[1] }}
        valueSi={turning.endClearanceM}
        onCommit={(endClearanceM) => {
          change({ endClearanceM });
        }}
      />
    </div>
  );
}
