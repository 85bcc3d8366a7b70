import { freeboardAt, halfBeamAt, type DeckLine } from '../physics/placement/deckLine';
import { deckLineOf } from '../project/core/fittingToPhysics';
import type { ProjectBoat } from '../project/file/schema';
import { quantityIn } from '../units/printIn';

/** A mark on a scale along the boat: px from the left, or from above. */
export interface OutlineTick {
  readonly at: number;
  readonly label: string;
}

/** The boat from the side, bow to the left, and beside it from above, bow up; one scale for both; px. */
export interface BoatOutlineGeometry {
  readonly widthPx: number;
  readonly heightPx: number;
  /** SVG path of the side, from the deck edge down to the water, closed. */
  readonly profilePath: string;
  readonly waterY: number;
  readonly mast: { readonly x: number; readonly footY: number; readonly topY: number };
  readonly profile: {
    readonly stemX: number;
    readonly sternX: number;
    readonly scaleY: number;
    readonly ticks: readonly OutlineTick[];
  };
  /** SVG path of the deck edge, closed. */
  readonly planPath: string;
  readonly plan: {
    readonly centrelineX: number;
    readonly stemY: number;
    readonly sternY: number;
    readonly mastY: number;
    readonly scaleX: number;
    readonly ticks: readonly OutlineTick[];
  };
  readonly description: string;
}

const edgePx = 8;
const gapPx = 36;
/** Beside the plan and under the profile, for a scale with its words. */
const scaleRoomPx = { below: 24, beside: 44 };
const steps = 40;

type Point = readonly [x: number, y: number];
type Scale = (metres: number) => number;

/** @param most the largest drawing, px: the scale is what fits both ways. */
export function boatOutlineGeometry(
  boat: ProjectBoat,
  most: { readonly widthPx: number; readonly heightPx: number },
): BoatOutlineGeometry {
  const line = deckLineOf(boat);
  const { lengthM, mast } = boat;
  const stations = Array.from({ length: steps + 1 }, (_, i) => (i / steps) * lengthM);
  const halfBeamM = Math.max(...stations.map((aftM) => halfBeamAt(line, aftM)), 0.01);
  const topM = Math.max(
    mast.topAboveWaterplaneM,
    lengthM,
    ...stations.map((aftM) => freeboardAt(line, aftM)),
  );
  const pxPerM = Math.min(
    (most.widthPx - 2 * edgePx - gapPx - scaleRoomPx.beside) / (lengthM + 2 * halfBeamM),
    (most.heightPx - 2 * edgePx - scaleRoomPx.below) / topM,
  );
  const waterY = rounded(edgePx + topM * pxPerM);
  const x: Scale = (aftM) => rounded(edgePx + aftM * pxPerM);
  const up: Scale = (upM) => rounded(waterY - upM * pxPerM);
  const centrelineX = rounded(edgePx + (lengthM + halfBeamM) * pxPerM + gapPx);
  const down: Scale = (aftM) => rounded(waterY - (lengthM - aftM) * pxPerM);
  const out: Scale = (outM) => rounded(centrelineX - outM * pxPerM);
  const mastAftM = Math.min(Math.max(mast.aftOfStemM, 0), lengthM);
  const scaleX = rounded(centrelineX + halfBeamM * pxPerM + 6);
  return {
    widthPx: rounded(scaleX + scaleRoomPx.beside),
    heightPx: rounded(waterY + scaleRoomPx.below + edgePx),
    profilePath: profilePath(line, stations, x, up),
    waterY,
    mast: {
      x: x(mastAftM),
      footY: up(freeboardAt(line, mastAftM)),
      topY: up(mast.topAboveWaterplaneM),
    },
    profile: { stemX: x(0), sternX: x(lengthM), scaleY: waterY + 6, ticks: ticksOf(lengthM, x) },
    planPath: planPath(line, stations, out, down),
    plan: {
      centrelineX,
      stemY: down(0),
      sternY: down(lengthM),
      mastY: down(mastAftM),
      scaleX,
      ticks: ticksOf(lengthM, down),
    },
    description: `${boat.name} from the side, bow to the left, and from above, bow up, each with a scale of distances aft of the stem.`,
  };
}

function planPath(line: DeckLine, stations: readonly number[], out: Scale, down: Scale): string {
  const port = stations.map((aftM): Point => [out(halfBeamAt(line, aftM)), down(aftM)]);
  const starboard = stations.map((aftM): Point => [out(-halfBeamAt(line, aftM)), down(aftM)]);
  return closed([...port, ...starboard.reverse()]);
}

function profilePath(line: DeckLine, stations: readonly number[], x: Scale, up: Scale): string {
  const sheer = stations.map((aftM): Point => [x(aftM), up(freeboardAt(line, aftM))]);
  const [last = 0] = stations.slice(-1);
  return closed([...sheer, [x(last), up(0)], [x(0), up(0)]]);
}

function closed(points: readonly Point[]): string {
  return `M${points.map(([px, py]) => `${px} ${py}`).join('L')}Z`;
}

/** Whole metres, at most thirteen of them; always metres, as the sheet's columns are. */
function ticksOf(lengthM: number, scale: Scale): readonly OutlineTick[] {
  const stepM = [1, 2, 5, 10, 20].find((step) => lengthM / step <= 12) ?? 50;
  return Array.from({ length: Math.floor(lengthM / stepM) + 1 }, (_, i) => ({
    at: scale(i * stepM),
    label: quantityIn(i * stepM, 'm', { decimals: 0 }),
  }));
}

function rounded(px: number): number {
  return Math.round(px * 10) / 10 + 0;
}
