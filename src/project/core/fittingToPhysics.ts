import {
  basisDoubt,
  isMemberShape,
  type Dimension,
  type FittingInput,
  type PlacedMember,
  type Shape,
} from '../../physics/fitting/fittingInput';
import { deckLine, type DeckLine } from '../../physics/placement/deckLine';
import {
  placeRow,
  placeTaped,
  placeTapedRow,
  withMirrorImages,
  type TapedPlace,
} from '../../physics/placement/placeMembers';
import type { SectionDirection } from '../../physics/section/sectionDirection';
import { boatVector, type BoatVector } from '../../physics/vector/vector3';
import { toSi } from '../../units/convert';
import type {
  ProjectBoat,
  ProjectDimension,
  ProjectDirection,
  ProjectPlacement,
  ProjectPoint,
  ProjectShape,
  ProjectShapeOf,
} from '../file/schema';
import { roughnessOf } from '../file/shapeKinds';
import type { FittingState, PartOwners } from './fittingState';

const knownLines = new WeakMap<ProjectBoat, DeckLine>();

/** The deck line of a boat as the core takes it, worked out once for a boat: every fitting is placed on it. */
export function deckLineOf(boat: ProjectBoat): DeckLine {
  const known = knownLines.get(boat);
  if (known !== undefined) return known;
  const line = deckLine(boat.lengthM, boat.deckLine);
  knownLines.set(boat, line);
  return line;
}

export function pointToBoat({ xM, yM, zM }: ProjectPoint): BoatVector {
  return boatVector(xM, yM, zM);
}

/** A fitting in the core's terms: end points laid out, angles in radians, every doubt named by the owner of its part. */
export function fittingToPhysics({ fitting, owners }: FittingState, line: DeckLine): FittingInput {
  const shape = shapeToPhysics(fitting.shape, owners);
  const { exposure, exposureLeeward, stowed, placement } = fitting;
  return {
    id: fitting.id,
    shape,
    members: membersOf(placement, line).map((member) => fitToShape(member, shape)),
    lengthDoubt: isMemberShape(shape)
      ? { fraction: basisDoubt[placement.basis], doubtId: `own:${owners.length}:member-length` }
      : null,
    exposure,
    exposureLeeward: exposureLeeward ?? exposure,
    exposureDoubtId: `own:${owners.exposure}:exposure`,
    localTurnRad: toSi(fitting.localTurn.deg, 'deg'),
    stowed:
      stowed === null
        ? null
        : {
            dragAreaM2: stowed.dragAreaM2,
            place: pointToBoat(stowed.place),
            doubtId: `own:${owners.stowed}:stowed-area`,
          },
  };
}

function shapeToPhysics(shape: ProjectShape, { size, coefficient }: PartOwners): Shape {
  switch (shape.kind) {
    case 'roundBar':
      return {
        kind: 'roundBar',
        diameter: dimension(shape.diameter, size, 'diameter'),
        roughnessM: roughnessOf(shape.surface),
        ...memberParts(shape, coefficient),
        ends: shape.ends,
      };
    case 'wire':
      return {
        kind: 'wire',
        construction: shape.construction,
        diameter: dimension(shape.diameter, size, 'diameter'),
        ...memberParts(shape, coefficient),
        ends: ['joined', 'joined'],
      };
    case 'ellipticalBar':
    case 'rectangularBar':
    case 'fairing':
      return {
        kind: shape.kind,
        chord: dimension(shape.chord, size, 'chord'),
        thickness: dimension(shape.thickness, size, 'thickness'),
        cornerRadiusM: shape.kind === 'rectangularBar' ? shape.cornerRadiusM : 0,
        direction: directionToPhysics(shape.direction),
        directionDoubtId: `own:${size}:direction`,
        ...memberParts(shape, coefficient),
        ends: shape.ends,
      };
    case 'sphere':
      return {
        kind: 'sphere',
        diameter: dimension(shape.diameter, size, 'diameter'),
        roughnessM: roughnessOf(shape.surface),
        coefficient: shape.coefficient,
        coefficientDoubtId: `own:${coefficient}:coefficient`,
      };
    case 'net':
      return {
        kind: 'net',
        facing: shape.facing,
        width: dimension(shape.width, size, 'width'),
        height: dimension(shape.height, size, 'height'),
        solidity: shape.solidity,
        wireDiameter: dimension(shape.wireDiameter, size, 'wire-diameter'),
      };
    case 'measuredArea':
      return { kind: 'measuredArea', dragAreaM2: shape.dragAreaM2, doubtId: `own:${coefficient}:drag-area` };
    case 'bluffBody':
      return {
        kind: 'bluffBody',
        length: dimension(shape.length, size, 'length'),
        width: dimension(shape.width, size, 'width'),
        height: dimension(shape.height, size, 'height'),
        cornerRadiusM: shape.cornerRadiusM,
        coefficients: shape.coefficients,
        coefficientDoubtId: `own:${coefficient}:coefficient`,
      };
  }
}

