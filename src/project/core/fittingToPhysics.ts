import type { Dimension, FittingInput, PlacedMember, Shape } from '../../physics/fitting/fittingInput';
import { basisDoubt } from '../../physics/fitting/fittingInput';
import { deckLine, type DeckLine } from '../../physics/placement/deckLine';
import {
  placeRow,
  placeTaped,
  placeTapedRow,
  withMirrorImages,
  type TapedPlace,
} from '../../physics/placement/placeMembers';
import { roughnessByFinish } from '../../physics/section/roughness';
import { boatVector, type BoatVector } from '../../physics/vector/vector3';
import { toSi } from '../../units/convert';
import type {
  ProjectBoat,
  ProjectDimension,
  ProjectPlacement,
  ProjectPoint,
  ProjectShape,
  ProjectSurface,
} from '../file/schema';
import type { FittingState, PartOwners } from './fittingState';

/** The deck line of a boat as the core takes it. */
export function deckLineOf(boat: ProjectBoat): DeckLine {
  return deckLine(boat.lengthM, boat.deckLine);
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
    lengthDoubt:
      shape.kind === 'roundBar'
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
        coefficient: shape.coefficient,
        coefficientDoubtId: `own:${coefficient}:coefficient`,
        friction: shape.friction === 'model',
        ends: shape.ends,
      };
    case 'measuredArea':
      return { kind: 'measuredArea', dragAreaM2: shape.dragAreaM2, doubtId: `own:${coefficient}:drag-area` };
    case 'bluffBody':
      return {
        kind: 'bluffBody',
        length: dimension(shape.length, size, 'length'),
        width: dimension(shape.width, size, 'width'),
        height: dimension(shape.height, size, 'height'),
        coefficients: shape.coefficients,
        coefficientDoubtId: `own:${coefficient}:coefficient`,
      };
  }
}

function dimension(size: ProjectDimension, owner: string, part: string): Dimension {
  return { valueM: size.m, basis: size.basis, doubtId: `own:${owner}:${part}` };
}

function roughnessOf(surface: ProjectSurface): number {
  if (surface.kind === 'smooth') return 0;
  return surface.kind === 'finish' ? roughnessByFinish[surface.finish] : surface.roughnessM;
}

/** A bar keeps its end points; a body stands on the start and reaches up by its height; a measured area is a point. */
function fitToShape({ start, end }: PlacedMember, shape: Shape): PlacedMember {
  if (shape.kind === 'roundBar') return { start, end };
  const heightM = shape.kind === 'bluffBody' ? shape.height.valueM : 0;
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
