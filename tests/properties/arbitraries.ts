import { doubtedKeys, type Change } from '../../src/physics/fitting/change';
import { zeroChange } from '../setup/zeroChange';
import fc from 'fast-check';
import type { SailingCondition } from '../../src/physics/condition/sailingCondition';
import {
  isMemberShape,
  type FittingInput,
  type PlacedMember,
  type Ranged,
  type SectionShape,
  type Shape,
} from '../../src/physics/fitting/fittingInput';
import { placeRow, withMirrorImages } from '../../src/physics/placement/placeMembers';
import type { EndKind } from '../../src/physics/section/endEffect';
import type { TypedCoefficient } from '../../src/physics/section/roundBarSection';
import { wireConstructions } from '../../src/physics/section/wire';
import type { SectionDirection } from '../../src/physics/section/sectionDirection';
import { boatVector, type BoatVector } from '../../src/physics/vector/vector3';
import type { WindLaw } from '../../src/physics/wind/windProfile';

export const degree = Math.PI / 180;

/** Steps of the even draw: finer than any quantity is known, and few enough to halve in a shrink. */
const evenSteps = 2 ** 24;

/**
 * A number in [min, max]: four in five drawn evenly over it, the fifth by its bits. Bits find the ends and tiny sizes, but
 * alone they draw next to nothing else where the range holds zero. Both shrink to the number nearest to zero; below a
 * millionth in size it is zero, so that nothing underflows.
 */
export function between(min: number, max: number): fc.Arbitrary<number> {
  const simplest = Math.min(Math.max(0, min), max);
  const stepSize = (max - min) / evenSteps;
  const below = Math.round((simplest - min) / stepSize);
  const even = fc
    .noBias(fc.integer({ min: -below, max: evenSteps - below }))
    .map((step) => Math.min(Math.max(simplest + step * stepSize, min), max));
  const byBits = fc.double({ min, max, noNaN: true, noDefaultInfinity: true });
  return fc
    .oneof({ weight: 4, arbitrary: even }, { weight: 1, arbitrary: byBits })
    .map((value) => (Math.abs(value) < 1e-6 ? 0 : value));
}

const logLaw = between(0.008, 0.02).map((charnock): WindLaw => ({ kind: 'log', charnock }));
const powerLaw = between(0.05, 0.2).map((exponent): WindLaw => ({ kind: 'power', exponent }));
const uniformLaw = fc.constant<WindLaw>({ kind: 'uniform' });

export const anyWindLaw: fc.Arbitrary<WindLaw> = fc.oneof(logLaw, powerLaw, uniformLaw);
/** The laws whose shape does not depend on the wind's speed. */
export const speedFreeLaw: fc.Arbitrary<WindLaw> = fc.oneof(powerLaw, uniformLaw);

export const trueWindInput: fc.Arbitrary<SailingCondition['wind']> = fc.record({
  kind: fc.constant('true' as const),
  speedMs: between(2, 25),
  heightM: between(2, 30),
  angleFromCourseRad: between(0, Math.PI),
});

export const instrumentInput: fc.Arbitrary<SailingCondition['wind']> = fc.record({
  kind: fc.constant('instrument' as const),
  speedMs: between(3, 30),
  angleFromBowRad: between(15 * degree, 165 * degree),
  heightUpMastM: between(5, 35),
});

const priceOrNone = fc.option(between(0, 0.3), { nil: null });

/** Conditions on both tacks with heel to either side, leeway, rise, every wind law, and the wind given either way. */
export function conditions(
  law: fc.Arbitrary<WindLaw> = anyWindLaw,
  wind: fc.Arbitrary<SailingCondition['wind']> = fc.oneof(trueWindInput, instrumentInput),
): fc.Arbitrary<SailingCondition> {
  return fc.record({
    wind,
    tack: fc.constantFrom('port' as const, 'starboard' as const),
    boatSpeedMs: between(0.5, 20),
    heelRad: between(-40 * degree, 40 * degree),
    leewayRad: between(-3 * degree, 8 * degree),
    riseM: between(-0.3, 2),
    air: fc.record({
      temperatureC: between(0, 35),
      pressurePa: between(97_000, 104_000),
      relativeHumidity: between(0, 1),
    }),
    windLaw: law,
    windSpeedDoubt: between(0, 0.2),
    windAngleDoubtRad: between(0, 0.1),
    densityDoubt: between(0, 0.05),
    hullDragPerSideForce: priceOrNone,
    driveLostPerHeelingMomentPerM: priceOrNone,
    atHeelLimit: fc.boolean(),
    totalResistanceN: fc.constant(null),
    centreOfLateralResistance: fc
      .tuple(between(-2, 2), between(-0.5, 0.5), between(-3, 0))
      .map(([x, y, z]) => boatVector(x, y, z)),
  });
}

