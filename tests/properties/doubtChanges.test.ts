import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { SailingCondition } from '../../src/physics/condition/sailingCondition';
import type { FittingTrace } from '../../src/physics/fitting/evaluateFitting';
import { basisDoubt, type FittingInput } from '../../src/physics/fitting/fittingInput';
import { doubtedKeys, type Change } from '../../src/physics/fitting/change';
import { anyWindLaw, between, conditions, duties, fittings, trueWindInput } from './arbitraries';
import { summedForceN, traceOf } from './support';

const windAt10 = trueWindInput.map((wind) => ({ ...wind, heightM: 10 }));
const cases = [fittings(), conditions(anyWindLaw, windAt10), duties] as const;

/** The trace's doubt is what the mean changes by when its input is changed and everything is computed anew. */
function expectChange(change: Change | undefined, base: FittingTrace, changed: FittingTrace): void {
  const size = summedForceN([base.deployed, base.stowed, changed.deployed, changed.stowed]);
  for (const key of doubtedKeys) {
    const expected = changed.mean[key] - base.mean[key];
    expect(Math.abs((change?.[key] ?? NaN) - expected), key).toBeLessThanOrEqual(1e-9 * size * 400 + 1e-12);
  }
}

function doubtOf(trace: FittingTrace, id: string) {
  return trace.doubts.find((doubt) => doubt.id === id);
}

describe('each doubt is the same calculation with one input changed', () => {
  it('wind speed', () => {
    fc.assert(
      fc.property(...cases, (fitting, condition, duty) => {
        const base = traceOf(fitting, condition, duty);
        const at = (factor: number): SailingCondition => ({
          ...condition,
          wind: { ...condition.wind, speedMs: condition.wind.speedMs * factor },
        });
        const doubt = doubtOf(base, 'wind-speed');
        expectChange(doubt?.up, base, traceOf(fitting, at(1 + condition.windSpeedDoubt), duty));
        expectChange(doubt?.down, base, traceOf(fitting, at(1 - condition.windSpeedDoubt), duty));
      }),
    );
  });

  it('wind law: the two other laws', () => {
    fc.assert(
      fc.property(
        fittings(),
        conditions(fc.constant({ kind: 'log', charnock: 0.011 })),
        duties,
        (fitting, condition, duty) => {
          const base = traceOf(fitting, condition, duty);
          const by = (exponent: number) =>
            traceOf(fitting, { ...condition, windLaw: { kind: 'power', exponent } }, duty);
          const doubt = doubtOf(base, 'wind-law');
          expectChange(doubt?.up, base, by(0.11));
          expectChange(doubt?.down, base, by(0.14));
        },
      ),
    );
  });

  it('end effect: the other published table, one state', () => {
    fc.assert(
      fc.property(fittings({ kinds: ['roundBar'] }), conditions(), duties, (drawn, condition, duty) => {
        if (drawn.shape.kind !== 'roundBar') return;
        const fitting: FittingInput = { ...drawn, shape: { ...drawn.shape, ends: ['free', 'free'] } };
        const base = traceOf(fitting, condition, duty, 'dnv');
        const doubt = doubtOf(base, 'ends');
        expectChange(doubt?.up, base, traceOf(fitting, condition, duty, 'en'));
        expectChange(doubt?.down, base, base);
      }),
    );
  });

  it('exposure: its own low and high end', () => {
    fc.assert(
      fc.property(...cases, between(0.01, 1), (fitting, condition, _duty, duty) => {
        const base = traceOf(fitting, condition, duty);
        const doubt = doubtOf(base, 'own:fitting:exposure');
        if (doubt === undefined) return;
        const at = (side: 'low' | 'high'): FittingInput => ({
          ...fitting,
          exposure: { ...fitting.exposure, best: fitting.exposure[side] },
          exposureLeeward: { ...fitting.exposureLeeward, best: fitting.exposureLeeward[side] },
        });
        expectChange(doubt.up, base, traceOf(at('high'), condition, duty));
        expectChange(doubt.down, base, traceOf(at('low'), condition, duty));
      }),
    );
  });

  it('a bar’s diameter, by how it was measured', () => {
    fc.assert(
      fc.property(
        fittings({ kinds: ['roundBar'] }),
        conditions(),
        between(0.01, 1),
        (fitting, condition, duty) => {
          const { shape } = fitting;
          if (shape.kind !== 'roundBar') return;
          const base = traceOf(fitting, condition, duty);
          const half = basisDoubt[shape.diameter.basis];
          const at = (factor: number): FittingInput => ({
            ...fitting,
            shape: { ...shape, diameter: { ...shape.diameter, valueM: shape.diameter.valueM * factor } },
          });
          const doubt = doubtOf(base, 'own:fitting:diameter');
          expectChange(doubt?.up, base, traceOf(at(1 + half), condition, duty));
          expectChange(doubt?.down, base, traceOf(at(1 - half), condition, duty));
        },
      ),
    );
  });

  it('a typed coefficient, a drag area and a stowed area: their own low and high end', () => {
    fc.assert(
      fc.property(
        fittings({ isQuadratic: true }),
        conditions(),
        between(0.01, 0.99),
        (fitting, condition, duty) => {
          const { shape, stowed } = fitting;
          const base = traceOf(fitting, condition, duty);
          for (const [side, edge] of [
            ['up', 'high'],
            ['down', 'low'],
          ] as const) {
            if (shape.kind === 'roundBar' && shape.coefficient !== null) {
              const coefficient = { ...shape.coefficient, best: shape.coefficient[edge] };
              const changed = traceOf({ ...fitting, shape: { ...shape, coefficient } }, condition, duty);
              if (base.members.length > 0)
                expectChange(doubtOf(base, 'own:fitting:coefficient')?.[side], base, changed);
            }
            if (shape.kind === 'measuredArea') {
              const dragAreaM2 = { ...shape.dragAreaM2, best: shape.dragAreaM2[edge] };
              const changed = traceOf({ ...fitting, shape: { ...shape, dragAreaM2 } }, condition, duty);
              if (base.members.length > 0)
                expectChange(doubtOf(base, 'own:fitting:drag-area')?.[side], base, changed);
            }
            if (stowed !== null && base.stowed.airPowerW !== 0) {
              const dragAreaM2 = { ...stowed.dragAreaM2, best: stowed.dragAreaM2[edge] };
              const changed = traceOf({ ...fitting, stowed: { ...stowed, dragAreaM2 } }, condition, duty);
              expectChange(doubtOf(base, 'own:fitting:stowed-area')?.[side], base, changed);
            }
          }
        },
      ),
    );
  });

  it('air density, where nothing depends on the Reynolds number: in proportion', () => {
    fc.assert(
      fc.property(fittings({ isQuadratic: true }), conditions(), duties, (fitting, condition, duty) => {
        const base = traceOf(fitting, condition, duty);
        const doubt = doubtOf(base, 'density');
        const size = summedForceN([base.deployed, base.stowed]);
        for (const key of doubtedKeys) {
          const expected = condition.densityDoubt * base.mean[key];
          expect(Math.abs((doubt?.up[key] ?? NaN) - expected), key).toBeLessThanOrEqual(
            1e-9 * size * 400 + 1e-12,
          );
          expect(Math.abs((doubt?.down[key] ?? NaN) + expected), key).toBeLessThanOrEqual(
            1e-9 * size * 400 + 1e-12,
          );
        }
      }),
    );
  });
});
