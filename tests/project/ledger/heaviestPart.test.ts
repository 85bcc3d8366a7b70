import { describe, expect, it } from 'vitest';
import { heaviestPart } from '../../../src/project/ledger/heaviestPart';
import { demoPath, ledgerOf, projectAt } from '../../properties/projects';

describe('the heaviest condition of a basis', () => {
  const { parts } = ledgerOf(projectAt(demoPath), { kind: 'profile' });

  it('is the one with the largest share of the time, wherever it stands', () => {
    const most = Math.max(...parts.map(({ weight }) => weight));
    expect(heaviestPart(parts)?.weight).toBe(most);
    expect(heaviestPart([...parts].reverse())?.weight).toBe(most);
  });

  it('is the first of equals, and none of none', () => {
    const [first, second] = parts.map((part) => ({ ...part, weight: 0.5 }));
    if (first === undefined || second === undefined)
      throw new Error('the demo has a course of several conditions');
    expect(heaviestPart([first, second])).toBe(first);
    expect(heaviestPart([])).toBeUndefined();
  });
});
