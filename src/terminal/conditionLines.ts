import type { ApparentWind } from '../physics/condition/sailingState';
import type { ProjectCondition } from '../project/file/schema';
import type { BasisPart } from '../project/ledger/ledgerTypes';
import { toSi } from '../units/convert';
import { formatQuantity } from '../units/print';

/** A condition in three lines: the wind both ways, the boat, the air. */
export function conditionLines({ summary, hours, weight }: BasisPart): string[] {
  const { condition, deck, masthead } = summary;
  const share = hours === null ? '' : ` (${formatQuantity(toSi(hours, 'h'), 'h')}, ${percent(weight)})`;
  return [
    `${condition.name}${share}: true wind ${knots(summary.trueWindAt10Ms)} at 10 m, ${degrees(summary.trueWindAngleRad)} from the course, ${condition.tack} tack${givenBy(condition)}`,
    `  apparent wind: deck ${apparent(deck)}, masthead ${apparent(masthead)}; angles from the bow`,
    `  boat ${knots(condition.boatSpeedMs)}, heel ${angle(condition.heelDeg)}, leeway ${angle(condition.leewayDeg)}, rise ${formatQuantity(condition.riseM, 'm')}; air ${formatQuantity(summary.densityKgM3, 'kg/m3', { decimals: 3 })}`,
  ];
}

function givenBy({ wind }: ProjectCondition): string {
  if (wind.kind === 'true') return '';
  return `, solved from the instruments' ${knots(wind.speedMs)} at ${angle(wind.angleFromBowDeg)}, ${formatQuantity(wind.heightUpMastM, 'm')} up the mast`;
}

function apparent({ speedMs, angleFromBowRad, heightM }: ApparentWind): string {
  return `${knots(speedMs)} at ${degrees(angleFromBowRad)} (${formatQuantity(heightM, 'm')} up)`;
}

function knots(speedMs: number): string {
  return formatQuantity(speedMs, 'kn');
}

function degrees(angleRad: number): string {
  return formatQuantity(angleRad, 'deg');
}

function angle(angleDeg: number): string {
  return degrees(toSi(angleDeg, 'deg'));
}

function percent(fraction: number): string {
  return formatQuantity(fraction, '%');
}
