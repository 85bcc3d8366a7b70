import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { openProject } from '../../../src/project/file/openProject';
import { dragAreaOf } from '../../../src/project/file/shapeRules';
import { withValue, written, type Steps } from './paths';

const good = JSON.parse(readFileSync('tests/data/projects/every-kind.json', 'utf8')) as {
  readonly fittings: readonly { readonly id: string }[];
};

function at(id: string, ...steps: Steps): Steps {
  return ['fittings', good.fittings.findIndex((fitting) => fitting.id === id), 'shape', ...steps];
}

describe('the sizes of a shape against each other', () => {
  it.each<readonly [string, Steps, unknown, string]>([
    [
      'an oval thicker than its chord',
      at('oval-post', 'thickness', 'm'),
      0.09,
      'must not be above the chord (0.08); it is 0.09. Swap the two and turn the section by 90°',
    ],
    [
      'a corner rounder than half the side',
      at('box-post', 'cornerRadiusM'),
      0.03,
      'must not be above half the smallest side (0.02); it is 0.03',
    ],
    [
      'twine thicker than the net',
      at('netting', 'wireDiameter', 'm'),
      0.7,
      "must not be above the net's smaller side (0.6); it is 0.7",
    ],
  ])('refuse %s', (_what, steps, value, message) => {
    const result = openProject(JSON.stringify(withValue(good, steps, value)));
    const where = steps.at(-1) === 'm' ? steps.slice(0, -1) : steps;
    expect(result.ok ? [] : result.errors).toEqual([{ path: written(where), message }]);
  });

  it('refuse a sphere rougher than half of it', () => {
    const small = withValue(good, at('dome', 'diameter', 'm'), 0.1);
    const rough = withValue(small, at('dome', 'surface'), { kind: 'roughness', roughnessM: 0.06 });
    const result = openProject(JSON.stringify(rough));
    expect(result.ok ? [] : result.errors.map(({ path }) => path)).toEqual([
      written(at('dome', 'surface', 'roughnessM')),
    ]);
  });

  it('refuse a drag area that its pull test does not give, at the number', () => {
    const result = openProject(JSON.stringify(withValue(good, at('pulled', 'dragAreaM2', 'best'), 0.51)));
    const [error] = result.ok ? [] : result.errors;
    expect(error?.path).toBe(written(at('pulled', 'dragAreaM2', 'best')));
    expect(error?.message).toMatch(/^the pull test gives 0\.508\d*; it is 0\.51$/);
  });

  it('refuse a pull test whose readings are not above the tare', () => {
    const result = openProject(JSON.stringify(withValue(good, at('pulled', 'pullTest', 'tareN'), 40)));
    expect(result.ok ? [] : result.errors).toEqual([
      { path: written(at('pulled', 'pullTest')), message: 'the mean of the readings must be above the tare' },
    ]);
  });
});

it('a pull test by hand: 12.25 N net in 10 m/s at 1.225 kg/m3 is 0.2 m2', () => {
  const answer = dragAreaOf({
    forcesN: [13.25],
    tareN: 1,
    pullAngleDeg: 0,
    windSpeedMs: 10,
    windSpeedDoubtFraction: 0.1,
    densityKgM3: 1.225,
    forceMeterDoubtN: 0,
  });
  if (!answer.ok) throw new Error(answer.message);
  expect(answer.dragAreaM2.best).toBeCloseTo(0.2, 12);
  // A wind of 9 m/s would make it 0.2 / 0.81, one of 11 m/s 0.2 / 1.21.
  expect(answer.dragAreaM2.high).toBeCloseTo(0.2 / 0.81, 12);
  expect(answer.dragAreaM2.low).toBeCloseTo(0.2 / 1.21, 12);
});
