import type { Patch } from '../../project/edit/patch';
import type { ProjectCondition } from '../../project/file/schema';
import { inUnit, type SiRange } from '../../ui/fields/fieldText';
import { toSi } from '../../units/convert';
import type { Dimension, Unit } from '../../units/unitTable';

export type ConditionPatch = Patch<Omit<ProjectCondition, 'id'>>;

/** One quantity of a condition, as a field shows it and as the file keeps it. */
export interface ConditionField {
  /** Its path in the condition: keys the field, names its step and is what a line elsewhere asks for. */
  readonly path: string;
  readonly label: string;
  /** For the name of the step: "Change the heel of Upwind". */
  readonly words: string;
  readonly dimension: Dimension;
  readonly unit: Unit;
  readonly range: SiRange;
  readonly isOptional?: boolean;
  readonly describe?: string;
  readonly read: (condition: ProjectCondition) => number | null;
  readonly patch: (valueSi: number | null) => ConditionPatch;
}

const speed = { dimension: 'speed', unit: 'kn' } as const;
const length = { dimension: 'length', unit: 'm' } as const;
const angle = { dimension: 'angle', unit: 'deg' } as const;
const percent = { dimension: 'none', unit: '%' } as const;

function degrees(fromDeg: number, toDeg: number): SiRange {
  return { fromSi: toSi(fromDeg, 'deg'), toSi: toSi(toDeg, 'deg') };
}

function between(fromSi: number, to: number): SiRange {
  return { fromSi, toSi: to };
}

/** A field that always holds a value: an emptied one commits nothing. */
type RequiredField = Omit<ConditionField, 'patch' | 'isOptional'> & {
  readonly patch: (valueSi: number) => ConditionPatch;
};

function required({ patch, ...rest }: RequiredField): ConditionField {
  return { ...rest, patch: (valueSi) => (valueSi === null ? {} : patch(valueSi)) };
}

/** The true wind: speed, height and angle as they were given. */
export const trueWindFields: readonly ConditionField[] = [
  required({
    path: 'wind.speedMs',
    label: 'True wind speed',
    words: 'true wind',
    ...speed,
    range: between(0, 60),
    read: ({ wind }) => wind.speedMs,
    patch: (speedMs) => ({ wind: { kind: 'true', speedMs } }),
  }),
  required({
    path: 'wind.angle',
    label: 'Angle from the course',
    words: 'wind angle',
    ...angle,
    range: degrees(0, 180),
    read: ({ wind }) => (wind.kind === 'true' ? toSi(wind.angleFromCourseDeg, 'deg') : null),
    patch: (rad) => ({ wind: { kind: 'true', angleFromCourseDeg: inUnit(rad, 'deg') } }),
  }),
  required({
    path: 'wind.height',
    label: 'Given at a height of',
    words: "wind's height",
    ...length,
    range: between(1, 100),
    read: ({ wind }) => (wind.kind === 'true' ? wind.heightM : null),
    patch: (heightM) => ({ wind: { kind: 'true', heightM } }),
  }),
];

/** An instrument reading: apparent wind in the plane that heels with the mast. */
export const instrumentFields: readonly ConditionField[] = [
  required({
    path: 'wind.speedMs',
    label: 'Apparent wind read',
    words: 'wind reading',
    ...speed,
    range: between(0, 80),
    read: ({ wind }) => wind.speedMs,
    patch: (speedMs) => ({ wind: { kind: 'instrument', speedMs } }),
  }),
  required({
    path: 'wind.angle',
    label: 'Angle from the bow',
    words: "reading's angle",
    ...angle,
    range: degrees(0, 180),
    read: ({ wind }) => (wind.kind === 'instrument' ? toSi(wind.angleFromBowDeg, 'deg') : null),
    patch: (rad) => ({ wind: { kind: 'instrument', angleFromBowDeg: inUnit(rad, 'deg') } }),
  }),
  required({
    path: 'wind.height',
    label: 'Instrument up the mast',
    words: "instrument's height",
    ...length,
    range: between(1, 150),
    describe: 'Along the mast, from the waterplane of the upright boat.',
    read: ({ wind }) => (wind.kind === 'instrument' ? wind.heightUpMastM : null),
    patch: (heightUpMastM) => ({ wind: { kind: 'instrument', heightUpMastM } }),
  }),
];

