import type { ProjectShapeOf } from '../../project/file/schema';
import { DimensionField } from '../fields/DimensionField';
import { CoefficientFields } from './CoefficientFields';
import { inside, type PartFields } from './partFields';
import { SurfaceFields } from './SurfaceFields';

/** A sphere, with its middle at the place. */
export function SphereFields(sphere: PartFields<ProjectShapeOf<'sphere'>>) {
  const { value, at, onChange } = sphere;
  return (
    <>
      <DimensionField
        label="Diameter"
        unit="mm"
        value={value.diameter}
        onCommit={(diameter) => {
          onChange('diameter', 'diameter', { ...value, diameter });
        }}
        {...at('diameter')}
      />
      <SurfaceFields {...inside(sphere, '', value.surface, (surface) => ({ ...value, surface }))} />
      <CoefficientFields
        {...inside(sphere, 'coefficient', value.coefficient, (coefficient) => ({ ...value, coefficient }))}
        words="drag coefficient"
        start={{ best: 0.47, low: 0.36, high: 0.51, areaBase: 'frontal area', source: '' }}
      />
    </>
  );
}
