import type { PullTestTrace } from '../../physics/body/pullTest';
import { limits } from '../../project/file/limits';
import type { ProjectPullTest, ProjectShapeOf } from '../../project/file/schema';
import { dragAreaOf, pullTestOf } from '../../project/file/shapeRules';
import { formatQuantity, formatRange } from '../../units/print';
import { CheckField } from '../fields/CheckField';
import { NumberField } from '../fields/NumberField';
import { QuantityField } from '../fields/QuantityField';
import { ReadingsField } from '../fields/ReadingsField';
import type { PartFields } from './partFields';
import { DegreesField } from './smallFields';

type Area = ProjectShapeOf<'measuredArea'>;

/** A sheet for a pull test: its readings give the drag area and the doubt in it. */
export function PullTestFields({ value, at, onChange }: PartFields<Area>) {
  const { pullTest } = value;
  return (
    <>
      <CheckField
        label="Work it out from a pull test"
        value={pullTest !== null}
        onCommit={(isOn) => {
          onChange('pullTest', 'pull test', isOn ? startedFrom(value) : { ...value, pullTest: null });
        }}
        {...at('pullTest')}
      />
      {pullTest !== null && (
        <div className="field-part">
          <Sheet
            value={pullTest}
            at={(field) => at(`pullTest.${field}`)}
            onChange={(field, words, next) => {
              onChange(`pullTest.${field}`, words, withAreaOf(value, next));
            }}
          />
          <PullTestAnswer test={pullTest} />
        </div>
      )}
    </>
  );
}

/** A test that gives nothing keeps the old area, and the project's checks say beside the field why it is not taken. */
function withAreaOf(area: Area, pullTest: ProjectPullTest): Area {
  const answer = dragAreaOf(pullTest);
  return { ...area, pullTest, dragAreaM2: answer.ok ? answer.dragAreaM2 : area.dragAreaM2 };
}

const startWindMs = 10;
const startDensityKgM3 = 1.225;

/** A sheet that gives the area as it was, with one reading: to be typed over at once. */
function startedFrom(area: Area): Area {
  const forceN = 0.5 * startDensityKgM3 * startWindMs ** 2 * area.dragAreaM2.best;
  const pullTest: ProjectPullTest = {
    forcesN: [forceN > 0 ? Number(forceN.toPrecision(6)) : 1],
    tareN: 0,
    pullAngleDeg: 0,
    windSpeedMs: startWindMs,
    windSpeedDoubtFraction: 0.05,
    densityKgM3: startDensityKgM3,
    forceMeterDoubtN: 0,
  };
  return { ...withAreaOf(area, pullTest), provenance: { ...area.provenance, kind: 'pull-test' } };
}

const forceRange = { fromSi: 0, toSi: 1_000_000 };
const meterRange = { fromSi: 0, toSi: 100_000 };
const windRange = { fromSi: 0.01, toSi: 60 };
const shareRange = { fromSi: 0, toSi: 0.5 };
const densityRange = { fromSi: 0.5, toSi: 2 };

function Sheet({ value, at, onChange }: PartFields<ProjectPullTest>) {
  return (
    <>
      <ReadingsField
        label="Readings"
        describe="In the wind, one after another: 31; 28.5; 30.2 N. Three or more tell their scatter."
        dimension="force"
        unit="N"
        range={forceRange}
        most={limits.readings}
        valuesSi={value.forcesN}
        onCommit={(forcesN) => {
          onChange('forcesN', 'readings', { ...value, forcesN });
        }}
        {...at('forcesN')}
      />
      <QuantityField
        label="Reading out of the wind"
        dimension="force"
        unit="N"
        range={forceRange}
        valueSi={value.tareN}
        onCommit={(tareN) => {
          onChange('tareN', 'tare', { ...value, tareN });
        }}
        {...at('tareN')}
      />
      <DegreesField
        label="Angle between pull and wind"
        valueDeg={value.pullAngleDeg}
        leastDeg={0}
        mostDeg={60}
        onCommit={(pullAngleDeg) => {
          onChange('pullAngleDeg', 'angle of the pull', { ...value, pullAngleDeg });
        }}
        {...at('pullAngleDeg')}
      />
      <QuantityField
        label="Wind at the item’s own height"
        dimension="speed"
        unit="kn"
        range={windRange}
        valueSi={value.windSpeedMs}
        onCommit={(windSpeedMs) => {
          onChange('windSpeedMs', 'wind of the test', { ...value, windSpeedMs });
        }}
        {...at('windSpeedMs')}
      />
      <NumberField
        label="Doubt of that wind, either way"
        isPercent
        range={shareRange}
        valueSi={value.windSpeedDoubtFraction}
        onCommit={(windSpeedDoubtFraction) => {
          onChange('windSpeedDoubtFraction', 'doubt of the wind', { ...value, windSpeedDoubtFraction });
        }}
        {...at('windSpeedDoubtFraction')}
      />
      <QuantityField
        label="Density of the air"
        dimension="density"
        unit="kg/m3"
        range={densityRange}
        valueSi={value.densityKgM3}
        onCommit={(densityKgM3) => {
          onChange('densityKgM3', 'density of the test', { ...value, densityKgM3 });
        }}
        {...at('densityKgM3')}
      />
      <QuantityField
        label="Doubt of the force meter, either way"
        dimension="force"
        unit="N"
        range={meterRange}
        valueSi={value.forceMeterDoubtN}
        onCommit={(forceMeterDoubtN) => {
          onChange('forceMeterDoubtN', 'doubt of the force meter', { ...value, forceMeterDoubtN });
        }}
        {...at('forceMeterDoubtN')}
      />
    </>
  );
}

/** What the sheet gives, and what its range is made of. */
function PullTestAnswer({ test }: { readonly test: ProjectPullTest }) {
  const result = pullTestOf(test);
  if (result.kind === 'problem') return null;
  const { trace, notices } = result;
  return (
    <p className="fine" role="note">
      Drag {formatQuantity(trace.dragForceN, 'N')} over a dynamic pressure of{' '}
      {formatQuantity(trace.dynamicPressurePa, 'Pa')}: drag area {formatQuantity(trace.dragAreaBestM2, 'm2')}{' '}
      ({formatRange(trace.dragAreaLowM2, trace.dragAreaHighM2, 'm2')}). {doubtWords(trace)}
      {notices.includes('scatter-not-known') &&
        ' One reading says nothing about scatter, so the range is too narrow by what that is.'}
      {notices.includes('low-held-at-zero') &&
        ' The doubt is as large as the force; the low edge is held at zero.'}
    </p>
  );
}

function doubtWords({ scatterDoubt, forceMeterDoubt, windDoubtDown, windDoubtUp }: PullTestTrace): string {
  const share = (part: number): string => formatQuantity(part, '%', { decimals: 1 });
  const scatter = scatterDoubt === null ? '' : `scatter ${share(scatterDoubt)}, `;
  return `Its doubt: ${scatter}wind −${share(windDoubtDown)} to +${share(windDoubtUp)}, force meter ${share(forceMeterDoubt)}.`;
}
