/**
 * Arbitrary valid projects, small and coherent: every shape, placement and change occurs, references resolve, bars have
 * a length, and no plan contradicts itself (each fitting is changed at most once per plan, only a bar gets slimmer).
 */
import fc from 'fast-check';
import { defaultMethods } from '../../../src/project/file/blankParts';
import {
  currentVersion,
  formatName,
  type ItemChange,
  type Project,
  type ProjectCondition,
  type ProjectFitting,
  type ProjectPlan,
  type RefitItem,
} from '../../../src/project/file/schema';
import {
  grid,
  orNull,
  anyName,
  anyNote,
  bar,
  pointLike,
  point,
  placement,
  exposure,
  duty,
  stowed,
  classRule,
} from './arbitraryParts';

interface Ids {
  readonly zones: readonly string[];
  readonly fittings: readonly string[];
  readonly conditions: readonly string[];
}

function fitting(id: string, ids: Ids): fc.Arbitrary<ProjectFitting> {
  const others = ids.fittings.filter((other) => other !== id);
  return fc.record({
    id: fc.constant(id),
    name: anyName,
    zoneId: fc.constantFrom(...ids.zones),
    note: anyNote,
    shape: fc.oneof(bar, pointLike),
    placement,
    exposure,
    exposureLeeward: orNull(exposure),
    localTurn: fc.record({ deg: grid(-20, 20), source: anyNote }),
    shelteredByFittingId: others.length === 0 ? fc.constant(null) : orNull(fc.constantFrom(...others)),
    dutyFraction: duty(ids.conditions),
    stowed: orNull(stowed),
    massKg: orNull(grid(0, 200)),
    flags: fc.record({
      safetyRequired: fc.boolean(),
      structural: fc.boolean(),
      movingPart: fc.boolean(),
      classRule: orNull(classRule),
    }),
    excluded: orNull(fc.constant({ reason: 'part of the rig' })),
  });
}

function condition(id: string): fc.Arbitrary<ProjectCondition> {
  return fc.record({
    id: fc.constant(id),
    name: anyName,
    note: anyNote,
    wind: fc.oneof(
      fc.record({
        kind: fc.constant('true' as const),
        speedMs: grid(2, 25),
        heightM: grid(5, 30),
        angleFromCourseDeg: grid(0, 180),
      }),
      fc.record({
        kind: fc.constant('instrument' as const),
        speedMs: grid(4, 30),
        angleFromBowDeg: grid(10, 170),
        heightUpMastM: grid(10, 30),
      }),
    ),
    tack: fc.constantFrom('port' as const, 'starboard' as const),
    boatSpeedMs: grid(0, 15),
    heelDeg: grid(-20, 35),
    leewayDeg: grid(-2, 8),
    riseM: grid(0, 2),
    air: fc.record({
      temperatureC: grid(-5, 40),
      pressurePa: grid(97_000, 104_000),
      relativeHumidity: grid(0, 1),
    }),
    windSpeedDoubtFraction: grid(0, 0.2),
    windAngleDoubtDeg: grid(0, 10),
    densityDoubtFraction: grid(0, 0.05),
    prices: fc.record({
      hullDragPerSideForce: orNull(grid(0, 0.3)),
      driveLostPerHeelingMomentPerM: orNull(grid(0, 0.1)),
      atHeelLimit: fc.boolean(),
    }),
    totalResistanceN: orNull(grid(200, 20_000)),
  });
}

function change(changed: ProjectFitting, ids: Ids): fc.Arbitrary<ItemChange> {
  const { shape } = changed;
  const general: fc.Arbitrary<ItemChange>[] = [
    fc.constant({ kind: 'removed' }),
    fc.record({
      kind: fc.constant('retracted' as const),
      dutyFraction: duty(ids.conditions),
      stowed: orNull(stowed),
    }),
    fc.record({ kind: fc.constant('stowed' as const), stowed: orNull(stowed) }),
    fc.record({ kind: fc.constant('moved' as const), placement }),
    fc.record({
      kind: fc.constant('sheltered' as const),
      exposure,
      exposureLeeward: orNull(exposure),
      shelteredByFittingId: fc.constant(ids.fittings.find((id) => id !== changed.id) ?? null),
    }),
    fc.record({ kind: fc.constant('typed' as const), shape: fc.oneof(bar, pointLike), source: anyNote }),
  ];
  const others = ids.fittings.filter((id) => id !== changed.id);
  if (others.length > 0) {
    general.push(fc.record({ kind: fc.constant('shapeOf' as const), fittingId: fc.constantFrom(...others) }));
  }
  if (shape.kind !== 'roundBar') return fc.oneof(...general);
  const slimmer = grid(0.5, 0.9).map((part): ItemChange => ({
    kind: 'slimmer',
    diameter: { m: shape.diameter.m * part, basis: 'drawing' },
  }));
  return fc.oneof(slimmer, ...general);
}

