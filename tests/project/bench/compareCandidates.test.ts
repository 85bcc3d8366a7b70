import { describe, expect, it } from 'vitest';
import { apparentWindAt } from '../../../src/physics/condition/sailingState';
import { benchMembers, memberMiddle, typedMember } from '../../../src/project/bench/benchMember';
import { startCandidate, type Candidate } from '../../../src/project/bench/candidates';
import { compareCandidates } from '../../../src/project/bench/compareCandidates';
import { addCandidateItem } from '../../../src/project/bench/candidateItem';
import type { Project } from '../../../src/project/file/schema';
import type { LedgerBasis } from '../../../src/project/ledger/ledgerTypes';
import { solveProjectCondition } from '../../../src/project/ledger/conditionSummary';
import type { BenchMember, BenchRow } from '../../../src/project/bench/benchTypes';
import { basesOf, demoPath, everyKindPath, ledgerOf, projectAt } from '../../properties/projects';
import { comparison, manyCandidates, memberNamed } from './support';

const doubted = ['trackPowerW', 'sideForceN', 'fullPriceW', 'heelingMomentNm'] as const;

/** The project with a candidate in a plan of its own, and a reason given where one is asked for. */
function withCandidate(project: Project, member: BenchMember, candidate: Candidate, basis: LedgerBasis) {
  const answer = addCandidateItem(project, { member, candidate, planId: null, basis });
  if ('refused' in answer) throw new Error(answer.refused.message);
  const plans = answer.project.plans.map((plan, i, all) =>
    i < all.length - 1
      ? plan
      : {
          ...plan,
          items: plan.items.map((item) => ({
            ...item,
            safetyReason: { person: 'A. Tester', reason: 'test' },
          })),
        },
  );
  return { ...answer.project, plans };
}

function expectClose(actual: number, expected: number, scale: number): void {
  expect(Math.abs(actual - expected)).toBeLessThanOrEqual(1e-9 * Math.max(scale, 1e-9));
}

function expectLedgers(row: BenchRow, project: Project, member: BenchMember, basis: LedgerBasis): void {
  const plan = project.plans.at(-1);
  const ledger = ledgerOf(project, basis, plan?.id ?? null);
  const own = ledger.rows.find(({ fittingId }) => fittingId === member.fitting.id);
  if (own === undefined) throw new Error('no row');
  for (const key of doubted) {
    const scale = Math.abs(own.before.outcome[key]) + Math.abs(own.after.outcome[key]);
    expectClose(row.values[key].best, own.after.outcome[key], scale);
    expectClose(row.values[key].low, own.after.ranges.all[key].low, scale);
    expectClose(row.values[key].high, own.after.ranges.all[key].high, scale);
    expectClose(row.saving[key].best, own.saving.change[key], scale);
    expectClose(row.saving[key].low, own.saving.ranges.all[key].low, scale);
    expectClose(row.saving[key].high, own.saving.ranges.all[key].high, scale);
  }
}

describe.each([demoPath, everyKindPath])('candidates of %s', (path) => {
  const project = projectAt(path);
  const members = benchMembers(project);

  it(
    'are what the ledger says when they stand in a plan, values, savings and ranges',
    { timeout: 60_000 },
    () => {
      let compared = 0;
      for (const [i, member] of members.entries()) {
        const bases = basesOf(project);
        const basis = bases[i % bases.length] ?? { kind: 'profile' };
        const candidates = manyCandidates(member).slice(1);
        const { rows } = comparison(project, member, candidates, basis);
        expect(rows).toHaveLength(candidates.length);
        for (const [k, row] of rows.entries()) {
          const candidate = candidates[k];
          if (candidate === undefined) continue;
          expectLedgers(row, withCandidate(project, member, candidate, basis), member, basis);
          compared += 1;
        }
      }
      expect(compared).toBe(5 * members.length);
    },
  );
});

