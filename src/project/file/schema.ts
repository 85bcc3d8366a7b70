import * as z from 'zod/mini';
import type { Basis } from '../../physics/fitting/fittingInput';
import type { Tack } from '../../physics/frames/boatToTrack';
import type { Side } from '../../physics/placement/placeMembers';
import type { InclinedMethod } from '../../physics/member/integrateMember';
import type { EndKind, EndMethod } from '../../physics/section/endEffect';
import type { FairingSurface } from '../../physics/section/fairingAligned';
import { roughnessByFinish, type Finish } from '../../physics/section/roughness';
import { wireConstructions } from '../../physics/section/wire';
import {
  boolean,
  choice,
  exactly,
  id,
  kinds,
  list,
  name,
  note,
  number,
  object,
  orNull,
  positive,
  reason,
  shortText,
  source,
  two,
  wholeNumber,
} from './fields';

export const formatName = 'windtoll-project';
export const currentVersion = 2;

/** Most entries of the lists. */
export const limits = {
  zones: 200,
  fittings: 2000,
  members: 20_000,
  conditions: 100,
  plans: 50,
  items: 200,
  sources: 500,
  deckStations: 200,
  /** Of a section that turns with the wind, each member. */
  pieces: 50,
  /** Of a pull test. */
  readings: 200,
} as const;

const place = number(-300, 300);
const point = object({ xM: place, yM: place, zM: place });
const basis = choice<Basis>(['measured', 'drawing', 'estimated']);
const dimension = object({ m: number(0.0001, 200), basis });

const coefficient = number(0, 100);
const typedCoefficient = object({
  best: coefficient,
  low: coefficient,
  high: coefficient,
  areaBase: name(),
  source: source(),
});

const area = number(0, 10_000);
const dragAreaM2 = object({ best: area, low: area, high: area });

const speedFactor = number(0, 1.5);
const exposure = object({ best: speedFactor, low: speedFactor, high: speedFactor, source: source() });

const fraction = number(0, 1);
const dutyFraction = object({
  default: fraction,
  byCondition: list(object({ conditionId: id(), fraction }), limits.conditions),
});

const stowed = object({ dragAreaM2, place: point, source: source() });

const classRule = object({
  ruling: choice(['allowed', 'needs-ruling', 'not-allowed']),
  rule: shortText(),
});

const surface = kinds([
  object({ kind: z.literal('smooth') }),
  object({ kind: z.literal('finish'), finish: choice(Object.keys(roughnessByFinish) as Finish[]) }),
  object({ kind: z.literal('roughness'), roughnessM: number(0, 0.1) }),
]);

const memberParts = {
  coefficient: orNull(typedCoefficient),
  friction: choice(['model', 'zero']),
  ends: two(choice<EndKind>(['free', 'surface', 'joined'])),
} as const;

const direction = kinds([
  object({ kind: z.literal('fixed'), angleDeg: number(-180, 180) }),
  object({
    kind: z.literal('turning'),
    residualDeg: number(0, 45),
    pieces: wholeNumber(1, limits.pieces),
  }),
]);

/** A section with a direction: chord from nose to tail, thickness across it. */
const sectionParts = { chord: dimension, thickness: dimension, direction, ...memberParts } as const;

const cornerRadiusM = number(0, 100);

const pullTest = object({
  forcesN: list(number(0, 1_000_000), limits.readings, 1),
  tareN: number(0, 1_000_000),
  pullAngleDeg: number(0, 60),
  windSpeedMs: positive(60),
  windSpeedDoubtFraction: number(0, 0.5),
  densityKgM3: number(0.5, 2),
  forceMeterDoubtN: number(0, 100_000),
});

