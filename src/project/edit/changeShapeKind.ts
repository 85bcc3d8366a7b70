import type { Project, ProjectShape } from '../file/schema';
import { nothingSuch, type EditAnswer } from './answer';
import { changeFitting } from './fittingEdits';
import { asKind } from './reshape';

/** Makes a fitting another kind of shape. */
export function changeShapeKind(project: Project, id: string, kind: ProjectShape['kind']): EditAnswer {
  const fitting = project.fittings.find((each) => each.id === id);
  if (fitting === undefined) return nothingSuch('fitting', id);
  if (fitting.shape.kind === kind) return { project };
  const reshaped = asKind(project, fitting, kind);
  return changeFitting(project, id, (old) => ({ ...old, ...reshaped }), carriedOver);
}

export const carriedOver = 'The sizes are carried over as estimates; look at them again.';
