import { followingTheWind, noseForward } from '../file/directions';
import type {
  ItemChange,
  ProjectDimension,
  ProjectDirection,
  ProjectFitting,
  ProjectShape,
} from '../file/schema';
import { acrossM, isMember, type ProjectMember } from '../file/shapeKinds';
import { estimated } from './estimatedSize';

/** A change to start from, or why there is none. */
export type DefaultChange =
  { readonly ok: true; readonly change: ItemChange } | { readonly ok: false; readonly message: string };

/** A remedy that gives a fitting another shape. */
export type ShapeStart = 'fairedTurning' | 'fairedFixed' | 'otherSection' | 'rounded';

/** A fairing round a tube: on each side its skin and the room to turn, m (common practice, no source). */
export const fairingRound = { skinM: 0.001, clearanceM: 0.002, chordOverThickness: 4 } as const;
/** An oval about as long round as the tube that it replaces, over its diameter. */
export const ovalInstead = { thickness: 0.65, chord: 1.3 } as const;
/** From this radius over the side on, EN 1991-1-4 gives no more for rounding. */
const roundedShare = 0.2;

/** The shape that a remedy starts from, said as its source; every number is there to be typed over. */
export function startedShape(fitting: ProjectFitting, start: ShapeStart): DefaultChange {
  const { name, shape } = fitting;
  if (start === 'rounded') return rounded(name, shape);
  if (!isMember(shape) || shape.kind === 'fairing') {
    return { ok: false, message: `${name} is no bar or wire: no other section can take its place` };
  }
  return start === 'otherSection'
    ? typed(
        oval(shape),
        'An oval about as long round as the bar; whether it carries the load is not computed.',
      )
    : typed(
        faired(shape, start === 'fairedTurning' ? followingTheWind : noseForward),
        'Round the bar with 3 mm for skin and clearance on each side, a quarter as thick as long (common practice, no source).',
      );
}

function typed(shape: ProjectShape, source: string): DefaultChange {
  return { ok: true, change: { kind: 'typed', shape, source } };
}

function memberParts(shape: ProjectMember) {
  const ends = shape.kind === 'wire' ? (['joined', 'joined'] as const) : shape.ends;
  return { coefficient: null, friction: shape.friction, ends } as const;
}

function faired(shape: ProjectMember, direction: ProjectDirection): ProjectShape {
  const thickness = estimated(acrossM(shape) + 2 * (fairingRound.skinM + fairingRound.clearanceM));
  const chord = estimated(fairingRound.chordOverThickness * thickness.m);
  return { kind: 'fairing', chord, thickness, direction, ...memberParts(shape) };
}

function oval(shape: ProjectMember): ProjectShape {
  const thickness = estimated(ovalInstead.thickness * acrossM(shape));
  const chord = estimated(ovalInstead.chord * acrossM(shape));
  return { kind: 'ellipticalBar', chord, thickness, direction: noseForward, ...memberParts(shape) };
}

function rounded(name: string, shape: ProjectShape): DefaultChange {
  const source = 'Edges rounded to a fifth of the smallest side, the most that EN 1991-1-4 counts.';
  if (shape.kind === 'rectangularBar') {
    const cornerRadiusM = roundedM(shape.chord, shape.thickness);
    return typed({ ...shape, cornerRadiusM }, source);
  }
  if (shape.kind === 'bluffBody') {
    const cornerRadiusM = roundedM(shape.length, shape.width, shape.height);
    return typed({ ...shape, cornerRadiusM }, source);
  }
  return { ok: false, message: `${name} has no edges to round` };
}

function roundedM(...sides: readonly ProjectDimension[]): number {
  return estimated(roundedShare * Math.min(...sides.map(({ m }) => m))).m;
}
