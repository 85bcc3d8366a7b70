import type { SailingState } from '../condition/sailingState';
import type { NetShape } from '../fitting/fittingInput';
import { emptyWind, windAt, type Setting } from '../fitting/localWind';
import { heightAlong, type MemberGeometry } from '../member/memberGeometry';
import { netDragAreas } from './net';
import type { AxisArea, BodyAxes } from './threeAxisBody';

const faceDoubtId = 'coefficient:net:face';
const alongDoubtId = 'coefficient:net:along';
const scratch = emptyWind();

/**
 * A net as a body by three axes: its drag area onto the face along the axis it faces, and along it on the two others, on
 * the gross area, with the wire's Reynolds number in the wind of its middle. The other two axes carry the area along.
 */
export function netAxes(
  shape: NetShape,
  geometry: MemberGeometry,
  state: SailingState,
  setting: Setting,
): BodyAxes {
  const heightM = heightAlong(geometry, (geometry.dryFrom + geometry.dryTo) / 2);
  const wind = windAt(state, setting, heightM, scratch);
  const areaM2 = shape.width.valueM * shape.height.valueM;
  const panel = { areaM2, solidity: shape.solidity, wireDiameterM: shape.wireDiameter.valueM };
  const trace = netDragAreas(panel, Math.hypot(wind.localX, wind.localY), state.air.kinematicViscosityM2S);
  const perArea = (value: number): number => (areaM2 > 0 ? value / areaM2 : 0);
  const face: AxisArea = {
    areaM2,
    coefficient: {
      best: trace?.normalCoefficientBest ?? 0,
      low: trace?.normalCoefficientLow ?? 0,
      high: trace?.normalCoefficientHigh ?? 0,
    },
    doubtId: faceDoubtId,
  };
  const along: AxisArea = {
    areaM2,
    coefficient: {
      best: perArea(trace?.alongAreaBestM2 ?? 0),
      low: perArea(trace?.alongAreaLowM2 ?? 0),
      high: perArea(trace?.alongAreaHighM2 ?? 0),
    },
    doubtId: alongDoubtId,
  };
  return [
    shape.facing === 'x' ? face : along,
    shape.facing === 'y' ? face : along,
    shape.facing === 'z' ? face : along,
  ];
}