function item(id: string, changed: ProjectFitting, ids: Ids): fc.Arbitrary<RefitItem> {
  return fc.record({
    id: fc.constant(id),
    name: anyName,
    fittingId: fc.constant(changed.id),
    on: fc.boolean(),
    note: anyNote,
    massChangeKg: grid(-40, 40),
    massPlace: orNull(point),
    cost: grid(0, 20_000),
    flags: fc.record({ structural: fc.boolean(), movingPart: fc.boolean(), classRule: orNull(classRule) }),
    safetyReason: orNull(fc.constant({ person: 'A. Skipper', reason: 'the new one holds the same load' })),
    change: change(changed, ids),
  });
}

function plan(id: string, fittings: readonly ProjectFitting[], ids: Ids): fc.Arbitrary<ProjectPlan> {
  return fc.shuffledSubarray([...fittings], { maxLength: Math.min(4, fittings.length) }).chain((changed) =>
    fc.record({
      id: fc.constant(id),
      name: anyName,
      note: anyNote,
      items: fc.tuple(...changed.map((one, i) => item(`i${i}`, one, ids))),
    }),
  );
}

function idList(letter: string, least: number, most: number): fc.Arbitrary<string[]> {
  return fc
    .integer({ min: least, max: most })
    .map((count) => Array.from({ length: count }, (_, i) => `${letter}${i}`));
}

const ids: fc.Arbitrary<Ids> = fc.record({
  zones: idList('z', 1, 3),
  fittings: idList('f', 1, 5),
  conditions: idList('c', 1, 3),
});

type Rest = Pick<Project, 'notes' | 'currency' | 'methods' | 'profile'>;

function rest({ conditions }: Ids): fc.Arbitrary<Rest> {
  return fc.record({
    notes: anyNote,
    currency: fc.constantFrom('', 'EUR'),
    methods: fc.record({
      windLaw: fc.oneof(
        fc.constant(defaultMethods.windLaw),
        fc.record({ kind: fc.constant('log' as const), charnock: grid(0.005, 0.03) }),
        fc.record({ kind: fc.constant('power' as const), exponent: grid(0, 0.3) }),
        fc.constant({ kind: 'uniform' as const }),
      ),
      ends: fc.constantFrom('dnv' as const, 'en' as const),
      inclined: fc.constantFrom('cross-flow' as const, 'dnv-wind' as const),
      fairing: fc.constantFrom('laminar' as const, 'turbulent' as const),
    }),
    profile: orNull(
      fc.record({
        name: anyName,
        entries: fc.tuple(
          ...conditions.map((conditionId) =>
            fc.record({ conditionId: fc.constant(conditionId), hours: grid(0.5, 200) }),
          ),
        ),
      }),
    ),
  });
}

/** Any valid project of up to five fittings, three conditions and two plans. */
export const arbitraryProject: fc.Arbitrary<Project> = ids.chain((known) =>
  fc
    .tuple(
      fc.tuple(...known.fittings.map((id) => fitting(id, known))),
      fc.tuple(...known.conditions.map(condition)),
      rest(known),
      orNull(point),
    )
    .chain(([fittings, conditions, others, lateralCentre]) =>
      fc.record({
        format: fc.constant(formatName),
        version: fc.constant(currentVersion),
        name: anyName,
        boat: fc.record({
          name: anyName,
          kind: fc.constantFrom('', 'a sloop for day races'),
          lengthM: fc.constant(12),
          beamM: grid(3, 4.5),
          draughtM: grid(1.5, 3),
          deckLine: fc.tuple(grid(1, 1.6), grid(1.5, 2)).map(([freeboardM, halfBeamM]) => [
            { aftOfStemM: 0, freeboardM, halfBeamM: 0.1 },
            { aftOfStemM: 6, freeboardM: 1.2, halfBeamM },
            { aftOfStemM: 11.9, freeboardM: 1.1, halfBeamM: 1.4 },
          ]),
          centreOfLateralResistanceM: fc.constant(lateralCentre),
          mast: fc.record({ aftOfStemM: grid(4, 6), topAboveWaterplaneM: grid(14, 25) }),
        }),
        zones: fc.constant(known.zones.map((id) => ({ id, name: `zone ${id}` }))),
        fittings: fc.constant(fittings),
        conditions: fc.constant(conditions),
        plans: fc.tuple(plan('p0', fittings, known), plan('p1', fittings, known)),
        sources: fc.constant([{ id: 's1', text: 'tape measure' }]),
        ...recordOf(others),
      }),
    ),
);

function recordOf(others: Rest): { [Key in keyof Rest]: fc.Arbitrary<Rest[Key]> } {
  return {
    notes: fc.constant(others.notes),
    currency: fc.constant(others.currency),
    methods: fc.constant(others.methods),
    profile: fc.constant(others.profile),
  };
}
