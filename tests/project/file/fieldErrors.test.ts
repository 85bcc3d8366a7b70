import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { openProject } from '../../../src/project/file/openProject';
import { damaged, isPlainObject, pathsTo, withValue, written, type Steps } from './paths';

const good: unknown = JSON.parse(readFileSync('tests/data/projects/every-kind.json', 'utf8'));

function errorsOf(content: unknown) {
  const result = openProject(JSON.stringify(content));
  return result.ok ? [] : result.errors;
}

function pathsOfErrors(content: unknown): readonly string[] {
  return errorsOf(content).map(({ path }) => path);
}

const leaves = pathsTo(good, (value) => typeof value !== 'object' || value === null);
const objects = pathsTo(good, isPlainObject);
const lists = pathsTo(good, (value) => Array.isArray(value));
const keys = leaves.concat(objects, lists).filter((steps) => typeof steps.at(-1) === 'string');

describe('one wrong field gives one error, with its path', () => {
  it('starts from a file that opens and has every part to damage', () => {
    expect(errorsOf(good)).toEqual([]);
    expect(leaves.length).toBeGreaterThan(300);
    expect(objects.length).toBeGreaterThan(80);
  });

  it('for every value replaced by a list', () => {
    for (const steps of leaves) expect(pathsOfErrors(withValue(good, steps, []))).toEqual([written(steps)]);
  });

  it('for every list or object replaced by a text', () => {
    for (const steps of lists.concat(objects).filter(({ length }) => length > 0)) {
      expect(pathsOfErrors(withValue(good, steps, 'oops'))).toEqual([written(steps)]);
    }
  });

  it('for every object replaced by a list', () => {
    for (const steps of objects.filter(({ length }) => length > 0)) {
      expect(pathsOfErrors(withValue(good, steps, [[]]))).toEqual([written(steps)]);
    }
  });

  it('for every key left out', () => {
    for (const steps of keys) {
      const without = damaged(good, steps, (holder, key) => Reflect.deleteProperty(holder, key));
      expect(pathsOfErrors(without)).toEqual([written(steps)]);
      expect(errorsOf(without)[0]?.message).toContain('missing');
    }
  });

  it('for an unknown key in every object', () => {
    for (const steps of objects) {
      const more = [...steps, 'windage'];
      expect(pathsOfErrors(withValue(good, more, 1))).toEqual([written(more)]);
    }
  });
});

describe('the words of an error', () => {
  it.each<readonly [string, Steps, unknown, string]>([
    [
      'a number out of range',
      ['fittings', 0, 'exposure', 'best'],
      1.6,
      'must be a number from 0 to 1.5; it is 1.6',
    ],
    [
      'a text for a number',
      ['fittings', 3, 'dutyFraction', 'default'],
      '0.5',
      'must be a number from 0 to 1; it is "0.5"',
    ],
    [
      'a length of zero',
      ['fittings', 0, 'shape', 'diameter', 'm'],
      0,
      'must be a number from 0.0001 to 200; it is 0',
    ],
    [
      'a wrong type where null may stand',
      ['fittings', 0, 'massKg'],
      '14',
      'must be a number from 0 to 1000000; it is "14" (null is accepted too)',
    ],
    [
      'an unknown kind',
      ['fittings', 0, 'shape', 'kind'],
      'wing',
      'must be one of "roundBar", "wire", "ellipticalBar", "rectangularBar", "fairing", "sphere", "net", "measuredArea", "bluffBody"; it is "wing"',
    ],
    ['a short deck line', ['boat', 'deckLine'], [], 'must be a list of 3 to 200 elements; it has 0'],
    ['an unknown key', ['zones', 0, 'nmae'], 'Bow', 'is not a key of this place; known here: id, name'],
    ['a reserved id', ['zones', 0, 'id'], 'constructor', 'must not be the reserved word "constructor"'],
    [
      'an id with a space',
      ['zones', 0, 'id'],
      'the bow',
      'must be 1 to 40 letters, digits, hyphens or underscores; it is "the bow"',
    ],
    ['an empty name', ['zones', 0, 'name'], '  ', 'must not be empty'],
    ['a long name', ['zones', 0, 'name'], 'n'.repeat(201), 'must have at most 200 characters; it has 201'],
    [
      'an escape sequence in a name',
      ['zones', 0, 'name'],
      'a\u001b[2J',
      'must not hold the unprintable character "\\u001b" (place 2)',
    ],
    [
      'a mark that turns the reading direction',
      ['notes'],
      'x\u202ey',
      'must not hold the unprintable character "\\u202e" (place 2)',
    ],
    [
      'a row of one',
      ['fittings', 0, 'placement', 'row', 'count'],
      1,
      'must be a whole number from 2 to 500; it is 1',
    ],
    [
      'half a member',
      ['fittings', 0, 'placement', 'row', 'count'],
      2.5,
      'must be a whole number from 2 to 500; it is 2.5',
    ],
  ])('%s', (_name, steps, value, message) => {
    expect(errorsOf(withValue(good, steps, value))).toEqual([{ path: written(steps), message }]);
  });

  it('puts a strange key into quotes and cuts it', () => {
    const [error] = errorsOf(withValue(good, ['boat', `a b\u202e${'x'.repeat(100)}`], 1));
    expect(error?.path).toBe(`boat["a b\\u202e${'x'.repeat(36)}…"]`);
  });

  it('refuses a key named __proto__ like any other unknown key', () => {
    const text = JSON.stringify(good).replace('"boat":{', '"boat":{"__proto__":{"polluted":1},');
    const result = openProject(text);
    expect(result).toMatchObject({ ok: false, stage: 'schema', errors: [{ path: 'boat.__proto__' }] });
    expect(({} as { polluted?: number }).polluted).toBeUndefined();
  });

  it('refuses a number that JSON can write and a machine cannot hold', () => {
    const text = JSON.stringify(good).replace('"beamM":3.8', '"beamM":1e999');
    expect(openProject(text)).toEqual({
      ok: false,
      stage: 'schema',
      errors: [{ path: 'boat.beamM', message: 'must be a number from 0.1 to 100; it is Infinity' }],
    });
  });
});
