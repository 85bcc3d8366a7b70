import type { ProjectFitting } from '../file/schema';
import { shapeNames } from './shapeNames';

const sharedLabels: Readonly<Record<string, string>> = {
  ends: 'end effect, method',
  'end-table': 'end effect, its table',
  'cross-flow': 'cross-flow principle near the axis',
  friction: 'friction along the axis',
  'wind-speed': 'wind speed',
  'wind-angle': 'wind angle',
  'wind-law': 'wind law',
  density: 'air density',
  'coefficient:bluffBody:edges': 'coefficient, bluff body',
  'coefficient:bluffBody:off-axis': 'three-axis rule off the axes',
  'coefficient:net:face': 'coefficient, net, onto its face',
  'coefficient:net:along': 'coefficient, net, along its plane',
};

const partLabels: Readonly<Record<string, string>> = {
  diameter: 'diameter',
  chord: 'chord',
  thickness: 'thickness',
  direction: 'error left in its direction',
  'wire-diameter': 'diameter of the twine',
  length: 'length',
  'member-length': 'length',
  width: 'width',
  height: 'height',
  exposure: 'exposure',
  'drag-area': 'drag area',
  'stowed-area': 'stowed drag area',
  coefficient: 'typed coefficient',
  'coefficient-x': 'typed coefficient, fore and aft',
  'coefficient-y': 'typed coefficient, athwart',
  'coefficient-z': 'typed coefficient, vertical',
};

const familyNames: Readonly<Record<string, string>> = shapeNames;

/**
 * A doubt's name for people. Own doubts are `own:<owner>:<part>`; the owner is a fitting's id or `plan/item`, and is
 * named when `fittings` knows it or when it is an item's.
 */
export function doubtLabel(id: string, fittings: readonly ProjectFitting[] = []): string {
  const shared = sharedLabels[id];
  if (shared !== undefined) return shared;
  const [kind, owner = '', part = ''] = id.split(':');
  if (kind === 'coefficient') return `coefficient, ${familyNames[owner] ?? owner}, ${part}`;
  const label = partLabels[part] ?? part;
  if (owner.includes('/')) return `${label} after the refit item`;
  const fitting = fittings.find((each) => each.id === owner);
  return fitting === undefined ? label : `${label}, ${fitting.name}`;
}
