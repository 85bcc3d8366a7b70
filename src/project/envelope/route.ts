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
 * - a number before it that is written and agrees cannot have been more than its own written digits away;
 * - half a percent is allowed on the way, because steps that nobody wrote down are rounded to three figures by hand.
 * So an estimate rounded at any step agrees, and a slip of 3 % in a claim of two figures or more does not hide.
 */
export interface Route {
  readonly valueSi: number;
  readonly lowSi: number;
  readonly highSi: number;
  readonly fromFieldIds: readonly EnvelopeFieldId[];
  /** The unit to print it in. */
  readonly unit: Unit;
  /** "86.4 Pa × 0.168 m²": the formula with its numbers. */
  readonly show: string;
  /** "F = q · CdA"; null for a number as written. */
  readonly equation: string | null;
}

/** Steps that nobody wrote down are rounded to three figures by hand. */
const handShare = 0.005;

export function isAgreeing(
  route: Pick<Route, 'lowSi' | 'highSi'>,
  { lowSi, highSi }: Pick<WrittenNumber, 'lowSi' | 'highSi'>,
): boolean {
  const low = Math.min(route.lowSi * (1 - handShare), route.lowSi * (1 + handShare));
  const high = Math.max(route.highSi * (1 - handShare), route.highSi * (1 + handShare));
  return high >= lowSi && low <= highSi;
}

/** A route to a number that is also written: what was really there rounds to what is written. */
export function within(route: Route, written: WrittenNumber): Route {
  const clamp = (si: number): number => Math.min(Math.max(si, written.lowSi), written.highSi);
  return { ...route, valueSi: clamp(route.valueSi), lowSi: clamp(route.lowSi), highSi: clamp(route.highSi) };
}

/** A route's value as it stands in the formula of the next step. Densities differ in the third decimal. */
export function printed({ valueSi, unit }: Pick<Route, 'valueSi' | 'unit'>): string {
  const needsThird = unit === 'kg/m3' && Math.abs(valueSi * 100 - Math.round(valueSi * 100)) > 1e-6;
  return quantityIn(valueSi, unit, needsThird ? { decimals: 3 } : {});
}

/** A number taken exactly as it is. */
export function exactRoute(
  valueSi: number,
  unit: Unit,
  fromFieldIds: readonly EnvelopeFieldId[],
  how: { readonly show: string; readonly equation: string } | null = null,
): Route {
  const show = how?.show ?? printed({ valueSi, unit });
  return {
    valueSi,
    lowSi: valueSi,
    highSi: valueSi,
    unit,
    fromFieldIds,
    show,
    equation: how?.equation ?? null,
  };
}

export function writtenExactly(written: WrittenNumber, fieldId: EnvelopeFieldId): Route {
  return exactRoute(written.valueSi, written.unit, [fieldId]);
}

/** Everything that rounds to the number as written. */
export function writtenRounded(written: WrittenNumber, fieldId: EnvelopeFieldId): Route {
  const { lowSi, highSi } = written;
  return { ...writtenExactly(written, fieldId), lowSi, highSi };
}

/** A formula of two numbers that rises or falls with each, and how its result is printed. */
export interface Formula {
  readonly of: (a: number, b: number) => number;
  readonly unit: Unit;
  readonly equation: string;
  readonly show: (a: string, b: string) => string;
}

/** A route through a formula of two others. */
export function combined(a: Route, b: Route, { of, unit, equation, show }: Formula): Route {
  const ends = [of(a.lowSi, b.lowSi), of(a.lowSi, b.highSi), of(a.highSi, b.lowSi), of(a.highSi, b.highSi)];
  return {
    valueSi: of(a.valueSi, b.valueSi),
    lowSi: Math.min(...ends),
    highSi: Math.max(...ends),
    unit,
    fromFieldIds: [...new Set([...a.fromFieldIds, ...b.fromFieldIds])],
    show: show(printed(a), printed(b)),
    equation,
  };
}

/** Every way to a result from the ways to two others. */
export function allCombined(a: readonly Route[], b: readonly Route[], formula: Formula): Route[] {
  return a.flatMap((left) => b.map((right) => combined(left, right, formula)));
}

/** Routes that give a finite number. */
export function finite(routes: readonly Route[]): readonly Route[] {
  return routes.filter(({ valueSi }) => Number.isFinite(valueSi));
}
