import type { SailingState } from '../condition/sailingState';
import { emptyWind, windAt, type PointWind, type Setting } from '../fitting/localWind';
import type { CoefficientDoubts } from '../fitting/coefficientDoubts';
import { addPointForce } from '../fitting/pointForce';
import type { SphereShape } from '../fitting/fittingInput';
import type { Sums } from '../fitting/outcome';
import type { MemberGeometry } from '../member/memberGeometry';
import { sphereDrag, sphereRegimes, sphereSurface, type SphereDrag } from './sphere';

const sharedDoubtIds = sphereRegimes.map((regime) => `coefficient:sphere:${regime}`);
const scratchWind = emptyWind();
const scratchDrag: SphereDrag = { best: 0, low: 0, high: 0, regime: 0, logCrisisReynolds: 0 };

/** The air and the coefficient at a sphere's middle, for the working. */
export interface SpherePoint {
  readonly heightM: number;
  readonly wind: PointWind;
  readonly localSpeedMs: number;
  readonly reynolds: number;
  readonly drag: SphereDrag;
}

export function sphereAreaM2(shape: SphereShape): number {
  return (Math.PI / 4) * shape.diameter.valueM ** 2;
}

/**
 * Adds the force on a sphere: F = rho/2 Cd (pi d^2 / 4) |u| u in the wind of its middle; none when the middle is under
 * water. Source: sphere-curves.
 * @returns false when the middle is under water.
 */
export function addSphere(
  geometry: MemberGeometry,
  shape: SphereShape,
  state: SailingState,
  setting: Setting,
  sums: Sums,
  doubts: CoefficientDoubts | null,
): boolean {
  if (geometry.startHeightM <= 0) return false;
  const [x, y, z] = geometry.start;
  const wind = windAt(state, setting, geometry.startHeightM, scratchWind);
  const speed = Math.hypot(wind.localX, wind.localY);
  dragAt(shape, speed, state, scratchDrag, doubts !== null);
  const perCoefficient = 0.5 * state.air.densityKgM3 * speed * sphereAreaM2(shape);
  const add = (into: Sums, coefficient: number): void => {
    const factor = perCoefficient * coefficient;
    addPointForce(into, factor * wind.localX, factor * wind.localY, 0, x, y, z, wind);
  };
  const { best, low, high, regime } = shape.coefficient === null ? scratchDrag : typedDrag(shape.coefficient);
  add(sums, best);
  if (doubts === null) return true;
  const entry = doubts.entry(shape.coefficient === null ? sharedDoubtIds[regime]! : shape.coefficientDoubtId);
  add(entry.up, high - best);
  add(entry.down, low - best);
  return true;
}

function typedDrag({ best, low, high }: { best: number; low: number; high: number }): SphereDrag {
  return { best, low, high, regime: 0, logCrisisReynolds: 0 };
}

function dragAt(
  shape: SphereShape,
  speedMs: number,
  state: SailingState,
  out: SphereDrag,
  withBand: boolean,
): number {
  const reynolds = (speedMs * shape.diameter.valueM) / state.air.kinematicViscosityM2S;
  sphereDrag(reynolds, sphereSurface(shape.roughnessM, shape.diameter.valueM), out, withBand);
  return reynolds;
}

export function spherePoint(
  geometry: MemberGeometry,
  shape: SphereShape,
  state: SailingState,
  setting: Setting,
): SpherePoint {
  const heightM = geometry.startHeightM;
  const wind = windAt(state, setting, heightM, emptyWind());
  const localSpeedMs = Math.hypot(wind.localX, wind.localY);
  const drag: SphereDrag = { best: 0, low: 0, high: 0, regime: 0, logCrisisReynolds: 0 };
  const reynolds = dragAt(shape, localSpeedMs, state, drag, true);
  return {
    heightM,
    wind,
    localSpeedMs,
    reynolds,
    drag: shape.coefficient === null ? drag : typedDrag(shape.coefficient),
  };
}
