import { deckLineOf, membersOf } from '../core/fittingToPhysics';
import { noseForward } from '../file/directions';
import type { Project, ProjectFitting, ProjectPlacement, ProjectShape, ProjectShapeOf } from '../file/schema';
import { acrossM, isMember, isSection, type ProjectMember } from '../file/shapeKinds';
import { asArea, barCoefficient, edgedBodyAreaM2 } from './asArea';
import { estimated, plainLengthM, plainWidthM } from './estimatedSize';
import { neat } from './neat';

export type Reshaped = Pick<ProjectFitting, 'shape' | 'placement'>;

/** What stands where sizes carry over from: the first member's extents along the boat's axes, m. */
export interface Extents {
  readonly xM: number;
  readonly yM: number;
  readonly zM: number;
  readonly lengthM: number;
}

/**
 * A fitting's shape and place once it is of another kind. What it measures is carried over where the two kinds have
 * something in common, as estimates to be measured again:
 * - member to member: as thick as before, along the same line;
 * - member to body, net or sphere: the box round the first member;
 * - body, net or sphere to member: as wide as seen from ahead, and upright over its height unless the placement has a
 *   length;
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
    case 'wire':
    case 'ellipticalBar':
    case 'rectangularBar':
    case 'fairing':
      return asMember(kind, shape, placement, extents);
    case 'bluffBody':
      return { shape: asBody(shape, extents), placement };
    case 'sphere':
      return { shape: asSphere(shape, extents), placement };
    case 'net':
      return { shape: asNet(shape, extents), placement };
    case 'measuredArea':
      return { shape: asArea(shape, extents.lengthM), placement };
  }
}

function extentsOf(project: Project, placement: ProjectPlacement): Extents {
  const [first] = membersOf(placement, deckLineOf(project.boat));
  if (first === undefined) return { xM: 0, yM: 0, zM: 0, lengthM: 0 };
  const [xM, yM, zM] = [0, 1, 2].map((axis) => Math.abs((first.end[axis] ?? 0) - (first.start[axis] ?? 0)));
  return { xM: xM ?? 0, yM: yM ?? 0, zM: zM ?? 0, lengthM: Math.hypot(xM ?? 0, yM ?? 0, zM ?? 0) };
}

const shortestBarM = 0.001;

function asMember(
  kind: ProjectMember['kind'],
  shape: ProjectShape,
  placement: ProjectPlacement,
  { lengthM }: Extents,
): Reshaped {
  const hasLength = lengthM >= shortestBarM;
  const newLengthM = 'height' in shape ? shape.height.m : plainLengthM;
  return {
    shape: memberOf(kind, acrossOf(shape, hasLength ? lengthM : newLengthM), shape),
    placement: hasLength ? placement : lengthened(placement, newLengthM),
  };
}

/** How wide a shape is across a bar's line, m. */
function acrossOf(shape: ProjectShape, barLengthM: number): number {
  if (isMember(shape)) return acrossM(shape);
  if (shape.kind === 'sphere') return shape.diameter.m;
  if (shape.kind === 'measuredArea') return shape.dragAreaM2.best / (barCoefficient().best * barLengthM);
  return shape.width.m;
}

/** Chord over thickness that a section starts with, until somebody says better (common practice, no source). */
const startChord = { ellipticalBar: 2, rectangularBar: 1, fairing: 4 } as const;

/** A member of a kind, as thick as asked; what it has in common with the old shape stays. */
function memberOf(kind: ProjectMember['kind'], thickM: number, old: ProjectShape): ProjectMember {
  const ends = isMember(old) && old.kind !== 'wire' ? old.ends : (['free', 'free'] as const);
  const friction = isMember(old) ? old.friction : 'model';
  const parts = { coefficient: null, friction, ends } as const;
  if (kind === 'wire') {
    return { kind, construction: 'spiralStrand', diameter: estimated(thickM), coefficient: null, friction };
  }
  if (kind === 'roundBar') {
    return { kind, diameter: estimated(thickM), surface: surfaceOf(old), ...parts };
  }
  const thickness = estimated(thickM);
  const chord = isSection(old) ? old.chord : estimated(startChord[kind] * thickness.m);
  const direction = isSection(old) ? old.direction : noseForward;
  const section = { chord: chord.m >= thickness.m ? chord : thickness, thickness, direction, ...parts };
  return kind === 'rectangularBar' ? { kind, ...section, cornerRadiusM: 0 } : { kind, ...section };
}

function surfaceOf(old: ProjectShape): ProjectShapeOf<'roundBar'>['surface'] {
  return 'surface' in old ? old.surface : { kind: 'smooth' };
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

type Box = readonly [lengthM: number, widthM: number, heightM: number];

/** The box that a shape fills. */
function boxOf(shape: ProjectShape, { xM, yM, zM }: Extents): Box {
  if (isMember(shape)) {
    const thickM = acrossM(shape);
    return [Math.max(xM, thickM), Math.max(yM, thickM), Math.max(zM, thickM)];
  }
  switch (shape.kind) {
    case 'sphere':
      return [shape.diameter.m, shape.diameter.m, shape.diameter.m];
    case 'bluffBody':
      return [shape.length.m, shape.width.m, shape.height.m];
    case 'net':
      return shape.facing === 'x'
        ? [shape.wireDiameter.m, shape.width.m, shape.height.m]
        : [shape.width.m, shape.wireDiameter.m, shape.height.m];
    case 'measuredArea': {
      const sideM = Math.sqrt(edgedBodyAreaM2(shape.dragAreaM2.best));
      return [sideM, sideM, sideM];
    }
  }
}

function asBody(shape: ProjectShape, extents: Extents): ProjectShape {
  const [lengthM, widthM, heightM] = boxOf(shape, extents);
  return {
    kind: 'bluffBody',
    length: estimated(lengthM),
    width: estimated(widthM),
    height: estimated(heightM),
    cornerRadiusM: 0,
    coefficients: { x: null, y: null, z: null },
  };
}

/** A sphere of the same face from ahead. */
function asSphere(shape: ProjectShape, extents: Extents): ProjectShape {
  const [, widthM, heightM] = boxOf(shape, extents);
  return {
    kind: 'sphere',
    diameter: estimated(2 * Math.sqrt((widthM * heightM) / Math.PI)),
    surface: surfaceOf(shape),
    coefficient: null,
  };
}

const plainSolidity = 0.2;
const plainTwineM = 0.002;

/** A net over the larger of the two upright faces of the box. */
function asNet(shape: ProjectShape, extents: Extents): ProjectShape {
  const [lengthM, widthM, heightM] = boxOf(shape, extents);
  const facing = lengthM > widthM ? 'y' : 'x';
  const width = estimated(Math.max(lengthM, widthM, plainWidthM));
  const height = estimated(heightM);
  const wireDiameter = estimated(Math.min(plainTwineM, width.m, height.m));
  return { kind: 'net', facing, width, height, solidity: plainSolidity, wireDiameter };
}