/** How she sails. */
export const sailingFields: readonly ConditionField[] = [
  required({
    path: 'boatSpeedMs',
    label: 'Boat speed',
    words: 'boat speed',
    ...speed,
    range: between(0, 50),
    read: ({ boatSpeedMs }) => boatSpeedMs,
    patch: (boatSpeedMs) => ({ boatSpeedMs }),
  }),
  required({
    path: 'heelDeg',
    label: 'Heel',
    words: 'heel',
    ...angle,
    range: degrees(-60, 60),
    describe: 'To leeward; a minus sign heels her to windward.',
    read: ({ heelDeg }) => toSi(heelDeg, 'deg'),
    patch: (rad) => ({ heelDeg: inUnit(rad, 'deg') }),
  }),
  required({
    path: 'leewayDeg',
    label: 'Leeway',
    words: 'leeway',
    ...angle,
    range: degrees(-20, 30),
    read: ({ leewayDeg }) => toSi(leewayDeg, 'deg'),
    patch: (rad) => ({ leewayDeg: inUnit(rad, 'deg') }),
  }),
  required({
    path: 'riseM',
    label: 'Rise',
    words: 'rise',
    ...length,
    range: between(-2, 10),
    describe: 'How far she lifts out of the water, as on foils; 0 afloat.',
    read: ({ riseM }) => riseM,
    patch: (riseM) => ({ riseM }),
  }),
];

export const airFields: readonly ConditionField[] = [
  required({
    path: 'air.temperatureC',
    label: 'Temperature',
    words: 'air temperature',
    dimension: 'temperature',
    unit: 'C',
    range: between(toSi(-40, 'C'), toSi(60, 'C')),
    read: ({ air }) => toSi(air.temperatureC, 'C'),
    patch: (kelvin) => ({ air: { temperatureC: inUnit(kelvin, 'C') } }),
  }),
  required({
    path: 'air.pressurePa',
    label: 'Pressure',
    words: 'air pressure',
    dimension: 'pressure',
    unit: 'hPa',
    range: between(80_000, 110_000),
    read: ({ air }) => air.pressurePa,
    patch: (pressurePa) => ({ air: { pressurePa } }),
  }),
];

export const humidityField: ConditionField = required({
  path: 'air.relativeHumidity',
  label: 'Relative humidity',
  words: 'humidity',
  ...percent,
  range: between(0, 1),
  describe: 'Moves the density by less than one per cent.',
  read: ({ air }) => air.relativeHumidity,
  patch: (relativeHumidity) => ({ air: { relativeHumidity } }),
});

/** How far the wind and the air are doubted; they widen the spread of every row. */
export const doubtFields: readonly ConditionField[] = [
  required({
    path: 'windSpeedDoubtFraction',
    label: 'Wind speed, to either side',
    words: 'doubt of the wind speed',
    ...percent,
    range: between(0, 0.5),
    read: ({ windSpeedDoubtFraction }) => windSpeedDoubtFraction,
    patch: (windSpeedDoubtFraction) => ({ windSpeedDoubtFraction }),
  }),
  required({
    path: 'windAngleDoubtDeg',
    label: 'Wind angle, to either side',
    words: 'doubt of the wind angle',
    ...angle,
    range: degrees(0, 30),
    read: ({ windAngleDoubtDeg }) => toSi(windAngleDoubtDeg, 'deg'),
    patch: (rad) => ({ windAngleDoubtDeg: inUnit(rad, 'deg') }),
  }),
  required({
    path: 'densityDoubtFraction',
    label: 'Air density, to either side',
    words: 'doubt of the density',
    ...percent,
    range: between(0, 0.5),
    read: ({ densityDoubtFraction }) => densityDoubtFraction,
    patch: (densityDoubtFraction) => ({ densityDoubtFraction }),
  }),
];

/** What side force and heel cost her; empty where nobody knows. */
export const priceFields: readonly ConditionField[] = [
  {
    path: 'prices.hullDragPerSideForce',
    label: 'Price of side force',
    words: 'price of side force',
    dimension: 'none',
    unit: '1',
    range: between(0, 10),
    isOptional: true,
    describe: 'Newtons of hull drag for each newton of side force.',
    read: ({ prices }) => prices.hullDragPerSideForce,
    patch: (hullDragPerSideForce) => ({ prices: { hullDragPerSideForce } }),
  },
  {
    path: 'prices.driveLostPerHeelingMomentPerM',
    label: 'Price of heel',
    words: 'price of heel',
    dimension: 'perLength',
    unit: '1/m',
    range: between(0, 10),
    isOptional: true,
    describe: 'Newtons of drive lost for each newton metre of heeling moment.',
    read: ({ prices }) => prices.driveLostPerHeelingMomentPerM,
    patch: (driveLostPerHeelingMomentPerM) => ({ prices: { driveLostPerHeelingMomentPerM } }),
  },
];

export const totalResistanceField: ConditionField = {
  path: 'totalResistanceN',
  label: 'Total resistance',
  words: 'total resistance',
  dimension: 'force',
  unit: 'N',
  range: between(0.1, 10_000_000),
  isOptional: true,
  describe: 'Of the whole boat. When every condition has one, the ledger shows shares of it.',
  read: ({ totalResistanceN }) => totalResistanceN,
  patch: (totalResistanceN) => ({ totalResistanceN }),
};
