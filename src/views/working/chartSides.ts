import type { CoefficientPoint, CoefficientSide } from '../../charts/coefficientChartGeometry';
import { memberCurve, sphereCurve, type CoefficientCurve } from '../../charts/coefficientCurves';
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
export function chartGroups(sides: readonly WorkingSide[], surface: FairingSurface): CoefficientSide[][] {
  const charted = sides.flatMap((side) => chartSide(side, surface) ?? []);
  const [first, second] = charted;
  if (first === undefined) return [];
  if (second === undefined) return [[first]];
  return first.curve.against === second.curve.against ? [[first, second]] : [[first], [second]];
}

function chartSide(
  { name, input, lead, trace }: WorkingSide,
  surface: FairingSurface,
): CoefficientSide | null {
  if (input === null || lead === null || trace === null) return null;
  const curve = curveOf(input.shape, lead, surface);
  const point = curve === null ? null : pointOf(lead, curve);
  if (curve === null || point === null) return null;
  return {
    name,
    shapeName: shapeNames[input.shape.kind],
    curve,
    point,
    others: trace.members
      .filter((member) => member !== lead)
      .flatMap((member) => pointOf(member, curve) ?? []),
  };
}

function curveOf(shape: Shape, lead: MemberTrace, surface: FairingSurface): CoefficientCurve | null {
  if (shape.kind === 'sphere') return sphereCurve(shape);
  if (!isMemberShape(shape) || lead.axisAngleRad === null || lead.reynolds === null) return null;
  const place = {
    inclinationCosine: Math.sin(lead.axisAngleRad),
    reynolds: lead.reynolds,
    effectiveSlenderness: lead.slenderness ?? Infinity,
  };
  return memberCurve(shape, place, surface);
}

function pointOf(
  { reynolds, incidenceRad, coefficientBest }: MemberTrace,
  { against }: CoefficientCurve,
): CoefficientPoint | null {
  if (coefficientBest === null) return null;
  const x = against === 'reynolds' ? reynolds : degreesOff(incidenceRad);
  return x === null ? null : { x, coefficient: coefficientBest };
}

/** To either side alike: the sections are symmetrical. */
function degreesOff(incidenceRad: number | null): number | null {
  return incidenceRad === null ? null : fromSi(Math.abs(incidenceRad), 'deg');
}
