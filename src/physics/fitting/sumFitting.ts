import { addMeasuredArea } from '../body/measuredArea';
import { netAxes } from '../body/netForce';
import { addSphere } from '../body/sphereForce';
import { addThreeAxisBody, bodyAxes } from '../body/threeAxisBody';
import type { SailingState } from '../condition/sailingState';
import {
  emptyMemberPoint,
  integrateMember,
  type InclinedMethod,
  type MemberPoint,
  type MemberRun,
} from '../member/integrateMember';
import { memberGeometry, memberPieces, type MemberGeometry } from '../member/memberGeometry';
import { evenPoints, fairingPoints, type PointRule } from '../member/pointRules';
import type { EndMethod } from '../section/endEffect';
import type { FairingSurface } from '../section/fairingAligned';
import { directionOf, isMemberShape, type FittingInput, type MemberShape, type Shape } from './fittingInput';
import { prepareMember } from './memberFamilies';
import { freeSetting, settingAt, sideSettings, type Setting, type SideSettings } from './localWind';
import { addSums, clearSums, zeroSums, type Sums } from './outcome';
import type { CoefficientDoubts } from './coefficientDoubts';

/** The choices where published sources differ. */
export interface Methods {
  readonly ends: EndMethod;
  readonly inclined: InclinedMethod;
  readonly fairing: FairingSurface;
}

/**
 * A fitting's members laid in the track's frame, those that turn in pieces piece by piece; the air does not move them, so
 * its variants share one laying.
 */
export type LaidMembers = readonly MemberGeometry[];

/** @param points overrides the number of Gauss points; for the accuracy test. */
export function layMembers(
  fitting: FittingInput,
  state: SailingState,
  points: number | null = null,
): LaidMembers {
  const direction = directionOf(fitting.shape);
  const rule = points === null ? pointRuleOf(fitting.shape) : () => points;
  return fitting.members.flatMap((member) =>
    memberPieces(member, state.rotation, state.riseM, direction, rule),
  );
}

/** How finely a shape's members are integrated. A typed coefficient is the same all along, a fairing's table is not. */
function pointRuleOf(shape: Shape): PointRule {
  return shape.kind === 'fairing' && shape.coefficient === null ? fairingPoints : evenPoints;
}

/**
 * Called after each dry member with what it added and where; `point` is filled for bars only. Sums and point are used
 * again for the next member: a visitor keeps neither.
 */
export type MemberVisitor = (
  geometry: MemberGeometry,
  setting: Setting,
  sums: Sums,
  point: MemberPoint,
) => void;

const scratchPoint = emptyMemberPoint();
const scratchSums = zeroSums();

/**
 * Sums the force and moment of the deployed fitting in one state of the air, member by member at its own place.
 * @param doubts collects the changes of coefficients; null when only the sums are wanted.
 * @param total cleared, filled and returned: a caller that looks at the sums once brings its own again and again.
 */
export function sumDeployed(
  fitting: FittingInput,
  laid: LaidMembers,
  state: SailingState,
  methods: Methods,
  doubts: CoefficientDoubts | null = null,
  visit: MemberVisitor | null = null,
  total: Sums = zeroSums(),
): Sums {
  clearSums(total);
  const { addMember, settings } = preparedSum(fitting, state.tackSign, methods);
  for (const geometry of laid) {
    const setting = settingAt(settings, geometry.middleY, state);
    if (visit === null) {
      addMember(geometry, state, setting, total, doubts, scratchPoint);
      continue;
    }
    clearSums(scratchSums);
    const dry = addMember(geometry, state, setting, scratchSums, doubts, scratchPoint);
    addSums(total, scratchSums, 1);
    if (dry) visit(geometry, setting, scratchSums, scratchPoint);
  }
  return total;
}

type MemberAdder = (
  geometry: MemberGeometry,
  state: SailingState,
  setting: Setting,
  sums: Sums,
  doubts: CoefficientDoubts | null,
  point: MemberPoint,
) => boolean;

