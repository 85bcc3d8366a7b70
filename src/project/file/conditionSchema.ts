import * as z from 'zod/mini';
import type { Tack } from '../../physics/frames/boatToTrack';
import { boolean, choice, id, kinds, name, note, number, object, orNull, positive } from './fields';
import { fraction } from './sharedSchema';

/* Sailing conditions, and the law of the wind over height. */

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

export const condition = object({
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

export const windLaw = kinds([
  object({ kind: z.literal('log'), charnock: number(0.005, 0.03) }),
  object({ kind: z.literal('power'), exponent: number(0, 0.5) }),
  object({ kind: z.literal('uniform') }),
]);
