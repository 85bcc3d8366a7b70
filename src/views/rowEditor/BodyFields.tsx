import { edgedBodyCoefficient } from '../../physics/body/threeAxisBody';
import type { ProjectShape } from '../../project/file/schema';
import { DimensionField } from '../../ui/fields/DimensionField';
import { CoefficientFields } from './CoefficientFields';
import type { RowEdit } from './useRowEdit';

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
export function BodyFields({ row, shape }: { readonly row: RowEdit; readonly shape: Body }) {
  return (
    <>
      {sides.map(({ key, label }) => (
        <DimensionField
          key={key}
          label={label}
          unit="m"
          value={shape[key]}
          onCommit={(side) => {
            row.patch(`shape.${key}`, key, { shape: { kind: 'bluffBody', [key]: side } });
          }}
          {...row.at(`shape.${key}`)}
        />
      ))}
      {coefficientAxes.map(({ key, words, areaBase }) => (
        <CoefficientFields
          key={key}
          row={row}
          field={`shape.coefficients.${key}`}
          words={words}
          value={shape.coefficients[key]}
          start={{ ...edgedBodyCoefficient, areaBase, source: '' }}
          onCommit={(coefficient) => {
            row.patch(`shape.coefficients.${key}`, words, {
              shape: { kind: 'bluffBody', coefficients: { [key]: coefficient } },
            });
          }}
        />
      ))}
    </>
  );
}
