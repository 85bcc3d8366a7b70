import type { Tack } from '../physics/frames/boatToTrack';
import { referenceHeightM } from '../physics/wind/windProfile';
import type { ConditionSummary } from '../project/ledger/conditionSummary';
import { toSi } from '../units/convert';
import { formatQuantity } from '../units/print';
import { quantityIn } from '../units/printIn';
import type { PlacedLabel } from './labelBox';
import { placeTriangle } from './windTrianglePlacing';

export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface TriangleLabels {
  readonly apparent: PlacedLabel;
  readonly boatSpeed: PlacedLabel;
  readonly trueWind: PlacedLabel;
  readonly angle: PlacedLabel;
}

/**
 * The wind triangle to scale, pixels, course upwards. The air reaches the boat from `apparentFrom`: directly, or by way
 * of `trueFrom`, first the wind of her own motion and then the true wind.
 */
export interface WindTriangleGeometry {
  readonly widthPx: number;
  readonly heightPx: number;
  /** Pixels for one metre per second, the same along all three sides. */
  readonly pxPerMs: number;
  readonly boat: Point;
  readonly trueFrom: Point;
  readonly apparentFrom: Point;
  /** Outline of the hull, her bow to windward of the course by the leeway. */
  readonly hull: string;
  /** End of the dotted line along the course. */
  readonly courseTo: Point;
  /** Between the course and the apparent wind; empty when they are one. */
  readonly angleArc: string;
  readonly labels: TriangleLabels;
  readonly caption: PlacedLabel;
  readonly apparentSpeedMs: number;
  readonly apparentAngleRad: number;
  readonly description: string;
}

export interface TriangleSize {
  readonly widthPx: number;
  readonly heightPx: number;
}

const defaultSize: TriangleSize = { widthPx: 164, heightPx: 178 };

/** The sides of the triangle as vectors on the page, m/s, from the boat; x to starboard, y aft. */
export interface WindVectors {
  readonly trueFromMs: Point;
  readonly apparentFromMs: Point;
  /** +1 with the wind from starboard, -1 from port. */
  readonly mirror: 1 | -1;
  /** The bow's angle to the right of the course. */
  readonly bowRightRad: number;
}

/** Where the boat stands and to what scale the winds are drawn: held while a hand drags, so that the page stays under it. */
export type TriangleFrame = Pick<WindTriangleGeometry, 'boat' | 'pxPerMs'>;

/**
 * The triangle of a condition at 10 m, where its true wind is given.
 * @param frame to draw it in; without one it is drawn as large as fits.
 */
export function windTriangleGeometry(
  summary: ConditionSummary,
  size: TriangleSize = defaultSize,
  frame: TriangleFrame | null = null,
): WindTriangleGeometry {
  const { condition, trueWindAt10Ms, trueWindAngleRad } = summary;
  const vectors = vectorsOf(summary);
  const { apparentFromMs } = vectors;
  const apparentSpeedMs = Math.hypot(apparentFromMs.x, apparentFromMs.y);
  const apparentAngleRad =
    apparentSpeedMs === 0 ? 0 : Math.abs(Math.atan2(apparentFromMs.x, -apparentFromMs.y));
  const angle = formatQuantity(apparentAngleRad, 'deg');
  const apparent = formatQuantity(apparentSpeedMs, 'kn');
  const boatSpeed = formatQuantity(condition.boatSpeedMs, 'kn');
  const trueWind = formatQuantity(trueWindAt10Ms, 'kn');
  // A convention by its name, whatever lengths are read in.
  const height = quantityIn(referenceHeightM, 'm', { decimals: 0 });
  return {
    ...placeTriangle(
      vectors,
      size,
      {
        apparent: ['apparent', apparent],
        boatSpeed: ['boat', boatSpeed],
        trueWind: ['true', trueWind],
        angle: [angle],
        caption: `at ${height}; angle from the course`,
      },
      frame,
    ),
    apparentSpeedMs,
    apparentAngleRad,
    description:
      `Wind triangle at ${height}, ${condition.tack} tack: true wind ${trueWind} from ` +
      `${formatQuantity(trueWindAngleRad, 'deg')} off the course, boat speed ${boatSpeed}; ` +
      `together an apparent wind of ${apparent} from ${angle} off the course.`,
  };
}

function vectorsOf({ condition, trueWindAt10Ms, trueWindAngleRad }: ConditionSummary): WindVectors {
  const mirror = mirrorOf(condition.tack);
  const trueFromMs = {
    x: mirror * trueWindAt10Ms * Math.sin(trueWindAngleRad),
    y: -trueWindAt10Ms * Math.cos(trueWindAngleRad),
  };
  return {
    trueFromMs,
    apparentFromMs: { x: trueFromMs.x, y: trueFromMs.y - condition.boatSpeedMs },
    mirror,
    bowRightRad: mirror * toSi(condition.leewayDeg, 'deg'),
  };
}

/** +1 with the wind from starboard, the right of the page, -1 from port. */
export function mirrorOf(tack: Tack): 1 | -1 {
  return tack === 'starboard' ? 1 : -1;
}
