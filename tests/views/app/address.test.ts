import { describe, expect, it } from 'vitest';
import { addressOf, readingFrom, type Reading } from '../../../src/app/address';
import { demo } from '../ledger/openProjects';

const project = demo();
const current: Reading = {
  question: { basis: { kind: 'condition', conditionId: 'upwind' }, planId: 'stow', againstPlanId: null },
  shown: 'both',
  selectedFittingId: 'code-sail',
};

describe('the address', () => {
  it.each<[string, Reading]>([
    ['as it opens', current],
    [
      'plan against plan over the course, after',
      {
        question: { basis: { kind: 'profile' }, planId: 'slim', againstPlanId: 'stow' },
        shown: 'after',
        selectedFittingId: null,
      },
    ],
    [
      'as sailed',
      {
        question: {
          basis: { kind: 'condition', conditionId: 'run' },
          planId: null,
          againstPlanId: null,
        },
        shown: 'before',
        selectedFittingId: 'boom',
      },
    ],
  ])('leads back to the same reading: %s', (_, reading) => {
    const start = { ...current, selectedFittingId: reading.selectedFittingId };
    expect(readingFrom(addressOf(reading), project, start)).toEqual(reading);
  });

  it('passes over ids that the project has not', () => {
    const hash = '#over=condition:moon&plan=none&against=nothing&show=sideways&row=<b>';
    expect(readingFrom(hash, project, current)).toEqual(current);
  });

  it('never holds a plan against itself', () => {
    expect(readingFrom('#plan=stow&against=stow', project, current).question.againstPlanId).toBeNull();
  });
});
