import type { CoefficientPoint, CoefficientSide } from '../../charts/coefficientChartGeometry';
import type { MemberTrace } from '../../physics/fitting/memberTrace';
import type { WorkingSide } from './workingSides';

/** The sides that are round bars in the wind, as the chart takes them. */
export function chartSides(sides: readonly WorkingSide[]): CoefficientSide[] {
  return sides.flatMap(({ name, input, lead, trace }): CoefficientSide[] => {
    if (input?.shape.kind !== 'roundBar' || lead === null || trace === null) return [];
    const point = pointOf(lead);
    if (point === null || lead.axisAngleRad === null) return [];
    const { diameter, roughnessM } = input.shape;
    return [
      {
        name,
        curve: {
          diameterM: diameter.valueM,
          roughnessM,
          inclinationCosine: Math.sin(lead.axisAngleRad),
        },
        point,
        others: trace.members.filter((member) => member !== lead).flatMap((member) => pointOf(member) ?? []),
      },
    ];
  });
}

function pointOf({ reynolds, coefficientBest }: MemberTrace): CoefficientPoint | null {
  return reynolds === null || coefficientBest === null ? null : { reynolds, coefficient: coefficientBest };
}
