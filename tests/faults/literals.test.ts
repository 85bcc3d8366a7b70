import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { everyNth, literalsOf, withFault } from './literals';
import { relatedTests } from './relatedTests';
import { readSurvey } from './survey';

const root = join(import.meta.dirname, '../..');

function openConstants(text: string): string[] {
  return literalsOf('sample.ts', text)
    .filter(({ excluded }) => excluded === null)
    .map((literal) => literal.text);
}

describe('the constants of a file', () => {
  it('are the numbers of its formulas and tables', () => {
    expect(openConstants('const drag = 1.2 * Math.log10(2e5) + values[3]!;')).toEqual(['1.2', '2e5']);
    expect(openConstants('const nodes = [[1, 11.9], [2, 0.93]] as const;')).toEqual([
      '1',
      '11.9',
      '2',
      '0.93',
    ]);
  });

  it('are not zeros, places in a list, bounds of a loop or a search, types, or guards of a logarithm', () => {
    expect(openConstants('let sum = 0; for (let i = 1; i < 3; i += 1) sum += list[i - 1]!;')).toEqual([]);
    expect(openConstants('while (i < nodes.length - 2 && nodes[i + 1]! <= x) i += 7;')).toEqual(['7']);
    expect(openConstants('type Side = 1 | -1; const log = Math.log(Math.max(x, 1e-3));')).toEqual([]);
  });

  it('have a reason wherever they are left alone', () => {
    const left = literalsOf('sample.ts', 'const a = list[2]; const b = 0;');
    expect(left.map(({ excluded }) => excluded)).toEqual(['place in a list', 'zero times anything is zero']);
  });

  it('are multiplied where they stand, and nothing else changes', () => {
    const text = 'const a = 2e5; const b = 2e5;';
    const [, second] = literalsOf('sample.ts', text);
    if (second === undefined) throw new Error('two constants were planted');
    expect(withFault(text, second)).toBe('const a = 2e5; const b = 220000.00000000003;');
  });
});

describe('a sample of the constants', () => {
  it('counts on over the ends of files and leaves no file out', () => {
    const constants = [
      ...literalsOf('first.ts', 'const a = [1, 2, 3, 4];'),
      ...literalsOf('second.ts', 'const b = [5, 6, 7];'),
      ...literalsOf('third.ts', 'const c = [8, 9, 10, 11];'),
    ];
    expect(everyNth(constants, 3).map(({ text }) => text)).toEqual(['1', '4', '7', '10']);
    expect(everyNth(constants, 7).map(({ text }) => text)).toEqual(['1', '6', '8']);
    expect(everyNth(constants, 1)).toEqual(constants);
  });
});

describe('the tests that are asked', () => {
  it('are those of published numbers first, then the one named like the file, and none without a way to it', () => {
    const tests = relatedTests(root, 'src/physics/body/sphereTable.ts');
    const published = tests.filter((test) => test.startsWith('tests/published/'));
    expect(tests.slice(0, published.length)).toEqual(published);
    expect(published).toContain('tests/published/published.test.ts');
    expect(tests[published.length]).toBe('tests/properties/sphere.test.ts');
    expect(tests).not.toContain('tests/properties/roomAboutPivot.test.ts');
  });

  it('are those of published numbers and of properties alone', () => {
    const tests = relatedTests(root, 'src/physics/strut/strut.ts');
    expect(tests).toContain('tests/properties/strut.test.ts');
    for (const test of tests) expect(test).toMatch(/^tests\/(published|properties)\//);
  });
});

describe('the survey that is kept', () => {
  it('speaks of files and lines that are there', () => {
    const survey = readSurvey();
    for (const { file } of survey?.files ?? []) expect(existsSync(join(root, file)), file).toBe(true);
    for (const { file, context } of survey?.survivors ?? []) {
      expect(readFileSync(join(root, file), 'utf8'), context).toContain(context);
    }
  });
});
