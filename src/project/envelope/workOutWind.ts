import { envelopeQuantities, trackPowerOfDragW } from '../../physics/envelope/envelopeArithmetic';
import {
  metFromTrue,
  metFromTrueAngle,
  metFromTrueSpeed,
  type WindMet,
} from '../../physics/envelope/windMet';
import { quantityIn, valueIn } from '../../units/printIn';
import type { Change } from './change';
import type { WindKindId } from './envelopeTexts';
import type { EnvelopeNumbers } from './readEnvelope';
import { exactRoute, printed, type Route } from './route';

/** The wind that is met, as far as the estimate tells. */
export interface Meeting {
  readonly speed: Route;
  /** True when the speed follows from a true wind and is not the one written. */
  readonly isWorkedOut: boolean;
  /** Angle from the course; null when it is not known. */
  readonly angleRad: number | null;
}

/** The kind of angle as said, or else the kind of the speed. */
function angleKindOf({ windAngleKind, windKind }: EnvelopeNumbers): WindKindId {
  return windAngleKind ?? windKind ?? 'apparent';
}

function triangle(numbers: EnvelopeNumbers): WindMet | null {
  const { speed, windAngle, boatSpeed, windKind } = numbers;
  if (speed === null || windAngle === null || boatSpeed === null) return null;
  const sides = [speed.valueSi, windAngle.valueSi, boatSpeed.valueSi] as const;
  const isTrueAngle = angleKindOf(numbers) === 'true';
  if (windKind === 'true') return isTrueAngle ? metFromTrue(...sides) : metFromTrueSpeed(...sides);
  return isTrueAngle ? metFromTrueAngle(...sides) : { speedMs: sides[0], angleRad: sides[1] };
}

/**
 * Speed and angle of the wind that is met. A true wind needs its angle and the boat speed; without them it counts as met,
 * and the check says so. Height, law and leeway are left out.
 */
export function meetingOf(numbers: EnvelopeNumbers, change: Change): Meeting | null {
  const { speed, windKind } = numbers;
  if (speed === null) return null;
  const met = triangle(numbers);
  const isWorkedOut = windKind === 'true' && met !== null && !change.isTrueAsMet;
  const speedMs = (isWorkedOut ? met.speedMs : speed.valueSi) * change.speedFactor;
  return {
    speed: isWorkedOut
      ? exactRoute(speedMs, speed.unit, ['speed', 'windAngle', 'boatSpeed'], metFormula(numbers))
      : exactRoute(speedMs, speed.unit, ['speed']),
    isWorkedOut,
    angleRad: met?.angleRad ?? null,
  };
}

/** How the wind met follows from a true wind: with its own angle, or with the apparent one. */
function metFormula(numbers: EnvelopeNumbers): { readonly show: string; readonly equation: string } {
  const { speed, windAngle, boatSpeed } = numbers;
  const wind = quantityIn(speed?.valueSi ?? NaN, speed?.unit ?? 'm/s');
  const boat = quantityIn(boatSpeed?.valueSi ?? NaN, boatSpeed?.unit ?? 'm/s');
  const angle = quantityIn(windAngle?.valueSi ?? NaN, 'deg');
  return angleKindOf(numbers) === 'true'
    ? {
        equation: 'V = √((W cos a + V_b)² + (W sin a)²)',
        show: `√((${wind} × cos ${angle} + ${boat})² + (${wind} × sin ${angle})²)`,
      }
    : {
        equation: 'V = V_b cos b + √(W² − (V_b sin b)²)',
        show: `${boat} × cos ${angle} + √((${wind})² − (${boat} × sin ${angle})²)`,
      };
}

/** What the boat pays for a force along the wind that is met; NaN when angle or boat speed is missing. */
export function trackRoute(force: Route, { angleRad }: Meeting, { boatSpeed }: EnvelopeNumbers): Route {
  const angle = angleRad ?? NaN;
  const speedMs = boatSpeed?.valueSi ?? NaN;
  const pay = (forceN: number): number => trackPowerOfDragW(forceN, angle, speedMs);
  const ends = [pay(force.lowSi), pay(force.highSi)];
  const cosine = valueIn(Math.cos(angle), '1');
  return {
    valueSi: pay(force.valueSi),
    lowSi: Math.min(...ends),
    highSi: Math.max(...ends),
    unit: 'W',
    equation: envelopeQuantities.trackPower.equation,
    fromFieldIds: [...force.fromFieldIds, 'windAngle', 'boatSpeed'],
    show: `${printed(force)} × ${cosine} × ${quantityIn(speedMs, boatSpeed?.unit ?? 'm/s')}`,
  };
}
