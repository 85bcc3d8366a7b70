import { describe, expect, it } from 'vitest';
import { combinedEnds } from '../../../src/physics/doubt/combinedEnds';
import { inputDoubts, itemForces, layFitting } from '../../../src/physics/fitting/itemForces';
import { deckLineOf, fittingToPhysics } from '../../../src/project/core/fittingToPhysics';
import { benchCrossings } from '../../../src/project/bench/benchCrossings';
import { candidateState } from '../../../src/project/bench/benchMember';
import { sweepDifference, valuesBetween } from '../../../src/project/bench/benchSweep';
import { currencies, type SweepOver } from '../../../src/project/bench/benchTypes';
import { startCandidate, type Candidate } from '../../../src/project/bench/candidates';
import { sweepStates } from '../../../src/project/bench/sweepStates';
import { demoPath, ledgerOf, projectAt } from '../../properties/projects';
import { comparison, manyCandidates, memberNamed, sweepOf } from './support';

const project = projectAt(demoPath);
const pole = memberNamed(project, 'Stern pole');
const sweepsOver: readonly SweepOver[] = ['apparentAngle', 'apparentSpeed', 'boatSpeed'];

describe('a sweep', () => {
  it.each(project.conditions.map(({ name }) => name))('at its present place is the ledger in %s', (name) => {
    const condition = project.conditions.find((one) => one.name === name);
    if (condition === undefined) throw new Error(name);
    const { id: conditionId, tack } = condition;
    const row = ledgerOf(project, { kind: 'condition', conditionId }).rows.find(
      ({ fittingId }) => fittingId === pole.fitting.id,
    );
    const { trackPowerW = NaN, sideForceN = NaN, fullPriceW = NaN } = row?.before.outcome ?? {};
    for (const over of sweepsOver) {
      const states = sweepStates(project, pole, { conditionId, over, tack });
      const state = candidateState(pole, startCandidate('bare', pole, 'b'));
      if (states === null || states.presentAt === null || state === null) throw new Error('no present place');
      const values = valuesBetween(
        project,
        state,
        conditionId,
        states.points,
      )(states.pointAt(states.presentAt));
      expect(values.trackPowerW).toBeCloseTo(trackPowerW, 7);
      expect(values.sideForceN).toBeCloseTo(sideForceN, 7);
      expect(values.fullPriceW).toBeCloseTo(fullPriceW, 7);
    }
  });

  it('has 181 angles from ahead to astern, and no present place on the other tack', () => {
    const [condition] = project.conditions;
    if (condition === undefined) throw new Error('no condition');
    const other = condition.tack === 'port' ? 'starboard' : 'port';
    const question = { conditionId: condition.id, over: 'apparentAngle', tack: other } as const;
    const sweep = sweepOf(project, pole, startCandidate('bare', pole, 'b'), question);
    expect(sweep.xs).toHaveLength(181);
    expect([sweep.xs[0], sweep.xs[180]]).toEqual([0, Math.PI]);
    expect(sweep.presentAt).toBeNull();
  });

  it('has, where its input doubts are worked out, the item ranges of the ledger', () => {
    const [condition] = project.conditions;
    if (condition === undefined) throw new Error('no condition');
    const { id: conditionId, tack } = condition;
    const placed = manyCandidates(pole)[2] as Candidate;
    const sweep = sweepOf(project, pole, placed, { conditionId, over: 'boatSpeed', tack });
    const at = 28;
    const boatSpeedMs = sweep.xs[at] ?? 0;
    const faster = {
      ...project,
      conditions: project.conditions.map((one) => (one.id === conditionId ? { ...one, boatSpeedMs } : one)),
    };
    const wind = condition.wind.kind;
    expect(wind).toBe('true');
    const [row] = comparison(faster, pole, [placed], { kind: 'condition', conditionId }).rows;
    const { best, low, high } = sweep.bands.trackPowerW;
    expect(best[at]).toBeCloseTo(row?.values.trackPowerW.best ?? NaN, 7);
    // The ledger's range has the air's doubts as well.
    expect(low[at]).toBeGreaterThan(row?.values.trackPowerW.low ?? NaN);
    expect(high[at]).toBeLessThan(row?.values.trackPowerW.high ?? NaN);
  });

  it('differs from itself by nothing, doubts included', () => {
    const question = {
      conditionId: project.conditions[0]?.id ?? '',
      over: 'apparentAngle',
      tack: 'port',
    } as const;
    const sweep = sweepOf(project, pole, manyCandidates(pole)[1] as Candidate, question);
    for (const { best, low, high } of Object.values(sweepDifference(sweep, sweep))) {
      expect([...best, ...low, ...high].every((value) => value === 0)).toBe(true);
    }
  });

  it('is remembered by shape: a new name, mass or cost computes nothing', () => {
    const question = {
      conditionId: project.conditions[0]?.id ?? '',
      over: 'apparentAngle',
      tack: 'port',
    } as const;
    const candidate = manyCandidates(pole)[1] as Candidate;
    const sweep = sweepOf(project, pole, candidate, question);
    const renamed = { ...candidate, name: 'Other', massKg: 3, cost: 9 };
    expect(sweepOf(project, pole, renamed, question)).toBe(sweep);
  });
});

