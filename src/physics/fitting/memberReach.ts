import { spherePoint } from '../body/sphereForce';
import type { SailingState } from '../condition/sailingState';
import type { MemberPoint } from '../member/integrateMember';
import { heightAlong, type MemberGeometry } from '../member/memberGeometry';
import { isMemberShape, type FittingInput } from './fittingInput';
import { emptyWind, windAt, type Setting } from './localWind';

/** What tells whether a published source reaches as far as a dry member: the little that notices look at. */
export interface MemberReach {
  readonly localSpeedMs: number;
  /** Angle between the local wind and the member's axis, 0 to pi/2; null where there is none. */
  readonly axisAngleRad: number | null;
  readonly reynolds: number | null;
  /** Of the whole length, closed ends counted in; null where the ends play no part. */
  readonly slenderness: number | null;
}

const scratchWind = emptyWind();

/** @param point the member's middle, filled for a bar. */
export function memberReach(
  { shape }: FittingInput,
  state: SailingState,
  geometry: MemberGeometry,
  setting: Setting,
  point: MemberPoint,
): MemberReach {
  if (isMemberShape(shape)) {
    return {
      localSpeedMs: point.localSpeedMs,
      axisAngleRad: axisAngle(point),
      reynolds: point.strip.reynolds,
      slenderness: slendernessAt(point),
    };
  }
  if (shape.kind === 'sphere') {
    const { localSpeedMs, reynolds } = spherePoint(geometry, shape, state, setting);
    return { localSpeedMs, axisAngleRad: null, reynolds, slenderness: null };
  }
  const middleM = heightAlong(geometry, (geometry.dryFrom + geometry.dryTo) / 2);
  const { localX, localY } = windAt(state, setting, middleM, scratchWind);
  return { localSpeedMs: Math.hypot(localX, localY), axisAngleRad: null, reynolds: null, slenderness: null };
}

/** Of a member's whole length, closed ends counted in; null where the ends play no part. */
export function slendernessAt({ effectiveSlenderness }: MemberPoint): number | null {
  return Number.isFinite(effectiveSlenderness) ? effectiveSlenderness : null;
}

/** Angle between the local wind and a member's axis, 0 to pi/2. */
export function axisAngle({ crossSpeedMs, axialSpeedMs }: MemberPoint): number {
  return Math.atan2(crossSpeedMs, axialSpeedMs);
}
