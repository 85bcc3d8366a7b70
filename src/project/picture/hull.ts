import { deckLineOf } from '../core/fittingToPhysics';
import { freeboardAt } from '../../physics/placement/deckLine';
import { boatVector, type BoatVector } from '../../physics/vector/vector3';
import type { ProjectBoat, ProjectFitting } from '../file/schema';
import type { Solid } from './solids';

/** Half the beam at the waterline over that at the deck edge: for the picture only (common practice, no source). */
const waterlineShare = 0.85;

const noFitting = { fittingId: null, thicknessM: 0, isDragArea: false } as const;

/** A body of at least this share of the boat's length is the hull itself, whatever box it is reckoned as. */
const hullLengthShare = 0.6;

/** The fitting that stands for the hull's own windage, drawn as the hull and not as its box; null for none. */
export function hullFitting(boat: ProjectBoat, fittings: readonly ProjectFitting[]): ProjectFitting | null {
  const isHull = ({ shape }: ProjectFitting): boolean =>
    shape.kind === 'bluffBody' && shape.length.m >= hullLengthShare * boat.lengthM;
  return fittings.find(isHull) ?? null;
}

/**
 * The hull between deck edge and waterplane, station by station: topsides, deck, bottom and transom.
 * @param fittingId the fitting that stands for it; null for none.
 */
export function hullFaces(boat: ProjectBoat, fittingId: string | null): Solid[] {
  const face = (points: readonly BoatVector[]): Solid => ({
    ...noFitting,
    fittingId,
    kind: 'face',
    role: 'hull',
    points,
  });
  const stations = boat.deckLine.map(({ aftOfStemM, freeboardM, halfBeamM }) => {
    const x = boat.lengthM / 2 - aftOfStemM;
    const waterlineM = waterlineShare * halfBeamM;
    return {
      port: boatVector(x, halfBeamM, freeboardM),
      starboard: boatVector(x, -halfBeamM, freeboardM),
      portBelow: boatVector(x, waterlineM, 0),
      starboardBelow: boatVector(x, -waterlineM, 0),
    };
  });
  const between = stations.slice(1).flatMap((aft, i) => {
    const fore = stations[i] ?? aft;
    return [
      face([fore.port, aft.port, aft.portBelow, fore.portBelow]),
      face([fore.starboard, aft.starboard, aft.starboardBelow, fore.starboardBelow]),
      face([fore.port, aft.port, aft.starboard, fore.starboard]),
      face([fore.portBelow, aft.portBelow, aft.starboardBelow, fore.starboardBelow]),
    ];
  });
  const last = stations.at(-1);
  if (last === undefined) return between;
  return [...between, face([last.port, last.starboard, last.starboardBelow, last.portBelow])];
}

/** Shares by which the sails are sketched: no sail is in a project yet (common practice, no source). */
const sketch = {
  boomAboveDeckM: 1.6,
  footOverLength: 0.36,
  headsailHoist: 0.88,
  mastAcrossM: 0.15,
} as const;

/**
 * Mast and two sails as outlines, for orientation only: from stem, mast and deck line.
 * @param leewardSign +1 where leeward is to port.
 * @param sheetedRad how far the boom is let out from the centreplane.
 */
export function rigOutlines(boat: ProjectBoat, leewardSign: 1 | -1, sheetedRad: number): Solid[] {
  const line = deckLineOf(boat);
  const { aftOfStemM, topAboveWaterplaneM } = boat.mast;
  const deckM = freeboardAt(line, aftOfStemM);
  const mastX = line.stemXM - aftOfStemM;
  if (topAboveWaterplaneM <= deckM + sketch.boomAboveDeckM) return [];
  const at = (x: number, y: number, z: number): BoatVector => boatVector(x, leewardSign * y, z);
  const top = at(mastX, 0, topAboveWaterplaneM);
  const gooseneck = at(mastX, 0, deckM + sketch.boomAboveDeckM);
  const footM = sketch.footOverLength * boat.lengthM;
  const clew = at(
    mastX - footM * Math.cos(sheetedRad),
    footM * Math.sin(sheetedRad),
    deckM + sketch.boomAboveDeckM,
  );
  const stem = at(line.stemXM, 0, freeboardAt(line, 0));
  const hoist = at(
    line.stemXM - sketch.headsailHoist * aftOfStemM,
    0,
    stem[2] + sketch.headsailHoist * (topAboveWaterplaneM - stem[2]),
  );
  const sheet = at(mastX, 0.8 * footM * Math.sin(sheetedRad), deckM + 0.4);
  const sail = (points: readonly BoatVector[]): Solid => ({
    ...noFitting,
    kind: 'face',
    role: 'rig',
    points,
  });
  return [
    {
      ...noFitting,
      kind: 'bar',
      role: 'rig',
      points: [at(mastX, 0, deckM), top],
      thicknessM: sketch.mastAcrossM,
    },
    sail([gooseneck, clew, top]),
    sail([stem, sheet, hoist]),
  ];
}
