import { shapeFacts } from './envelopeShapes';
import { airAssumption } from './envelopeAir';
import { fromSi, toSi } from '../../units/convert';
import type { EnvelopeNumbers, WrittenNumber } from './readEnvelope';
import { countOf, isAreaOfEach } from './workOutArea';
import type { WorkedEnvelope } from './workOut';

type Assumption = (numbers: EnvelopeNumbers, envelope: WorkedEnvelope) => string | null;

const wind: Assumption = ({ speed, windKind, windAngle, boatSpeed }, { meeting }) => {
  if (speed === null) return null;
  if (windKind === null)
    return 'Whether the speed is of the true or the apparent wind is not said: it is taken as the wind that is met, the apparent one.';
  if (windKind === 'apparent') return null;
  if (meeting?.isWorkedOut === true)
    return 'The apparent wind is worked out from the true one at the same height; the height, the law of the wind over the sea and the leeway are left out.';
  return windAngle === null || boatSpeed === null
    ? 'The speed is of the true wind, and without wind angle and boat speed it is taken as if it were met. The boat meets another one.'
    : 'True wind speed, wind angle and boat speed do not close to a triangle: the speed is taken as if it were met.';
};

const angle: Assumption = ({ windAngle, windAngleKind, windKind }) => {
  if (windAngle === null || windAngleKind !== null) return null;
  return windKind === 'true'
    ? 'The angle is taken as that of the true wind, from the course, as the speed is.'
    : 'The angle is taken as that of the apparent wind.';
};

const leeway: Assumption = ({ windAngle, boatSpeed }) =>
  windAngle === null || boatSpeed === null ? null : 'Bow and course are taken as one: no leeway.';

const ends: Assumption = ({ shape, ends: said }) => {
  if (shape === null || said !== null) return null;
  const { kind } = shapeFacts[shape].family;
  return kind === 'roundBar' || kind === 'plate' || kind === 'rectangularBar'
    ? 'What the ends are is not said: both are taken as free.'
    : null;
};

const area: Assumption = (numbers) => {
  const { areaOf, area: written } = numbers;
  if (written === null || areaOf !== null || countOf(numbers) === 1) return null;
  switch (isAreaOfEach(numbers)) {
    case true:
      return 'The area as written is that of one, as its sizes say.';
    case false:
      return 'The area as written is taken as that of all of them together.';
    case null:
      return 'Whether the area is of one or of all of them is not said: all of them is taken, and a claim that fits one each agrees too.';
  }
};

const horsepower: Assumption = ({ horsepower: written, power }) => {
  if (written?.unit !== 'hp') return null;
  const taken = 'Horsepower is taken as the mechanical one, 745.7 W; the metric one is 735.5 W.';
  return isRatherMetric(written, power)
    ? `${taken} The watts as written make this number in metric ones.`
    : taken;
};

/** Watts taken to the digit: rounded ones leave room for both horsepowers, which lie 1.4 % apart. */
function isRatherMetric({ lowSi, highSi }: WrittenNumber, power: WrittenNumber | null): boolean {
  if (power === null) return false;
  const holds = (unit: 'hp' | 'PS'): boolean =>
    power.valueSi >= toSi(fromSi(lowSi, 'hp'), unit) && power.valueSi <= toSi(fromSi(highSi, 'hp'), unit);
  return holds('PS') && !holds('hp');
}

const bareUnits: Assumption = ({ area: written, dragArea, force, power, density }) => {
  const names = (
    [
      [density, 'density (kg/m³)'],
      [written, 'area (m²)'],
      [dragArea, 'drag area (m²)'],
      [force, 'force (N)'],
      [power, 'power (W)'],
    ] as const
  ).flatMap(([number, name]) => (number?.isUnitTyped === false ? [name] : []));
  return names.length === 0 ? null : `Written without a unit, and read in SI: ${names.join(', ')}.`;
};

const smooth: Assumption = ({ shape }) => {
  const kind = shape === null ? null : shapeFacts[shape].family.kind;
  return kind === 'roundBar' || kind === 'sphere'
    ? 'The surface is taken as smooth, the wind as square to it.'
    : null;
};

const powerKind: Assumption = ({ power, horsepower: other, powerKind: said }) =>
  (power === null && other === null) || said !== null
    ? null
    : 'Which power is meant is not said: air power is taken, the force times the speed that is met.';

const all: readonly Assumption[] = [
  (numbers, { speed }) => (speed.usable.length === 0 ? null : airAssumption(numbers)),
  wind,
  angle,
  leeway,
  ends,
  area,
  powerKind,
  horsepower,
  bareUnits,
  smooth,
];

/** What was taken because it was not written, each a sentence. */
export function assumptionsOf(numbers: EnvelopeNumbers, envelope: WorkedEnvelope): readonly string[] {
  return all.flatMap((assumption) => assumption(numbers, envelope) ?? []);
}
