import type { SailingState } from '../../physics/condition/sailingState';
import {
  directionOf,
  isMemberShape,
  type FittingInput,
  type SectionShape,
  type Shape,
} from '../../physics/fitting/fittingInput';
import { settingAt, sideSettings } from '../../physics/fitting/localWind';
import { layMembers } from '../../physics/fitting/sumFitting';
import { toBoat } from '../../physics/frames/boatToTrack';
import type { MemberGeometry } from '../../physics/member/memberGeometry';
import { fixedOrTurnedNose, type Nose } from '../../physics/member/sectionNose';
import type { DeckLine } from '../../physics/placement/deckLine';
import { halfThickness } from '../../physics/section/fairingOutline';
import { boatVector, trackVector, type BoatVector } from '../../physics/vector/vector3';
import { fittingToPhysics } from '../core/fittingToPhysics';
import { asSailed } from '../core/fittingState';
import type { ProjectFitting } from '../file/schema';

/** What a solid belongs to: a fitting, the hull, or the rig that is drawn for orientation only. */
export type SolidRole = 'fitting' | 'hull' | 'rig';

/**
 * Something to draw, in the boat's frame, m. Every solid is convex.
 * - `bar`: a round bar from the first point to the second, `thicknessM` across.
 * - `ball`: a sphere of diameter `thicknessM` about its one point.
 * - `cloud`: the convex hull of its points.
 * - `face`: a flat polygon, its points in order.
 */
export interface Solid {
  readonly kind: 'bar' | 'ball' | 'cloud' | 'face';
  readonly role: SolidRole;
  readonly fittingId: string | null;
  readonly points: readonly BoatVector[];
  readonly thicknessM: number;
  /** True where only a drag area is known: the ball has that area and is no shape of anything. */
  readonly isDragArea: boolean;
}

/** A longer bar or section is cut, so that what lies nearer than one end and farther than the other is drawn between. */
const longestPieceM = 2;

/** What a fitting is in a condition, member by member: sections at their own angle, those that turn at the wind's. */
export function solidsOf(fitting: ProjectFitting, line: DeckLine, state: SailingState): Solid[] {
  const input = fittingToPhysics(asSailed(fitting), line);
  const settings = sideSettings(input, state.tackSign);
  return layMembers(input, state).flatMap((geometry) => {
    const setting = settingAt(settings, geometry.middleY, state);
    const nose: Nose = { x: 0, y: 0, z: 0 };
    fixedOrTurnedNose(geometry, directionOf(input.shape), state, setting, nose);
    return memberSolids(input, geometry, state, nose);
  });
}

function memberSolids(
  { id, shape }: FittingInput,
  geometry: MemberGeometry,
  state: SailingState,
  nose: Nose,
): Solid[] {
  const { rotation } = state;
  const start = toBoat(rotation, geometry.start);
  const end = toBoat(rotation, geometry.end);
  const solid = (kind: Solid['kind'], points: readonly BoatVector[], thicknessM = 0): Solid => ({
    kind,
    role: 'fitting',
    fittingId: id,
    points,
    thicknessM,
    isDragArea: shape.kind === 'measuredArea',
  });
  if (isMemberShape(shape)) {
    const pieces = piecesBetween(start, end);
    if (!('chord' in shape)) return pieces.map((piece) => solid('bar', piece, shape.diameter.valueM));
    const noseInBoat = toBoat(rotation, trackVector(nose.x, nose.y, nose.z));
    return pieces.map((piece) => solid('cloud', sectionCloud(shape, piece, noseInBoat)));
  }
  return [bodySolid(shape, start, solid)];
}

type MakeSolid = (kind: Solid['kind'], points: readonly BoatVector[], thicknessM?: number) => Solid;

function bodySolid(shape: Exclude<Shape, { ends: unknown }>, foot: BoatVector, solid: MakeSolid): Solid {
  switch (shape.kind) {
    case 'bluffBody':
      return solid('cloud', boxCorners(foot, shape.length.valueM, shape.width.valueM, shape.height.valueM));
    case 'net':
      return solid('face', netCorners(foot, shape.facing, shape.width.valueM, shape.height.valueM));
    case 'sphere':
      return solid('ball', [foot], shape.diameter.valueM);
    case 'measuredArea':
      return solid('ball', [foot], 2 * Math.sqrt(shape.dragAreaM2.best / Math.PI));
  }
}

