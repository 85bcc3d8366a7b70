import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { conditionStates } from '../../src/physics/condition/conditionStates';
import type { SailingCondition } from '../../src/physics/condition/sailingCondition';
import { evaluateFitting, type FittingTrace } from '../../src/physics/fitting/evaluateFitting';
import type { FittingInput, Shape } from '../../src/physics/fitting/fittingInput';
import type { Methods } from '../../src/physics/fitting/sumFitting';
import { conditions, duties, fittings } from './arbitraries';

const methods: fc.Arbitrary<Methods> = fc.record({
  ends: fc.constantFrom('dnv' as const, 'en' as const),
  inclined: fc.constantFrom('cross-flow' as const, 'dnv-wind' as const),
  fairing: fc.constantFrom('laminar' as const, 'turbulent' as const),
});

/** What a fitting is asked: what it does in a condition, by a choice of methods, so much of the time. */
const questions = fc.record({ condition: conditions(), methods, duty: duties });
type Question = typeof questions extends fc.Arbitrary<infer Drawn> ? Drawn : never;

function traceOf(fitting: FittingInput, { condition, methods: choice, duty }: Question): FittingTrace {
  return evaluateFitting(fitting, conditionStates(condition), choice, duty);
}

/** By its own curve wherever there is one: a typed coefficient hides most methods. */
function byCurve(fitting: FittingInput): FittingInput {
  const { shape } = fitting;
  return 'coefficient' in shape ? { ...fitting, shape: { ...shape, coefficient: null } } : fitting;
}

function partsOf({ mean, deployed, stowed, doubts, notices, members }: FittingTrace) {
  return { mean, deployed, stowed, doubts, notices, members };
}

const kinds: readonly Shape['kind'][] = [
  'roundBar',
  'fairing',
  'ellipticalBar',
  'net',
  'bluffBody',
  'sphere',
];

function turnedRound(condition: SailingCondition): SailingCondition {
  return { ...condition, tack: condition.tack === 'port' ? 'starboard' : 'port' };
}

function otherMethods({ ends, inclined, fairing }: Methods): readonly Methods[] {
  return [
    { ends: ends === 'dnv' ? 'en' : 'dnv', inclined, fairing },
    { ends, inclined: inclined === 'dnv-wind' ? 'cross-flow' : 'dnv-wind', fairing },
    { ends, inclined, fairing: fairing === 'laminar' ? 'turbulent' : 'laminar' },
  ];
}

/** What was prepared for a fitting serves again: it must not remember how it was asked before. */
describe('a fitting that was asked before', () => {
  it.each(kinds)('answers as one that is new, on the other tack and by other methods: %s', (kind) => {
    fc.assert(
      fc.property(fittings({ kinds: [kind] }).map(byCurve), questions, (fitting, first) => {
        const otherwise: readonly Question[] = [
          { ...first, condition: turnedRound(first.condition) },
          ...otherMethods(first.methods).map((choice) => ({ ...first, methods: choice })),
        ];
        // All are asked before any members are read, which is when they are worked out.
        const asked = otherwise
          .flatMap((question) => [first, question])
          .map((question) => ({ question, trace: traceOf(fitting, question) }));
        for (const { question, trace } of asked) {
          expect(partsOf(trace)).toEqual(partsOf(traceOf(structuredClone(fitting), question)));
        }
      }),
      { numRuns: 40, endOnFailure: true },
    );
  });

  it('leaves nothing in the answer of the next one, whatever both are', () => {
    fc.assert(
      fc.property(fittings({ kinds }), fittings({ kinds }), questions, (fitting, other, question) => {
        const alone = partsOf(traceOf(fitting, question));
        const between = traceOf(other, question);
        expect(partsOf(traceOf(structuredClone(fitting), question))).toEqual(alone);
        expect(partsOf(between)).toEqual(partsOf(traceOf(structuredClone(other), question)));
      }),
      { numRuns: 60, endOnFailure: true },
    );
  });
});
