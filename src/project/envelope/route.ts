import { quantityIn } from '../../units/printIn';
import type { Unit } from '../../units/unitTable';
import type { EnvelopeFieldId } from './envelopeTexts';
import type { WrittenNumber } from './readEnvelope';

/**
 * One way to a number from those beside it: its value, and how far rounding leaves it open.
 *
 * The rule of agreement, used for claims and for slips alike:
 * - a number that nothing beside it gives (speed, size, count, coefficient, density) counts exactly as written;
 * - force, power and horsepower stand for everything that rounds to them as written (see `halfLastDigitSi`): 170 W is
 *   165 to 175; so does an area that sizes give;
 * - a claim is worked out by every route: from the rounded numbers before it, and from the numbers behind those. It agrees
 *   when one route comes within its written digits;
 * - half a percent is allowed on the way, because steps that nobody wrote down are rounded to three figures by hand.
 * So an estimate rounded at any step agrees, and a slip of 3 % in a claim of two figures or more does not hide.
 */
export interface Route {
  readonly valueSi: number;
  readonly lowSi: number;
  readonly highSi: number;
  readonly fromFieldIds: readonly EnvelopeFieldId[];
  /** "86.4 Pa × 0.600 × 0.280 m²": the numbers in the formula. */
  readonly show: string;
}

/** Steps that nobody wrote down are rounded to three figures by hand. */
const handShare = 0.005;

export function isAgreeing(
  route: Route,
  { lowSi, highSi }: Pick<WrittenNumber, 'lowSi' | 'highSi'>,
): boolean {
  const low = Math.min(route.lowSi * (1 - handShare), route.lowSi * (1 + handShare));
  const high = Math.max(route.highSi * (1 - handShare), route.highSi * (1 + handShare));
  return high >= lowSi && low <= highSi;
}

/** A number taken exactly as it is. */
export function exactRoute(
  valueSi: number,
  unit: Unit,
  fromFieldIds: readonly EnvelopeFieldId[],
  show = quantityIn(valueSi, unit),
): Route {
  return { valueSi, lowSi: valueSi, highSi: valueSi, fromFieldIds, show };
}

export function writtenExactly(written: WrittenNumber, fieldId: EnvelopeFieldId): Route {
  return exactRoute(written.valueSi, written.unit, [fieldId]);
}

/** Everything that rounds to the number as written. */
export function writtenRounded(written: WrittenNumber, fieldId: EnvelopeFieldId): Route {
  const { lowSi, highSi } = written;
  return { ...writtenExactly(written, fieldId), lowSi, highSi };
}

/** A route through a rising or falling function of two others. */
export function combined(a: Route, b: Route, formula: (a: number, b: number) => number, show: string): Route {
  const ends = [
    formula(a.lowSi, b.lowSi),
    formula(a.lowSi, b.highSi),
    formula(a.highSi, b.lowSi),
    formula(a.highSi, b.highSi),
  ];
  return {
    valueSi: formula(a.valueSi, b.valueSi),
    lowSi: Math.min(...ends),
    highSi: Math.max(...ends),
    fromFieldIds: [...new Set([...a.fromFieldIds, ...b.fromFieldIds])],
    show,
  };
}

/** Routes that give a finite number. */
export function finite(routes: readonly Route[]): readonly Route[] {
  return routes.filter(({ valueSi }) => Number.isFinite(valueSi));
}
