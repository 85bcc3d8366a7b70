import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { totalOf, resultOf } from '../../src/physics/ledger/ledgerSums';
import type { Outcome } from '../../src/physics/fitting/outcome';
import type { SailingCondition } from '../../src/physics/condition/sailingCondition';
import { solveCondition } from '../../src/physics/condition/sailingState';
import type { FittingInput } from '../../src/physics/fitting/fittingInput';
import { anyWindLaw, between, conditions, duties, fittings } from './arbitraries';
import { forceSizeN, summedForceN, traceOf } from './support';

const uniform = fc.constant({ kind: 'uniform' as const });

function expectIdentity(outcome: Outcome, sizeN: number): void {
  const difference = outcome.airPowerW - outcome.trackPowerW - outcome.windPowerW;
  expect(Math.abs(difference)).toBeLessThanOrEqual(1e-9 * (sizeN * 20) + 1e-12);
}

/** True and local wind of a uniform-wind condition, worked out here from the definitions. */
function uniformWinds(condition: SailingCondition, exposure: number, turnRad: number) {
  const state = solveCondition(condition);
  const side = condition.tack === 'starboard' ? 1 : -1;
  const speed = state.profile.speedAt10Ms;
  const trueX = -speed * Math.cos(state.trueWindAngleRad);
  const trueY = side * speed * Math.sin(state.trueWindAngleRad);
  const freeX = trueX - condition.boatSpeedMs;
  // The angle it comes from, on the tack's side, grows by the turn.
  const from = Math.atan2(side * trueY, -freeX) + turnRad;
  const size = exposure * Math.hypot(freeX, trueY);
  return { trueX, trueY, localX: -size * Math.cos(from), localY: side * size * Math.sin(from) };
}

function sameSides(fitting: FittingInput): FittingInput {
  return { ...fitting, exposureLeeward: fitting.exposure };
}

describe('air power and track power', () => {
  it('differ by the true wind’s power on the force, deployed, stowed and on the mean', () => {
    fc.assert(
      fc.property(fittings(), conditions(), duties, (fitting, condition, duty) => {
        const { mean, deployed, stowed } = traceOf(fitting, condition, duty);
        const sizeN = summedForceN([deployed, stowed]);
        for (const outcome of [mean, deployed, stowed]) expectIdentity(outcome, sizeN);
      }),
      { numRuns: 300 },
    );
  });

  it('differ by it in the total of several fittings too', () => {
    fc.assert(
      fc.property(fc.array(fittings(), { minLength: 2, maxLength: 5 }), conditions(), (list, condition) => {
        const rows = list.map((fitting) => traceOf(fitting, condition));
        const total = totalOf(rows.map(({ mean, doubts }) => resultOf(mean, () => doubts))).outcome;
        expectIdentity(total, summedForceN(rows.map(({ mean }) => mean)));
      }),
      { numRuns: 50 },
    );
  });

  it('track power is the force against the track times boat speed', () => {
    fc.assert(
      fc.property(fittings(), conditions(), (fitting, condition) => {
        const { deployed } = traceOf(fitting, condition);
        expect(deployed.trackPowerW).toBeCloseTo(-deployed.forceTrackXN * condition.boatSpeedMs, 9);
        expect(deployed.dragAgainstTrackN).toBe(0 - deployed.forceTrackXN);
      }),
    );
  });

  it('the true wind’s power is F . w, with w from the definition of the condition (uniform wind)', () => {
    fc.assert(
      fc.property(fittings(), conditions(uniform), (fitting, condition) => {
        const { deployed } = traceOf(fitting, condition);
        const { trueX, trueY } = uniformWinds(condition, 1, 0);
        const power = deployed.forceTrackXN * trueX + deployed.forceTrackYN * trueY;
        expect(Math.abs(deployed.windPowerW - power)).toBeLessThanOrEqual(
          1e-9 * 30 * forceSizeN(deployed) + 1e-12,
        );
      }),
    );
  });
});

describe('no fitting makes power from the air around it', () => {
  it('F . u is never negative in the free wind, for every family, direction, law and exposure', () => {
    fc.assert(
      fc.property(fittings(), conditions(anyWindLaw), (fitting, condition) => {
        const { airPowerW } = traceOf({ ...fitting, localTurnRad: 0 }, condition).mean;
        expect(airPowerW).toBeGreaterThanOrEqual(0);
      }),
      { numRuns: 500 },
    );
  });

  it('F . u is never negative with the local wind where something turns it', () => {
    fc.assert(
      fc.property(fittings(), conditions(uniform), between(-1.5, 1.5), (drawn, condition, localTurnRad) => {
        const fitting = sameSides({ ...drawn, localTurnRad });
        const { deployed, members } = traceOf(fitting, condition);
        const { localX, localY } = uniformWinds(condition, fitting.exposure.best, localTurnRad);
        const power = deployed.forceTrackXN * localX + deployed.forceTrackYN * localY;
        expect(power).toBeGreaterThanOrEqual(0);
        for (const member of members) expect(member.dragAlongWindN).toBeGreaterThanOrEqual(0);
      }),
      { numRuns: 500 },
    );
  });

  it('the local wind in the working is the free one, times the exposure', () => {
    fc.assert(
      fc.property(fittings(), conditions(), (drawn, condition) => {
        for (const member of traceOf(sameSides(drawn), condition).members) {
          const expected = member.apparentSpeedMs * drawn.exposure.best;
          expect(member.localSpeedMs).toBeCloseTo(expected, 9);
        }
      }),
    );
  });
});
