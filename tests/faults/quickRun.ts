const name = 'WINDTOLL_QUICK_MUTATION';

/** Slow tests left out and properties cut short: handed on to the processes that Stryker starts. */
export const quickRunEnvironment = { [name]: '1' } as const;

export function isQuickRun(): boolean {
  return process.env[name] === '1';
}
