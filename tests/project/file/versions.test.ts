import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { openProject } from '../../../src/project/file/openProject';
import { saveProject } from '../../../src/project/file/saveProject';
import { currentVersion } from '../../../src/project/file/schema';
import { shippedUpgraders, upgradeStepByStep, type Upgrader } from '../../../src/project/file/upgraders';

const folder = 'tests/data/projects';
const fixtures = readdirSync(folder).filter((file) => file.endsWith('.json'));
const goodText = readFileSync(`${folder}/every-kind.json`, 'utf8');
const good = JSON.parse(goodText) as Record<string, unknown>;

describe('files of this version and older ones', () => {
  it.each(fixtures)('%s opens', (file) => {
    const text = readFileSync(`${folder}/${file}`, 'utf8');
    const result = openProject(text);
    expect(result.ok ? [] : result.errors).toEqual([]);
    // A file of the newest version is byte for byte what saving writes.
    if (result.ok && result.upgradedFrom === null)
      expect(saveProject(result.project)).toEqual({ ok: true, text });
  });

  it('every version that was ever shipped has a file here, so that every upgrader is exercised', () => {
    const versions = new Set(
      fixtures.map(
        (file) => (JSON.parse(readFileSync(`${folder}/${file}`, 'utf8')) as { version: number }).version,
      ),
    );
    for (let version = 1; version <= currentVersion; version += 1) expect(versions).toContain(version);
    for (const version of shippedUpgraders.keys()) expect(versions).toContain(version);
  });
});

describe('the version number', () => {
  it('refuses a newer file and shows both numbers', () => {
    expect(openProject(JSON.stringify({ format: 'windtoll-project', version: 7, thing: [] }))).toEqual({
      ok: false,
      stage: 'version',
      errors: [
        {
          path: 'version',
          message:
            'the file has version 7, newer than version 2, the newest this Windtoll reads: open it with a newer Windtoll',
        },
      ],
    });
  });

  it.each([
    [undefined, 'must be a whole number; it is missing'],
    ['1', 'must be a whole number; it is "1"'],
    [1.5, 'must be a whole number; it is 1.5'],
    [null, 'must be a whole number; it is null'],
    [0, 'the file has version 0, and no way is known from version 0 to 1'],
    [-1e300, 'the file has version -1e+300, and no way is known from version -1e+300 to -1e+300'],
  ])('refuses %s', (version, message) => {
    expect(openProject(JSON.stringify({ ...good, version }))).toEqual({
      ok: false,
      stage: 'version',
      errors: [{ path: 'version', message }],
    });
  });
});

const lastVersion = currentVersion - 1;

describe('upgrading', () => {
  it('opens an older file through the table and says which version it came from', () => {
    const { name, ...rest } = good;
    const older = JSON.stringify({ ...rest, title: name, version: lastVersion });
    const upgrader: Upgrader = ({ title, ...others }) => ({ ...others, name: title });
    expect(openProject(older, new Map([[lastVersion, upgrader]]))).toEqual({
      ...openProject(goodText),
      upgradedFrom: lastVersion,
    });
  });

  it('writes down what version 1 took for granted', () => {
    const first = readFileSync(`${folder}/every-kind-1.json`, 'utf8');
    const result = openProject(first);
    if (!result.ok) throw new Error('the file of version 1 does not open');
    const { project, upgradedFrom } = result;
    expect(upgradedFrom).toBe(1);
    expect(project.methods).toMatchObject({ inclined: 'cross-flow', fairing: 'turbulent' });
    const shapes = [
      ...project.fittings.map(({ shape }) => shape),
      ...project.plans.flatMap(({ items }) =>
        items.flatMap(({ change }) => (change.kind === 'typed' ? [change.shape] : [])),
      ),
    ];
    const kinds = new Set(shapes.map(({ kind }) => kind));
    expect([...kinds].sort()).toEqual(['bluffBody', 'measuredArea', 'roundBar']);
    for (const shape of shapes) {
      if (shape.kind === 'measuredArea') expect(shape.pullTest).toBeNull();
      if (shape.kind === 'bluffBody') expect(shape.cornerRadiusM).toBe(0);
    }
  });

  it('goes step by step, in order, and counts the version itself', () => {
    const step =
      (mark: string): Upgrader =>
      (older) => ({ ...older, marks: `${String(older['marks'])}${mark}` });
    const table = new Map([
      [1, step('a')],
      [2, step('b')],
      [3, step('c')],
    ]);
    expect(upgradeStepByStep({ marks: '', version: 1 }, 1, 4, table)).toEqual({
      ok: true,
      content: { marks: 'abc', version: 4 },
    });
    expect(upgradeStepByStep({ marks: '', version: 3 }, 3, 4, table)).toEqual({
      ok: true,
      content: { marks: 'c', version: 4 },
    });
  });

  it('stops where a step is missing', () => {
    expect(upgradeStepByStep({}, 1, 3, new Map([[1, (older) => older]]))).toEqual({
      ok: false,
      message: 'the file has version 1, and no way is known from version 2 to 3',
    });
  });

  it('answers an upgrader that throws with an error of the version step', () => {
    const upgrader: Upgrader = () => {
      throw new TypeError('boat is no object');
    };
    expect(openProject(JSON.stringify({ ...good, version: 0 }), new Map([[0, upgrader]]))).toEqual({
      ok: false,
      stage: 'version',
      errors: [{ path: 'version', message: 'could not be upgraded from version 0: boat is no object' }],
    });
  });

  it('checks what an upgrader made like any other file', () => {
    const upgrader: Upgrader = (older) => ({ ...older, boat: 7 });
    expect(
      openProject(JSON.stringify({ ...good, version: lastVersion }), new Map([[lastVersion, upgrader]])),
    ).toMatchObject({
      ok: false,
      stage: 'schema',
      errors: [{ path: 'boat' }],
    });
  });
});
