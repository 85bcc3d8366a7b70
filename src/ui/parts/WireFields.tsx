import { wireConstructions, type WireConstruction } from '../../physics/section/wire';
import type { ProjectShapeOf } from '../../project/file/schema';
import { wireNames } from '../../project/wording/shapeNames';
import { ChoiceField, type Choice } from '../fields/ChoiceField';
import { MemberFields } from './MemberFields';
import type { PartFields } from './partFields';
import { SizeField } from './SizeField';

const choices: readonly Choice<WireConstruction>[] = wireConstructions.map((value) => ({
  value,
  label: wireNames[value],
}));

/** Wire or rope, long enough to have no end effect. */
export function WireFields(wire: PartFields<ProjectShapeOf<'wire'>>) {
  const { value, at, onChange } = wire;
  return (
    <>
      <SizeField part={wire} size="diameter" label="Diameter" unit="mm" />
      <ChoiceField
        label="Construction"
        choices={choices}
        value={value.construction}
        onCommit={(construction) => {
          onChange('construction', 'construction', { ...value, construction });
        }}
        {...at('construction')}
      />
      <MemberFields {...wire} start={start} />
    </>
  );
}

const start = { best: 1.1, low: 0.9, high: 1.3, areaBase: 'diameter x length', source: '' };
