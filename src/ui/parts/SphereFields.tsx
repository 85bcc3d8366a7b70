import type { ProjectShapeOf } from '../../project/file/schema';
import { CoefficientFields } from './CoefficientFields';
import { inside, type PartFields } from './partFields';
import { SizeField } from './SizeField';
import { SurfaceFields } from './SurfaceFields';

/** A sphere, with its middle at the place. */
export function SphereFields(sphere: PartFields<ProjectShapeOf<'sphere'>>) {
  const { value } = sphere;
  return (
    <>
      <SizeField part={sphere} size="diameter" label="Diameter" unit="mm" />
      <SurfaceFields {...inside(sphere, '', value.surface, (surface) => ({ ...value, surface }))} />
      <CoefficientFields
        {...inside(sphere, 'coefficient', value.coefficient, (coefficient) => ({ ...value, coefficient }))}
        words="drag coefficient"
        start={{ best: 0.47, low: 0.36, high: 0.51, areaBase: 'frontal area', source: '' }}
      />
    </>
  );
}
