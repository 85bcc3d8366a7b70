import * as z from 'zod/mini';
import type { Side } from '../../physics/placement/placeMembers';
import { boolean, choice, kinds, number, object, orNull, wholeNumber } from './fields';
import { basis, place, point } from './sharedSchema';

/* Where a fitting stands. */

const rowCount = wholeNumber(2, 500);
const leanDeg = number(-180, 180);

export const placement = kinds([
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
