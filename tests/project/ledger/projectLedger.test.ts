import { describe, expect, it } from 'vitest';
import { doubtedKeys } from '../../../src/physics/fitting/change';
import { outcomeKeys } from '../../../src/physics/fitting/outcome';
import { blankCondition, blankPlan, blankProject } from '../../../src/project/file/blankParts';
import type { Project, ProjectFitting } from '../../../src/project/file/schema';
import { projectLedger } from '../../../src/project/ledger/projectLedger';
import type { LedgerBasis } from '../../../src/project/ledger/ledgerTypes';
import {
  box,
  hidden,
  ledgerOf,
  leftOut,
  planOf,
  pole,
  projectWith,
  reach,
  rowOf,
  thin,
} from '../refit/support';

const run = blankCondition({
  id: 'run',
  name: 'Run',
  wind: { kind: 'true', speedMs: 12, heightM: 10, angleFromCourseDeg: 170 },
  boatSpeedMs: 5,
});

const inCondition = (conditionId: string): LedgerBasis => ({ kind: 'condition', conditionId });
const profile: LedgerBasis = { kind: 'profile' };

function projectOf(fittings: readonly ProjectFitting[], changes: Partial<Project> = {}): Project {
  return blankProject({ fittings, conditions: [reach, run], plans: [], ...changes });
}

function profileOf(reachHours: number, runHours: number): Project['profile'] {
  return {
    name: 'Course',
    entries: [
      { conditionId: 'reach', hours: reachHours },
      { conditionId: 'run', hours: runHours },
    ],
  };
}

const asSailed = (project: Project, basis: LedgerBasis) => ledgerOf(project, null, null, basis);

describe('the course profile', () => {
  it('weighs each condition with its hours over all hours', () => {
    const project = projectOf([pole, box], { profile: profileOf(3, 1) });
    const { parts, forces } = asSailed(project, profile);
    expect(parts.map(({ weight }) => weight)).toEqual([0.75, 0.25]);
    const [inReach, inRun] = ['reach', 'run'].map(
      (id) => asSailed(project, inCondition(id)).forces.before.outcome,
    );
    for (const key of outcomeKeys) {
      expect(forces.before.outcome[key]).toBeCloseTo(
        0.75 * (inReach?.[key] ?? NaN) + 0.25 * (inRun?.[key] ?? NaN),
        9,
      );
    }
  });

  it('does not care whether hours are counted in hours or in days', () => {
    const one = asSailed(projectOf([pole], { profile: profileOf(3, 1) }), profile).forces.before;
    const other = asSailed(projectOf([pole], { profile: profileOf(72, 24) }), profile).forces.before;
    expect(other).toEqual(one);
  });

  it('with all its hours in one condition is that condition', () => {
    const project = projectOf([pole, box], { profile: profileOf(7, 0) });
    const { parts, forces } = asSailed(project, profile);
    expect(parts).toHaveLength(1);
    expect(forces.before.outcome).toEqual(asSailed(project, inCondition('reach')).forces.before.outcome);
  });

  it('adds a shared doubt over its conditions with its sign', () => {
    const project = projectOf([pole], { profile: profileOf(1, 1) });
    const mean = asSailed(project, profile).forces.before.doubts.find(({ id }) => id === 'density');
    const each = ['reach', 'run'].map((id) =>
      asSailed(project, inCondition(id)).forces.before.doubts.find((doubt) => doubt.id === 'density'),
    );
    for (const key of doubtedKeys) {
      const expected = each.reduce((sum, doubt) => sum + 0.5 * (doubt?.up[key] ?? NaN), 0);
      expect(mean?.up[key]).toBeCloseTo(expected, 9);
    }
  });
});

