import type { ProjectShapeOf } from '../../project/file/schema';
import { EndsFields, MemberFields } from './MemberFields';
import { inside, type PartFields } from './partFields';
import { SizeField } from './SizeField';
import { SurfaceFields } from './SurfaceFields';

/** A round bar: how thick and how smooth, and what its ends stand on. */
export function BarFields(bar: PartFields<ProjectShapeOf<'roundBar'>>) {
  const { value } = bar;
  const { surface, ends } = value;
  return (
    <>
      <SizeField part={bar} size="diameter" label="Diameter" unit="mm" />
      <SurfaceFields {...inside(bar, '', surface, (next) => ({ ...value, surface: next }))} />
      <EndsFields {...inside(bar, '', ends, (next) => ({ ...value, ends: next }))} />
      <MemberFields {...bar} start={startCoefficient} />
    </>
  );
}

/** A smooth bar across the wind below its drag crisis, until the user's own numbers are typed. */
const startCoefficient = { best: 1.2, low: 1.1, high: 1.3, areaBase: 'diameter x length', source: '' };
