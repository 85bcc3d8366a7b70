import type { SailingState } from '../condition/sailingState';
import { emptyWind, windAt, windAtLog, type PointWind, type Setting } from '../fitting/localWind';
import type { CoefficientDoubts } from '../fitting/coefficientDoubts';
import { addPointForce } from '../fitting/pointForce';
import type { Sums } from '../fitting/outcome';
import { crossFlowDoubtId, frictionDoubtId } from '../doubt/doubtSource';
import { crossFlowDoubt } from '../section/crossFlowDoubt';
import { effectiveSlenderness, type EndKind, type EndMethod } from '../section/endEffect';
import { fixedOrTurnedNose, incidenceOf, type Nose } from './sectionNose';
import {
  emptyStrip,
  type PreparedSection,
  type StripCoefficients,
  type StripFlow,
} from '../section/memberFamily';
import { laminarFriction, roughFriction, turbulentFriction } from '../section/skinFriction';
import type { SectionDirection } from '../section/sectionDirection';
import { heightAlong, type MemberGeometry, type MemberNode } from './memberGeometry';

/**
 * How the force square to the axis falls as the wind comes nearer to it: with the square of the sine (the cross-flow
 * principle), or with the sine (the wind chapter of DNV-RP-C205, from memory: the larger number).
 */
export type InclinedMethod = 'cross-flow' | 'dnv-wind';

/** What the integration of a fitting's members needs beside their places. */
export interface MemberRun {
  readonly section: PreparedSection;
  /** Null for a section without a direction. */
  readonly direction: SectionDirection | null;
  readonly inclined: InclinedMethod;
  readonly ends: readonly [EndKind, EndKind];
  readonly friction: boolean;
  readonly endMethod: EndMethod;
  /** Names under which the section's coefficient doubts are kept, one per regime. */
  readonly doubtIds: readonly string[];
}

/**
 * Air, factors and coefficients at the middle of a member's dry stretch. The factors that belong to the whole member,
 * finite length and friction, are taken here.
 */
export interface MemberPoint {
  heightM: number;
  wind: PointWind;
  localSpeedMs: number;
  crossSpeedMs: number;
  axialSpeedMs: number;
  strip: StripCoefficients;
  endFactor: number;
  effectiveSlenderness: number;
  incidenceRad: number;
  frictionReynolds: number;
  frictionBest: number;
}

export function emptyMemberPoint(): MemberPoint {
  return {
    heightM: 0,
    wind: emptyWind(),
    localSpeedMs: 0,
    crossSpeedMs: 0,
    axialSpeedMs: 0,
    strip: emptyStrip(),
    endFactor: 1,
    effectiveSlenderness: Infinity,
    incidenceRad: 0,
    frictionReynolds: 0,
    frictionBest: 0,
  };
}

const scratchWind = emptyWind();
const scratchStrip = emptyStrip();
const scratchNose: Nose = { x: 0, y: 0, z: 0 };
const scratchFlow: StripFlow = {
  crossSpeedMs: 0,
  inclinationCosine: 1,
  kinematicViscosityM2S: 1,
  effectiveSlenderness: Infinity,
  incidenceRad: 0,
};

/**
 * Adds the force of the air on one member to `sums`, by Gauss points on its dry length.
 *
 * At each point the air's velocity u is split along the axis t: u_t = u . t, u_n = u - u_t t, and per metre
 * F' = rho/2 k Cd d |u_n| u_n + rho/2 Cf p |u_t| u_t t, with Re from |u_n|, d the reference width, k the factor of the
 * member's finite length, p its perimeter, Cf from |u_t| and the member's length; a lift Cl likewise, square to u_n and
 * the axis. By DNV's wind chapter |u| stands in place of |u_n|. Source: cross-flow.
 *
 * @param doubts collects the coefficient's changes by regime; null for a run that needs only the sums.
 * @param middle filled with the middle of the dry stretch.
 * @returns false when no part of the member is dry.
 */
