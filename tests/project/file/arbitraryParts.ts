/** Arbitrary parts of a project, in the sizes that boats have. */
import fc from 'fast-check';
import { wireConstructions } from '../../../src/physics/section/wire';
import type {
  ProjectClassRule,
  ProjectDirection,
  ProjectDuty,
  ProjectExposure,
  ProjectPlacement,
  ProjectPoint,
  ProjectRanged,
  ProjectShape,
  ProjectStowed,
  ProjectSurface,
  ProjectTypedCoefficient,
} from '../../../src/project/file/schema';
import { dragAreaOf } from '../../../src/project/file/shapeRules';

/** A number of the range on a grid of 1000 steps: no denormals, no minus zero. */
export function grid(low: number, high: number): fc.Arbitrary<number> {
  return fc.integer({ min: 0, max: 1000 }).map((step) => low + ((high - low) * step) / 1000 + 0);
}

export function orNull<Value>(value: fc.Arbitrary<Value>): fc.Arbitrary<Value | null> {
  return fc.option(value, { nil: null });
}

export const anyName = fc
  .string({ unit: 'grapheme', minLength: 1, maxLength: 12 })
  .map((text) => `n${text.replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/gu, '')}`);
export const anyNote = fc.constantFrom(
  '',
  'as found on the dock',
  'two\nlines\twith "quotes" and \\',
  'ærlig – 帆',
);

function ranged(low: number, high: number): fc.Arbitrary<ProjectRanged> {
  return fc.tuple(grid(low, high), grid(low, high), grid(low, high)).map((three) => {
    const [least = 0, middle = 0, most = 0] = [...three].sort((a, b) => a - b);
    return { best: middle, low: least, high: most };
  });
}

const basis = fc.constantFrom('measured' as const, 'drawing' as const, 'estimated' as const);

function dimension(low: number, high: number) {
  return fc.record({ m: grid(low, high), basis });
}

export const point: fc.Arbitrary<ProjectPoint> = fc.record({
  xM: grid(-6, 6),
  yM: grid(0.1, 2),
  zM: grid(0.5, 15),
});

const typedCoefficient: fc.Arbitrary<ProjectTypedCoefficient> = fc
  .tuple(ranged(0.1, 2), anyNote)
  .map(([range, source]) => ({ ...range, areaBase: 'the frontal area', source }));

const surface: fc.Arbitrary<ProjectSurface> = fc.oneof(
  fc.constant({ kind: 'smooth' as const }),
  fc.record({
    kind: fc.constant('finish' as const),
    finish: fc.constantFrom('glass' as const, 'finePaint' as const, 'galvanisedSteel' as const),
  }),
  fc.record({ kind: fc.constant('roughness' as const), roughnessM: grid(0, 0.0005) }),
);

const endKind = fc.constantFrom('free' as const, 'surface' as const, 'joined' as const);

const memberParts = {
  coefficient: orNull(typedCoefficient),
  friction: fc.constantFrom('model' as const, 'zero' as const),
};
const ends = fc.tuple(endKind, endKind);

const direction: fc.Arbitrary<ProjectDirection> = fc.oneof(
  fc.record({ kind: fc.constant('fixed' as const), angleDeg: grid(-180, 180) }),
  fc.record({
    kind: fc.constant('turning' as const),
    residualDeg: grid(0, 20),
    pieces: fc.integer({ min: 1, max: 8 }),
  }),
);

const section = {
  chord: dimension(0.05, 0.5),
  thickness: dimension(0.01, 0.05),
  direction,
  ...memberParts,
  ends,
};

/** Every kind of shape that runs along a line. */
export const bar: fc.Arbitrary<ProjectShape> = fc.oneof(
  fc.record({
    kind: fc.constant('roundBar' as const),
    diameter: dimension(0.004, 0.2),
    surface,
    ...memberParts,
    ends,
  }),
  fc.record({
    kind: fc.constant('wire' as const),
    construction: fc.constantFrom(...wireConstructions),
    diameter: dimension(0.002, 0.03),
    ...memberParts,
  }),
  fc.record({ kind: fc.constant('ellipticalBar' as const), ...section }),
  fc.record({ kind: fc.constant('rectangularBar' as const), ...section, cornerRadiusM: grid(0, 0.005) }),
  fc.record({ kind: fc.constant('fairing' as const), ...section }),
);

