import { dragForceN, dynamicPressurePa, powerW } from '../../physics/envelope/envelopeArithmetic';
import { toSi, fromSi } from '../../units/convert';
import type { Unit } from '../../units/unitTable';
import type { EnvelopeSpeedRow, EnvelopeSpeedTable } from './envelopeCheck';
import { envelopeAir, isAir } from './envelopeAir';
import { handbookAreaM2, scaledRange, shapeLabel } from './handbook';
import { handbookDrag } from './handbookDrag';
import type { EnvelopeNumbers } from './readEnvelope';
import type { WorkedEnvelope } from './workOut';

/** About the speed as written: half to one and a half times. */
const shares = [0.5, 0.75, 1, 1.25, 1.5] as const;

/** To two figures, in the unit as typed; the speed as written stays. */
function tidySpeedMs(speedMs: number, share: number, unit: Unit): number {
  if (share === 1) return speedMs;
  return toSi(Number(fromSi(speedMs * share, unit).toPrecision(2)), unit);
}

/** Force and air power over five speeds, by the handbook and with the envelope's own drag area. */
export function speedTableOf(numbers: EnvelopeNumbers, envelope: WorkedEnvelope): EnvelopeSpeedTable | null {
  const speedMs = envelope.speed.usable[0]?.valueSi;
  const dragAreaM2 = envelope.dragArea.usable[0]?.valueSi ?? null;
  const { shape } = numbers;
  if (speedMs === undefined || !(speedMs > 0)) return null;
  const unit = numbers.speed?.unit ?? 'm/s';
  const rows = shares.map((share) => {
    const rowMs = tidySpeedMs(speedMs, share, unit);
    return rowAt(numbers, envelope, rowMs, share === 1, dragAreaM2);
  });
  const hasHandbook = rows.some(({ handbookForceN }) => handbookForceN !== null);
  if (!hasHandbook && dragAreaM2 === null) return null;
  const what = shape === null ? 'this drag area' : shapeLabel(shape);
  return { title: `Force and air power over the wind speed met: ${what}`, speedUnit: unit, rows };
}

function rowAt(
  numbers: EnvelopeNumbers,
  envelope: WorkedEnvelope,
  speedMs: number,
  isGiven: boolean,
  dragAreaM2: number | null,
): EnvelopeSpeedRow {
  const air = envelopeAir(numbers);
  const pressure = dynamicPressurePa(air.densityKgM3, speedMs);
  const areaM2 = handbookAreaM2(numbers, envelope);
  const { shape } = numbers;
  const canLookUp = shape !== null && areaM2 !== null && isAir(numbers);
  const drag = canLookUp ? handbookDrag(numbers, shape, speedMs, air) : null;
  const force = drag === null || areaM2 === null ? null : scaledRange(drag.coefficient, pressure * areaM2);
  const ownN = dragAreaM2 === null ? null : dragForceN(pressure, dragAreaM2);
  return {
    speedMs,
    isGiven,
    reynolds: drag?.reynolds ?? null,
    handbookCoefficient: drag?.coefficient.best ?? null,
    handbookForceN: force,
    handbookAirPowerW: force === null ? null : scaledRange(force, speedMs),
    envelopeForceN: ownN,
    envelopeAirPowerW: ownN === null ? null : powerW(ownN, speedMs),
  };
}
