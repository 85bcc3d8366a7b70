import { limits } from './limits';
import type { Project, ProjectPlacement, ProjectPoint } from './schema';
import { isMember } from './shapeKinds';
import { pathText, type FieldError, type PathStep } from './fieldErrors';

/** Shortest bar, m. */
const shortestBarM = 0.001;

/** Bars have a length; a pair is no fitting counted twice. */
export function barErrors(project: Project): FieldError[] {
  const barIds = new Set(project.fittings.flatMap(({ id, shape }) => (isMember(shape) ? [id] : [])));
  const ofFittings = project.fittings.flatMap(({ shape, placement }, i) =>
    placementErrors(placement, isMember(shape), ['fittings', i, 'placement']),
  );
  const ofItems = project.plans.flatMap(({ items }, i) =>
    items.flatMap(({ fittingId, change }, k) => {
      if (change.kind !== 'moved') return [];
      const steps = ['plans', i, 'items', k, 'change', 'placement'];
      return placementErrors(change.placement, barIds.has(fittingId), steps);
    }),
  );
  return [...ofFittings, ...ofItems];
}

function placementErrors(
  placement: ProjectPlacement,
  isBar: boolean,
  steps: readonly PathStep[],
): FieldError[] {
  const errors = isBar ? lengthErrors(placement, steps) : [];
  if (placement.pair && isOnCentreline(placement)) {
    const message =
      'a pair on the centreline would count the same place twice; set it to false or move it off';
    errors.push({ path: pathText([...steps, 'pair']), message });
  }
  return errors;
}

function lengthErrors(placement: ProjectPlacement, steps: readonly PathStep[]): FieldError[] {
  if (placement.kind === 'taped') {
    if (placement.lengthM >= shortestBarM) return [];
    const message = `must be at least ${shortestBarM} for a bar; it is ${placement.lengthM}`;
    return [{ path: pathText([...steps, 'lengthM']), message }];
  }
  const { start, end, row } = placement;
  const message = `a bar must end at least ${shortestBarM} m from its start`;
  const errors: FieldError[] = [];
  if (distanceM(start, end) < shortestBarM) errors.push({ path: pathText([...steps, 'end']), message });
  if (row !== null && distanceM(row.lastStart, row.lastEnd) < shortestBarM) {
    errors.push({ path: pathText([...steps, 'row', 'lastEnd']), message });
  }
  return errors;
}

function distanceM(a: ProjectPoint, b: ProjectPoint): number {
  return Math.hypot(a.xM - b.xM, a.yM - b.yM, a.zM - b.zM);
}

function isOnCentreline(placement: ProjectPlacement): boolean {
  if (placement.kind === 'taped') {
    const { athwart, leanOutDeg, lengthM, row } = placement;
    const isUpright = leanOutDeg === 0 || lengthM === 0;
    const isLastOn = row === null || row.lastAthwartM === 0;
    return athwart.from === 'centreline' && athwart.inboardOrOutM === 0 && isLastOn && isUpright;
  }
  const { start, end, row } = placement;
  const points = row === null ? [start, end] : [start, end, row.lastStart, row.lastEnd];
  return points.every(({ yM }) => yM === 0);
}

/** How many members a placement lays out. */
function memberCount({ row, pair }: ProjectPlacement): number {
  return (row === null ? 1 : row.count) * (pair ? 2 : 1);
}

/** The members of all fittings together, and with what each plan moves, stay within what a machine computes quickly. */
export function memberErrors({ fittings, plans }: Project): FieldError[] {
  const ofFittings = fittings.reduce((sum, { placement }) => sum + memberCount(placement), 0);
  const words = (count: number) =>
    `rows and pairs make ${count} members; at most ${limits.members} are computed`;
  if (ofFittings > limits.members) return [{ path: 'fittings', message: words(ofFittings) }];
  return plans.flatMap(({ items }, i) => {
    const moved = items.reduce(
      (sum, { change }) => sum + (change.kind === 'moved' ? memberCount(change.placement) : 0),
      ofFittings,
    );
    return moved > limits.members ? [{ path: pathText(['plans', i, 'items']), message: words(moved) }] : [];
  });
}