const shape = kinds([
  object({
    kind: z.literal('roundBar'),
    diameter: dimension,
    surface,
    ...memberParts,
  }),
  object({
    kind: z.literal('wire'),
    construction: choice([...wireConstructions]),
    diameter: dimension,
    coefficient: memberParts.coefficient,
    friction: memberParts.friction,
  }),
  object({ kind: z.literal('ellipticalBar'), ...sectionParts }),
  object({ kind: z.literal('rectangularBar'), ...sectionParts, cornerRadiusM }),
  object({ kind: z.literal('fairing'), ...sectionParts }),
  object({
    kind: z.literal('sphere'),
    diameter: dimension,
    surface,
    coefficient: orNull(typedCoefficient),
  }),
  object({
    kind: z.literal('net'),
    facing: choice(['x', 'y', 'z']),
    width: dimension,
    height: dimension,
    solidity: number(0, 1),
    wireDiameter: dimension,
  }),
  object({
    kind: z.literal('measuredArea'),
    dragAreaM2,
    provenance: object({ kind: choice(['pull-test', 'tunnel', 'paper', 'estimate']), source: source() }),
    pullTest: orNull(pullTest),
  }),
  object({
    kind: z.literal('bluffBody'),
    length: dimension,
    width: dimension,
    height: dimension,
    cornerRadiusM,
    coefficients: object({
      x: orNull(typedCoefficient),
      y: orNull(typedCoefficient),
      z: orNull(typedCoefficient),
    }),
  }),
]);

const rowCount = wholeNumber(2, 500);
const leanDeg = number(-180, 180);

const placement = kinds([
  object({
    kind: z.literal('endPoints'),
    start: point,
    end: point,
    basis,
    row: orNull(object({ count: rowCount, lastStart: point, lastEnd: point })),
    pair: boolean(),
  }),
  object({
    kind: z.literal('taped'),
    aftOfStemM: place,
    side: choice<Side>(['centreline', 'port', 'starboard']),
    athwart: object({ from: choice(['centreline', 'deck-edge']), inboardOrOutM: place }),
    aboveDeckM: place,
    lengthM: number(0, 300),
    leanAftDeg: leanDeg,
    leanOutDeg: leanDeg,
    basis,
    row: orNull(object({ count: rowCount, lastAftOfStemM: place, lastAthwartM: place })),
    pair: boolean(),
  }),
]);

const fitting = object({
  id: id(),
  name: name(),
  zoneId: id(),
  note: note(),
  shape,
  placement,
  exposure,
  exposureLeeward: orNull(exposure),
  localTurn: object({ deg: number(-90, 90), source: source() }),
  shelteredByFittingId: orNull(id()),
  dutyFraction,
  stowed: orNull(stowed),
  massKg: orNull(number(0, 1_000_000)),
  flags: object({
    safetyRequired: boolean(),
    structural: boolean(),
    movingPart: boolean(),
    classRule: orNull(classRule),
  }),
  excluded: orNull(object({ reason: note() })),
});

const angleDeg = number(0, 180);

const wind = kinds([
  object({
    kind: z.literal('true'),
    speedMs: number(0, 60),
    heightM: number(1, 100),
    angleFromCourseDeg: angleDeg,
  }),
  object({
    kind: z.literal('instrument'),
    speedMs: number(0, 80),
    angleFromBowDeg: angleDeg,
    heightUpMastM: number(1, 150),
  }),
]);

const condition = object({
  id: id(),
  name: name(),
  note: note(),
  wind,
  tack: choice<Tack>(['port', 'starboard']),
  boatSpeedMs: number(0, 50),
  heelDeg: number(-60, 60),
  leewayDeg: number(-20, 30),
  riseM: number(-2, 10),
  air: object({
    temperatureC: number(-40, 60),
    pressurePa: number(80_000, 110_000),
    relativeHumidity: fraction,
  }),
  windSpeedDoubtFraction: number(0, 0.5),
  windAngleDoubtDeg: number(0, 30),
  densityDoubtFraction: number(0, 0.5),
  prices: object({
    hullDragPerSideForce: orNull(number(0, 10)),
    driveLostPerHeelingMomentPerM: orNull(number(0, 10)),
    atHeelLimit: boolean(),
  }),
  totalResistanceN: orNull(positive(10_000_000)),
});

const windLaw = kinds([
  object({ kind: z.literal('log'), charnock: number(0.005, 0.03) }),
  object({ kind: z.literal('power'), exponent: number(0, 0.5) }),
  object({ kind: z.literal('uniform') }),
]);

const change = kinds([
  object({ kind: z.literal('slimmer'), diameter: dimension }),
  object({ kind: z.literal('shapeOf'), fittingId: id() }),
  object({ kind: z.literal('retracted'), dutyFraction, stowed: orNull(stowed) }),
  object({ kind: z.literal('stowed'), stowed: orNull(stowed) }),
  object({ kind: z.literal('removed') }),
  object({ kind: z.literal('moved'), placement }),
  object({
    kind: z.literal('sheltered'),
    exposure,
    exposureLeeward: orNull(exposure),
    shelteredByFittingId: orNull(id()),
  }),
  object({ kind: z.literal('typed'), shape, source: source() }),
]);

