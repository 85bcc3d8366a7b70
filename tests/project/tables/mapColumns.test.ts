import { describe, expect, it } from 'vitest';
import { isTwoWays, needsMark, shownMark, withPoint } from '../../../src/project/tables/decimalMark';
import { bodyOf, mappingQuestions, suggestMapping } from '../../../src/project/tables/mapColumns';
import { tableIn, tableOf } from './support';

function suggested(text: string) {
  const table = tableIn(text);
  const mapping = suggestMapping(table);
  return {
    ...mapping,
    words: mapping.columns.map(({ key, unit }) => (unit === null ? key : `${key} ${unit}`)),
    questions: mappingQuestions(table, mapping),
  };
}

describe('the suggested mapping', () => {
  it.each([
    ['Length (m)', 'length m'],
    ['Length [mm]', 'length mm'],
    ['length, ft', 'length ft'],
    ['Length in cm', 'length cm'],
    ['LEN m', 'length m'],
    ['Ø (mm)', 'width mm'],
    ['Diameter [in]', 'width in'],
    ['Height above the deck (m)', 'aboveDeck m'],
    ['Distance aft of stem / m', 'aftOfStem m'],
    ['CdA (m²)', 'dragArea m2'],
    ['Port or starboard', 'side'],
    ['Photo No.', 'photo'],
    ['Qty', 'count'],
    ['Measured / estimated', 'basis'],
    ['Colour', null],
  ])('reads the head %j as %j', (head, word) => {
    expect(suggested(`Item\t${head}\nPole\t1\n`).words).toEqual(['item', word]);
  });

  it('takes merged heads and a title for heads, and leaves out what stands above the rows', () => {
    const table = tableOf('merged-heads.csv');
    const mapping = suggestMapping(table);
    expect(mapping.columns.map(({ key }) => key)).toEqual([
      'item',
      'zone',
      'shape',
      'width',
      'length',
      'aftOfStem',
      'aboveDeck',
      'side',
      'count',
    ]);
    expect(bodyOf(table, mapping).map(({ cells }) => cells[0])).toEqual([
      'Stanchions',
      'Whip aerial',
      'Pole on deck',
      'Radome',
    ]);
    expect(mapping.decimalMark).toBe('comma');
    expect(mappingQuestions(table, mapping)).toEqual([]);
  });

  it('takes a merged head along where the one below it says nothing by itself', () => {
    expect(suggested('Item;Diameter;;Place;\n;(mm);;from bow (m);z (m)\nPole;30;;1;2\n').words).toEqual([
      'item',
      'width mm',
      null,
      'aftOfStem m',
      'aboveDeck m',
    ]);
  });

  it('reads a row of units below the heads', () => {
    const table = tableOf('pasted-tabs.txt');
    const { columns, headNumbers } = suggestMapping(table);
    expect(columns.map(({ unit }) => unit)).toEqual([null, 'mm', 'm', 'm', null, null, null]);
    expect(headNumbers).toEqual([1, 2]);
  });

  it('asks for units that nothing says, where a number stands without one', () => {
    const table = tableOf('no-units.csv');
    expect(mappingQuestions(table, suggestMapping(table))).toEqual([
      { kind: 'unit', column: 2, key: 'width' },
      { kind: 'unit', column: 3, key: 'length' },
    ]);
    expect(suggested('Item;Length\nPole;2 m\n').questions).toEqual([]);
  });

  it('asks which column names the items, and maps nothing, where there are no heads', () => {
    const { columns, headNumbers, questions } = suggested('Pole;30;2\nPost;25;1\n');
    expect(columns.every(({ key }) => key === null)).toBe(true);
    expect([headNumbers, questions]).toEqual([[], [{ kind: 'item' }]]);
  });

  it('asks for the decimal mark only where numbers can be read in two ways', () => {
    const table = tableOf('numbers-two-ways.txt');
    expect(mappingQuestions(table, suggestMapping(table))).toEqual([{ kind: 'decimalMark' }]);
    expect(suggested('Item,Length (m)\nPole,1.234\n')).toMatchObject({ decimalMark: 'point', questions: [] });
  });

  it('gives each meaning to one column, the better match', () => {
    expect(suggested('Name\tItem\tLength of sheet\tLength (m)\nx\ty\t1\t2\n').words).toEqual([
      null,
      'item',
      null,
      'length m',
    ]);
  });
});

describe('the decimal mark', () => {
  it.each([
    [['2,5', '3'], 'comma'],
    [['1.234,5'], 'comma'],
    [['0,250'], 'comma'],
    [['2.5'], 'point'],
    [['1,234.5'], 'point'],
    [['-.5'], 'point'],
    [['1.234', '12'], null],
    [['2,5', '2.5'], null],
  ] as const)('of %j is %j', (numbers, mark) => {
    expect(shownMark(numbers)).toBe(mark);
  });

  it('is needed for numbers that are read in two ways alone', () => {
    expect([isTwoWays('1.234'), isTwoWays('1,234 mm'), isTwoWays('0.234'), isTwoWays('1.2345')]).toEqual([
      true,
      true,
      false,
      false,
    ]);
    expect([needsMark(['1.234']), needsMark(['1.234', '2,5']), needsMark(['7'])]).toEqual([
      true,
      false,
      false,
    ]);
  });

  it.each([
    ['1.234,5', 'comma', '1234.5'],
    ['1.234', 'comma', '1234'],
    ['1,234', 'comma', '1.234'],
    ['1,234', 'point', '1234'],
    ['1,234,567.8', 'point', '1234567.8'],
    ['1.234', 'point', '1.234'],
  ] as const)('makes %j with a %s %j', (text, mark, written) => {
    expect(withPoint(text, mark)).toBe(written);
  });
});
