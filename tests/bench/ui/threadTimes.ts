import type { CDPSession } from 'playwright';

/** Where the main thread's time went, ms of that thread alone: other work on the machine is not in it. */
export interface ThreadTimes {
  readonly allMs: number;
  readonly scriptMs: number;
  readonly styleMs: number;
  readonly layoutMs: number;
}

export async function countThreadTime(session: CDPSession): Promise<void> {
  await session.send('Performance.enable', { timeDomain: 'threadTicks' });
}

/** Since the page was opened. */
export async function readThreadTimes(session: CDPSession): Promise<ThreadTimes> {
  const { metrics } = await session.send('Performance.getMetrics');
  const ms = (name: string): number => 1000 * (metrics.find((metric) => metric.name === name)?.value ?? NaN);
  return {
    allMs: ms('TaskDuration'),
    scriptMs: ms('ScriptDuration'),
    styleMs: ms('RecalcStyleDuration'),
    layoutMs: ms('LayoutDuration'),
  };
}

/** What one of `inputs` inputs took between two readings. */
export function perInput(from: ThreadTimes, to: ThreadTimes, inputs: number): ThreadTimes {
  return {
    allMs: (to.allMs - from.allMs) / inputs,
    scriptMs: (to.scriptMs - from.scriptMs) / inputs,
    styleMs: (to.styleMs - from.styleMs) / inputs,
    layoutMs: (to.layoutMs - from.layoutMs) / inputs,
  };
}
