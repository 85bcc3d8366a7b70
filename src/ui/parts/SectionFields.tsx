import { followingTheWind, noseForward } from '../../project/file/directions';
import type { ProjectDirection } from '../../project/file/schema';
import type { ProjectSection } from '../../project/file/shapeKinds';
import { formatValue } from '../../units/print';
import { ChoiceField, type Choice } from '../fields/ChoiceField';
import { NumberField } from '../fields/NumberField';
import { EndsFields, MemberFields } from './MemberFields';
import { inside, type PartFields } from './partFields';
import { SizeField } from './SizeField';
import { CornerField, DegreesField } from './smallFields';

/** A section with a direction: chord from nose to tail, thickness across it, and where the nose points. */
export function SectionFields(section: PartFields<ProjectSection>) {
  const { value, at, onChange } = section;
  return (
    <>
      <SizeField part={section} size="chord" label="Chord, nose to tail" unit="mm" />
      <SizeField
        part={section}
        size="thickness"
        label="Thickness"
        unit="mm"
        describe={`${formatValue(value.thickness.m / value.chord.m, '1', { decimals: 2 })} of the chord`}
      />
      {value.kind === 'rectangularBar' && (
        <CornerField
          radiusM={value.cornerRadiusM}
          onCommit={(cornerRadiusM) => {
            onChange('cornerRadiusM', 'corner radius', { ...value, cornerRadiusM });
          }}
          {...at('cornerRadiusM')}
        />
      )}
      <DirectionFields
        {...inside(section, 'direction', value.direction, (direction) => ({ ...value, direction }))}
      />
      <EndsFields {...inside(section, '', value.ends, (ends) => ({ ...value, ends }))} />
      <MemberFields {...section} start={startCoefficients[value.kind]} />
    </>
  );
}

const onChord = { areaBase: 'chord x length', source: '' };

/** Halfway numbers along the wind, until the user's own are typed. */
const startCoefficients = {
  ellipticalBar: { best: 0.3, low: 0.2, high: 0.4, ...onChord },
  rectangularBar: { best: 1.6, low: 1.2, high: 2.1, ...onChord },
  fairing: { best: 0.03, low: 0.01, high: 0.06, ...onChord },
} as const;

const kindChoices: readonly Choice<ProjectDirection['kind']>[] = [
  { value: 'fixed', label: 'fixed at an angle' },
  { value: 'turning', label: 'turns with the wind' },
];

const pieceRange = { fromSi: 1, toSi: 50 };

/** Where the nose points: at an angle from forward, or against the wind with an error left over. */
function DirectionFields({ value, at, onChange }: PartFields<ProjectDirection>) {
  return (
    <>
      <ChoiceField
        label="Direction"
        choices={kindChoices}
        value={value.kind}
        onCommit={(kind) => {
          onChange('kind', 'direction', kind === 'fixed' ? noseForward : followingTheWind);
        }}
        {...at('kind')}
      />
      {value.kind === 'fixed' ? (
        <DegreesField
          label="Nose turned to port by"
          describe="From forward; from up on a member that lies within 15° of forward. A mirrored member is mirrored."
          valueDeg={value.angleDeg}
          mostDeg={180}
          onCommit={(angleDeg) => {
            onChange('angleDeg', 'angle of the nose', { ...value, angleDeg });
          }}
          {...at('angleDeg')}
        />
      ) : (
        <>
          <DegreesField
            label="Error left, to either side"
            describe="The worse of the two sides widens the range."
            valueDeg={value.residualDeg}
            leastDeg={0}
            mostDeg={45}
            onCommit={(residualDeg) => {
              onChange('residualDeg', 'error left', { ...value, residualDeg });
            }}
            {...at('residualDeg')}
          />
          <NumberField
            label="Pieces that turn each for itself"
            isWhole
            range={pieceRange}
            valueSi={value.pieces}
            onCommit={(pieces) => {
              onChange('pieces', 'pieces', { ...value, pieces });
            }}
            {...at('pieces')}
          />
        </>
      )}
    </>
  );
}
