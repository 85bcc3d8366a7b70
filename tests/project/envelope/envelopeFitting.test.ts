import { describe, expect, it } from 'vitest';
import { addFitting } from '../../../src/project/edit/fittingEdits';
import { checkEnvelope } from '../../../src/project/envelope/checkEnvelope';
import { fittingFromEnvelope } from '../../../src/project/envelope/envelopeFitting';
import { shapeIds, type EnvelopeTexts } from '../../../src/project/envelope/envelopeTexts';
import { readEnvelope } from '../../../src/project/envelope/readEnvelope';
import {
  blankBoat,
  blankCondition,
  blankProject,
  defaultMethods,
} from '../../../src/project/file/blankParts';
import type { Project, ProjectFitting } from '../../../src/project/file/schema';
import { ledgerOf } from '../../properties/projects';

const speedMs = 11;

/** A boat at rest in a uniform, dry standard wind from ahead. */
const project: Project = blankProject({
  conditions: [
    blankCondition({
      id: 'c',
      name: 'Uniform',
      wind: { kind: 'true', speedMs, heightM: 10, angleFromCourseDeg: 0 },
      boatSpeedMs: 0,
      air: { temperatureC: 15, pressurePa: 101_325, relativeHumidity: 0 },
    }),
  ],
  methods: { ...defaultMethods, windLaw: { kind: 'uniform' } },
});

function partsOf(texts: EnvelopeTexts): Omit<ProjectFitting, 'id'> {
  const answer = fittingFromEnvelope(readEnvelope(texts).numbers, blankBoat, 'deck');
  if (!answer.ok) throw new Error(answer.message);
  return answer.parts;
}

function added(texts: EnvelopeTexts): Project {
  const answer = addFitting(project, partsOf(texts));
  if ('refused' in answer) throw new Error(`${answer.refused.path}: ${answer.refused.message}`);
  return answer.project;
}

/** Air power, because a boat at rest has no track power; a uniform wind is met at every height. */
function airPowerW(texts: EnvelopeTexts): number {
  return ledgerOf(added(texts), { kind: 'condition', conditionId: 'c' }).forces.before.outcome.airPowerW;
}

const sizes = { width: '30 mm', length: '0.7 m', depth: '60 mm', area: '0.021 m2' } as const;

describe('an envelope made a fitting', () => {
  it.each(shapeIds.filter((shape) => shape !== 'plate'))(
    'is in the ledger what the check says: %s',
    (shape) => {
      const texts = { ...sizes, shape, count: '16', speed: `${speedMs} m/s`, areaOf: 'each', ends: 'free' };
      const { handbook } = checkEnvelope(readEnvelope(texts).numbers);
      expect(Math.abs(airPowerW(texts) / (handbook?.airPowerW.best ?? NaN) - 1)).toBeLessThan(1e-3);
    },
  );

  it.each([
    ['0.2 m', '1.2 m'],
    ['1.2 m', '0.2 m'],
  ])('stands a plate of %s by %s on its shorter side', (width, length) => {
    const texts = { shape: 'plate', width, length, speed: `${speedMs} m/s`, ends: 'free' };
    const { handbook } = checkEnvelope(readEnvelope(texts).numbers);
    expect(Math.abs(airPowerW(texts) / (handbook?.airPowerW.best ?? NaN) - 1)).toBeLessThan(1e-3);
  });

  it('keeps the drag area of an estimate without a shape', () => {
    const texts = { area: '0.8 m2', coefficient: '0.5', speed: `${speedMs} m/s` };
    expect(airPowerW(texts)).toBeCloseTo((1.225 / 2) * speedMs ** 3 * 0.4, 1);
  });

  it('stands as a row where its place is said to be a guess, estimated, with the envelope’s numbers in its note', () => {
    const { name, note, placement } = partsOf({
      ...sizes,
      shape: 'roundBar',
      count: '16',
      coefficient: '0.6',
      power: '170 W',
    });
    expect(name).toBe('16 × round bar 30.0\u00a0mm × 0.700\u00a0m');
    expect(note).toContain('is a guess');
    expect(note).toContain('Cd 0.60, 170\u00a0W');
    expect(placement).toMatchObject({ kind: 'endPoints', basis: 'estimated', row: { count: 16 } });
  });

  it.each<readonly [string, EnvelopeTexts]>([
    ['its length', { shape: 'roundBar', width: '30 mm' }],
    ['a shape with its sizes', { speed: '12 m/s' }],
    ['a shape with its sizes', {}],
  ])('is refused with what is missing: %s', (words, texts) => {
    const answer = fittingFromEnvelope(readEnvelope(texts).numbers, blankBoat, 'deck');
    expect(answer).toMatchObject({ ok: false, message: expect.stringContaining(words) as string });
  });
});
