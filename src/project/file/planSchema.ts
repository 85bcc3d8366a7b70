import * as z from 'zod/mini';
import { boolean, id, kinds, name, note, number, object, orNull, reason, source } from './fields';
import { placement } from './placementSchema';
import { shape } from './shapeSchema';
import { classRule, dimension, dutyFraction, exposure, point, stowed } from './sharedSchema';

/* The items of a refit plan. */

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

export const refitItem = object({
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
