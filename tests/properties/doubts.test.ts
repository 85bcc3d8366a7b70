import { describe, expect, it } from 'vitest';
import { doubtChange, type DoubtChange } from '../../src/physics/doubt/doubtChange';
import { rangesOf } from '../../src/physics/doubt/doubts';
import { doubtedKeys, type Change } from '../../src/physics/fitting/change';
import { zeroChange } from '../setup/zeroChange';
import { drawnRanges } from './randomDraws';
import { basesOf, basisName, demoPath, everyKindPath, ledgerOf, projectAt } from './projects';

const draws = 20_000;
/** Of the range's width: the model's own tolerance. 20,000 draws place an end to about 0.5 % of it. */
const tolerance = 0.05;

/** The ends of the combined range against the drawn one, entry by entry, as shares of the width. */
function expectDrawnRange(best: Change, doubts: readonly DoubtChange[]): void {
  const ranges = rangesOf(best, doubts).all;
  const drawn = drawnRanges(best, doubts, draws, 20_000);
  for (const key of doubtedKeys) {
    const { low, high } = ranges[key];
    const widest = Math.max(high - best[key], best[key] - low);
    // An entry that no doubt reaches has a range of no width.
    if (widest <= 1e-9) continue;
    const missLow = (drawn[key].low - low) / (high - low);
    const missHigh = (drawn[key].high - high) / (high - low);
    expect
      .soft(Math.abs(missLow), `${key}: drawn low end off by ${missLow} of the width`)
      .toBeLessThan(tolerance);
    expect
      .soft(Math.abs(missHigh), `${key}: drawn high end off by ${missHigh} of the width`)
      .toBeLessThan(tolerance);
  }
}

describe.each([demoPath, everyKindPath])(
  '20,000 random draws of the doubts, within a twentieth of the width, %s',
  (path) => {
    const project = projectAt(path);
    const plans = project.plans.map(({ id }) => id);

    it.each(basesOf(project).map((basis) => [basisName(basis), basis] as const))(
      'agree with the combined range of the total in %s',
      (_name, basis) => {
        const { before } = ledgerOf(project, basis).forces;
        expectDrawnRange(before.outcome, before.doubts);
      },
    );

    it.each(
      basesOf(project).flatMap((basis) => plans.map((plan) => [plan, basisName(basis), basis] as const)),
    )('agree with the combined range of the saving by plan %s in %s', (plan, _name, basis) => {
      const { saving } = ledgerOf(project, basis, plan).forces;
      expectDrawnRange(saving.change, saving.doubts);
    });
  },
);

const change = (watts: number): Change => ({ ...zeroChange(), trackPowerW: watts });
const doubt = (id: string, up: number, down: number): DoubtChange =>
  doubtChange(id, change(up), change(down));

describe('combining doubts', () => {
  it('one source is its own range, to both sides', () => {
    const { low, high } = rangesOf(change(100), [doubt('own:a:length', 8, -3)]).all.trackPowerW;
    expect(low).toBeCloseTo(97, 10);
    expect(high).toBeCloseTo(108, 10);
  });

  it.each([1, 2, 3, 5, 10, 40])('%d even sources of one size add in squares, as drawn', (count) => {
    const doubts = Array.from({ length: count }, (_, i) => doubt(`own:${i}:length`, 10, -10));
    const { high } = rangesOf(change(100), doubts).all.trackPowerW;
    expect(high).toBeCloseTo(100 + 10 * Math.sqrt(count), 1);
    expectDrawnRange(change(100), doubts);
  });

  it.each([1, 2, 3, 5, 10, 40])('%d sources that only go up agree with their draws', (count) => {
    expectDrawnRange(
      change(100),
      Array.from({ length: count }, (_, i) => doubt(`own:${i}:length`, 10, 0)),
    );
  });

  it.each([3, 5, 10, 40])('%d lopsided sources, one of them large, agree with their draws', (count) => {
    const small = Array.from({ length: count - 1 }, (_, i) => doubt(`own:${i}:length`, 3, -1));
    expectDrawnRange(change(100), [doubt('wind-law', 0, -10), ...small]);
  });

  it('a source that goes the same way in both states has that side only', () => {
    const { low, high } = rangesOf(change(100), [doubt('wind-law', -20, -35)]).all.trackPowerW;
    expect(low).toBeCloseTo(65, 10);
    expect(high).toBeCloseTo(100, 10);
  });

  it('air and items are told apart and together make the whole', () => {
    const doubts = [doubt('wind-speed', 30, -30), doubt('ends', 40, 0)];
    const { air, item, all } = rangesOf(change(0), doubts);
    expect(air.trackPowerW.high).toBeCloseTo(30, 10);
    expect(item.trackPowerW.high).toBeCloseTo(40, 10);
    expect(all.trackPowerW.low).toBeLessThan(0);
    expect(all.trackPowerW.high).toBeGreaterThan(40);
    expect(all.trackPowerW.high).toBeLessThan(70);
  });
});