function piecesBetween(start: BoatVector, end: BoatVector): (readonly [BoatVector, BoatVector])[] {
  const lengthM = Math.hypot(end[0] - start[0], end[1] - start[1], end[2] - start[2]);
  const count = Math.max(Math.ceil(lengthM / longestPieceM - 1e-9), 1);
  return Array.from({ length: count }, (_, i) => [
    between(start, end, i / count),
    between(start, end, (i + 1) / count),
  ]);
}

function between(a: BoatVector, b: BoatVector, share: number): BoatVector {
  return boatVector(a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1]), a[2] + share * (b[2] - a[2]));
}

/** A body stands on its place and reaches up: the middle of its foot is there. */
function boxCorners(foot: BoatVector, lengthM: number, widthM: number, heightM: number): BoatVector[] {
  return [-0.5, 0.5].flatMap((x) =>
    [-0.5, 0.5].flatMap((y) =>
      [0, 1].map((z) => boatVector(foot[0] + x * lengthM, foot[1] + y * widthM, foot[2] + z * heightM)),
    ),
  );
}

/** Along the boat where a net faces sideways or up, across her where it faces ahead. */
function netCorners(
  foot: BoatVector,
  facing: 'x' | 'y' | 'z',
  widthM: number,
  heightM: number,
): BoatVector[] {
  const across = facing === 'x' ? boatVector(0, 1, 0) : boatVector(1, 0, 0);
  const up = facing === 'z' ? boatVector(0, 1, 0) : boatVector(0, 0, 1);
  // Flat on the deck, it lies about its place; upright, it stands on it.
  const low = facing === 'z' ? -0.5 : 0;
  const corner = (a: number, b: number): BoatVector =>
    boatVector(
      foot[0] + a * widthM * across[0] + b * heightM * up[0],
      foot[1] + a * widthM * across[1] + b * heightM * up[1],
      foot[2] + a * widthM * across[2] + b * heightM * up[2],
    );
  return [corner(-0.5, low), corner(0.5, low), corner(0.5, low + 1), corner(-0.5, low + 1)];
}

/** The outline of a section at both ends of a piece: its corners, or enough points of its curve. */
function sectionCloud(
  shape: SectionShape,
  ends: readonly [BoatVector, BoatVector],
  nose: BoatVector,
): BoatVector[] {
  const side = sideOf(ends, nose);
  return sectionOutline(shape).flatMap(([along, across]) =>
    ends.map((end) =>
      boatVector(
        end[0] + along * nose[0] + across * side[0],
        end[1] + along * nose[1] + across * side[1],
        end[2] + along * nose[2] + across * side[2],
      ),
    ),
  );
}

/** Square to axis and nose. */
function sideOf([start, end]: readonly [BoatVector, BoatVector], nose: BoatVector): BoatVector {
  const axis = [end[0] - start[0], end[1] - start[1], end[2] - start[2]] as const;
  const lengthM = Math.hypot(...axis) || 1;
  return boatVector(
    (axis[1] * nose[2] - axis[2] * nose[1]) / lengthM,
    (axis[2] * nose[0] - axis[0] * nose[2]) / lengthM,
    (axis[0] * nose[1] - axis[1] * nose[0]) / lengthM,
  );
}

const curvePoints = 24;
/** A fairing's axis is drawn where it is thickest. */
const thickestShare = 0.3;

/** Points of a section as (towards the nose, across), m, from the member's axis. */
function sectionOutline({ kind, chord, thickness }: SectionShape): readonly (readonly [number, number])[] {
  const [c, t] = [chord.valueM, thickness.valueM];
  if (kind === 'rectangularBar')
    return [
      [c / 2, t / 2],
      [c / 2, -t / 2],
      [-c / 2, -t / 2],
      [-c / 2, t / 2],
    ];
  return Array.from({ length: curvePoints }, (_, i) => {
    const angle = (2 * Math.PI * i) / curvePoints;
    if (kind === 'ellipticalBar') return [(c / 2) * Math.cos(angle), (t / 2) * Math.sin(angle)] as const;
    const x = 0.5 * (1 - Math.cos(angle));
    const half = c * halfThickness(t / c, x);
    return [(thickestShare - x) * c, i <= curvePoints / 2 ? half : -half] as const;
  });
}
