import type { SailingState } from '../../physics/condition/sailingState';
import { toTrack } from '../../physics/frames/boatToTrack';
import type { Solid } from '../../project/picture/solids';
import type { PictureFrame } from './scene';
import type { ViewKind } from './viewOf';

const marginPx = 14;
/** Left of the picture stand the heights. */
const heightsPx = 30;
const belowWaterPx = 16;

/** How far the heeled boat reaches from the vertical through her middle, and up: the same however she is turned. */
interface Reach {
  readonly aroundM: number;
  readonly upM: number;
}

function reachOf(solids: readonly Solid[], { rotation, riseM }: SailingState): Reach {
  let aroundM = 1;
  let upM = 1;
  for (const { points, thicknessM } of solids) {
    for (const point of points) {
      const [x, y, z] = toTrack(rotation, point);
      aroundM = Math.max(aroundM, Math.hypot(x, y) + thicknessM / 2);
      upM = Math.max(upM, z + riseM + thicknessM / 2);
    }
  }
  return { aroundM, upM };
}

/**
 * The frame that holds the boat however she is turned, so that nothing jumps while she is: px to a metre from
 * the farthest reach of anything that is drawn.
 */
export function frameOf(
  solids: readonly Solid[],
  kind: ViewKind,
  state: SailingState,
  widthPx: number,
  tallestPx: number,
): PictureFrame {
  const { aroundM, upM } = reachOf(solids, state);
  const wide = widthPx - 2 * marginPx - heightsPx;
  const originX = heightsPx + marginPx + wide / 2;
  if (kind === 'above') {
    const pxPerM = Math.max(Math.min(wide, tallestPx - 2 * marginPx) / (2 * aroundM), 1);
    const heightPx = Math.ceil(2 * aroundM * pxPerM) + 2 * marginPx;
    return { widthPx, heightPx, pxPerM, originX, originY: heightPx / 2 };
  }
  const tall = tallestPx - marginPx - belowWaterPx;
  const pxPerM = Math.max(Math.min(wide / (2 * aroundM), tall / upM), 1);
  // No taller than what is drawn.
  const heightPx = Math.ceil(upM * pxPerM) + marginPx + belowWaterPx;
  return { widthPx, heightPx, pxPerM, originX, originY: heightPx - belowWaterPx };
}

/** Heights to mark above the water, m: whole steps of 1, 2, 5 or 10, three to eight of them. */
export function heightMarks({ originY, pxPerM }: PictureFrame): number[] {
  const mostM = originY / pxPerM;
  const step = [1, 2, 5, 10, 20, 50].find((each) => mostM / each <= 8) ?? 100;
  return Array.from({ length: Math.floor(mostM / step) + 1 }, (_, i) => i * step);
}
