import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { openProject } from '../../../src/project/file/openProject';
import { saveProject } from '../../../src/project/file/saveProject';
import type { Project } from '../../../src/project/file/schema';
import { pathsTo, withValue } from './paths';

const goodText = readFileSync('tests/data/projects/every-kind.json', 'utf8');
const good = JSON.parse(goodText) as Record<string, unknown>;

/** A refusal with at least one error, each with words. */
function expectRefused(text: string): void {
  const result = openProject(text);
  expect(result.ok).toBe(false);
  if (result.ok) return;
  expect(result.errors.length).toBeGreaterThan(0);
  expect(result.errors.length).toBeLessThanOrEqual(101);
  for (const { message } of result.errors) expect(message).not.toBe('');
}

describe('what is no project gives errors and no exception', () => {
  it('any text', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        expectRefused(text);
      }),
      { numRuns: 500 },
    );
  });

  it('any JSON', () => {
    fc.assert(
      fc.property(fc.json(), (text) => {
        expectRefused(text);
      }),
      { numRuns: 500 },
    );
  });

  it('any JSON inside our envelope', () => {
    fc.assert(
      fc.property(fc.dictionary(fc.string(), fc.jsonValue()), (content) => {
        expectRefused(JSON.stringify({ ...content, format: 'windtoll-project', version: 1 }));
      }),
      { numRuns: 300 },
    );
  });

  it('a good file cut off anywhere', () => {
    for (let end = 0; end < goodText.trimEnd().length; end += 97) expectRefused(goodText.slice(0, end));
  });

  it('a good file with any value replaced by any other either opens or names an error', () => {
    const everyPath = pathsTo(good, () => true).filter(({ length }) => length > 0);
    fc.assert(
      fc.property(fc.constantFrom(...everyPath), fc.jsonValue(), (steps, value) => {
        const result = openProject(JSON.stringify(withValue(good, steps, value)));
        if (!result.ok) expect(result.errors.length).toBeGreaterThan(0);
      }),
      { numRuns: 1000 },
    );
  });

  it.each([
    ['an empty file', '', '', 'the file is empty'],
    ['white space', ' \n\t', '', 'the file is empty'],
    ['no JSON', 'drag: 12', '', 'the file is not valid JSON'],
    ['deep lists', '['.repeat(1_000_000), '', 'the file nests 1000000 levels deep; at most 40 are read'],
    ['deep objects', '{"a":'.repeat(100_000), '', 'the file nests 100000 levels deep; at most 40 are read'],
    [
      '41 levels',
      `${'['.repeat(41)}${']'.repeat(41)}`,
      '',
      'the file nests 41 levels deep; at most 40 are read',
    ],
    ['a very long file', ' '.repeat(8_000_001).replace(/^ /, '1'), '', 'the file is larger than 8 MB'],
    ['many bytes in few characters', `"${'帆'.repeat(3_000_000)}"`, '', 'the file is larger than 8 MB'],
    ['very many values', `[0${',0'.repeat(1_000_000)}]`, '', 'the file holds more than 1000000 values'],
  ])('%s', (_name, text, path, message) => {
    const result = openProject(text);
    expect(result).toMatchObject({ ok: false, stage: 'parse', errors: [{ path }] });
    expect(result.ok ? '' : result.errors[0]?.message).toContain(message);
  });

  it.each([
    ['a number', '7', '', 'this is no windtoll-project file: it holds 7, not an object'],
    ['a list', '[]', '', 'this is no windtoll-project file: it holds a list, not an object'],
    ['null', 'null', '', 'this is no windtoll-project file: it holds null, not an object'],
    ['another format', '{"format":"x"}', 'format', 'this is no windtoll-project file: its format is "x"'],
    [
      'no format',
      '{"__proto__":{"format":"windtoll-project"}}',
      'format',
      'this is no windtoll-project file: its format is missing',
    ],
  ])('the envelope refuses %s', (_name, text, path, message) => {
    expect(openProject(text)).toEqual({ ok: false, stage: 'envelope', errors: [{ path, message }] });
  });

  it('brackets and quotes inside a text do not count as depth', () => {
    const notes = `${'[{'.repeat(100)}\\"${'\\'.repeat(9)}`;
    const result = openProject(JSON.stringify({ ...good, notes }));
    expect(result).toMatchObject({ ok: true, project: { notes } });
  });

  it('answers a long list with one error and never looks inside', () => {
    const text = JSON.stringify({ ...good, fittings: Array.from({ length: 900_000 }, () => 0) });
    expect(openProject(text)).toEqual({
      ok: false,
      stage: 'schema',
      errors: [{ path: 'fittings', message: 'must be a list of at most 2000 elements; it has 900000' }],
    });
  });

  it('cuts a flood of errors and says so', () => {
    const unknown = Object.fromEntries(Array.from({ length: 300 }, (_, i) => [`k${i}`, 0]));
    const flood = openProject(JSON.stringify({ ...good, zones: Array.from({ length: 200 }, () => unknown) }));
    expect(flood.ok ? [] : flood.errors).toHaveLength(101);
    expect(flood.ok ? '' : flood.errors.at(-1)?.message).toMatch(/further errors are not shown$/);
  });

  it('saves no garbage either, not even one that holds itself', () => {
    const ring: Record<string, unknown> = { ...good };
    ring['boat'] = ring;
    expect(saveProject(ring as unknown as Project).ok).toBe(false);
    for (const value of [null, undefined, 7, 'x', [], new Map(), () => 0]) {
      expect(saveProject(value as unknown as Project).ok).toBe(false);
    }
  });
});

it('the checks are not compiled at run time, which a strict page policy forbids', () => {
  expect(openProject(goodText).ok).toBe(true);
  expect(z.config().jitless).toBe(true);
});
