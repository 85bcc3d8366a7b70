import type { SailingState } from '../../src/physics/condition/sailingState';
import { directionOf, type FittingInput } from '../../src/physics/fitting/fittingInput';
import { emptyWind, settingAt, sideSettings, windAt } from '../../src/physics/fitting/localWind';
import { sumDeployed, type LaidMembers } from '../../src/physics/fitting/sumFitting';
import { heightAlong, type MemberGeometry } from '../../src/physics/member/memberGeometry';
import { fixedOrTurnedNose, incidenceOf } from '../../src/physics/member/sectionNose';
import { trackVector } from '../../src/physics/vector/vector3';

/** A piece in its own wind with the nose that it turns to. */
function withNose(geometry: MemberGeometry, fitting: FittingInput, state: SailingState) {
  const setting = settingAt(sideSettings(fitting, state.tackSign), geometry.middleY, state);
  const nose = { x: 0, y: 0, z: 0 };
  fixedOrTurnedNose(geometry, directionOf(fitting.shape), state, setting, nose);
  return { setting, nose };
}

/** The farthest that the air square to a piece turns about it from one dry end to the other, rad. */
export function turnAlongPiecesRad(laid: LaidMembers, fitting: FittingInput, state: SailingState): number {
  const turns = laid
    .filter(({ nodes }) => nodes.length > 0)
    .map((geometry) => {
      const { setting, nose } = withNose(geometry, fitting, state);
      const at = (share: number): number =>
        incidenceOf(geometry, nose, windAt(state, setting, heightAlong(geometry, share), emptyWind()));
      const turn = Math.abs(at(geometry.dryTo) - at(geometry.dryFrom));
      return Math.min(turn, 2 * Math.PI - turn);
    });
  return Math.max(0, ...turns);
}

/** What the strips of a fitting bear, each counted by its size: more than their sum where lifts are opposed, N. */
export function forceOfStripsN(laid: LaidMembers, fitting: FittingInput, state: SailingState): number {
  const { shape } = fitting;
  if (!('direction' in shape)) throw new Error('a section with a direction is wanted');
  const strips = laid.flatMap((geometry) => {
    const { x, y, z } = withNose(geometry, fitting, state).nose;
    return geometry.nodes.map((node) => ({ ...geometry, nose: trackVector(x, y, z), nodes: [node] }));
  });
  // Each strip keeps the nose of its piece, which a section that turns would take anew.
  const held: FittingInput = { ...fitting, shape: { ...shape, direction: { kind: 'fixed', angleRad: 0 } } };
  let sum = 0;
  const methods = { ends: 'dnv', inclined: 'cross-flow', fairing: 'turbulent' } as const;
  sumDeployed(held, strips, state, methods, null, (_geometry, _setting, { fx, fy, fz }) => {
    sum += Math.hypot(fx, fy, fz);
  });
  return sum;
}
