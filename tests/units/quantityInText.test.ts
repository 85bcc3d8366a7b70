import { describe, expect, it } from 'vitest';
import { quantityReader } from '../../src/units/quantityInText';

const read = quantityReader(['speed', 'length', 'angle', 'force', 'power', 'area', 'temperature', 'density']);

describe('a number in running text', () => {
  it.each([
    ['12 m/s and more', '12', 'm/s'],
    ['25mm', '25', 'mm'],
    ['0,7 m long', '0,7', 'm'],
    ['0.8 m2: 24 N', '0.8', 'm2'],
    ['0.8 m² more', '0.8', 'm2'],
    ['30 kts', '30', 'kn'],
    ['35° off', '35', 'deg'],
    ['15 °C', '15', 'C'],
    ['420 watts', '420', 'W'],
    ['0.563 metric horsepower', '0.563', 'PS'],
    ['0.563 hp', '0.563', 'hp'],
    ['5" tube', '5', 'in'],
    ['1.2 kg/m3,', '1.2', 'kg/m3'],
    ["1'200 W", "1'200", 'W'],
  ])('%s is read with its unit', (text, number, unit) => {
    expect(read(text, 0)).toMatchObject({ number, unit, isAmbiguous: false });
  });

  it('ends before a word that only begins like a unit', () => {
    expect(read('16 posts', 0)).toMatchObject({ number: '16', unit: null, end: 2 });
    expect(read('3 masts', 0)).toMatchObject({ unit: null });
    expect(read('12 kniots', 0)).toMatchObject({ unit: null });
  });

  it('does not take a comma with a space for a decimal comma', () => {
    expect(read('12, 5 m', 0)).toMatchObject({ number: '12', end: 2 });
  });

  it('says so when a comma could part thousands', () => {
    expect(read('1,200 N', 0)).toMatchObject({ isAmbiguous: true });
    expect(read('0,200 N', 0)).toMatchObject({ isAmbiguous: false });
    expect(read('1,20 N', 0)).toMatchObject({ isAmbiguous: false });
  });

  it('is not found where none begins', () => {
    expect(read('abc 12', 0)).toBeNull();
  });
});
