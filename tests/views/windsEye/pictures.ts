import { frameOf } from '../../../src/charts/windsEye/frameOf';
import { sceneOf, type PictureFrame, type SceneItem } from '../../../src/charts/windsEye/scene';
import { viewOf, type PictureView, type ViewKind } from '../../../src/charts/windsEye/viewOf';
import type { SailingState } from '../../../src/physics/condition/sailingState';
import { boatVector } from '../../../src/physics/vector/vector3';
import type { Solid } from '../../../src/project/picture/solids';
import { conditionOf, stateOf, trueWind } from '../../published/support';

const degree = Math.PI / 180;

interface StateParts {
  readonly angleDeg?: number;
  readonly heelDeg?: number;
  readonly leewayDeg?: number;
  readonly tack?: 'port' | 'starboard';
  readonly riseM?: number;
}

/** A boat at rest in a uniform wind: what she meets comes from `angleDeg` off the course. */
export function stateAt({
  angleDeg = 0,
  heelDeg = 0,
  leewayDeg = 0,
  tack = 'starboard',
  riseM = 0,
}: StateParts = {}): SailingState {
  return stateOf(
    conditionOf({
      wind: trueWind(10, angleDeg),
      tack,
      heelRad: heelDeg * degree,
      leewayRad: leewayDeg * degree,
      riseM,
    }),
  );
}

export function viewAt(parts: StateParts, kind: ViewKind = 'wind', turnDeg = 0): PictureView {
  return viewOf(kind, stateAt(parts), 2, turnDeg * degree);
}

/** One px to a centimetre, the origin in the middle of the waterline. */
export const centimetres: PictureFrame = {
  widthPx: 2000,
  heightPx: 1000,
  pxPerM: 100,
  originX: 1000,
  originY: 1000,
};

export function solid(
  kind: Solid['kind'],
  points: readonly (readonly [number, number, number])[],
  parts: Partial<Solid> = {},
): Solid {
  return {
    kind,
    role: 'fitting',
    fittingId: 'f',
    thicknessM: 0,
    isDragArea: false,
    ...parts,
    points: points.map(([x, y, z]) => boatVector(x, y, z)),
  };
}

export function sceneIn(solids: readonly Solid[], view: PictureView, frame = centimetres): SceneItem[] {
  return sceneOf(solids, view, frame);
}

export function fittedScene(
  solids: readonly Solid[],
  view: PictureView,
  state: SailingState,
  widthPx = 352,
): { readonly items: SceneItem[]; readonly frame: PictureFrame } {
  const frame = frameOf(solids, view.kind, state, widthPx, 560);
  return { items: sceneOf(solids, view, frame), frame };
}