function memberParts(
  { coefficient, friction }: Pick<ProjectShapeOf<'wire'>, 'coefficient' | 'friction'>,
  owner: string,
) {
  return {
    coefficient,
    coefficientDoubtId: `own:${owner}:coefficient`,
    friction: friction === 'model',
  };
}

function directionToPhysics(direction: ProjectDirection): SectionDirection {
  if (direction.kind === 'fixed') return { kind: 'fixed', angleRad: toSi(direction.angleDeg, 'deg') };
  const { pieces, residualDeg } = direction;
  return { kind: 'turning', pieces, residualRad: toSi(residualDeg, 'deg'), offRad: 0 };
}

function dimension(size: ProjectDimension, owner: string, part: string): Dimension {
  return { valueM: size.m, basis: size.basis, doubtId: `own:${owner}:${part}` };
}

/** A bar keeps its end points; a body or net stands on the start and reaches up by its height; other shapes are points. */
function fitToShape(member: PlacedMember, shape: Shape): PlacedMember {
  if (isMemberShape(shape)) return member;
  const { start } = member;
  const heightM = 'height' in shape ? shape.height.valueM : 0;
  return { start, end: boatVector(start[0], start[1], start[2] + heightM) };
}

/** All members of a placement, rows and mirror images included. */
export function membersOf(placement: ProjectPlacement, line: DeckLine): PlacedMember[] {
  const members = placement.kind === 'taped' ? tapedMembers(placement, line) : endPointMembers(placement);
  return placement.pair ? withMirrorImages(members) : members;
}

function endPointMembers(placement: Extract<ProjectPlacement, { kind: 'endPoints' }>): PlacedMember[] {
  const first = { start: pointToBoat(placement.start), end: pointToBoat(placement.end) };
  const { row } = placement;
  if (row === null) return [first];
  return placeRow(first, { start: pointToBoat(row.lastStart), end: pointToBoat(row.lastEnd) }, row.count);
}

function tapedMembers(
  placement: Extract<ProjectPlacement, { kind: 'taped' }>,
  line: DeckLine,
): PlacedMember[] {
  const first: TapedPlace = {
    aftOfStemM: placement.aftOfStemM,
    side: placement.side,
    athwartFrom: placement.athwart.from,
    athwartM: placement.athwart.inboardOrOutM,
    aboveDeckM: placement.aboveDeckM,
    lengthM: placement.lengthM,
    leanAftRad: toSi(placement.leanAftDeg, 'deg'),
    leanOutRad: toSi(placement.leanOutDeg, 'deg'),
  };
  const { row } = placement;
  if (row === null) return [placeTaped(line, first)];
  return placeTapedRow(
    line,
    first,
    { aftOfStemM: row.lastAftOfStemM, athwartM: row.lastAthwartM },
    row.count,
  );
}
