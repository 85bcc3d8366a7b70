import type { CoefficientPoint, CoefficientSide } from '../../charts/coefficientChartGeometry';
import {
  bodyCurve,
  memberCurve,
  netCurve,
  sphereCurve,
  type CoefficientCurve,
  type CurveAxis,
} from '../../charts/coefficientCurves';
import type { SailingState } from '../../physics/condition/sailingState';
import { isMemberShape, type Shape } from '../../physics/fitting/fittingInput';
import type { MemberTrace } from '../../physics/fitting/memberTrace';
import type { FairingSurface } from '../../physics/section/fairingAligned';
import { shapeNames } from '../../project/wording/shapeNames';
import { fromSi } from '../../units/convert';
import type { WorkingSide } from './workingSides';

/**
 * The sides that have a curve, in groups that share a chart: a bar that becomes a fairing is drawn against Reynolds number
 * before and against incidence after.
 */
export function chartGroups(
  sides: readonly WorkingSide[],
  surface: FairingSurface,
  state: SailingState,
): CoefficientSide[][] {
  const charted = sides.flatMap((side) => chartSide(side, surface, state) ?? []);
  const [first, second] = charted;
  if (first === undefined) return [];
  if (second === undefined) return [[first]];
  return first.curve.against === second.curve.against ? [[first, second]] : [[first], [second]];
}

function chartSide(
  { name, input, lead, trace }: WorkingSide,
  surface: FairingSurface,
  state: SailingState,
): CoefficientSide | null {
  if (input === null || lead === null || trace === null) return null;
  const { shape } = input;
  const curve = curveOf(shape, lead, surface, state);
  const pointOn = (member: MemberTrace): CoefficientPoint | null =>
    curve === null ? null : pointOf(member, curve, shape, state);
  const point = pointOn(lead);
  if (curve === null || point === null) return null;
  return {
    name,
    shapeName: shapeNames[shape.kind],
    curve,
    point,
    others: trace.members.filter((member) => member !== lead).flatMap((member) => pointOn(member) ?? []),
  };
}

function curveOf(
  shape: Shape,
  lead: MemberTrace,
  surface: FairingSurface,
  state: SailingState,
): CoefficientCurve | null {
  const air = {
    heelRad: state.rotation.signedHeelRad,
    speedMs: lead.localSpeedMs,
    kinematicViscosityM2S: state.air.kinematicViscosityM2S,
  };
  if (shape.kind === 'sphere') return sphereCurve(shape);
  if (shape.kind === 'bluffBody') return bodyCurve(shape, lead.regime, air);
  if (shape.kind === 'net') return netCurve(shape, air);
  if (!isMemberShape(shape) || lead.axisAngleRad === null || lead.reynolds === null) return null;
  const place = {
    inclinationCosine: Math.sin(lead.axisAngleRad),
    reynolds: lead.reynolds,
    effectiveSlenderness: lead.slenderness ?? Infinity,
  };
  return memberCurve(shape, place, surface);
}

function pointOf(
  member: MemberTrace,
  { against, at }: CoefficientCurve,
  shape: Shape,
  state: SailingState,
): CoefficientPoint | null {
  // The working's coefficient of a net is the mean of its three axes; the chart is about its face.
  if (shape.kind === 'net') return { x: shape.solidity, coefficient: at(shape.solidity).best };
  const x = placeOn(against, member, state);
  return member.coefficientBest === null || x === null ? null : { x, coefficient: member.coefficientBest };
}

function placeOn(against: CurveAxis, member: MemberTrace, state: SailingState): number | null {
  switch (against) {
    case 'reynolds':
      return member.reynolds;
    case 'incidence':
      return degreesOff(member.incidenceRad);
    case 'windAngle':
      return degreesOff(wrapped(member.localAngleFromCourseRad - state.condition.leewayRad));
    case 'solidity':
      return null;
  }
}

/** -pi to pi. */
function wrapped(angleRad: number): number {
  return Math.atan2(Math.sin(angleRad), Math.cos(angleRad));
}

/** To either side alike: sections and bodies are symmetrical. */
function degreesOff(angleRad: number | null): number | null {
  return angleRad === null ? null : fromSi(Math.abs(angleRad), 'deg');
}
