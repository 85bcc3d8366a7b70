import { describe, expect, it } from 'vitest';
import type { BenchConditionRow, Measures, Ranged } from '../../../src/project/bench/benchTypes';
import { courseWords } from '../../../src/project/bench/courseWords';

function measures(ranged: Ranged): Measures {
  return {
    dragAlongWindN: ranged,
    trackPowerW: ranged,
    sideForceN: ranged,
    fullPriceW: ranged,
    heelingMomentNm: ranged,
  };
}

function condition(name: string, best: number, low: number, high: number): BenchConditionRow {
  const saving = measures({ best, low, high });
  return { conditionId: name, name, weight: 0.5, values: saving, saving };
}

const sure = condition('Upwind', 20, 10, 30);
const lost = condition('Reach', -80, -100, -40);

function said(rows: readonly BenchConditionRow[], best: number, low: number, high: number): string {
  return courseWords(rows, measures({ best, low, high }), 'trackPowerW', 'W');
}

describe('the words over the course', () => {
  it('say that the doubts leave a win or a loss of one condition open, and name no condition that is sure', () => {
    expect(said([condition('Run', 20, -34, 21), lost], -30, -45, -12)).toBe(
      'It wins in Run and loses in Reach. The doubts leave it open in Run. Over the course it costs 30.0\u00a0W of track power (12.0–45.0\u00a0W).',
    );
    expect(said([sure, condition('Run', -2, -5, 1)], 9, 1, 14)).toContain(
      'The doubts leave it open in Run. Over',
    );
  });

  it('say so of every condition at once', () => {
    const rows = [condition('Run', 20, -34, 21), condition('Reach', 3, -1, 4)];
    expect(said(rows, 12, -18, 13)).toMatch(
      /^It loses in no condition\. The doubts leave it open in every condition\..*may be the other way round\.$/,
    );
  });

  it('say nothing of doubts where every win and loss is sure, or where there is neither', () => {
    expect(said([sure, lost], -30, -45, -12)).not.toContain('doubts');
    expect(said([condition('Run', 0, -1, 1), sure], 10, 5, 15)).not.toContain('doubts');
  });
});
