import type { CDPSession, Page } from 'playwright';
import { quantile } from './report';
import type { OpenBuild } from './measure';
import { readThreadTimes } from './threadTimes';

/** What a frame of turning the boat in the wind's-eye view may take of the main thread: script, style and layout, ms. */
const turningBars = { medianMs: 6, p95Ms: 12 } as const;

interface Turning {
  /** Script, style and layout of each frame, ms of the thread's own time. */
  readonly workMs: readonly number[];
  /** From the move of the hand to the end of the frame that draws it, ms. */
  readonly frameMs: readonly number[];
}

const warmUpMoves = 10;
const moves = 60;

/** Pulls the boat round by the hand, a few pixels a frame. */
export async function measureTurning({ page, session }: OpenBuild): Promise<Turning> {
  const [x, y] = await holdPicture(page);
  const workMs: number[] = [];
  const frameMs: number[] = [];
  for (let move = 0; move < warmUpMoves + moves; move += 1) {
    const before = await readThreadTimes(session);
    const startMs = await now(session);
    await page.mouse.move(x + 3 * (move + 2), y);
    const endMs = await afterFrame(session);
    const after = await readThreadTimes(session);
    if (move < warmUpMoves) continue;
    workMs.push(
      after.scriptMs - before.scriptMs + after.styleMs - before.styleMs + after.layoutMs - before.layoutMs,
    );
    frameMs.push(endMs - startMs);
  }
  await page.mouse.up();
  return { workMs, frameMs };
}

async function holdPicture(page: Page): Promise<readonly [number, number]> {
  await page.locator('.side-words').getByText('Picture', { exact: true }).click();
  const plane = page.locator('.picture-plane');
  await plane.waitFor();
  // The chart below it is worked out in slices after the picture stands.
  await page.locator('.picture-sweep figure:not(.picture-stale) svg').waitFor();
  const box = await plane.boundingBox();
  if (box === null) throw new Error('the picture is not in sight');
  const [x, y] = [box.x + 40, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  return [x, y];
}

async function now(session: CDPSession): Promise<number> {
  return numberFrom(session, 'performance.now()');
}

/** The time in the first task after the next frame. */
function afterFrame(session: CDPSession): Promise<number> {
  return numberFrom(
    session,
    `new Promise((resolve) => requestAnimationFrame(() => {
      const channel = new MessageChannel();
      channel.port1.onmessage = () => resolve(performance.now());
      channel.port2.postMessage(null);
    }))`,
  );
}

async function numberFrom(session: CDPSession, expression: string): Promise<number> {
  const { result } = await session.send('Runtime.evaluate', {
    expression,
    awaitPromise: true,
    returnByValue: true,
  });
  if (typeof result.value !== 'number') throw new Error(`no number from ${expression}`);
  return result.value;
}

/** Prints what was measured; answers with the bars that were missed. */
export function reportTurning({ workMs, frameMs }: Turning): string[] {
  const [median, p95] = [quantile(workMs, 0.5), quantile(workMs, 0.95)];
  console.log(
    `\nturning the picture: script, style and layout ${median.toFixed(1)} / ${p95.toFixed(1)} ms (median / p95), ` +
      `frames ${quantile(frameMs, 0.5).toFixed(1)} / ${quantile(frameMs, 0.95).toFixed(1)} ms`,
  );
  return [
    ...(median <= turningBars.medianMs ? [] : [`turning, median: ${median.toFixed(1)} ms`]),
    ...(p95 <= turningBars.p95Ms ? [] : [`turning, 95 of 100: ${p95.toFixed(1)} ms`]),
  ];
}