/** Best between low and high. */
function ranged(min: number, max: number): fc.Arbitrary<Ranged> {
  return fc.tuple(between(min, max), between(min, max), between(min, max)).map(([a, b, c]) => {
    const low = Math.min(a, b, c);
    const high = Math.max(a, b, c);
    return { low, best: Math.max(Math.min(a, b), Math.min(Math.max(a, b), c)), high };
  });
}

const typed: fc.Arbitrary<TypedCoefficient> = ranged(0.05, 2).map((range) => ({
  ...range,
  areaBase: 'a stated area',
  source: 'drawn at random',
}));

const point: fc.Arbitrary<BoatVector> = fc
  .tuple(between(-8, 8), between(-3, 3), between(0, 15))
  .map(([x, y, z]) => boatVector(x, y, z));

const basis = fc.constantFrom('measured' as const, 'drawing' as const, 'estimated' as const);

function dimension(min: number, max: number, part: string) {
  return fc.record({ valueM: between(min, max), basis, doubtId: fc.constant(`own:fitting:${part}`) });
}

/** Fixed at any angle, or turning in one to three pieces. */
const directions: fc.Arbitrary<SectionDirection> = fc.oneof(
  between(-Math.PI, Math.PI).map((angleRad): SectionDirection => ({ kind: 'fixed', angleRad })),
  fc
    .record({ pieces: fc.integer({ min: 1, max: 3 }), residualRad: between(0, 10 * degree) })
    .map((turning): SectionDirection => ({ kind: 'turning', offRad: 0, ...turning })),
);

/** What a generated fitting is held to. */
export interface FittingOptions {
  /** Coefficients typed, friction off and both ends closed: the force is then quadratic in the wind. */
  readonly isQuadratic?: boolean;
  /** The same exposure on both sides of the boat. */
  readonly sameOnBothSides?: boolean;
  readonly kinds?: readonly Shape['kind'][];
}

function shapes({ isQuadratic = false, kinds }: FittingOptions): fc.Arbitrary<Shape> {
  const coefficient = isQuadratic ? typed : fc.option(typed, { nil: null });
  const end = isQuadratic
    ? fc.constantFrom<EndKind[]>('surface', 'joined')
    : fc.constantFrom<EndKind[]>('free', 'surface', 'joined');
  const roundBar = fc.record({
    kind: fc.constant('roundBar' as const),
    diameter: dimension(0.003, 0.4, 'diameter'),
    roughnessM: fc.constantFrom(0, 2e-6, 5e-5, 2e-3),
    coefficient,
    coefficientDoubtId: fc.constant('own:fitting:coefficient'),
    friction: isQuadratic ? fc.constant(false) : fc.boolean(),
    ends: fc.tuple(end, end),
  });
  const measuredArea = fc.record({
    kind: fc.constant('measuredArea' as const),
    dragAreaM2: ranged(0.01, 2),
    doubtId: fc.constant('own:fitting:drag-area'),
  });
  const bluffBody = fc.record({
    kind: fc.constant('bluffBody' as const),
    length: dimension(0.05, 3, 'length'),
    width: dimension(0.05, 2, 'width'),
    height: dimension(0.05, 2, 'height'),
    cornerRadiusM: fc.constantFrom(0, 0.004, 0.02),
    coefficients: fc.record({
      x: fc.option(typed, { nil: null }),
      y: fc.option(typed, { nil: null }),
      z: fc.option(typed, { nil: null }),
    }),
    coefficientDoubtId: fc.constant('own:fitting:coefficient'),
  });
  const section = fc
    .record({
      kind: fc.constantFrom('ellipticalBar' as const, 'rectangularBar' as const, 'fairing' as const),
      chord: between(0.005, 0.4),
      thinness: between(0.05, 1),
      roundness: between(0, 1),
      basis,
      direction: directions,
      coefficient,
      friction: isQuadratic ? fc.constant(false) : fc.boolean(),
      ends: fc.tuple(end, end),
    })
    .map(({ chord, thinness, roundness, ...rest }) => ({
      kind: rest.kind,
      chord: { valueM: chord, basis: rest.basis, doubtId: 'own:fitting:chord' },
      thickness: { valueM: chord * thinness, basis: rest.basis, doubtId: 'own:fitting:thickness' },
      cornerRadiusM: (roundness * chord * thinness) / 2,
      direction: rest.direction,
      directionDoubtId: 'own:fitting:direction',
      coefficient: rest.coefficient,
      coefficientDoubtId: 'own:fitting:coefficient',
      friction: rest.friction,
      ends: rest.ends,
    }));
  const ofKind = (kind: SectionShape['kind']) => section.map((shape) => ({ ...shape, kind }));
  const wire = fc.record({
    kind: fc.constant('wire' as const),
    construction: fc.constantFrom(...wireConstructions),
    diameter: dimension(0.002, 0.03, 'diameter'),
    coefficient,
    coefficientDoubtId: fc.constant('own:fitting:coefficient'),
    friction: isQuadratic ? fc.constant(false) : fc.boolean(),
    ends: fc.constant<[EndKind, EndKind]>(['joined', 'joined']),
  });
  const sphere = fc.record({
    kind: fc.constant('sphere' as const),
    diameter: dimension(0.02, 1, 'diameter'),
    roughnessM: fc.constantFrom(0, 5e-5, 2e-3),
    coefficient,
    coefficientDoubtId: fc.constant('own:fitting:coefficient'),
  });
  const net = fc.record({
    kind: fc.constant('net' as const),
    facing: fc.constantFrom('x' as const, 'y' as const, 'z' as const),
    width: dimension(0.2, 4, 'width'),
    height: dimension(0.1, 3, 'height'),
    solidity: between(0, 1),
    wireDiameter: dimension(0.0005, 0.01, 'wire-diameter'),
  });
  const all = {
    roundBar,
    wire,
    ellipticalBar: ofKind('ellipticalBar'),
    rectangularBar: ofKind('rectangularBar'),
    fairing: ofKind('fairing'),
    measuredArea,
    bluffBody,
    sphere,
    net,
  };
  // The threads of a net have a Reynolds number of their own, whatever else is typed.
  const every = (Object.keys(all) as Shape['kind'][]).filter((kind) => !(isQuadratic && kind === 'net'));
  return fc.oneof(...(kinds ?? every).map((kind) => all[kind]));
}

