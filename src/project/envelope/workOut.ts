import { dynamicPressurePa } from '../../physics/envelope/envelopeArithmetic';
import { fromSi, toSi } from '../../units/convert';
import { noChange, type Change } from './change';
import { densityRoute } from './envelopeAir';
import type { EnvelopeNumbers, WrittenNumber } from './readEnvelope';
import { lines, speedFromForce, speedFromPower } from './lines';
import { allCombined, combined, writtenRounded, type Route } from './route';
import { primary, worked, type Worked } from './worked';
import { areaWorked } from './workOutArea';
import { meetingOf, trackRoute, type Meeting } from './workOutWind';

/** The whole estimate worked through. */
export interface WorkedEnvelope {
  readonly meeting: Meeting | null;
  readonly speed: Worked;
  readonly pressure: readonly Route[];
  readonly area: Worked;
  readonly dragArea: Worked;
  readonly coefficient: Worked;
  readonly force: Worked;
  readonly power: Worked;
  readonly horsepower: Worked;
}

/** Air power as written, by watts or by horsepower; what the boat pays is no way back to a force. */
function writtenAirPower({ power, horsepower, powerKind }: EnvelopeNumbers): Route | null {
  if (powerKind === 'track') return null;
  if (power !== null) return writtenRounded(power, 'power');
  return horsepower === null ? null : writtenRounded(horsepower, 'horsepower');
}

/** The speed from the claims, when it is not written: V = P / F, or from the force or power on the drag area. */
function speedFromClaims(numbers: EnvelopeNumbers, dragArea: readonly Route[]): readonly Route[] {
  const { force } = numbers;
  const power = writtenAirPower(numbers);
  if (force !== null && power !== null) return [combined(power, writtenRounded(force, 'force'), lines.speed)];
  const claim = force === null ? power : writtenRounded(force, 'force');
  if (claim === null) return [];
  const density = densityRoute(numbers);
  return dragArea.map((area) => {
    const line = force === null ? speedFromPower(area) : speedFromForce(area);
    const route = combined(claim, density, line);
    return { ...route, fromFieldIds: [...route.fromFieldIds, ...area.fromFieldIds] };
  });
}

function horsepowerAs(numbers: EnvelopeNumbers, { isOtherHorsepower }: Change): WrittenNumber | null {
  const { horsepower } = numbers;
  if (horsepower === null || !isOtherHorsepower) return horsepower;
  const unit = horsepower.unit === 'PS' ? 'hp' : 'PS';
  const swap = (si: number): number => toSi(fromSi(si, horsepower.unit), unit);
  return {
    ...horsepower,
    unit,
    valueSi: swap(horsepower.valueSi),
    lowSi: swap(horsepower.lowSi),
    highSi: swap(horsepower.highSi),
  };
}

/** Power that the force takes: from the air, or from the boat when track power is meant. */
function powerRoutes(
  numbers: EnvelopeNumbers,
  force: readonly Route[],
  speed: readonly Route[],
  meeting: Meeting | null,
  change: Change,
): readonly Route[] {
  const isTrack = (numbers.powerKind === 'track') !== change.isOtherPower;
  if (!isTrack) return allCombined(force, speed, lines.power);
  return meeting === null ? [] : force.map((route) => trackRoute(route, meeting, numbers));
}

/** Works every number of an estimate from those beside it, as written or with one thing changed. */
export function workOut(numbers: EnvelopeNumbers, change: Change = noChange): WorkedEnvelope {
  const area = areaWorked(numbers, change);
  const coefficient = primary(numbers.coefficient, 'coefficient', []);
  const given = primary(
    numbers.dragArea,
    'dragArea',
    allCombined(coefficient.usable, area.usable, lines.dragArea),
  );
  const meeting = meetingOf(numbers, change);
  const solvedSpeed = numbers.speed === null ? speedFromClaims(numbers, given.usable) : [];
  const speed = meeting === null ? worked(null, 'speed', solvedSpeed) : met(meeting, numbers);
  const density = densityRoute(numbers);
  const pressure = speed.usable.map((route) => pressureOf(density, route, change));
  const isFromForce = numbers.speed === null && writtenAirPower(numbers) === null;
  const force = worked(
    numbers.force,
    'force',
    isFromForce ? [] : allCombined(pressure, given.usable, lines.force),
  );
  const isSolvedSpeed = numbers.speed === null;
  const power = worked(
    numbers.power,
    'power',
    isSolvedSpeed ? [] : powerRoutes(numbers, force.usable, speed.usable, meeting, change),
  );
  const horsepower = worked(horsepowerAs(numbers, change), 'horsepower', power.usable);
  return backwards({
    numbers,
    parts: { meeting, speed, pressure, area, dragArea: given, coefficient, force, power, horsepower },
  });
}

function met(meeting: Meeting, numbers: EnvelopeNumbers): Worked {
  const route = meeting.speed;
  return meeting.isWorkedOut
    ? { written: null, routes: [route], agrees: null, usable: [route] }
    : { written: numbers.speed, routes: [], agrees: null, usable: [route] };
}

function pressureOf(density: Route, speed: Route, { pressureFactor }: Change): Route {
  const of = (rho: number, v: number): number => pressureFactor * dynamicPressurePa(rho, v);
  return combined(density, speed, { ...lines.pressure, of });
}

/** Fills what is missing from the claims: the force from the power, the drag area from the force, the coefficient or area. */
function backwards({
  numbers,
  parts,
}: {
  readonly numbers: EnvelopeNumbers;
  readonly parts: WorkedEnvelope;
}): WorkedEnvelope {
  const { area, coefficient, dragArea, speed, pressure } = parts;
  if (dragArea.usable.length > 0 || speed.usable.length === 0) return parts;
  const power = writtenAirPower(numbers);
  const force =
    parts.force.usable.length > 0 || power === null
      ? parts.force
      : worked(null, 'force', allCombined([power], speed.usable, lines.forceBack));
  const solved = allCombined(force.usable, pressure, lines.dragAreaBack);
  const solvedArea =
    area.usable.length > 0
      ? area
      : worked(null, 'area', allCombined(solved, coefficient.usable, lines.areaBack));
  const solvedCoefficient =
    coefficient.usable.length > 0
      ? coefficient
      : worked(null, 'coefficient', allCombined(solved, area.usable, lines.coefficientBack));
  return {
    ...parts,
    force,
    dragArea: worked(null, 'dragArea', solved),
    area: solvedArea,
    coefficient: solvedCoefficient,
  };
}