/** A pull test, with the drag area that it gives. */
const pulled: fc.Arbitrary<ProjectShape> = fc
  .record({
    forcesN: fc.array(grid(10, 60), { minLength: 1, maxLength: 5 }),
    tareN: grid(0, 5),
    pullAngleDeg: grid(0, 40),
    windSpeedMs: grid(4, 15),
    windSpeedDoubtFraction: grid(0, 0.2),
    densityKgM3: grid(1.1, 1.3),
    forceMeterDoubtN: grid(0, 2),
  })
  .map((pullTest) => {
    const answer = dragAreaOf(pullTest);
    if (!answer.ok) throw new Error(answer.message);
    const provenance = { kind: 'pull-test' as const, source: '' };
    return { kind: 'measuredArea', dragAreaM2: answer.dragAreaM2, provenance, pullTest };
  });

export const pointLike: fc.Arbitrary<ProjectShape> = fc.oneof(
  fc.record({
    kind: fc.constant('measuredArea' as const),
    dragAreaM2: ranged(0.01, 1.5),
    provenance: fc.record({
      kind: fc.constantFrom('pull-test' as const, 'tunnel' as const, 'paper' as const, 'estimate' as const),
      source: anyNote,
    }),
    pullTest: fc.constant(null),
  }),
  pulled,
  fc.record({
    kind: fc.constant('sphere' as const),
    diameter: dimension(0.05, 1),
    surface,
    coefficient: orNull(typedCoefficient),
  }),
  fc.record({
    kind: fc.constant('net' as const),
    facing: fc.constantFrom('x' as const, 'y' as const, 'z' as const),
    width: dimension(0.3, 4),
    height: dimension(0.3, 2),
    solidity: grid(0, 1),
    wireDiameter: dimension(0.001, 0.01),
  }),
  fc.record({
    kind: fc.constant('bluffBody' as const),
    length: dimension(0.1, 1.5),
    width: dimension(0.1, 1),
    height: dimension(0.1, 1.8),
    cornerRadiusM: grid(0, 0.05),
    coefficients: fc.record({
      x: orNull(typedCoefficient),
      y: orNull(typedCoefficient),
      z: orNull(typedCoefficient),
    }),
  }),
);

/** The point moved up by a length, so that a bar between the two is one. */
function lifted({ xM, yM, zM }: ProjectPoint, byM: number): ProjectPoint {
  return { xM, yM, zM: zM + byM };
}

const endPoints: fc.Arbitrary<ProjectPlacement> = fc
  .record({
    start: point,
    lengthM: grid(0.2, 3),
    basis,
    row: orNull(fc.record({ count: fc.integer({ min: 2, max: 5 }), lastStart: point })),
    pair: fc.boolean(),
  })
  .map(({ start, lengthM, basis: ownBasis, row, pair }) => ({
    kind: 'endPoints',
    start,
    end: lifted(start, lengthM),
    basis: ownBasis,
    row: row === null ? null : { ...row, lastEnd: lifted(row.lastStart, lengthM) },
    pair,
  }));

const taped: fc.Arbitrary<ProjectPlacement> = fc.record({
  kind: fc.constant('taped' as const),
  aftOfStemM: grid(0.5, 11.5),
  side: fc.constantFrom('centreline' as const, 'port' as const, 'starboard' as const),
  athwart: fc.record({
    from: fc.constantFrom('centreline' as const, 'deck-edge' as const),
    inboardOrOutM: grid(0.05, 0.6),
  }),
  aboveDeckM: grid(0, 2),
  lengthM: grid(0.2, 3),
  leanAftDeg: grid(-90, 90),
  leanOutDeg: grid(-45, 45),
  basis,
  row: orNull(
    fc.record({
      count: fc.integer({ min: 2, max: 5 }),
      lastAftOfStemM: grid(0.5, 11.5),
      lastAthwartM: grid(0.05, 0.6),
    }),
  ),
  pair: fc.boolean(),
});

export const placement = fc.oneof(endPoints, taped);

export const exposure: fc.Arbitrary<ProjectExposure> = fc
  .tuple(ranged(0.2, 1.4), anyNote)
  .map(([range, source]) => ({ ...range, source }));

export function duty(conditionIds: readonly string[]): fc.Arbitrary<ProjectDuty> {
  return fc.record({
    default: grid(0, 1),
    byCondition: fc
      .tuple(fc.subarray([...conditionIds]), grid(0, 1))
      .map(([ids, fraction]) => ids.map((conditionId) => ({ conditionId, fraction }))),
  });
}

export const stowed: fc.Arbitrary<ProjectStowed> = fc.record({
  dragAreaM2: ranged(0, 0.2),
  place: point,
  source: anyNote,
});

export const classRule: fc.Arbitrary<ProjectClassRule> = fc.record({
  ruling: fc.constantFrom('allowed' as const, 'needs-ruling' as const, 'not-allowed' as const),
  rule: fc.constantFrom('', 'C.4.2 (b)'),
});