/** What the sum of a fitting needs in every state of the air on one tack, by one choice of methods. */
interface PreparedSum {
  readonly tackSign: SailingState['tackSign'];
  readonly methods: Methods;
  readonly settings: SideSettings;
  readonly addMember: MemberAdder;
}

/** Both tacks, each by the chosen methods and by the other end effect, which is a doubt. */
const mostPrepared = 4;
const known = new WeakMap<FittingInput, readonly PreparedSum[]>();

/** Prepared once for a fitting: the air and its doubts ask for the same fitting over and over. */
function preparedSum(
  fitting: FittingInput,
  tackSign: SailingState['tackSign'],
  methods: Methods,
): PreparedSum {
  const before = known.get(fitting) ?? [];
  for (const prepared of before) {
    if (prepared.tackSign === tackSign && isSameChoice(prepared.methods, methods)) return prepared;
  }
  const settings = sideSettings(fitting, tackSign);
  const prepared = { tackSign, methods, settings, addMember: memberAdder(fitting, methods) };
  known.set(fitting, [prepared, ...before].slice(0, mostPrepared));
  return prepared;
}

function isSameChoice(a: Methods, b: Methods): boolean {
  return a === b || (a.ends === b.ends && a.inclined === b.inclined && a.fairing === b.fairing);
}

function memberAdder({ shape }: FittingInput, methods: Methods): MemberAdder {
  if (isMemberShape(shape)) {
    const run = memberRun(shape, methods);
    return (geometry, state, setting, sums, doubts, point) =>
      integrateMember(geometry, state, setting, run, sums, doubts, point);
  }
  if (shape.kind === 'bluffBody') {
    const axes = bodyAxes(shape);
    return (geometry, state, setting, sums, doubts) =>
      addThreeAxisBody(geometry, axes, state, setting, sums, doubts);
  }
  if (shape.kind === 'net') {
    return (geometry, state, setting, sums, doubts) => {
      const axes = netAxes(shape, geometry, state, setting);
      return addThreeAxisBody(geometry, axes, state, setting, sums, doubts);
    };
  }
  if (shape.kind === 'sphere') {
    return (geometry, state, setting, sums, doubts) =>
      addSphere(geometry, shape, state, setting, sums, doubts);
  }
  return (geometry, state, setting, sums, doubts) =>
    addMeasuredArea(geometry, shape.dragAreaM2, shape.doubtId, state, setting, sums, doubts);
}

function memberRun(shape: MemberShape, methods: Methods): MemberRun {
  const { section, doubtIds } = prepareMember(shape, methods.fairing);
  return {
    section,
    direction: directionOf(shape),
    inclined: methods.inclined,
    ends: shape.ends,
    friction: shape.friction,
    endMethod: methods.ends,
    doubtIds,
  };
}

/** The stowed fitting: an isotropic drag area at its place in the free wind; nothing when none is given. */
export function sumStowed(
  fitting: FittingInput,
  state: SailingState,
  doubts: CoefficientDoubts | null = null,
): Sums {
  const sums = zeroSums();
  if (fitting.stowed === null) return sums;
  const { place, dragAreaM2, doubtId } = fitting.stowed;
  const geometry = memberGeometry({ start: place, end: place }, state.rotation, state.riseM);
  addMeasuredArea(geometry, dragAreaM2, doubtId, state, freeSetting, sums, doubts);
  return sums;
}

const scratchDeployed = zeroSums();

/**
 * Duty-weighted sums, d x deployed + (1 - d) x stowed.
 * @param out cleared, filled and returned.
 */
export function sumMean(
  fitting: FittingInput,
  laid: LaidMembers,
  state: SailingState,
  methods: Methods,
  duty: number,
  out: Sums = zeroSums(),
): Sums {
  if (duty === 1) return sumDeployed(fitting, laid, state, methods, null, null, out);
  clearSums(out);
  if (duty > 0) {
    addSums(out, sumDeployed(fitting, laid, state, methods, null, null, scratchDeployed), duty);
  }
  if (duty < 1 && fitting.stowed !== null) addSums(out, sumStowed(fitting, state), 1 - duty);
  return out;
}