describe('a comparison', () => {
  const project = projectAt(demoPath);
  const pole = memberNamed(project, 'Stern pole');
  const [first] = project.conditions;
  if (first === undefined) throw new Error('no condition');
  const basis = { kind: 'condition', conditionId: first.id } as const;

  it('over the course is the same whatever the basis, and equals the profile basis', () => {
    const candidates = manyCandidates(pole);
    const byCondition = comparison(project, pole, candidates, basis).rows;
    const byProfile = comparison(project, pole, candidates, { kind: 'profile' }).rows;
    byProfile.forEach((row, i) => {
      expect(byCondition[i]?.weighted).toEqual({ values: row.values, saving: row.saving });
    });
  });

  it('weighs its conditions to the answer over the course', () => {
    for (const { perCondition, weighted } of comparison(project, pole, manyCandidates(pole), basis).rows) {
      expect(perCondition.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 12);
      for (const key of ['dragAlongWindN', 'trackPowerW', 'fullPriceW'] as const) {
        const sum = perCondition.reduce((all, { weight, saving }) => all + weight * saving[key].best, 0);
        expect(weighted?.saving[key].best).toBeCloseTo(sum, 9);
      }
    }
  });

  it('finds nothing between the member as it stands and itself', () => {
    const [bare] = comparison(project, pole, manyCandidates(pole), basis).rows;
    for (const { best, low, high } of Object.values(bare?.saving ?? {})) {
      expect([best, low, high]).toEqual([0, 0, 0]);
    }
    expect(bare?.words).toBeNull();
  });

  it('takes the drag of one bar along the free wind at its middle', () => {
    const [bare] = comparison(project, pole, manyCandidates(pole), basis).rows;
    const { best } = solveProjectCondition(project, first).states;
    const row = ledgerOf(project, basis).rows.find(({ fittingId }) => fittingId === pole.fitting.id);
    const { forceTrackXN = 0, forceTrackYN = 0 } = row?.before.outcome ?? {};
    const middle = memberMiddle(project, pole);
    const heightM = row?.before.parts[0]?.trace.members[0]?.heightM ?? 0;
    const { angleFromCourseRad } = apparentWindAt(best, heightM);
    const across = best.tackSign * forceTrackYN;
    expect(middle.zM).toBeGreaterThan(0);
    expect(bare?.values.dragAlongWindN.best).toBeCloseTo(
      -forceTrackXN * Math.cos(angleFromCourseRad) + across * Math.sin(angleFromCourseRad),
      6,
    );
  });

  it('says in words when a fixed fairing wins somewhere and what that comes to on the whole', () => {
    const rows = comparison(project, pole, manyCandidates(pole), basis).rows;
    for (const { words, perCondition, weighted, kind } of rows) {
      if (kind === 'bare' || weighted === null) continue;
      const losses = perCondition.filter(({ saving }) => saving.fullPriceW.best < 0);
      for (const { name } of losses)
        expect(words).toMatch(losses.length < perCondition.length ? name : /no condition/);
      expect(words).toContain(weighted.saving.fullPriceW.best >= 0 ? 'it saves' : 'it costs');
    }
  });

  it('computes anew only the candidate that changed', () => {
    const candidates = manyCandidates(pole);
    const before = comparison(project, pole, candidates, basis).rows;
    const after = comparison(
      project,
      pole,
      candidates.map((one) => ({ ...one, name: `${one.name}!`, cost: 5 })),
      basis,
    ).rows;
    after.forEach((row, i) => {
      expect(row.values).toBe(before[i]?.values);
    });
  });

  it('leaves out a candidate with a problem, and answers an unknown condition in words', () => {
    const bad = { ...startCandidate('ellipse', pole, 'x'), chordM: Number.NaN } as Candidate;
    expect(comparison(project, pole, [bad], basis).rows).toEqual([]);
    const answer = compareCandidates(project, pole, [], { kind: 'condition', conditionId: 'nowhere' });
    expect(answer).toEqual({ ok: false, message: 'There is no condition nowhere.' });
  });

  it('compares a typed member that no file holds', () => {
    const typed = typedMember(project, {
      diameterM: 0.05,
      lengthM: 2,
      footAboveDeckM: 0.5,
      leanAftDeg: 0,
      leanOutDeg: 0,
      ends: ['surface', 'free'],
    });
    const rows = comparison(project, typed, manyCandidates(typed), basis).rows;
    expect(rows).toHaveLength(6);
    expect(rows[1]?.saving.dragAlongWindN.best).toBeGreaterThan(
      0.5 * (rows[0]?.values.dragAlongWindN.best ?? 0),
    );
  });
});

describe('an ellipse of equal axes', () => {
  it('is the smooth tube in every measure', () => {
    const project = projectAt(demoPath);
    for (const member of benchMembers(project)) {
      const { shape } = member.fitting;
      if (shape.kind !== 'roundBar' || shape.surface.kind !== 'smooth' || shape.coefficient !== null)
        continue;
      const sizes = { chordM: shape.diameter.m, thicknessM: shape.diameter.m };
      const round = { ...startCandidate('ellipse', member, 'e'), ...sizes } as Candidate;
      const { rows } = comparison(project, member, [startCandidate('bare', member, 'b'), round], {
        kind: 'profile',
      });
      for (const key of ['dragAlongWindN', ...doubted] as const) {
        const bare = rows[0]?.values[key].best ?? NaN;
        expectClose(rows[1]?.values[key].best ?? NaN, bare, Math.abs(bare));
      }
    }
  });
});
