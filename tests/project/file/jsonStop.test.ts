import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { jsonStop } from '../../../src/project/file/jsonStop';
import { openProject } from '../../../src/project/file/openProject';

function isJson(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

/** JSON with one stretch of it replaced by something else. */
const damaged = fc
  .tuple(
    fc.json(),
    fc.nat(),
    fc.nat(3),
    fc.string({ maxLength: 3, unit: fc.constantFrom(...Array.from('{}[]",:\\u0e-.t \n')) }),
  )
  .map(([text, from, length, put]) => {
    const at = from % (text.length + 1);
    return text.slice(0, at) + put + text.slice(at + length);
  });

describe('where a text stops being JSON', () => {
  it('is nowhere exactly when the parser takes it', () => {
    fc.assert(
      fc.property(damaged, (text) => {
        expect(jsonStop(text) === null).toBe(isJson(text));
      }),
      { numRuns: 3000 },
    );
  });

  it('is the first character that cannot go on: what stands before can be made whole', () => {
    fc.assert(
      fc.property(damaged, (text) => {
        const stop = jsonStop(text);
        if (stop === null) return;
        // The text up to there ends too soon, and no sooner.
        expect(jsonStop(text.slice(0, stop)) ?? stop).toBe(stop);
      }),
      { numRuns: 1000 },
    );
  });

  it.each([
    ['{"a": 1,}', 8],
    ['{"a" 1}', 5],
    ['[1 2]', 3],
    ['[01]', 2],
    ['[1.]', 3],
    ['[-]', 2],
    ['[1e+]', 4],
    ['trux', 3],
    ['"a\nb"', 2],
    ['"\\x"', 2],
    ['"\\u12g4"', 5],
    ['[1]]', 3],
    ['[', 1],
    ['"open', 5],
    ["{'a': 1}", 1],
  ])('%j stops at %i', (text, stop) => {
    expect(jsonStop(text)).toBe(stop);
  });

  it('is no matter of length: a long unfinished text is read in one pass', () => {
    const text = `"${'a'.repeat(5_000_000)}`;
    expect(jsonStop(text)).toBe(text.length);
  });
});

describe('a broken file', () => {
  const good = readFileSync('tests/data/projects/every-kind.json', 'utf8');

  function messageOf(text: string): string {
    const result = openProject(text);
    return result.ok ? '' : (result.errors[0]?.message ?? '');
  }

  it('names line and column of the place, whatever the parser says of it', () => {
    const lines = good.split('\n');
    lines[4] = `  ;${lines[4] ?? ''}`;
    const message = 'the file is not valid JSON at line 5, column 3';
    expect(messageOf(lines.join('\n'))).toBe(message);
    const parse = JSON.parse;
    JSON.parse = () => {
      throw new SyntaxError('words of another parser');
    };
    try {
      expect(messageOf(lines.join('\n'))).toBe(message);
    } finally {
      JSON.parse = parse;
    }
  });

  it('that was cut off says that it ends too soon', () => {
    expect(messageOf('{\n  "name":')).toBe(
      'the file is not valid JSON: it ends too soon, at line 2, column 10',
    );
  });
});
