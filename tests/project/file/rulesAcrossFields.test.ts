import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { openProject } from '../../../src/project/file/openProject';
import { withValue, written, type Steps } from './paths';

const good: unknown = JSON.parse(readFileSync('tests/data/projects/every-kind.json', 'utf8'));

function errorsOf(content: unknown) {
  const result = openProject(JSON.stringify(content));
  return result.ok ? [] : result.errors;
}

function pathsOfErrors(content: unknown): readonly string[] {
  return errorsOf(content).map(({ path }) => path);
}

describe('rules across fields', () => {
  it.each<readonly [string, Steps, unknown, string, string]>([
    [
      'a low above the best',
      ['fittings', 3, 'shape', 'dragAreaM2', 'low'],
      0.35,
      '',
      'must not be above best (0.3); it is 0.35',
    ],
    [
      'a high below the best',
      ['fittings', 1, 'shape', 'coefficient', 'high'],
      1,
      '',
      'must not be below best (1.1); it is 1',
    ],
    [
      'a deck line that goes back',
      ['boat', 'deckLine', 2, 'aftOfStemM'],
      6,
      '',
      'must be more than 6, the station before; it is 6',
    ],
    ['an unknown zone', ['fittings', 0, 'zoneId'], 'stern', '', 'there is no zone with the id "stern"'],
    [
      'an unknown shelter',
      ['fittings', 3, 'shelteredByFittingId'],
      'mast',
      '',
      'there is no fitting with the id "mast"',
    ],
    [
      'its own shelter',
      ['fittings', 3, 'shelteredByFittingId'],
      'bag',
      '',
      'a fitting cannot shelter itself',
    ],
    [
      'an unknown condition of a duty',
      ['fittings', 1, 'dutyFraction', 'byCondition', 0, 'conditionId'],
      'reach',
      '',
      'there is no condition with the id "reach"',
    ],
    [
      'an unknown condition of the profile',
      ['profile', 'entries', 0, 'conditionId'],
      'reach',
      '',
      'there is no condition with the id "reach"',
    ],
    [
      'a condition twice in the profile',
      ['profile', 'entries', 1, 'conditionId'],
      'upwind',
      '',
      '"upwind" is taken already, by profile.entries[0].conditionId',
    ],
    [
      'an unknown fitting of an item',
      ['plans', 0, 'items', 0, 'fittingId'],
      'mast',
      '',
      'there is no fitting with the id "mast"',
    ],
    [
      'an unknown shape to take',
      ['plans', 1, 'items', 0, 'change', 'fittingId'],
      'mast',
      '',
      'there is no fitting with the id "mast"',
    ],
    [
      'an unknown condition of an item',
      ['plans', 0, 'items', 1, 'change', 'dutyFraction', 'byCondition', 0, 'conditionId'],
      'reach',
      '',
      'there is no condition with the id "reach"',
    ],
    [
      'an unknown shelter of an item',
      ['plans', 0, 'items', 3, 'change', 'shelteredByFittingId'],
      'mast',
      '',
      'there is no fitting with the id "mast"',
    ],
    [
      'an item id twice',
      ['plans', 0, 'items', 1, 'id'],
      'slim',
      '',
      '"slim" is taken already, by plans[0].items[0].id',
    ],
    [
      'no hours at all',
      ['profile', 'entries'],
      [{ conditionId: 'run', hours: 0 }],
      '',
      'the hours must add up to more than 0',
    ],
    [
      'a taped bar without length',
      ['fittings', 0, 'placement', 'lengthM'],
      0,
      '',
      'must be at least 0.001 for a bar; it is 0',
    ],
    [
      'a bar that ends where it starts',
      ['fittings', 1, 'placement', 'end'],
      { xM: 3, yM: 0, zM: 1.6 },
      '',
      'a bar must end at least 0.001 m from its start',
    ],
    [
      'a last bar that ends where it starts',
      ['fittings', 2, 'placement', 'row', 'lastEnd'],
      { xM: 5, yM: 0.4, zM: 1.7 },
      '',
      'a bar must end at least 0.001 m from its start',
    ],
    [
      'a bar moved to a point',
      ['plans', 1, 'items', 2, 'change', 'placement', 'end'],
      { xM: 5, yM: 0, zM: 1.5 },
      '',
      'a bar must end at least 0.001 m from its start',
    ],
    [
      'a pair on the centreline',
      ['fittings', 1, 'placement', 'pair'],
      true,
      '',
      'a pair on the centreline would count the same place twice; set it to false or move it off',
    ],
    [
      'a roughness thicker than the bar',
      ['fittings', 2, 'shape', 'surface', 'roughnessM'],
      0.004,
      '',
      'a roughness of 0.004 m is more than half the diameter (0.006 m)',
    ],
    [
      'a breath of wind',
      ['conditions', 1, 'wind', 'speedMs'],
      1e-9,
      '',
      'must be 0 or at least 0.01; it is 1e-9',
    ],
    [
      'a storm among the waves',
      ['conditions', 1, 'wind'],
      { kind: 'true', speedMs: 40, heightM: 2, angleFromCourseDeg: 90 },
      '.speedMs',
      'must be at most 30 when given at a height below 5 m; it is 40',
    ],
  ])('%s', (_name, steps, value, below, message) => {
    const result = openProject(JSON.stringify(withValue(good, steps, value)));
    expect(result).toMatchObject({ ok: false, stage: 'domain', errors: [{ path: written(steps) + below }] });
    const errors = result.ok ? [] : result.errors;
    expect(errors).toHaveLength(1);
    expect(errors[0]?.message).toBe(message);
  });

  it('a finish thicker than the bar, also in the shape that an item types in', () => {
    const shape = withValue(
      withValue((good as { fittings: readonly { shape: unknown }[] }).fittings[2]?.shape, ['surface'], {
        kind: 'finish',
        finish: 'brickwork',
      }),
      ['diameter', 'm'],
      0.005,
    );
    for (const steps of [
      ['fittings', 2, 'shape'],
      ['plans', 1, 'items', 3, 'change', 'shape'],
    ]) {
      const message = 'a roughness of 0.003 m is more than half the diameter (0.005 m)';
      const path = `${written(steps)}.surface.finish`;
      expect(errorsOf(withValue(good, steps, shape))).toEqual([{ path, message }]);
    }
  });

  it('a point needs no length', () => {
    const moved = withValue(good, ['fittings', 3, 'placement', 'end'], { xM: 4, yM: 0.5, zM: 1.5 });
    expect(errorsOf(moved)).toEqual([]);
  });

  it('counts the members of rows and pairs over all fittings, and those that a plan moves', () => {
    const content = good as { fittings: readonly unknown[]; plans: readonly { items: readonly unknown[] }[] };
    const row = withValue(content.fittings[0], ['placement', 'row', 'count'], 500);
    const many = Array.from({ length: 20 }, (_, i) => withValue(row, ['id'], `f${i}`));
    expect(pathsOfErrors({ ...content, fittings: [...content.fittings, ...many.slice(1)] })).toEqual([]);
    expect(pathsOfErrors({ ...content, fittings: [...content.fittings, ...many] })).toEqual(['fittings']);
    const placement = (row as { placement: unknown }).placement;
    const item = content.plans[1]?.items[2];
    const mover = (i: number) =>
      withValue(withValue(item, ['id'], `m${i}`), ['change', 'placement'], placement);
    const movers = Array.from({ length: 20 }, (_, i) => mover(i));
    expect(pathsOfErrors(withValue(good, ['plans', 0, 'items'], movers.slice(1)))).toEqual([]);
    expect(pathsOfErrors(withValue(good, ['plans', 0, 'items'], movers))).toEqual(['plans[0].items']);
  });
});
