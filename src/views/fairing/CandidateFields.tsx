import type {
  Candidate,
  CandidateProblem,
  EllipseCandidate,
  FairingRoundCandidate,
  SectionCandidate,
  ThinnerRoundCandidate,
} from '../../project/bench/candidates';
import { followingTheWind, noseForward } from '../../project/file/directions';
import type { ProjectDirection } from '../../project/file/schema';
import { ChoiceField } from '../../ui/fields/ChoiceField';
import { inUnit } from '../../ui/fields/fieldText';
import { NumberField } from '../../ui/fields/NumberField';
import { QuantityField } from '../../ui/fields/QuantityField';
import { TextField } from '../../ui/fields/TextField';
import { toSi } from '../../units/convert';
import type { Directed, KindFieldsProps, Tie } from './kindFields';
import { MassFields } from './MassFields';
import { SliderField } from './SliderField';

interface CandidateFieldsProps<Kind extends Candidate = Candidate> {
  /** Of the fitting on the bench: another one's candidates go by the same ids. */
  readonly memberId: string;
  readonly candidate: Kind;
  readonly problems: readonly CandidateProblem[];
  readonly currencyName: string;
  readonly onChange: (next: Candidate) => void;
}

function tieOf(problems: readonly CandidateProblem[], about: string): Tie {
  return (field) => ({
    error: problems.find((problem) => problem.field === field)?.message,
    typedFor: `bench/${about}.${field}`,
  });
}

/** Everything about a candidate that can be typed or slid. */
export function CandidateFields(props: CandidateFieldsProps) {
  const { memberId, candidate, problems, currencyName, onChange } = props;
  const tie = tieOf(problems, `${memberId}-${candidate.id}`);
  return (
    <div className="bench-fields">
      <div className="field-wide">
        <TextField
          kind="name"
          label="Name"
          value={candidate.name}
          onCommit={(name) => {
            onChange({ ...candidate, name });
          }}
          {...tie('name')}
        />
      </div>
      <KindFields candidate={candidate} tie={tie} onChange={onChange} />
      {candidate.kind !== 'bare' && (
        <>
          <QuantityField
            label="Mass, weighed, of each"
            describe="Empty: what the mass model gives."
            dimension="mass"
            unit="kg"
            required={false}
            range={{ fromSi: 0, toSi: 100_000 }}
            valueSi={candidate.massKg}
            onCommit={(massKg) => {
              onChange({ ...candidate, massKg });
            }}
            {...tie('massKg')}
          />
          <NumberField
            label={currencyName === '' ? 'Cost' : `Cost, ${currencyName}`}
            range={{ fromSi: -1e9, toSi: 1e9 }}
            valueSi={candidate.cost}
            onCommit={(cost) => {
              onChange({ ...candidate, cost });
            }}
            {...tie('cost')}
          />
        </>
      )}
    </div>
  );
}

function KindFields({ candidate, tie, onChange }: KindFieldsProps) {
  switch (candidate.kind) {
    case 'bare':
      return <p className="fine">The member as it stands; its size is changed in the ledger.</p>;
    case 'thinnerRound':
      return <ThinnerFields candidate={candidate} tie={tie} onChange={onChange} />;
    case 'fairingRound':
      return <FairingRoundFields candidate={candidate} tie={tie} onChange={onChange} />;
    case 'ellipse':
    case 'section':
      return <SectionFields candidate={candidate} tie={tie} onChange={onChange} />;
  }
}

const acrossRange = { fromSi: 0.001, toSi: 2 };
const ratioRange = { fromSi: 0.02, toSi: 1 };

function ThinnerFields({ candidate, tie, onChange }: KindFieldsProps<ThinnerRoundCandidate>) {
  return (
    <>
      <SliderField
        label="Diameter"
        dimension="length"
        unit="mm"
        valueSi={candidate.diameterM}
        range={acrossRange}
        reach={{ fromSi: 0.005, toSi: 0.205 }}
        stepSi={0.001}
        tie={tie('diameterM')}
        onCommit={(diameterM) => {
          onChange({ ...candidate, diameterM });
        }}
      />
      <MassFields candidate={candidate} tie={tie} onChange={onChange} />
    </>
  );
}

