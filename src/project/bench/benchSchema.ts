import * as z from 'zod/mini';
import { choice, id, kinds, name, number, object, orNull, wholeNumber } from '../file/fields';
import { limits } from '../file/limits';
import { candidateMaterials } from './candidates';

/*
 * What an address may hold of a bench. Wider than what can be computed: a candidate with a problem is shown with its complaint
 * beside the field, not thrown away.
 */
const any = number(-1e12, 1e12);

const direction = kinds([
  object({ kind: z.literal('fixed'), angleDeg: any }),
  object({ kind: z.literal('turning'), residualDeg: any, pieces: wholeNumber(1, limits.pieces) }),
]);

const mass = kinds([
  object({ kind: z.literal('none') }),
  object({ kind: z.literal('skin'), arealDensityKgM2: any }),
  object({
    kind: z.literal('wall'),
    material: choice(candidateMaterials.map((one) => one.id)),
    wallM: any,
  }),
]);

const parts = { id: id(), name: name(), massKg: orNull(any), cost: any } as const;
const section = { ...parts, direction, mass, chordM: any, thicknessM: any } as const;

export const candidateSchema = kinds([
  object({ kind: z.literal('bare'), ...parts }),
  object({ kind: z.literal('thinnerRound'), ...parts, diameterM: any, mass }),
  object({ kind: z.literal('ellipse'), ...section }),
  object({
    kind: z.literal('fairingRound'),
    ...parts,
    direction,
    mass,
    skinM: any,
    clearanceM: any,
    chordOverThickness: any,
  }),
  object({ kind: z.literal('section'), ...section }),
]);

export const memberIdSchema = id();

const end = choice(['free', 'surface', 'joined']);

export const typedMemberSchema = object({
  diameterM: any,
  lengthM: any,
  footAboveDeckM: any,
  leanAftDeg: any,
  leanOutDeg: any,
  ends: z.tuple([end, end]),
});
