import { fieldsOf, type Failed } from './records';

const nameOfFull = 'QuotaExceededError';

/** Says in one line why the browser did not store or read something. */
function failedBy(thrown: unknown): Failed {
  const { name } = fieldsOf(thrown);
  if (name === nameOfFull) return { kind: 'failed', why: "this browser's storage is full" };
  const cause = typeof name === 'string' && name !== '' ? ` (${name})` : '';
  return { kind: 'failed', why: `this browser's storage refused${cause}` };
}

/** Turns a rejection into an answer, so that no caller has to catch. */
export async function orFailed<Answer>(work: () => Promise<Answer>): Promise<Answer | Failed> {
  try {
    return await work();
  } catch (thrown) {
    return failedBy(thrown);
  }
}
