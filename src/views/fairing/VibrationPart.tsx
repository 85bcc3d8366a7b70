import { useMemo } from 'react';
import type { CarryingTube, TautWire } from '../../project/bench/benchTypes';
import { candidateVibration } from '../../project/bench/vibrationOf';
import { changeBench } from '../../state/bench';
import { benchRanges } from '../../state/benchAddress';
import { QuantityField } from '../../ui/fields/QuantityField';
import { formatQuantity, formatRange, formatValue, formatValueRange, printUnit } from '../../units/print';
import type { BenchModel } from './benchModel';
import { BenchFigure } from './BenchFigure';
import { Notices } from './StrutPart';
import { vibrationChartInput, type Vibration } from './vibrationChart';

interface VibrationPartProps {
  readonly model: BenchModel;
  readonly tube: CarryingTube;
  readonly wire: TautWire;
  readonly about: string;
}

/** At which winds the chosen candidate sheds vortices in its own first frequency. */
export function VibrationPart({ model, tube, wire, about }: VibrationPartProps) {
  const { project, member, chosen, basis } = model;
  const isWire = member.fitting.shape.kind === 'wire';
  const carrying = isWire ? wire : tube;
  const answer = useMemo(
    () => candidateVibration(project, member, chosen, carrying, basis),
    [project, member, chosen, carrying, basis],
  );
  return (
    <>
      {isWire && <WireFields wire={wire} />}
      {answer.ok ? <Answer answer={answer} about={`${about}; ${chosen.name}`} /> : <p>{answer.message}</p>}
    </>
  );
}

function Answer({ answer, about }: { readonly answer: Vibration; readonly about: string }) {
  return (
    <>
      <ul className="bench-lines">
        {answer.cases.map(({ label, trace }) => (
          <li key={label}>
            {label}: own first frequency {formatQuantity(trace.firstFrequencyHz, 'Hz')}, met at{' '}
            {formatQuantity(trace.meetingSpeedMs, 'kn')} (
            {formatRange(trace.meetingSpeedLowMs, trace.meetingSpeedHighMs, 'kn')}) square to it; it meets{' '}
            {formatRange(trace.speedFromMs, trace.speedToMs, 'kn')}
          </li>
        ))}
      </ul>
      <BenchFigure
        title="Shedding against wind"
        unit={`${printUnit('Hz')}; round bars and wires only`}
        about={about}
        input={(widthPx) => vibrationChartInput(answer, widthPx)}
        table={<SheddingTable answer={answer} />}
      />
      <Notices notices={[...new Set(answer.cases.flatMap(({ notices }) => notices))]} />
    </>
  );
}

function SheddingTable({ answer: { shedding } }: { readonly answer: Vibration }) {
  const step = Math.max(Math.round((shedding.length - 1) / 10), 1);
  return (
    <table className="bench-table">
      <caption className="visually-hidden">Shedding frequency against the wind square to the member</caption>
      <thead>
        <tr>
          <th scope="col">wind, {printUnit('kn')}</th>
          <th scope="col">sheds, {printUnit('Hz')}</th>
          <th scope="col">range</th>
        </tr>
      </thead>
      <tbody>
        {shedding
          .filter((_, i) => i % step === 0)
          .map(({ crossSpeedMs, sheddingHz, sheddingLowHz, sheddingHighHz }) => (
            <tr key={crossSpeedMs}>
              <th scope="row">{formatValue(crossSpeedMs, 'kn')}</th>
              <td>{formatValue(sheddingHz, 'Hz')}</td>
              <td>{formatValueRange(sheddingLowHz, sheddingHighHz, 'Hz')}</td>
            </tr>
          ))}
      </tbody>
    </table>
  );
}

function WireFields({ wire }: { readonly wire: TautWire }) {
  return (
    <div className="bench-fields">
      <QuantityField
        label="Tension"
        dimension="force"
        unit="N"
        range={{ fromSi: benchRanges.tensionN[0], toSi: benchRanges.tensionN[1] }}
        valueSi={wire.tensionN}
        onCommit={(tensionN) => {
          changeBench({ wire: { ...wire, tensionN } });
        }}
      />
      <QuantityField
        label="Mass per length"
        dimension="massPerLength"
        unit="kg/m"
        range={{ fromSi: benchRanges.massPerLengthKgM[0], toSi: benchRanges.massPerLengthKgM[1] }}
        valueSi={wire.massPerLengthKgM}
        onCommit={(massPerLengthKgM) => {
          changeBench({ wire: { ...wire, massPerLengthKgM } });
        }}
      />
    </div>
  );
}
