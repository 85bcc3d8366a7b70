import { describe, expect, it } from 'vitest';
import { asSailed } from '../../../src/project/core/fittingState';
import { between, blankProject, point, roundBar } from '../../../src/project/file/blankParts';
import { applyItem } from '../../../src/project/refit/applyItem';
import { applied, item, pole, removed, slim, statuses, stowedAway } from './support';

const moved = { kind: 'moved', placement: between(point(1, -1, 1.5), point(1, 1, 1.9)) } as const;
const toPoint = { kind: 'moved', placement: between(point(1, 0, 1.5), point(1, 0, 1.5)) } as const;

/** The second of two items, or the only one, stands in contradiction at `field`. */
function expectContradiction(plan: ReturnType<typeof applied>, field: string, words: string): void {
  const last = plan.steps.at(-1);
  expect(last?.status).toBe('contradiction');
  expect(last?.contradiction?.field).toBe(field);
  expect(last?.contradiction?.message).toContain(words);
  expect(last?.after).toBeNull();
  expect(last?.aloneAfter).toBeNull();
}

describe('an item contradicts', () => {
  it('an earlier removal, whatever it wants', () => {
    for (const change of [removed, slim(0.05), stowedAway, moved]) {
      expectContradiction(
        applied(item('a', 'pole', removed), item('b', 'pole', change)),
        'fittingId',
        'removed Pole',
      );
    }
  });

  it('an earlier stowing for good, unless it removes', () => {
    for (const change of [slim(0.05), stowedAway, moved]) {
      const plan = applied(item('a', 'pole', stowedAway), item('b', 'pole', change));
      expectContradiction(plan, 'fittingId', 'stowed Pole for good');
    }
    const plan = applied(item('a', 'pole', stowedAway), item('b', 'pole', removed));
    expect(statuses(plan)).toEqual(['counted', 'counted']);
  });

  it('the shape: a body has no diameter to slim', () => {
    expectContradiction(applied(item('a', 'box', slim(0.1))), 'change.diameter', 'Box is no round bar');
  });

  it('the size: slimmer means smaller than the diameter it has by then', () => {
    expectContradiction(applied(item('a', 'pole', slim(0.1))), 'change.diameter', 'not smaller');
    expectContradiction(applied(item('a', 'pole', slim(0.12))), 'change.diameter', 'not smaller');
    const twice = applied(item('a', 'pole', slim(0.05)), item('b', 'pole', slim(0.07)));
    expectContradiction(twice, 'change.diameter', 'not smaller');
    expect(twice.after.get('pole')?.fitting.shape).toMatchObject({ diameter: { m: 0.05 } });
  });

  it('the surface: no bar is rougher than half its diameter', () => {
    const rough = {
      ...pole,
      shape: { ...roundBar(0.1), surface: { kind: 'roughness', roughnessM: 0.004 } },
    } as const;
    const at = (diameterM: number) => {
      const change = slim(diameterM);
      const states = new Map([['pole', asSailed(rough)]]);
      return applyItem(blankProject({ fittings: [rough] }), 'plan', item('a', 'pole', change), states);
    };
    expect(at(0.008).ok).toBe(true);
    expect(at(0.0079)).toMatchObject({
      ok: false,
      contradiction: {
        field: 'change.diameter',
        message: expect.stringContaining('rougher than half') as string,
      },
    });
  });

  it('the surface, by its finish: rust of 2 mm needs more than 4 mm', () => {
    const rusty = {
      ...pole,
      shape: { ...roundBar(0.1), surface: { kind: 'finish', finish: 'rust' } },
    } as const;
    const states = new Map([['pole', asSailed(rusty)]]);
    const applied = (diameterM: number) =>
      applyItem(blankProject({ fittings: [rusty] }), 'plan', item('a', 'pole', slim(diameterM)), states).ok;
    expect([applied(0.004), applied(0.0039)]).toEqual([true, false]);
  });

  it('the ledger: a fitting left out of the sums has nothing to save', () => {
    expectContradiction(applied(item('a', 'left-out', removed)), 'fittingId', 'left out of the sums');
  });

  it('the file: a fitting that is not there', () => {
    expectContradiction(applied(item('a', 'nobody', removed)), 'fittingId', 'no fitting nobody');
  });

  it('itself: a fitting cannot take its own shape, nor one that is left out', () => {
    const shapeOf = (fittingId: string) => ({ kind: 'shapeOf', fittingId }) as const;
    expectContradiction(applied(item('a', 'pole', shapeOf('pole'))), 'change.fittingId', 'its own shape');
    expectContradiction(applied(item('a', 'pole', shapeOf('left-out'))), 'change.fittingId', 'left out');
  });

  it('the placement: a bar needs a length', () => {
    expectContradiction(applied(item('a', 'pole', toPoint)), 'change.placement', 'needs a length');
    const barOnPoint = applied(item('a', 'box', { kind: 'shapeOf', fittingId: 'pole' }));
    expectContradiction(barOnPoint, 'change.fittingId', 'stands at a point');
    const typed = applied(item('a', 'box', { kind: 'typed', shape: pole.shape, source: '' }));
    expectContradiction(typed, 'change.shape', 'stands at a point');
  });

  it('the shelter: what is to give it must be there by then, and not be the fitting itself', () => {
    const sheltered = (shelteredByFittingId: string) =>
      ({
        kind: 'sheltered',
        exposure: { best: 0.4, low: 0.3, high: 0.6, source: '' },
        exposureLeeward: null,
        shelteredByFittingId,
      }) as const;
    const field = 'change.shelteredByFittingId';
    expectContradiction(applied(item('a', 'pole', sheltered('pole'))), field, 'cannot shelter itself');
    expectContradiction(applied(item('a', 'pole', sheltered('left-out'))), field, 'not there');
    for (const change of [removed, stowedAway]) {
      const gone = applied(item('a', 'box', change), item('b', 'pole', sheltered('box')));
      expectContradiction(gone, field, 'not there');
    }
    // The other way round the shelter stands when it is named; its loss is a notice on the row, not an error.
    const later = applied(item('a', 'pole', sheltered('box')), item('b', 'box', removed));
    expect(statuses(later)).toEqual(['counted', 'counted']);
  });

  it('nothing when what stood in its way is switched off', () => {
    const plan = applied(item('a', 'pole', removed, { on: false }), item('b', 'pole', slim(0.05)));
    expect(statuses(plan)).toEqual(['off', 'counted']);
  });

  it('alone: the items after it run on as if it were not there', () => {
    const plan = applied(
      item('a', 'box', slim(0.1)),
      item('b', 'pole', slim(0.05)),
      item('c', 'box', removed),
    );
    expect(statuses(plan)).toEqual(['contradiction', 'counted', 'counted']);
    expect(plan.after.get('pole')?.fitting.shape).toMatchObject({ diameter: { m: 0.05 } });
    expect(plan.after.get('box')?.gone).toBe('removed');
  });
});
