import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { FittingInput } from '../../src/physics/fitting/fittingInput';
import type { Notice } from '../../src/physics/fitting/notice';
import { memberQuantitiesFor } from '../../src/physics/fitting/workingQuantities';
import { boatVector } from '../../src/physics/vector/vector3';
import { between, degree } from './arbitraries';
import { barOf, steadyCondition } from './bars';
import { traceOf } from './support';

function noticeOf(fitting: FittingInput, code: Notice['code']): Notice | null {
  return traceOf(fitting, steadyCondition).notices.find((notice) => notice.code === code) ?? null;
}

describe('a bar is warned of', () => {
  it('a wind nearer to its axis than 45 deg', () => {
    fc.assert(
      fc.property(between(1, 89), (degrees) => {
        fc.pre(Math.abs(degrees - 45) > 0.01);
        const [x, z] = [3 * Math.cos(degrees * degree), 3 * Math.sin(degrees * degree)];
        const bar = barOf(0.03, [{ start: boatVector(0, 0, 2), end: boatVector(x, 0, 2 + z) }]);
        const notice = noticeOf(bar, 'wind-near-axis');
        expect(notice !== null).toBe(degrees < 45);
        if (notice !== null) expect(notice.values['angleRad']).toBeCloseTo(degrees * degree, 10);
      }),
    );
  });

  it('a slenderness below 2, where the tables of its ends begin, or beyond 70, where EN’s stops', () => {
    const slendernesses = fc.oneof(between(1.5, 2.5), between(60, 80), between(0.5, 150));
    fc.assert(
      fc.property(slendernesses, (slenderness) => {
        fc.pre(Math.abs(slenderness - 2) > 1e-3 && Math.abs(slenderness - 70) > 1e-3);
        const ends = ['free', 'free'] as const;
        const bar = barOf(
          0.1,
          [{ start: boatVector(0, 0, 2), end: boatVector(0, 0, 2 + slenderness / 10) }],
          {
            ends,
          },
        );
        expect(noticeOf(bar, 'slenderness-below-table') !== null).toBe(slenderness < 2);
        expect(noticeOf(bar, 'en-slenderness-stops') !== null).toBe(slenderness > 70);
      }),
    );
  });

  it('its members that reach into the water, by their number, and of nothing else', () => {
    const upright = (fromM: number) => ({ start: boatVector(0, 0, fromM), end: boatVector(0, 0, fromM + 2) });
    const bar = (feet: readonly number[]) => barOf(0.03, feet.map(upright));
    expect(noticeOf(bar([-1, -0.5, 1]), 'partly-under-water')?.values).toEqual({ members: 2 });
    expect(noticeOf(bar([-5, 1]), 'partly-under-water')?.values).toEqual({ members: 1 });
    expect(noticeOf(bar([-5, -4]), 'under-water')?.values).toEqual({ members: 2 });
    expect(traceOf(bar([0.5, 1]), steadyCondition).notices).toEqual([]);
  });

  it('a Reynolds number outside its table, and not with a typed coefficient', () => {
    const thin = (diameterM: number, coefficient: number | null) =>
      barOf(diameterM, [{ start: boatVector(0, 0, 2), end: boatVector(0, 0, 4) }], {
        coefficient:
          coefficient === null
            ? null
            : { best: coefficient, low: coefficient, high: coefficient, areaBase: 'd L', source: '' },
      });
    expect(noticeOf(thin(1e-7, null), 'reynolds-outside-table')).not.toBeNull();
    expect(noticeOf(thin(1e-7, 1.2), 'reynolds-outside-table')).toBeNull();
    expect(noticeOf(thin(0.03, null), 'reynolds-outside-table')).toBeNull();
  });
});

describe('the working of a power law', () => {
  it('names IEC 61400-3 for its exponent of 0.14, and no source for another', () => {
    const { shape } = barOf(0.03, []);
    const sourceAt = (exponent: number) =>
      memberQuantitiesFor(shape, 'dnv', { kind: 'power', exponent }).trueWindMs.source;
    expect(sourceAt(0.14)).toBe('iec-61400-3');
    expect(sourceAt(0.11)).toBeUndefined();
    expect(sourceAt(0.154)).toBeUndefined();
  });
});
