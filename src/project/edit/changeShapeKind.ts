import { edgedBodyCoefficient } from '../../physics/body/threeAxisBody';
import { valueAt } from '../../physics/numerics/cubicTable';
import { roundBarColumn, roundBarTable } from '../../physics/section/roundBarTable';
import { deckLineOf, membersOf } from '../core/fittingToPhysics';
import { roundBar } from '../file/blankParts';
import type {
  Project,
  ProjectDimension,
  ProjectFitting,
  ProjectPlacement,
  ProjectRanged,
  ProjectShape,
} from '../file/schema';
import { nothingSuch, type EditAnswer } from './answer';
import { changeFitting } from './fittingEdits';
import { neat } from './neat';

type Bar = Extract<ProjectShape, { kind: 'roundBar' }>;
type Body = Extract<ProjectShape, { kind: 'bluffBody' }>;
type Area = Extract<ProjectShape, { kind: 'measuredArea' }>;

/** What stands where sizes carry over from: the first member's extents along the boat's axes, m. */
interface Extents {
  readonly xM: number;
  readonly yM: number;
  readonly zM: number;
  readonly lengthM: number;
}

/** Makes a fitting another kind of shape. */
export function changeShapeKind(project: Project, id: string, kind: ProjectShape['kind']): EditAnswer {
  const fitting = project.fittings.find((each) => each.id === id);
  if (fitting === undefined) return nothingSuch('fitting', id);
  if (fitting.shape.kind === kind) return { project };
  const reshaped = asKind(project, fitting, kind);
  return changeFitting(project, id, (old) => ({ ...old, ...reshaped }), carriedOver);
}

export const carriedOver = 'The sizes are carried over as estimates; look at them again.';

type Reshaped = Pick<ProjectFitting, 'shape' | 'placement'>;

/**
 * A fitting's shape and place once it is of another kind. What it measures is carried over where the two kinds have
 * something in common, as estimates to be measured again:
 * - bar to body: the box round the first member;
 * - body to bar: as wide as seen from ahead, and upright over the body's height unless the placement has a length;
 * - to a measured area: the area seen times the handbook's coefficient (the typed one where there is one);
 * - from a measured area: the size that the same coefficient would give it.
 */
export function asKind(
  project: Project,
  { shape, placement }: Reshaped,
  kind: ProjectShape['kind'],
): Reshaped {
  const extents = extentsOf(project, placement);
  switch (kind) {
    case 'roundBar':
      return asBar(shape, placement, extents);
    case 'bluffBody':
      return { shape: asBody(shape, extents), placement };
    case 'measuredArea':
      return { shape: asArea(shape, extents), placement };
  }
}

function extentsOf(project: Project, placement: ProjectPlacement): Extents {
  const [first] = membersOf(placement, deckLineOf(project.boat));
  if (first === undefined) return { xM: 0, yM: 0, zM: 0, lengthM: 0 };
  const [xM, yM, zM] = [0, 1, 2].map((axis) => Math.abs((first.end[axis] ?? 0) - (first.start[axis] ?? 0)));
  return { xM: xM ?? 0, yM: yM ?? 0, zM: zM ?? 0, lengthM: Math.hypot(xM ?? 0, yM ?? 0, zM ?? 0) };
}

/** Where nothing tells a size: a length of one metre, and a tenth of it across. */
const plainLengthM = 1;
const plainWidthM = 0.1;
const shortestBarM = 0.001;

function asBar(shape: ProjectShape, placement: ProjectPlacement, { lengthM }: Extents): Reshaped {
  const hasLength = lengthM >= shortestBarM;
  const newLengthM = shape.kind === 'bluffBody' ? shape.height.m : plainLengthM;
  const barLengthM = hasLength ? lengthM : newLengthM;
  const diameterM =
    shape.kind === 'bluffBody'
      ? shape.width.m
      : shape.kind === 'measuredArea'
        ? shape.dragAreaM2.best / (barCoefficient().best * barLengthM)
        : shape.diameter.m;
  const bar: ProjectShape = { ...roundBar(plainWidthM), diameter: estimated(diameterM) } as Bar;
  return { shape: bar, placement: hasLength ? placement : lengthened(placement, newLengthM) };
}

/** The placement, which so far was a point, reaching up from its foot. */
function lengthened(placement: ProjectPlacement, lengthM: number): ProjectPlacement {
  if (placement.kind === 'taped') return { ...placement, lengthM };
  const { start, row } = placement;
  const lifted = { ...start, zM: neat(start.zM + lengthM) };
  if (row === null) return { ...placement, end: lifted };
  const lastEnd = { ...row.lastStart, zM: neat(row.lastStart.zM + lengthM) };
  return { ...placement, end: lifted, row: { ...row, lastEnd } };
}

function asBody(shape: ProjectShape, { xM, yM, zM }: Extents): Body {
  const none = { x: null, y: null, z: null };
  const box = (length: number, width: number, height: number): Body => ({
    kind: 'bluffBody',
    length: estimated(length),
    width: estimated(width),
    height: estimated(height),
    coefficients: none,
  });
  if (shape.kind === 'roundBar') {
    const acrossM = shape.diameter.m;
    return box(Math.max(xM, acrossM), Math.max(yM, acrossM), Math.max(zM, acrossM));
  }
  const areaM2 = shape.kind === 'measuredArea' ? shape.dragAreaM2.best : 0;
  const sideM = Math.sqrt(areaM2 / edgedBodyCoefficient.best);
  return box(sideM, sideM, sideM);
}

function asArea(shape: ProjectShape, { lengthM }: Extents): Area {
  const estimate = (range: ProjectRanged, areaM2: number, source: string): Area => ({
    kind: 'measuredArea',
    dragAreaM2: {
      best: neat(range.best * areaM2),
      low: neat(range.low * areaM2),
      high: neat(range.high * areaM2),
    },
    provenance: { kind: 'estimate', source },
  });
  if (shape.kind === 'roundBar') {
    const source = 'drag coefficient of a round bar across the wind x diameter x length';
    return estimate(shape.coefficient ?? barCoefficient(), shape.diameter.m * lengthM, source);
  }
  if (shape.kind === 'measuredArea') return shape;
  const source = 'drag coefficient of an edged body x width x height';
  const areaM2 = shape.width.m * shape.height.m;
  return estimate(shape.coefficients.x ?? edgedBodyCoefficient, areaM2, source);
}

/** A round bar across the wind below its drag crisis, from the bar's own curve at a Reynolds number of 1e5. */
function barCoefficient(): ProjectRanged {
  const at = (column: number): number => valueAt(roundBarTable, column, 5);
  return { best: at(roundBarColumn.best), low: at(roundBarColumn.low), high: at(roundBarColumn.high) };
}

/** A size guessed from another kind of shape, within what the file holds; nothing told gives the plain width. */
function estimated(sizeM: number): ProjectDimension {
  const withinM = sizeM > 0 ? Math.min(Math.max(neat(sizeM), 0.0001), 200) : plainWidthM;
  return { m: withinM, basis: 'estimated' };
}
