import * as z from 'zod/mini';
import type { EndKind } from '../../physics/section/endEffect';
import { roughnessByFinish, type Finish } from '../../physics/section/roughness';
import { wireConstructions } from '../../physics/section/wire';
import { choice, kinds, list, number, object, orNull, positive, source, two, wholeNumber } from './fields';
import { limits } from './limits';
import { dimension, dragAreaM2, typedCoefficient } from './sharedSchema';

/* The shapes that a fitting may have. */

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

export const shape = kinds([
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
