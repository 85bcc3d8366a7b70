import type { CDPSession, Page } from 'playwright';

declare global {
  interface Window {
    /** From the last input to its painted ledger, ms, once the ledger has stood still for so long; null when it never changed. */
    readPaintClock: (stillMs: number, patienceMs: number) => Promise<number | null>;
  }
}

/**
 * Runs in the page before its own scripts. The clock starts at the time stamp that the browser gave the key press or
 * the move, and stops in the first task after the frame that draws the change of the ledger: by then its script, style,
 * layout and paint are done on the main thread. Of several such frames the last one counts.
 */
function startClock(): void {
  let inputAtMs = 0;
  let paintedAtMs: number | null = null;
  const onInput = ({ timeStamp }: Event): void => {
    inputAtMs = timeStamp;
    paintedAtMs = null;
  };
  window.addEventListener('keydown', onInput, true);
  window.addEventListener('pointermove', onInput, true);

  const afterFrame = new MessageChannel();
  afterFrame.port1.onmessage = () => {
    paintedAtMs = performance.now();
  };
  const isInLedger = ({ target }: MutationRecord): boolean => {
    const element = target instanceof Element ? target : target.parentElement;
    return (element?.closest('[aria-label="Ledger"]') ?? null) !== null;
  };
  const observer = new MutationObserver((records) => {
    if (!records.some(isInLedger)) return;
    requestAnimationFrame(() => {
      afterFrame.port2.postMessage(null);
    });
  });
  observer.observe(document, { subtree: true, childList: true, characterData: true, attributes: true });

  window.readPaintClock = (stillMs, patienceMs) =>
    new Promise((resolve) => {
      const look = (): void => {
        const now = performance.now();
        const stoodMs = paintedAtMs === null ? 0 : now - paintedAtMs;
        if (paintedAtMs !== null && stoodMs >= stillMs) resolve(paintedAtMs - inputAtMs);
        else if (paintedAtMs === null && now - inputAtMs > patienceMs) resolve(null);
        else setTimeout(look, stillMs - stoodMs);
      };
      look();
    });
}

export async function installPaintClock(page: Page): Promise<void> {
  // The runner wraps functions that have a name in a helper of its own, which the page has not.
  await page.addInitScript('globalThis.__name = (named) => named;');
  await page.addInitScript(startClock);
}

/** The ledger may take so long to answer, ms; then it has not heard of the input. */
const patienceMs = 10_000;

/**
 * From the last input to its painted ledger, ms. It answers when the ledger has stood still for a while, so that the next
 * input waits for that.
 */
export async function readPaintClock(session: CDPSession, stillMs: number): Promise<number> {
  const { result } = await session.send('Runtime.evaluate', {
    expression: `window.readPaintClock(${stillMs}, ${patienceMs})`,
    awaitPromise: true,
    returnByValue: true,
  });
  if (typeof result.value !== 'number') throw new Error('the ledger did not change at an input');
  return result.value;
}