/** Thickness ratio and chord, the thickness follows: a designer slides the one and keeps the other. */
function SectionFields({ candidate, tie, onChange }: KindFieldsProps<EllipseCandidate | SectionCandidate>) {
  const { chordM, thicknessM } = candidate;
  const isEllipse = candidate.kind === 'ellipse';
  return (
    <>
      <SliderField
        label="Thickness over chord"
        dimension="none"
        unit="1"
        valueSi={Number((thicknessM / chordM).toPrecision(6))}
        range={ratioRange}
        reach={isEllipse ? { fromSi: 0.1, toSi: 1 } : { fromSi: 0.1, toSi: 0.4 }}
        stepSi={0.005}
        describe="At this thickness; the chord follows."
        tie={tie('thicknessOverChord')}
        onCommit={(ratio) => {
          onChange({ ...candidate, chordM: tidy(thicknessM / ratio) });
        }}
      />
      <SliderField
        label="Chord, nose to tail"
        dimension="length"
        unit="mm"
        valueSi={chordM}
        range={acrossRange}
        reach={{ fromSi: 0.01, toSi: 0.61 }}
        stepSi={0.002}
        tie={tie('chordM')}
        onCommit={(next) => {
          onChange({ ...candidate, chordM: next });
        }}
      />
      <SliderField
        label="Thickness"
        dimension="length"
        unit="mm"
        valueSi={thicknessM}
        range={acrossRange}
        reach={{ fromSi: 0.005, toSi: 0.205 }}
        stepSi={0.001}
        tie={tie('thicknessM')}
        onCommit={(next) => {
          onChange({ ...candidate, thicknessM: next });
        }}
      />
      <DirectionFields candidate={candidate} tie={tie} onChange={onChange} />
      <MassFields candidate={candidate} tie={tie} onChange={onChange} />
    </>
  );
}

function FairingRoundFields({ candidate, tie, onChange }: KindFieldsProps<FairingRoundCandidate>) {
  return (
    <>
      <SliderField
        label="Thickness over chord"
        dimension="none"
        unit="1"
        valueSi={Number((1 / candidate.chordOverThickness).toPrecision(6))}
        range={ratioRange}
        reach={{ fromSi: 0.1, toSi: 0.4 }}
        stepSi={0.005}
        tie={tie('chordOverThickness')}
        onCommit={(ratio) => {
          onChange({ ...candidate, chordOverThickness: tidy(1 / ratio) });
        }}
      />
      <QuantityField
        label="Skin"
        dimension="length"
        unit="mm"
        range={{ fromSi: 0, toSi: 0.1 }}
        valueSi={candidate.skinM}
        onCommit={(skinM) => {
          onChange({ ...candidate, skinM });
        }}
        {...tie('skinM')}
      />
      <QuantityField
        label="Clearance round the tube"
        describe="The fairing is thicker than the tube by skin and clearance on each side."
        dimension="length"
        unit="mm"
        range={{ fromSi: 0, toSi: 0.5 }}
        valueSi={candidate.clearanceM}
        onCommit={(clearanceM) => {
          onChange({ ...candidate, clearanceM });
        }}
        {...tie('clearanceM')}
      />
      <DirectionFields candidate={candidate} tie={tie} onChange={onChange} />
      <MassFields candidate={candidate} tie={tie} onChange={onChange} />
    </>
  );
}

const directionChoices = [
  { value: 'fixed', label: 'fixed at an angle' },
  { value: 'turning', label: 'turns with the wind' },
] as const;

const degree = toSi(1, 'deg');

function DirectionFields({ candidate, tie, onChange }: KindFieldsProps<Directed>) {
  const { direction } = candidate;
  const turnTo = (next: ProjectDirection): void => {
    onChange({ ...candidate, direction: next });
  };
  return (
    <>
      <ChoiceField
        label="Direction"
        choices={directionChoices}
        value={direction.kind}
        onCommit={(kind) => {
          turnTo(kind === 'fixed' ? noseForward : followingTheWind);
        }}
        {...tie('direction.kind')}
      />
      {direction.kind === 'fixed' ? (
        <SliderField
          label="Nose turned to port by"
          dimension="angle"
          unit="deg"
          valueSi={toSi(direction.angleDeg, 'deg')}
          range={{ fromSi: -180 * degree, toSi: 180 * degree }}
          reach={{ fromSi: -90 * degree, toSi: 90 * degree }}
          stepSi={degree}
          describe="From forward; a mirrored member is mirrored."
          tie={tie('direction.angleDeg')}
          onCommit={(angleRad) => {
            turnTo({ ...direction, angleDeg: inUnit(angleRad, 'deg') });
          }}
        />
      ) : (
        <>
          <SliderField
            label="Error left, to either side"
            dimension="angle"
            unit="deg"
            valueSi={toSi(direction.residualDeg, 'deg')}
            range={{ fromSi: 0, toSi: 45 * degree }}
            reach={{ fromSi: 0, toSi: 20 * degree }}
            stepSi={degree / 2}
            tie={tie('direction.residualDeg')}
            onCommit={(residualRad) => {
              turnTo({ ...direction, residualDeg: inUnit(residualRad, 'deg') });
            }}
          />
          <SliderField
            label="Pieces, each turns for itself"
            dimension="none"
            unit="1"
            isWhole
            valueSi={direction.pieces}
            range={{ fromSi: 1, toSi: 50 }}
            reach={{ fromSi: 1, toSi: 10 }}
            stepSi={1}
            tie={tie('direction.pieces')}
            onCommit={(pieces) => {
              turnTo({ ...direction, pieces });
            }}
          />
        </>
      )}
    </>
  );
}

function tidy(value: number): number {
  return Number(value.toPrecision(9));
}
