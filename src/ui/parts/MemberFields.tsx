import type { EndKind } from '../../physics/section/endEffect';
import type { ProjectShapeOf, ProjectTypedCoefficient } from '../../project/file/schema';
import { ChoiceField, type Choice } from '../fields/ChoiceField';
import { CoefficientFields } from './CoefficientFields';
import { inside, type PartFields } from './partFields';

type Bar = ProjectShapeOf<'roundBar'>;
type Ends = Bar['ends'];

const endNames = ['First end', 'Other end'] as const;

const endChoices: readonly Choice<EndKind>[] = [
  { value: 'free', label: 'free in the air' },
  { value: 'surface', label: 'on a surface' },
  { value: 'joined', label: 'joined to a bar' },
];

/** What the two ends of a member stand on. */
export function EndsFields({ value, at, onChange }: PartFields<Ends>) {
  return endNames.map((label, i) => (
    <ChoiceField
      key={label}
      label={label}
      choices={endChoices}
      value={value[i] ?? 'free'}
      onCommit={(next) => {
        onChange(`ends[${i}]`, 'ends', i === 0 ? [next, value[1]] : [value[0], next]);
      }}
      {...at(`ends[${i}]`)}
    />
  ));
}

interface MemberPart {
  readonly friction: Bar['friction'];
  readonly coefficient: ProjectTypedCoefficient | null;
}

const frictionChoices: readonly Choice<Bar['friction']>[] = [
  { value: 'model', label: 'by the model' },
  { value: 'zero', label: 'left out' },
];

interface MemberFieldsProps<Shape extends MemberPart> extends PartFields<Shape> {
  /** What a typed coefficient begins with. */
  readonly start: ProjectTypedCoefficient;
}

/** What every member has beside its sizes: friction along it, and a coefficient of the user's own. */
export function MemberFields<Shape extends MemberPart>(member: MemberFieldsProps<Shape>) {
  const { value, at, onChange, start } = member;
  return (
    <>
      <ChoiceField
        label="Skin friction along it"
        choices={frictionChoices}
        value={value.friction}
        onCommit={(friction) => {
          onChange('friction', 'skin friction', { ...value, friction });
        }}
        {...at('friction')}
      />
      <CoefficientFields
        {...inside(member, 'coefficient', value.coefficient, (coefficient) => ({ ...value, coefficient }))}
        words="drag coefficient"
        start={start}
      />
    </>
  );
}
