import type { MatcherFunction } from '@testing-library/dom';

/** Finds the mark that says which fields are half-typed; its text stands in two elements, between which it may break. */
export function halfTyped(fields: string): MatcherFunction {
  return (_, element) =>
    element?.className === 'unfinished-mark' && element.textContent === `half-typed: ${fields}`;
}
