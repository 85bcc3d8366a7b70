import type { Page } from 'playwright';
import { editedName } from './benchProject';
import { pickRow } from './cases';
import type { OpenBuild } from './measure';
import { quantile } from './report';
import { readThreadTimes } from './threadTimes';

/** What a step of a slider of the fairing bench may take of script, ms: 181 angles and six candidates follow it. */
const mostScriptMs = 16;
const warmUpSteps = 10;
const steps = 60;
/** Between two steps: a hand on the arrow key, slower than frames and faster than a rest. */
const pauseMs = 110;

/**
 * Script of each step of the thickness ratio, ms of the thread's own time, of everything that is worked out until the next
 * step: what waits for a rest of the hand is not in it.
 */
export async function measureSlider({ page, session }: OpenBuild): Promise<readonly number[]> {
  await fillBench(page);
  const scriptMs: number[] = [];
  for (let step = 0; step < warmUpSteps + steps; step += 1) {
    const before = await readThreadTimes(session);
    await page.keyboard.press(step % 12 < 6 ? 'ArrowLeft' : 'ArrowRight');
    await page.waitForTimeout(pauseMs);
    const after = await readThreadTimes(session);
    if (step >= warmUpSteps) scriptMs.push(after.scriptMs - before.scriptMs);
  }
  await page.getByRole('link', { name: 'Ledger' }).click();
  return scriptMs;
}

/** A row of the ledger and six candidates for it, the last one chosen. */
async function fillBench(page: Page): Promise<void> {
  await pickRow(page, editedName);
  await page.getByRole('link', { name: 'Put on the bench' }).click();
  const add = page.getByRole('button', { name: 'Put on the bench' });
  await add.waitFor();
  for (let turn = 0; turn < 6 && (await add.isEnabled()); turn += 1) await add.click();
  await page.getByRole('slider', { name: 'Thickness over chord, slider' }).focus();
}

/** Prints what was measured; answers with the bar where it was missed. */
export function reportSlider(scriptMs: readonly number[]): string[] {
  const p95 = quantile(scriptMs, 0.95);
  console.log(
    `\nslider of the fairing bench: script ${quantile(scriptMs, 0.5).toFixed(1)} / ${p95.toFixed(1)} ms a step (median / p95)`,
  );
  return p95 <= mostScriptMs ? [] : [`slider, 95 of 100: ${p95.toFixed(1)} ms of script`];
}