describe('crossings', () => {
  const names = ['Stern pole', 'Outriggers', 'Masthead aerial'];

  it.each(names)(
    'of %s are those of a fine scan, in every currency and sweep',
    { timeout: 60_000 },
    (name) => {
      const member = memberNamed(project, name);
      const condition = project.conditions[names.indexOf(name) % project.conditions.length];
      if (condition === undefined) throw new Error('no condition');
      const { id: conditionId, tack } = condition;
      const bare = candidateState(member, startCandidate('bare', member, 'b'));
      for (const over of sweepsOver) {
        const question = { conditionId, over, tack };
        const states = sweepStates(project, member, question);
        if (states === null || bare === null) throw new Error('no states');
        const [from, to] = [states.xs[0] ?? 0, states.xs.at(-1) ?? 0];
        for (const candidate of manyCandidates(member).slice(1)) {
          const state = candidateState(member, candidate);
          if (state === null) throw new Error('no state');
          const [bareAt, otherAt] = [bare, state].map((one) =>
            valuesBetween(project, one, conditionId, states.points),
          );
          const steps = 2400;
          const scan = Array.from({ length: steps + 1 }, (_, i) => {
            const x = from + ((to - from) * i) / steps;
            const point = states.pointAt(x);
            return { x, a: bareAt?.(point), b: otherAt?.(point) };
          });
          const found = benchCrossings(project, member, candidate, question);
          for (const { id } of currencies) {
            const places = scan.flatMap(({ x, a, b }, i) => {
              const last = scan[i - 1];
              const now = (a?.[id] ?? 0) - (b?.[id] ?? 0);
              const then = last === undefined ? 0 : (last.a?.[id] ?? 0) - (last.b?.[id] ?? 0);
              return now * then < 0 ? [{ x, winsBelow: then > 0 }] : [];
            });
            const own = found.find(({ currency }) => currency === id)?.crossings ?? [];
            expect(own.map(({ winsBelow }) => winsBelow)).toEqual(places.map(({ winsBelow }) => winsBelow));
            own.forEach(({ at, from: open, to: shut }, i) => {
              expect(Math.abs(at - (places[i]?.x ?? NaN))).toBeLessThanOrEqual((to - from) / steps + 2e-4);
              expect(open).toBeLessThanOrEqual(at);
              expect(shut).toBeGreaterThanOrEqual(at);
            });
          }
        }
      }
    },
  );

  it('are none, in words, between the tube and an ellipse of equal axes', () => {
    const tubeM = 'diameter' in pole.fitting.shape ? pole.fitting.shape.diameter.m : NaN;
    const round = { ...startCandidate('ellipse', pole, 'e'), chordM: tubeM, thicknessM: tubeM } as Candidate;
    const question = {
      conditionId: project.conditions[0]?.id ?? '',
      over: 'apparentAngle',
      tack: 'port',
    } as const;
    const found = benchCrossings(project, pole, round, question);
    expect(found).toHaveLength(4);
    for (const { crossings, text } of found) {
      expect(crossings).toEqual([]);
      expect(text).toMatch(/: no crossing; there is no difference\.$/);
    }
  });

  it('are said as their currency, their angle and who wins', () => {
    const fixed = manyCandidates(pole)[2] as Candidate;
    const { id: conditionId, tack } = project.conditions[0] ?? { id: '', tack: 'port' as const };
    const found = benchCrossings(project, pole, fixed, { conditionId, over: 'apparentAngle', tack });
    const track = found.find(({ currency }) => currency === 'trackPowerW');
    expect(track?.text).toMatch(/^track power: \d+° \(\d+–\d+°\); below it Fairing, fixed wins\.$/);
  });
});

describe('doubts drawn between the places at which they are worked out', () => {
  it.each(['apparentAngle', 'apparentSpeed', 'boatSpeed'] as const)(
    'lie within 3 %% of the largest value of those worked out there, over %s',
    (over) => {
      const { id: conditionId, tack } = project.conditions[0] ?? { id: '', tack: 'port' as const };
      const states = sweepStates(project, pole, { conditionId, over, tack });
      if (states === null) throw new Error('no states');
      const worst = manyCandidates(pole).map((candidate) => {
        const state = candidateState(pole, candidate);
        if (state === null) throw new Error('no state');
        const input = fittingToPhysics(state, deckLineOf(project.boat));
        const laid = layFitting(input, states.points[0].state);
        const { bands } = sweepOf(project, pole, candidate, { conditionId, over, tack });
        const { best, low, high } = bands.trackPowerW;
        const largest = best.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
        const offs = states.points.map(({ state: air }, i) => {
          const { mean, coefficientDoubts } = itemForces(laid, air, project.methods, 1);
          const doubts = [...coefficientDoubts, ...inputDoubts(laid, air, project.methods, 1, mean)];
          const ends = combinedEnds(doubts, 'trackPowerW');
          const value = best[i] ?? NaN;
          return Math.max(
            Math.abs((low[i] ?? NaN) - value - ends.low),
            Math.abs((high[i] ?? NaN) - value - ends.high),
          );
        });
        return Math.max(...offs) / largest;
      });
      // Of the largest value: measured 0.028, at the stall of the fixed section.
      expect(Math.max(...worst)).toBeLessThan(0.03);
      const [bare = NaN, , , thinner = NaN, ellipse = NaN] = worst;
      expect(Math.max(bare, thinner, ellipse)).toBeLessThan(1e-3);
    },
  );
});
