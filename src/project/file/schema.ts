import type * as z from 'zod/mini';
import type { InclinedMethod } from '../../physics/member/integrateMember';
import type { EndMethod } from '../../physics/section/endEffect';
import type { FairingSurface } from '../../physics/section/fairingAligned';
import {
  boolean,
  choice,
  exactly,
  id,
  list,
  name,
  note,
  number,
  object,
  orNull,
  reason,
  shortText,
  source,
} from './fields';
import { limits } from './limits';
import { condition, windLaw } from './conditionSchema';
import { placement } from './placementSchema';
import { refitItem } from './planSchema';
import { shape } from './shapeSchema';
import {
  classRule,
  type dimension,
  type dragAreaM2,
  dutyFraction,
  exposure,
  place,
  point,
  stowed,
  type typedCoefficient,
} from './sharedSchema';

export const formatName = 'windtoll-project';
export const currentVersion = 2;

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