const refitItem = object({
  id: id(),
  name: name(),
  fittingId: id(),
  on: boolean(),
  note: note(),
  massChangeKg: number(-1_000_000, 1_000_000),
  massPlace: orNull(point),
  cost: number(-1e12, 1e12),
  flags: object({
    structural: boolean(),
    movingPart: boolean(),
    classRule: orNull(classRule),
  }),
  safetyReason: orNull(object({ person: name(), reason: reason() })),
  change,
});

const boat = object({
  name: name(),
  kind: shortText(),
  lengthM: number(1, 200),
  beamM: number(0.1, 100),
  draughtM: number(0.05, 50),
  deckLine: list(
    object({ aftOfStemM: place, freeboardM: number(-5, 50), halfBeamM: number(0, 100) }),
    limits.deckStations,
    3,
  ),
  centreOfLateralResistanceM: orNull(point),
  mast: object({ aftOfStemM: place, topAboveWaterplaneM: number(0, 150) }),
});

/** The project file, version 2. Numbers are SI and degrees; what a rule across fields can refuse is in domainErrors.ts. */
export const projectSchema = object({
  format: exactly(formatName),
  version: exactly(currentVersion),
  name: name(),
  notes: note(),
  currency: shortText(10),
  boat,
  zones: list(object({ id: id(), name: name() }), limits.zones),
  fittings: list(fitting, limits.fittings),
  conditions: list(condition, limits.conditions),
  profile: orNull(
    object({
      name: name(),
      entries: list(object({ conditionId: id(), hours: number(0, 1_000_000) }), limits.conditions),
    }),
  ),
  plans: list(
    object({ id: id(), name: name(), note: note(), items: list(refitItem, limits.items) }),
    limits.plans,
  ),
  methods: object({
    windLaw,
    ends: choice<EndMethod>(['dnv', 'en']),
    inclined: choice<InclinedMethod>(['cross-flow', 'dnv-wind']),
    fairing: choice<FairingSurface>(['laminar', 'turbulent']),
  }),
  sources: list(object({ id: id(), text: reason() }), limits.sources),
});

type Frozen<T> = T extends object ? { readonly [Key in keyof T]: Frozen<T[Key]> } : T;

/** A project as the file holds it. */
export type Project = Frozen<z.infer<typeof projectSchema>>;
export type ProjectBoat = Project['boat'];
export type ProjectDeckStation = ProjectBoat['deckLine'][number];
export type ProjectZone = Project['zones'][number];
export type ProjectFitting = Project['fittings'][number];
export type ProjectShape = ProjectFitting['shape'];
export type ProjectShapeOf<Kind extends ProjectShape['kind']> = Extract<ProjectShape, { kind: Kind }>;
export type ProjectDirection = ProjectShapeOf<'fairing'>['direction'];
export type ProjectPullTest = NonNullable<ProjectShapeOf<'measuredArea'>['pullTest']>;
export type ProjectSurface = Extract<ProjectShape, { kind: 'roundBar' }>['surface'];
export type ProjectPlacement = ProjectFitting['placement'];
export type ProjectPoint = Frozen<z.infer<typeof point>>;
export type ProjectDimension = Frozen<z.infer<typeof dimension>>;
export type ProjectTypedCoefficient = Frozen<z.infer<typeof typedCoefficient>>;
export type ProjectRanged = Frozen<z.infer<typeof dragAreaM2>>;
export type ProjectExposure = ProjectFitting['exposure'];
export type ProjectDuty = ProjectFitting['dutyFraction'];
export type ProjectStowed = NonNullable<ProjectFitting['stowed']>;
export type ProjectFlags = ProjectFitting['flags'];
export type ProjectClassRule = NonNullable<ProjectFlags['classRule']>;
export type ProjectCondition = Project['conditions'][number];
export type ProjectWind = ProjectCondition['wind'];
export type ProjectAir = ProjectCondition['air'];
export type ProjectProfile = NonNullable<Project['profile']>;
export type ProjectPlan = Project['plans'][number];
export type RefitItem = ProjectPlan['items'][number];
export type ItemChange = RefitItem['change'];
export type ProjectMethods = Project['methods'];
