import { roughnessByFinish } from '../../physics/section/roughness';
import type { ProjectShape, ProjectShapeOf, ProjectSurface } from './schema';

/** A shape that runs from one point to another, and so needs a length. */
export type ProjectMember = ProjectShapeOf<
  'roundBar' | 'wire' | 'ellipticalBar' | 'rectangularBar' | 'fairing'
>;

/** A member whose section has a direction. */
export type ProjectSection = ProjectShapeOf<'ellipticalBar' | 'rectangularBar' | 'fairing'>;

/** A member that is round, by its diameter. */
export type ProjectRound = ProjectShapeOf<'roundBar' | 'wire'>;

export function isMember(shape: ProjectShape): shape is ProjectMember {
  return 'friction' in shape;
}

export function isSection(shape: ProjectShape): shape is ProjectSection {
  return 'chord' in shape;
}

export function isRound(shape: ProjectShape): shape is ProjectRound {
  return shape.kind === 'roundBar' || shape.kind === 'wire';
}

/** How thick a member is across its axis, m: its diameter, or its thickness. */
export function acrossM(shape: ProjectMember): number {
  return isSection(shape) ? shape.thickness.m : shape.diameter.m;
}

/** Height of a surface's roughness, m. */
export function roughnessOf(surface: ProjectSurface): number {
  if (surface.kind === 'smooth') return 0;
  return surface.kind === 'finish' ? roughnessByFinish[surface.finish] : surface.roughnessM;
}