describe('duty', () => {
  const used = (fraction: number): ProjectFitting => ({
    ...pole,
    dutyFraction: { default: fraction, byCondition: [] },
  });
  const stowed = {
    dragAreaM2: { best: 0.05, low: 0.04, high: 0.06 },
    place: { xM: 0, yM: 0, zM: 1.3 },
    source: '',
  };

  it('is the share of a condition’s time: the mean goes with it, the deployed newtons stay', () => {
    const whole = rowOf(asSailed(projectOf([used(1)]), inCondition('reach')), 'pole').before;
    const part = rowOf(asSailed(projectOf([used(0.3)]), inCondition('reach')), 'pole').before;
    expect(part.outcome.trackPowerW).toBeCloseTo(0.3 * whole.outcome.trackPowerW, 9);
    expect(part.parts[0]?.trace.deployed).toEqual(whole.parts[0]?.trace.deployed);
  });

  it('of one condition overrides the default there and nowhere else', () => {
    const fitting: ProjectFitting = {
      ...pole,
      dutyFraction: { default: 0.5, byCondition: [{ conditionId: 'run', fraction: 0 }] },
    };
    const project = projectOf([fitting]);
    const dutyIn = (id: string) =>
      rowOf(asSailed(project, inCondition(id)), 'pole').before.parts[0]?.trace.dutyFraction;
    expect(dutyIn('reach')).toBe(0.5);
    expect(dutyIn('run')).toBe(0);
    expect(rowOf(asSailed(project, inCondition('run')), 'pole').before.outcome.trackPowerW).toBe(0);
  });

  it('leaves the stowed state for the rest of the time', () => {
    const trace = (fraction: number) =>
      rowOf(asSailed(projectOf([{ ...used(fraction), stowed }]), inCondition('reach')), 'pole').before
        .parts[0]?.trace;
    const never = trace(0);
    expect(never?.mean).toEqual(never?.stowed);
    expect(never?.stowed.trackPowerW).toBeGreaterThan(0);
    const half = trace(0.5);
    const expected = ((half?.deployed.trackPowerW ?? NaN) + (half?.stowed.trackPowerW ?? NaN)) / 2;
    expect(half?.mean.trackPowerW).toBeCloseTo(expected, 9);
  });
});

describe('ranks', () => {
  const similar: ProjectFitting = { ...pole, id: 'similar', name: 'Similar', shape: { ...thinOf(0.0995) } };

  function thinOf(m: number) {
    if (pole.shape.kind !== 'roundBar') throw new Error('the pole is a bar');
    return { ...pole.shape, diameter: { m, basis: 'measured' as const } };
  }

  it('follow track power, from 1, leaving out excluded fittings', () => {
    const { rows } = asSailed(projectOf([thin, leftOut, box, pole]), inCondition('reach'));
    const ranked = rows.filter(({ rank }) => rank !== null).sort((a, b) => (a.rank ?? 0) - (b.rank ?? 0));
    expect(ranked.map(({ rank }) => rank)).toEqual([1, 2, 3]);
    const powers = ranked.map(({ before }) => before.outcome.trackPowerW);
    expect(powers).toEqual([...powers].sort((a, b) => b - a));
    expect(rows.find(({ fittingId }) => fittingId === 'left-out')?.rank).toBeNull();
  });

  it('are safe where the difference to the next row excludes zero, unsafe where it does not, open for the last', () => {
    const { rows } = asSailed(projectOf([pole, similar, thin]), inCondition('reach'));
    const safety = Object.fromEntries(rows.map((row) => [row.fittingId, row.isRankSafe]));
    // 100 against 99.5 mm, each measured to 2 %: nobody can tell. 100 against 30 mm: anybody can.
    expect(safety).toEqual({ pole: false, similar: true, thin: null });
  });

  it('are safe for nearly equal rows when all they doubt is doubted of both', () => {
    // The same tape, the same tube, one seen free and one in 0.97 of the wind: every shared doubt cancels.
    const exactly = (best: number) => ({ best, low: best, high: best, source: '' });
    const area: ProjectFitting = {
      ...box,
      shape: {
        kind: 'measuredArea',
        dragAreaM2: { best: 0.2, low: 0.2, high: 0.2 },
        provenance: { kind: 'tunnel', source: '' },
        pullTest: null,
      },
    };
    const sheltered = { ...area, id: 'area-b', exposure: exactly(0.97) };
    const { rows } = asSailed(projectOf([area, sheltered]), inCondition('reach'));
    expect(rows[0]?.isRankSafe).toBe(true);
    const [a, b] = rows.map(({ before }) => before.ranges.all.trackPowerW);
    // Their own ranges overlap all the same.
    expect(a?.low).toBeLessThan(b?.high ?? NaN);
  });
});

describe('rows', () => {
  it('keep the file’s order and numbers, and an excluded fitting has neither before nor after', () => {
    const { rows } = asSailed(projectOf([thin, leftOut, pole]), inCondition('reach'));
    expect(rows.map(({ number, fittingId }) => [number, fittingId])).toEqual([
      [1, 'thin'],
      [2, 'left-out'],
      [3, 'pole'],
    ]);
    const excluded = rows[1];
    expect(excluded?.excludedReason).toBe('sold');
    for (const key of outcomeKeys) expect(excluded?.before.outcome[key]).toBe(0);
  });

  it('of an excluded fitting change no total', () => {
    const one = asSailed(projectOf([thin, pole]), inCondition('reach')).forces.before;
    const other = asSailed(projectOf([thin, leftOut, pole]), inCondition('reach')).forces.before;
    expect(other).toEqual(one);
  });

  it('have negative track power where the wind pushes', () => {
    const row = rowOf(asSailed(projectOf([pole]), inCondition('run')), 'pole');
    expect(row.before.outcome.trackPowerW).toBeLessThan(0);
    expect(row.before.outcome.airPowerW).toBeGreaterThan(0);
  });
});

