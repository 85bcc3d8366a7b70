import { useMemo } from 'react';
import { strutQuantities } from '../../physics/strut/strutQuantities';
import type { CarryingTube } from '../../project/bench/benchTypes';
import { candidateMaterials } from '../../project/bench/candidates';
import { strutOfCandidate } from '../../project/bench/strutOfCandidate';
import { changeBench } from '../../state/bench';
import { benchRanges } from '../../state/benchAddress';
import { ChoiceField } from '../../ui/fields/ChoiceField';
import { QuantityField } from '../../ui/fields/QuantityField';
import type { BenchModel } from './benchModel';
import { TraceTable, type TraceColumn } from './TraceTable';

interface StrutPartProps {
  readonly model: BenchModel;
  readonly tube: CarryingTube;
}

const names = ['upperBoundN', 'eulerLoadN', 'yieldLoadN', 'wallM', 'areaM2', 'weakM4', 'lengthM', 'massKg'];

/** What the tube carries now, and the wall and mass with which the chosen section would carry it too. */
export function StrutPart({ model, tube }: StrutPartProps) {
  const { project, member, chosen } = model;
  const answer = useMemo(
    () => strutOfCandidate(project, member, chosen, tube),
    [project, member, chosen, tube],
  );
  return (
    <>
      <TubeFields tube={tube} />
      {!answer.ok ? (
        <p>{answer.message}</p>
      ) : (
        <>
          <p>{answer.verdict}</p>
          <TraceTable
            caption="Pin-ended strut, one member: upper bounds"
            quantities={strutQuantities}
            names={names}
            columns={[
              column('tube now', answer.tube),
              ...(answer.needed === null ? [] : [column('section, wall needed', answer.needed)]),
              ...(answer.typed === null ? [] : [column('section, wall typed', answer.typed)]),
            ]}
          />
          <Notices notices={answer.notices} />
        </>
      )}
    </>
  );
}

function column(head: string, trace: object): TraceColumn {
  return { head, values: { ...trace } };
}

/** The tube that carries now: the ledger knows its outside only. */
function TubeFields({ tube }: { readonly tube: CarryingTube }) {
  return (
    <div className="bench-fields">
      <ChoiceField
        label="Tube now, material"
        choices={candidateMaterials.map(({ id, label }) => ({ value: id, label }))}
        value={tube.material}
        onCommit={(material) => {
          changeBench({ tube: { ...tube, material } });
        }}
      />
      <QuantityField
        label="Tube now, wall"
        dimension="length"
        unit="mm"
        range={{ fromSi: benchRanges.wallM[0], toSi: benchRanges.wallM[1] }}
        valueSi={tube.wallM}
        onCommit={(wallM) => {
          changeBench({ tube: { ...tube, wallM } });
        }}
      />
    </div>
  );
}

/** Sentences on what limits the numbers above them. */
export function Notices({ notices }: { readonly notices: readonly string[] }) {
  if (notices.length === 0) return null;
  return (
    <ul className="bench-lines">
      {notices.map((notice) => (
        <li key={notice}>{notice}</li>
      ))}
    </ul>
  );
}
