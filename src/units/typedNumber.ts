import { fromSi, toSi } from './convert';
import type { Unit } from './unitTable';

/** More figures than anybody measures, fewer than a conversion's rounding leaves behind: 22 kn stays 22. */
const mostFigures = 6;
/** A value of so many figures may have been rounded when it was stored; a rounder one was typed in its own unit. */
const roundedFigures = 3;
/** A rounder number that lies further off than this share says something else than what is stored. */
const mostOff = 1e-4;

/**
 * The number, in the unit, that a person would have typed for a stored value: 11.061 m/s is 21.5 kn, which is 11.061 when
 * stored to the same place. Of 21.553 kn, which is stored in full, nothing is taken away.
 */
export function typedNumber(valueSi: number, unit: Unit): number {
  const inFull = Number(fromSi(valueSi, unit).toPrecision(mostFigures));
  const [digits = '', exponent] = String(Math.abs(valueSi)).split('e');
  if (exponent !== undefined) return inFull;
  const decimals = digits.split('.')[1]?.length ?? 0;
  if (digits.replace('.', '').replace(/^0+/, '').length < roundedFigures) return inFull;
  for (let figures = roundedFigures; figures < mostFigures; figures += 1) {
    const shorter = Number(fromSi(valueSi, unit).toPrecision(figures));
    const isStoredAlike = Number(toSi(shorter, unit).toFixed(decimals)) === valueSi;
    if (isStoredAlike && Math.abs(shorter - inFull) <= mostOff * Math.abs(inFull)) return shorter;
  }
  return inFull;
}