describe('prices and the yardstick', () => {
  const prices = { hullDragPerSideForce: 0.05, driveLostPerHeelingMomentPerM: 0.02, atHeelLimit: true };
  const priced = (changes: Partial<typeof prices>) => ({ ...reach, prices: { ...prices, ...changes } });
  const outcomeWith = (changes: Partial<typeof prices>) =>
    asSailed(projectOf([pole, hidden, box], { conditions: [priced(changes)] }), inCondition('reach')).forces
      .before.outcome;

  it('full price is track power and boat speed times what side force and heeling moment cost', () => {
    const o = outcomeWith({});
    expect(o.fullPriceW).toBeCloseTo(o.trackPowerW + 8 * (0.05 * o.sideForceN + 0.02 * o.heelingMomentNm), 9);
  });

  it('the heeling moment costs at the heel limit only', () => {
    const o = outcomeWith({ atHeelLimit: false });
    expect(o.fullPriceW).toBeCloseTo(o.trackPowerW + 8 * 0.05 * o.sideForceN, 9);
  });

  it('the column appears when one price is given', () => {
    const has = (conditions: Project['conditions']) =>
      asSailed(projectOf([pole], { conditions }), inCondition('reach')).hasFullPrice;
    expect(has([reach])).toBe(false);
    expect(has([priced({})])).toBe(true);
  });

  it('what she pays in all is resistance times speed, and unknown until every condition says', () => {
    const known = { ...reach, totalResistanceN: 500 };
    const total = (conditions: Project['conditions'], basis: LedgerBasis) =>
      asSailed(projectOf([pole], { conditions, profile: profileOf(3, 1) }), basis).totalPaidW;
    expect(total([known, run], inCondition('reach'))).toBe(500 * 8);
    expect(total([known, run], profile)).toBeNull();
    const all = total([known, { ...run, totalResistanceN: 200 }], profile);
    expect(all).toBeCloseTo(0.75 * 500 * 8 + 0.25 * 200 * 5, 9);
  });
});

describe('a question that the project cannot answer', () => {
  const project = projectWith(planOf());

  it.each([
    [
      'a condition that is not there',
      { basis: inCondition('storm'), planId: null, againstPlanId: null },
      'conditions',
    ],
    ['a profile that is not there', { basis: profile, planId: null, againstPlanId: null }, 'profile'],
    [
      'a plan that is not there',
      { basis: inCondition('reach'), planId: 'none', againstPlanId: null },
      'plans',
    ],
    ['a plan to compare with', { basis: inCondition('reach'), planId: null, againstPlanId: 'none' }, 'plans'],
  ] as const)('%s is an error with its place', (_what, question, path) => {
    const answer = projectLedger(project, question);
    expect(answer.ok).toBe(false);
    if (!answer.ok) expect(answer.errors.map((error) => error.path)).toEqual([path]);
  });

  it('an empty project has an empty ledger', () => {
    const empty = projectWith(blankPlan({ id: 'plan', name: 'Plan' }), { fittings: [] });
    const ledger = ledgerOf(empty);
    expect(ledger.rows).toEqual([]);
    for (const key of outcomeKeys) expect(ledger.forces.before.outcome[key]).toBe(0);
    expect(ledger.notices).toEqual([]);
  });
});

describe('the notice about the waves', () => {
  it('stands once per ledger and says how far the wind laws differ in the total', () => {
    const ledger = asSailed(projectOf([pole, thin, box]), inCondition('reach'));
    expect(ledger.notices.map(({ code }) => code)).toEqual(['deck-among-waves']);
    const law = ledger.forces.before.doubts.find(({ id }) => id === 'wind-law');
    const changes = [0, law?.up.airPowerW ?? NaN, law?.down.airPowerW ?? NaN];
    const span = (Math.max(...changes) - Math.min(...changes)) / ledger.forces.before.outcome.airPowerW;
    expect(ledger.notices[0]?.values['spanShare']).toBeCloseTo(span, 12);
    expect(span).toBeGreaterThan(0.001);
  });
});
