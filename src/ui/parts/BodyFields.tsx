import { edgedBodyCoefficient } from '../../physics/body/threeAxisBody';
import type { ProjectShape } from '../../project/file/schema';
import { CoefficientFields } from './CoefficientFields';
import { inside, type PartFields } from './partFields';
import { SizeField } from './SizeField';
import { CornerField } from './smallFields';

type Body = Extract<ProjectShape, { kind: 'bluffBody' }>;

const sides = [
  { key: 'length', label: 'Length' },
  { key: 'width', label: 'Width' },
  { key: 'height', label: 'Height' },
] as const;

const coefficientAxes = [
  { key: 'x', words: 'drag coefficient from ahead', areaBase: 'width x height' },
  { key: 'y', words: 'drag coefficient from abeam', areaBase: 'length x height' },
  { key: 'z', words: 'drag coefficient from above', areaBase: 'length x width' },
] as const;

/** A body with edges: the box it fills along the boat's axes. */
export function BodyFields(body: PartFields<Body>) {
  const { value, at, onChange } = body;
  return (
    <>
      {sides.map(({ key, label }) => (
        <SizeField key={key} part={body} size={key} label={label} unit="m" />
      ))}
      <CornerField
        radiusM={value.cornerRadiusM}
        onCommit={(cornerRadiusM) => {
          onChange('cornerRadiusM', 'corner radius', { ...value, cornerRadiusM });
        }}
        {...at('cornerRadiusM')}
      />
      {coefficientAxes.map(({ key, words, areaBase }) => (
        <CoefficientFields
          key={key}
          {...inside(body, `coefficients.${key}`, value.coefficients[key], (coefficient) => ({
            ...value,
            coefficients: { ...value.coefficients, [key]: coefficient },
          }))}
          words={words}
          start={{ ...edgedBodyCoefficient, areaBase, source: '' }}
        />
      ))}
    </>
  );
}
