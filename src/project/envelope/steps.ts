import { envelopeQuantities, reynoldsNumber } from '../../physics/envelope/envelopeArithmetic';
import { quantityIn } from '../../units/printIn';
import { noChange } from './change';
import { shownRoute, type ClaimId } from './claims';
import type { EnvelopeStep, EnvelopeStepId } from './envelopeCheck';
import { envelopeAir, isAir } from './envelopeAir';
import type { EnvelopeFieldId } from './envelopeTexts';
import type { EnvelopeNumbers } from './readEnvelope';
import { exactRoute, printed, type Route } from './route';
import type { WorkedEnvelope } from './workOut';
import { meetingOf, trackRoute } from './workOutWind';
import type { Worked } from './worked';

interface StepParts {
  readonly route: Route;
  readonly worked?: Worked;
  readonly fieldId?: EnvelopeFieldId;
  readonly label?: string;
}

function step(id: EnvelopeStepId, { route, worked, fieldId, label }: StepParts): EnvelopeStep {
  const quantity = envelopeQuantities[id];
  const unit = worked?.written?.unit ?? (id === 'horsepower' ? 'hp' : route.unit);
  return {
    id,
    label: label ?? quantity.label,
    formula: `${route.equation ?? quantity.equation} = ${route.show} = ${quantityIn(figures(id, route.valueSi), unit)}`,
    givenSi: worked?.written?.valueSi ?? null,
    computedSi: route.valueSi,
    computedLowSi: route.lowSi,
    computedHighSi: route.highSi,
    agrees: worked?.agrees ?? null,
    unit,
    fieldId: fieldId ?? null,
  };
}

/** Reynolds numbers are known to three figures, whatever their size. */
function figures(id: EnvelopeStepId, valueSi: number): number {
  return id === 'reynolds' ? Number(valueSi.toPrecision(3)) : valueSi;
}

/** A step only where something is computed; a number that nothing gives is no step. */
function claimStep(id: ClaimId | 'coefficient', worked: Worked, label?: string): EnvelopeStep[] {
  const route = shownRoute(worked);
  return route === null
    ? []
    : [step(id, { route, worked, fieldId: id, ...(label === undefined ? {} : { label }) })];
}

/** The lines of the estimate, each worked again, in the order in which a pencil would go. */
export function stepsOf(numbers: EnvelopeNumbers, envelope: WorkedEnvelope): readonly EnvelopeStep[] {
  const { area, dragArea, coefficient, force, power, horsepower, pressure } = envelope;
  const powerLabel = numbers.powerKind === 'track' ? envelopeQuantities.trackPower.label : undefined;
  return [
    ...speedSteps(numbers, envelope),
    ...pressure.slice(0, 1).map((route) => step('pressure', { route })),
    ...reynoldsSteps(numbers, envelope),
    ...claimStep('area', area),
    ...claimStep('dragArea', dragArea),
    ...(coefficient.written === null ? claimStep('coefficient', coefficient) : []),
    ...claimStep('force', force),
    ...claimStep('power', power, powerLabel),
    ...(numbers.horsepower === null ? [] : claimStep('horsepower', horsepower)),
    ...trackSteps(numbers, envelope),
  ];
}

/** Only a speed that is not written needs a step. */
function speedSteps(numbers: EnvelopeNumbers, { meeting, speed }: WorkedEnvelope): EnvelopeStep[] {
  if (meeting?.isWorkedOut === true) return [step('apparentSpeed', { route: meeting.speed })];
  if (numbers.speed !== null) return [];
  return speed.routes.slice(0, 1).map((route) => step('apparentSpeed', { route, fieldId: 'speed' }));
}

function reynoldsSteps(numbers: EnvelopeNumbers, { speed }: WorkedEnvelope): EnvelopeStep[] {
  const { width } = numbers;
  const [met] = speed.usable;
  if (width === null || met === undefined || !isAir(numbers)) return [];
  const nu = envelopeAir(numbers).kinematicViscosityM2S;
  const valueSi = reynoldsNumber(met.valueSi, width.valueSi, nu);
  const show = `${printed(met)} × ${quantityIn(width.valueSi, width.unit)} / ${quantityIn(nu, 'm2/s')}`;
  const route = exactRoute(valueSi, '1', ['speed', 'width'], {
    show,
    equation: envelopeQuantities.reynolds.equation,
  });
  return [step('reynolds', { route })];
}

/** What the boat pays, when wind angle and boat speed are there and it is not a claim already. */
function trackSteps(numbers: EnvelopeNumbers, { force }: WorkedEnvelope): EnvelopeStep[] {
  const meeting = meetingOf(numbers, noChange);
  const isKnown = meeting !== null && meeting.angleRad !== null && numbers.boatSpeed !== null;
  const [first] = force.usable;
  if (!isKnown || first === undefined || numbers.powerKind === 'track') return [];
  return [step('trackPower', { route: trackRoute(first, meeting, numbers) })];
}