export function integrateMember(
  geometry: MemberGeometry,
  state: SailingState,
  setting: Setting,
  run: MemberRun,
  sums: Sums,
  doubts: CoefficientDoubts | null,
  middle: MemberPoint,
): boolean {
  if (geometry.lengthM === 0 || geometry.nodes.length === 0) return false;
  fixedOrTurnedNose(geometry, run.direction, state, setting, scratchNose);
  fillMiddle(geometry, state, setting, run, middle, doubts !== null);
  for (const node of geometry.nodes) addStrip(node, geometry, state, setting, run, middle, sums, doubts);
  return true;
}

function fillMiddle(
  geometry: MemberGeometry,
  state: SailingState,
  setting: Setting,
  run: MemberRun,
  middle: MemberPoint,
  withBand: boolean,
): void {
  middle.heightM = heightAlong(geometry, (geometry.dryFrom + geometry.dryTo) / 2);
  const wind = windAt(state, setting, middle.heightM, middle.wind);
  const axial = wind.localX * geometry.axisX + wind.localY * geometry.axisY;
  const speedSquared = wind.localX * wind.localX + wind.localY * wind.localY;
  middle.localSpeedMs = Math.sqrt(speedSquared);
  middle.axialSpeedMs = Math.abs(axial);
  middle.crossSpeedMs = Math.sqrt(Math.max(speedSquared - axial * axial, 0));
  middle.effectiveSlenderness = effectiveSlenderness(
    geometry.wholeLengthM / run.section.referenceWidthM,
    run.ends,
  );
  scratchFlow.effectiveSlenderness = middle.effectiveSlenderness;
  scratchFlow.kinematicViscosityM2S = state.air.kinematicViscosityM2S;
  middle.incidenceRad = run.section.isDirected ? incidenceOf(geometry, scratchNose, wind) : 0;
  stripAt(middle.crossSpeedMs, middle.localSpeedMs, middle.incidenceRad, run.section, middle.strip, withBand);
  middle.endFactor = run.section.endFactor(
    run.endMethod,
    middle.effectiveSlenderness,
    middle.strip.logCrisisReynolds,
    middle.incidenceRad,
  );
  middle.frictionReynolds = (middle.axialSpeedMs * geometry.wholeLengthM) / state.air.kinematicViscosityM2S;
  middle.frictionBest = run.friction ? turbulentFriction(middle.frictionReynolds) : 0;
}

function stripAt(
  cross: number,
  speed: number,
  incidenceRad: number,
  section: PreparedSection,
  strip: StripCoefficients,
  withBand: boolean,
): void {
  scratchFlow.crossSpeedMs = cross;
  scratchFlow.inclinationCosine = speed > 0 ? cross / speed : 1;
  scratchFlow.incidenceRad = incidenceRad;
  // Families without lift leave it alone, and the strip may come from one that has.
  strip.lift = 0;
  strip.liftLow = 0;
  strip.liftHigh = 0;
  section.strip(scratchFlow, strip, withBand);
}

/** What one strip of a member carries and which way, reused from strip to strip: nothing is made anew in the inner loop. */
interface StripLoad {
  /** Local wind square to the axis, m/s, and the same turned a quarter about the axis: the way of a lift. */
  normalX: number;
  normalY: number;
  normalZ: number;
  liftX: number;
  liftY: number;
  liftZ: number;
  /** N s/m: times a coefficient and a speed square to the axis, a force. */
  pressureArea: number;
  drag: number;
  lift: number;
  /** Along the axis, N. */
  friction: number;
}

const scratchLoad: StripLoad = {
  normalX: 0,
  normalY: 0,
  normalZ: 0,
  liftX: 0,
  liftY: 0,
  liftZ: 0,
  pressureArea: 0,
  drag: 0,
  lift: 0,
  friction: 0,
};

