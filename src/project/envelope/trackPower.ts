import { trackPowerOfDragW } from '../../physics/envelope/envelopeArithmetic';
import type { Ranged } from '../../physics/fitting/fittingInput';
import { quantityIn, valueIn } from '../../units/printIn';
import { noChange } from './change';
import type { EnvelopeHandbook, EnvelopeTrack } from './envelopeCheck';
import { scaledRange } from './handbook';
import { powerText } from './handbookWords';
import type { EnvelopeNumbers } from './readEnvelope';
import type { WorkedEnvelope } from './workOut';
import { meetingOf } from './workOutWind';

export type TrackAnswer =
  | { readonly track: EnvelopeTrack; readonly missing: null }
  | { readonly track: null; readonly missing: string };

function missing(text: string): TrackAnswer {
  return { track: null, missing: text };
}

/** Air power beside track power, for a force along the wind that is met. */
export function trackOf(
  numbers: EnvelopeNumbers,
  envelope: WorkedEnvelope,
  handbook: EnvelopeHandbook | null,
): TrackAnswer {
  const { windAngle, boatSpeed } = numbers;
  const meeting = meetingOf(numbers, noChange);
  if (windAngle === null || boatSpeed === null)
    return missing('For what the boat pays (track power) type the wind angle and the boat speed.');
  if (meeting === null) return missing('For what the boat pays type the wind speed too.');
  if (meeting.angleRad === null)
    return missing('Wind speed, wind angle and boat speed do not close to a triangle: no such wind is met.');
  const force = forceOf(envelope, handbook);
  if (force === null)
    return missing('For what the boat pays there must be a force: type what is missing for it.');
  const speedMs = meeting.speed.valueSi;
  const airPowerW = scaledRange(force, speedMs);
  const trackPowerW = scaledRange(force, trackPowerOfDragW(1, meeting.angleRad, boatSpeed.valueSi));
  return {
    missing: null,
    track: {
      apparentSpeedMs: speedMs,
      apparentAngleRad: meeting.angleRad,
      boatSpeedMs: boatSpeed.valueSi,
      basis: handbook === null ? 'envelope' : 'handbook',
      airPowerW,
      trackPowerW,
      formula: formulaOf(force, meeting.angleRad, numbers, trackPowerW),
      sentences: sentencesOf(airPowerW, trackPowerW),
    },
  };
}

function forceOf({ force }: WorkedEnvelope, handbook: EnvelopeHandbook | null): Ranged | null {
  if (handbook !== null) return handbook.forceN;
  const [route] = force.routes.length > 0 ? force.routes : force.usable;
  return route === undefined ? null : { best: route.valueSi, low: route.valueSi, high: route.valueSi };
}

function formulaOf(force: Ranged, angleRad: number, { boatSpeed }: EnvelopeNumbers, track: Ranged): string {
  const speed = quantityIn(boatSpeed?.valueSi ?? 0, boatSpeed?.unit ?? 'm/s');
  const angle = quantityIn(angleRad, 'deg');
  return `P_t = F · cos b · V_b = ${quantityIn(force.best, 'N')} × cos ${angle} × ${speed} = ${quantityIn(track.best, 'W')}`;
}

function sentencesOf(air: Ranged, track: Ranged): string[] {
  const share = `${valueIn((100 * Math.abs(track.best)) / air.best, '1')} % of the air power`;
  const direction =
    track.best < 0
      ? `The wind pushes here: the track power is negative, ${share}.`
      : `What the boat pays is ${share}.`;
  const text = (range: Ranged): string =>
    range.low === range.high ? quantityIn(range.best, 'W') : powerText(range);
  return [
    `Air power ${text(air)}; track power ${text(track)}.`,
    direction,
    'Air power and track power are never the same thing: the first is force times wind speed, the second the force against the track times boat speed.',
  ];
}