/** A member that has a length. */
const barMember: fc.Arbitrary<PlacedMember> = fc
  .record({ start: point, end: point })
  .filter(({ start, end }) => Math.hypot(end[0] - start[0], end[1] - start[1], end[2] - start[2]) > 0.05);

/** The member as its shape wants it: a bar keeps its ends, a body stands on its start, a drag area is a point. */
function fitToShape(member: PlacedMember, shape: Shape): PlacedMember {
  if (isMemberShape(shape)) return member;
  const [x, y, z] = member.start;
  const height = 'height' in shape ? shape.height.valueM : 0;
  return { start: member.start, end: boatVector(x, y, z + height) };
}

const layouts = fc
  .record({
    first: barMember,
    last: barMember,
    count: fc.integer({ min: 1, max: 5 }),
    pair: fc.boolean(),
  })
  .map(({ first, last, count, pair }) => {
    const row = count === 1 ? [first] : placeRow(first, last, count);
    return pair ? withMirrorImages(row) : row;
  })
  .filter((members) =>
    members.every(
      ({ start, end }) => Math.hypot(end[0] - start[0], end[1] - start[1], end[2] - start[2]) > 1e-3,
    ),
  );

const exposures = ranged(0, 1.5);

/** Fittings of every shape: single, in rows and in pairs, sheltered and turned, with a stowed state or none. */
export function fittings(options: FittingOptions = {}): fc.Arbitrary<FittingInput> {
  return fc
    .record({
      shape: shapes(options),
      layout: layouts,
      lengthDoubt: fc.constantFrom(0.02, 0.15),
      exposure: exposures,
      exposureLeeward: exposures,
      localTurnRad: between(-30 * degree, 30 * degree),
      stowed: fc.option(fc.record({ dragAreaM2: ranged(0, 0.5), place: point }), { nil: null }),
    })
    .map(({ shape, layout, lengthDoubt, exposure, exposureLeeward, localTurnRad, stowed }) => ({
      id: 'fitting',
      shape,
      members: layout.map((member) => fitToShape(member, shape)),
      lengthDoubt: isMemberShape(shape) ? { fraction: lengthDoubt, doubtId: 'own:fitting:length' } : null,
      exposure,
      exposureLeeward: options.sameOnBothSides === true ? exposure : exposureLeeward,
      exposureDoubtId: 'own:fitting:exposure',
      localTurnRad,
      stowed: stowed === null ? null : { ...stowed, doubtId: 'own:fitting:stowed-area' },
    }));
}

/** A share of the time, ends included. */
export const duties: fc.Arbitrary<number> = fc.oneof(fc.constantFrom(0, 1), between(0, 1));

/** A change of the outcome, every entry of its own. */
export const changes: fc.Arbitrary<Change> = fc
  .tuple(...doubtedKeys.map(() => between(-100, 100)))
  .map((values) => ({
    ...zeroChange(),
    ...Object.fromEntries(doubtedKeys.map((key, i) => [key, values[i]])),
  }));