function addStrip(
  node: MemberNode,
  geometry: MemberGeometry,
  state: SailingState,
  setting: Setting,
  run: MemberRun,
  middle: MemberPoint,
  sums: Sums,
  doubts: CoefficientDoubts | null,
): void {
  const { axisX, axisY, axisZ, lengthM } = geometry;
  const wind = windAtLog(state, setting, node.logHeight, scratchWind);
  const axial = wind.localX * axisX + wind.localY * axisY;
  const normalX = wind.localX - axial * axisX;
  const normalY = wind.localY - axial * axisY;
  const normalZ = -axial * axisZ;
  const cross = Math.sqrt(normalX * normalX + normalY * normalY + normalZ * normalZ);
  const speed = Math.sqrt(wind.localX * wind.localX + wind.localY * wind.localY);
  const incidenceRad = run.section.isDirected ? incidenceOf(geometry, scratchNose, wind) : 0;
  stripAt(cross, speed, incidenceRad, run.section, scratchStrip, doubts !== null);
  const pressureLength = 0.5 * state.air.densityKgM3 * node.weight * lengthM;
  const pressureSpeed = run.inclined === 'cross-flow' ? cross : speed;
  const load = scratchLoad;
  load.normalX = normalX;
  load.normalY = normalY;
  load.normalZ = normalZ;
  load.liftX = axisY * normalZ - axisZ * normalY;
  load.liftY = axisZ * normalX - axisX * normalZ;
  load.liftZ = axisX * normalY - axisY * normalX;
  load.pressureArea = pressureLength * middle.endFactor * run.section.referenceWidthM * pressureSpeed;
  load.drag = scratchStrip.drag;
  load.lift = scratchStrip.lift;
  load.friction = pressureLength * middle.frictionBest * run.section.perimeterM * Math.abs(axial) * axial;
  addLoad(sums, load, geometry, node);
  if (doubts === null) return;
  const nearAxis = speed > 0 ? crossFlowDoubt(cross / speed) : 0;
  addStripDoubts(doubts, run.doubtIds[scratchStrip.regime]!, load, geometry, node, nearAxis);
  if (load.friction !== 0) addFrictionDoubt(doubts, middle, load, geometry, node);
}

/** Adds a load in the wind that was last worked out: its drag and lift square to the axis, its friction along it. */
function addLoad(
  into: Sums,
  load: StripLoad,
  { axisX, axisY, axisZ }: MemberGeometry,
  node: MemberNode,
): void {
  const drag = load.pressureArea * load.drag;
  const lift = load.pressureArea * load.lift;
  const { friction } = load;
  addPointForce(
    into,
    drag * load.normalX + lift * load.liftX + friction * axisX,
    drag * load.normalY + lift * load.liftY + friction * axisY,
    drag * load.normalZ + lift * load.liftZ + friction * axisZ,
    node.x,
    node.y,
    node.z,
    scratchWind,
  );
}

/** The coefficient at its high and low state, and what the cross-flow principle may be off near the axis. */
function addStripDoubts(
  doubts: CoefficientDoubts,
  doubtId: string,
  load: StripLoad,
  geometry: MemberGeometry,
  node: MemberNode,
  nearAxis: number,
): void {
  const { friction } = load;
  const { drag, dragHigh, dragLow, lift, liftHigh, liftLow } = scratchStrip;
  load.friction = 0;
  const entry = doubts.entry(doubtId);
  load.drag = dragHigh - drag;
  load.lift = liftHigh - lift;
  addLoad(entry.up, load, geometry, node);
  load.drag = dragLow - drag;
  load.lift = liftLow - lift;
  addLoad(entry.down, load, geometry, node);
  if (nearAxis > 0) {
    const principle = doubts.entry(crossFlowDoubtId);
    load.drag = nearAxis * drag;
    load.lift = nearAxis * lift;
    addLoad(principle.up, load, geometry, node);
    load.drag = -nearAxis * drag;
    load.lift = -nearAxis * lift;
    addLoad(principle.down, load, geometry, node);
  }
  load.friction = friction;
}

/** A rough surface at the high state, a laminar boundary layer at the low one. */
function addFrictionDoubt(
  doubts: CoefficientDoubts,
  { frictionReynolds, frictionBest }: MemberPoint,
  load: StripLoad,
  geometry: MemberGeometry,
  node: MemberNode,
): void {
  const { friction } = load;
  const entry = doubts.entry(frictionDoubtId);
  load.drag = 0;
  load.lift = 0;
  load.friction = friction * (roughFriction(frictionReynolds) / frictionBest - 1);
  addLoad(entry.up, load, geometry, node);
  load.friction = friction * (laminarFriction(frictionReynolds) / frictionBest - 1);
  addLoad(entry.down, load, geometry, node);
}
