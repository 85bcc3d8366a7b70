import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import { fromSi, toSi } from '../../src/units/convert';
import {
  displayChoices,
  usualUnits,
  type DisplayKind,
  type DisplayUnits,
} from '../../src/units/displayUnits';
import { parseQuantity } from '../../src/units/parse';
import {
  columnDecimals,
  formatQuantity,
  formatRange,
  formatValue,
  formatValueRange,
  printUnit,
} from '../../src/units/print';
import { quantityIn, unitSign } from '../../src/units/printIn';
import { areUnitsUsual, showIn, shownUnit } from '../../src/units/shownUnits';
import { definitionOf, isUnit, unitTable, type Unit } from '../../src/units/unitTable';
import { between } from '../properties/arbitraries';

afterEach(() => {
  showIn(usualUnits);
});

const kinds = Object.keys(displayChoices) as readonly DisplayKind[];
const everyChoice = kinds.flatMap((kind) => displayChoices[kind].map((unit) => ({ kind, unit })));

function choose(kind: DisplayKind, unit: Unit): void {
  showIn({ ...usualUnits, [kind]: unit });
}

const space = '\u00a0';
const metric: DisplayUnits = { ...usualUnits, speed: 'm/s', power: 'PS' };

describe('without a choice', () => {
  it('every unit is its own', () => {
    for (const unit of Object.keys(unitTable).filter(isUnit)) expect(shownUnit(unit)).toBe(unit);
    expect(areUnitsUsual()).toBe(true);
  });
});

describe("the reader's units", () => {
  it.each(everyChoice)('print every $kind in $unit, and name it', ({ kind, unit }) => {
    choose(kind, unit);
    const one = toSi(1, unit);
    expect(formatQuantity(one, usualUnits[kind])).toBe(`1.00${space}${unitSign(unit)}`);
    expect(formatValue(one, usualUnits[kind])).toBe('1.00');
    expect(formatValueRange(one, 2 * one, usualUnits[kind])).toBe('1.00–2.00');
    expect(formatRange(one, 2 * one, usualUnits[kind])).toBe(`1.00–2.00${space}${unitSign(unit)}`);
    expect(printUnit(usualUnits[kind])).toBe(unitSign(unit));
    expect(areUnitsUsual()).toBe(unit === usualUnits[kind]);
  });

  it.each(everyChoice)('read back as the same $kind from what is printed in $unit', ({ kind, unit }) => {
    choose(kind, unit);
    fc.assert(
      fc.property(between(-5, 5.9), fc.boolean(), fc.boolean(), (power, isNegative, isUnitKept) => {
        const value = (isNegative ? -1 : 1) * Math.max(10 ** power, 2e-3);
        const valueSi = toSi(value, unit);
        const text = isUnitKept
          ? formatQuantity(valueSi, usualUnits[kind])
          : formatValue(valueSi, usualUnits[kind]);
        const read = parseQuantity(
          text.replace('\u2212', '-'),
          definitionOf(unit).dimension,
          shownUnit(usualUnits[kind]),
        );
        if (read.kind !== 'quantity') throw new Error(read.message);
        expect(read.unit).toBe(unit);
        // Half a unit of the third figure.
        expect(Math.abs(read.valueSi - valueSi)).toBeLessThanOrEqual(0.00501 * Math.abs(valueSi));
      }),
    );
  });

  it('say which horsepower in every printed power, range and head', () => {
    showIn(metric);
    expect(formatQuantity(420, 'W')).toBe(`0.571${space}hp${space}(metric)`);
    expect(formatRange(420, 735.49875, 'W')).toBe(`0.57–1.00${space}hp${space}(metric)`);
    showIn({ ...metric, power: 'hp' });
    expect(formatQuantity(420, 'W')).toBe(`0.563${space}hp${space}(mechanical)`);
    expect(printUnit('W')).toBe(`hp${space}(mechanical)`);
  });

  it('leave units without a choice, units of SI that are meant, and what is printed in a named unit', () => {
    showIn(metric);
    expect(formatQuantity(0.05, 'm2')).toBe(`0.0500${space}m²`);
    expect(formatQuantity(1500, 'kW')).toBe(`1.50${space}kW`);
    expect(quantityIn(420, 'W')).toBe(`420${space}W`);
    expect(quantityIn(toSi(22, 'kn'), 'kn')).toBe(`22.0${space}kn`);
  });

  it('print small sizes in inches with three figures', () => {
    choose('size', 'in');
    expect(formatQuantity(0.025, 'mm')).toBe(`0.984${space}in`);
    expect(formatQuantity(0.0005, 'mm')).toBe(`0.0197${space}in`);
  });

  it.each(everyChoice)('keep a column of $kind in $unit as fine as in the usual unit', ({ kind, unit }) => {
    choose(kind, unit);
    fc.assert(
      fc.property(between(-2, 5), (power) => {
        const largest = 10 ** power;
        const usual = usualUnits[kind];
        const valuesSi = [toSi(largest, usual), toSi(largest / 300, usual)];
        const placeSi = toSi(10 ** -columnDecimals(valuesSi, usual), unit);
        showIn(usualUnits);
        const usualPlaceSi = toSi(10 ** -columnDecimals(valuesSi, usual), usual);
        choose(kind, unit);
        expect(placeSi).toBeLessThanOrEqual(usualPlaceSi * (1 + 1e-9));
      }),
    );
  });

  it('show a row of 3 W beside a total of 1830 W in horsepower', () => {
    showIn(metric);
    const decimals = columnDecimals([1830, 3], 'W');
    expect(formatValue(1830, 'W', { decimals })).toBe('2.488');
    expect(formatValue(3, 'W', { decimals })).toBe('0.004');
    expect(fromSi(1830, 'PS')).toBeCloseTo(2.488, 3);
  });
});
