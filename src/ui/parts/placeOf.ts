import { deckLineOf, membersOf } from '../../project/core/fittingToPhysics';
import type { Project, ProjectFitting, ProjectPoint } from '../../project/file/schema';

/** The middle of a fitting's first member, to the centimetre: a place to start from. The origin without a fitting. */
export function placeOf(project: Project, fitting: ProjectFitting | null): ProjectPoint {
  const [first] = fitting === null ? [] : membersOf(fitting.placement, deckLineOf(project.boat));
  if (first === undefined) return { xM: 0, yM: 0, zM: 0 };
  const middle = (axis: 0 | 1 | 2): number =>
    Math.round(50 * (first.start[axis] + first.end[axis])) / 100 + 0;
  return { xM: middle(0), yM: middle(1), zM: middle(2) };
}
