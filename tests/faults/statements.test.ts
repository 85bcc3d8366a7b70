import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readMutationSurvey } from './mutationSurvey';
import { drawnOrder, isListed, statementsOf } from './statements';
import { wilsonRange } from './wilson';

const root = join(import.meta.dirname, '../..');
const text = `import { a } from './a';
export interface Size {
  readonly b: number;
}
const c = 2;
/** Doubles. */
export function double(x: number): number {
  return 2 * x;
}
`;

describe('the statements that mutants are drawn from', () => {
  it('are those that do something, by their lines, without their comments', () => {
    expect(statementsOf('one.ts', text).map(({ fromLine, toLine }) => [fromLine, toLine])).toEqual([
      [5, 5],
      [7, 9],
    ]);
  });

  it('come in an order that the seed draws, the same however they are listed', () => {
    const lines = Array.from({ length: 40 }, (_, i) => `const c${i} = ${i};`).join('\n');
    const statements = statementsOf('many.ts', lines);
    const drawn = drawnOrder(statements, 'one');
    expect(drawn).not.toEqual(statements);
    expect(drawnOrder([...statements].reverse(), 'one')).toEqual(drawn);
    expect(drawnOrder(statements, 'two')).not.toEqual(drawn);
  });
});

describe('the list of what is mutated', () => {
  it('is read as Stryker reads it: the last pattern that fits decides', () => {
    const patterns = ['src/**/*.ts', '!src/**/*Table.ts', 'src/b/oneTable.ts'];
    expect(isListed('src/a.ts', patterns)).toBe(true);
    expect(isListed('src/b/c/twoTable.ts', patterns)).toBe(false);
    expect(isListed('src/b/oneTable.ts', patterns)).toBe(true);
    expect(isListed('tests/a.ts', patterns)).toBe(false);
  });

  it('leaves out what has no formula, and nothing else of the core', () => {
    const { mutate } = JSON.parse(readFileSync(join(root, 'stryker.config.json'), 'utf8')) as {
      mutate: string[];
    };
    expect(mutate).toEqual([
      'src/physics/**/*.ts',
      '!src/physics/quantity.ts',
      '!src/physics/sources.ts',
      '!src/physics/section/fairingTable.ts',
      '!src/physics/fitting/workingQuantities.ts',
    ]);
  });
});

describe('the range of a share', () => {
  it('is Wilson’s: 81 of 100 is 72 to 88 %, none of 10 is 0 to 28 %', () => {
    expect(wilsonRange(81, 100).low).toBeCloseTo(0.722, 3);
    expect(wilsonRange(81, 100).high).toBeCloseTo(0.875, 3);
    expect(wilsonRange(0, 10).low).toBeCloseTo(0, 12);
    expect(wilsonRange(0, 10).high).toBeCloseTo(0.278, 3);
  });
});

describe('the survey of mutants that is kept', () => {
  it('speaks of lines that are there', () => {
    for (const { file, original } of readMutationSurvey()?.survivors ?? []) {
      const flat = readFileSync(join(root, file), 'utf8').replace(/\s+/g, ' ');
      expect(flat, original).toContain(original.replace(/\.\.\.$/, ''));
    }
  });
});
