import { freeboardAt, halfBeamAt, type DeckLine } from '../physics/placement/deckLine';
import { deckLineOf } from '../project/core/fittingToPhysics';
import type { ProjectBoat } from '../project/file/schema';
import { quantityIn } from '../units/printIn';

/** A mark on the scale along the boat. */
export interface OutlineTick {
  readonly x: number;
  readonly label: string;
}

/** The boat in plan and in profile, bow to the left, one scale for both; px. */
export interface BoatOutlineGeometry {
  readonly widthPx: number;
  readonly heightPx: number;
  /** SVG path of the deck edge seen from above, closed. */
  readonly planPath: string;
  readonly centrelineY: number;
  /** SVG path of the side down to the water, closed. */
  readonly profilePath: string;
  readonly waterY: number;
  readonly mast: { readonly x: number; readonly footY: number; readonly topY: number };
  readonly sternX: number;
  readonly stemX: number;
  readonly ticks: readonly OutlineTick[];
  readonly tickY: number;
  readonly description: string;
}

const edgePx = 8;
const gapPx = 14;
const scaleRoomPx = 22;
const steps = 40;

type Point = readonly [x: number, y: number];

/** @param most the largest drawing, px: the scale is what fits both ways. */
export function boatOutlineGeometry(
  boat: ProjectBoat,
  most: { readonly widthPx: number; readonly heightPx: number },
): BoatOutlineGeometry {
  const line = deckLineOf(boat);
  const stations = Array.from({ length: steps + 1 }, (_, i) => (i / steps) * boat.lengthM);
  const halfBeamM = Math.max(...stations.map((aftM) => halfBeamAt(line, aftM)), 0.01);
  const mastTopM = Math.max(
    boat.mast.topAboveWaterplaneM,
    ...stations.map((aftM) => freeboardAt(line, aftM)),
  );
  const freeHeightPx = most.heightPx - 2 * edgePx - gapPx - scaleRoomPx;
  const pxPerM = Math.min(
    (most.widthPx - 2 * edgePx) / boat.lengthM,
    freeHeightPx / (mastTopM + 2 * halfBeamM),
  );
  const x = (aftM: number): number => rounded(edgePx + aftM * pxPerM);
  const waterY = rounded(edgePx + mastTopM * pxPerM);
  const centrelineY = rounded(waterY + gapPx + halfBeamM * pxPerM);
  const tickY = rounded(centrelineY + halfBeamM * pxPerM + 4);
  const mastAftM = Math.min(Math.max(boat.mast.aftOfStemM, 0), boat.lengthM);
  return {
    widthPx: rounded(boat.lengthM * pxPerM + 2 * edgePx),
    heightPx: rounded(tickY + scaleRoomPx),
    planPath: planPath(line, stations, x, (outM) => rounded(centrelineY - outM * pxPerM)),
    centrelineY,
    profilePath: profilePath(line, stations, x, (upM) => rounded(waterY - upM * pxPerM)),
    waterY,
    mast: {
      x: x(mastAftM),
      footY: rounded(waterY - freeboardAt(line, mastAftM) * pxPerM),
      topY: rounded(waterY - boat.mast.topAboveWaterplaneM * pxPerM),
    },
    stemX: x(0),
    sternX: x(boat.lengthM),
    ticks: ticksOf(boat.lengthM).map((aftM) => ({
      x: x(aftM),
      label: quantityIn(aftM, 'm', { decimals: 0 }),
    })),
    tickY,
    description: `${boat.name} from the side and from above, bow to the left, with a scale of distances aft of the stem.`,
  };
}

function planPath(
  line: DeckLine,
  stations: readonly number[],
  x: (aftM: number) => number,
  y: (outM: number) => number,
): string {
  const port = stations.map((aftM): Point => [x(aftM), y(halfBeamAt(line, aftM))]);
  const starboard = stations.map((aftM): Point => [x(aftM), y(-halfBeamAt(line, aftM))]);
  return closed([...port, ...starboard.reverse()]);
}

function profilePath(
  line: DeckLine,
  stations: readonly number[],
  x: (aftM: number) => number,
  y: (upM: number) => number,
): string {
  const sheer = stations.map((aftM): Point => [x(aftM), y(freeboardAt(line, aftM))]);
  const [last = 0] = stations.slice(-1);
  return closed([...sheer, [x(last), y(0)], [x(0), y(0)]]);
}

function closed(points: readonly Point[]): string {
  return `M${points.map(([px, py]) => `${px} ${py}`).join('L')}Z`;
}

/** Whole metres, at most about twelve of them. */
function ticksOf(lengthM: number): number[] {
  const stepM = [1, 2, 5, 10, 20].find((step) => lengthM / step <= 12) ?? 50;
  return Array.from({ length: Math.floor(lengthM / stepM) + 1 }, (_, i) => i * stepM);
}

function rounded(px: number): number {
  return Math.round(px * 10) / 10 + 0;
}
