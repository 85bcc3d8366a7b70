import type { ProjectShapeOf } from '../../project/file/schema';
import { ChoiceField, type Choice } from '../fields/ChoiceField';
import { NumberField } from '../fields/NumberField';
import type { PartFields } from './partFields';
import { SizeField } from './SizeField';

type Net = ProjectShapeOf<'net'>;

const facingChoices: readonly Choice<Net['facing']>[] = [
  { value: 'x', label: 'ahead and astern' },
  { value: 'y', label: 'abeam' },
  { value: 'z', label: 'up and down' },
];

const sides = [
  { key: 'width', label: 'Width', unit: 'm' },
  { key: 'height', label: 'Height', unit: 'm' },
  { key: 'wireDiameter', label: 'Diameter of its twine', unit: 'mm' },
] as const;

const solidityRange = { fromSi: 0, toSi: 1 };

/** A flat net by the share of it that is solid. */
export function NetFields(net: PartFields<Net>) {
  const { value, at, onChange } = net;
  return (
    <>
      {sides.map(({ key, label, unit }) => (
        <SizeField key={key} part={net} size={key} label={label} unit={unit} words={label.toLowerCase()} />
      ))}
      <NumberField
        label="Solidity"
        describe="Solid over gross area; twine d and mesh a give about 2 d/a."
        range={solidityRange}
        valueSi={value.solidity}
        onCommit={(solidity) => {
          onChange('solidity', 'solidity', { ...value, solidity });
        }}
        {...at('solidity')}
      />
      <ChoiceField
        label="Faces"
        choices={facingChoices}
        value={value.facing}
        onCommit={(facing) => {
          onChange('facing', 'facing', { ...value, facing });
        }}
        {...at('facing')}
      />
    </>
  );
}
