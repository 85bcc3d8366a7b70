import type { Basis } from '../../physics/fitting/fittingInput';
import { choice, id, list, name, number, object, shortText, source } from './fields';
import { limits } from './limits';

/* What the parts of a project file share: places, dimensions, numbers with a spread, use. */

export const place = number(-300, 300);
export const point = object({ xM: place, yM: place, zM: place });
export const basis = choice<Basis>(['measured', 'drawing', 'estimated']);
export const dimension = object({ m: number(0.0001, 200), basis });

const coefficient = number(0, 100);
export const typedCoefficient = object({
  best: coefficient,
  low: coefficient,
  high: coefficient,
  areaBase: name(),
  source: source(),
});

const area = number(0, 10_000);
export const dragAreaM2 = object({ best: area, low: area, high: area });

const speedFactor = number(0, 1.5);
export const exposure = object({ best: speedFactor, low: speedFactor, high: speedFactor, source: source() });

export const fraction = number(0, 1);
export const dutyFraction = object({
  default: fraction,
  byCondition: list(object({ conditionId: id(), fraction }), limits.conditions),
});

export const stowed = object({ dragAreaM2, place: point, source: source() });

export const classRule = object({
  ruling: choice(['allowed', 'needs-ruling', 'not-allowed']),
  rule: shortText(),
});
