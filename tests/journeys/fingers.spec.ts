import { expect, test, type Locator } from 'playwright/test';
import { openDemo } from './openPage';

test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });

/** Of what a finger is meant for: how far up and down from its middle a touch still lands on it, px. */
function reachPx(place: Locator): Promise<number> {
  return place.evaluate((element) => {
    element.scrollIntoView({ block: 'center' });
    const box = element.getBoundingClientRect();
    const isHit = (yPx: number): boolean => {
      const hit = document.elementFromPoint(box.left + Math.min(box.width, 40) / 2, yPx);
      return (
        hit !== null &&
        (hit === element || element.contains(hit) || hit.closest('label')?.contains(element) === true)
      );
    };
    const middlePx = box.top + box.height / 2;
    let [upPx, downPx] = [0, 0];
    while (upPx < 40 && isHit(middlePx - upPx - 1)) upPx += 1;
    while (downPx < 40 && isHit(middlePx + downPx + 1)) downPx += 1;
    return upPx + downPx + 1;
  });
}

test('on a phone a finger has 44 px for the notes, the way to the plan, a change of it, and each value of the margin', async ({
  page,
}) => {
  await openDemo(page);
  await page.getByRole('button', { name: /^\d+ more$/ }).waitFor();
  const places = {
    notes: page.getByRole('button', { name: /^\d+ more$/ }),
    'plan link': page.getByRole('button', { name: /^plan: \d+ items, below$/ }),
    change: page.getByRole('button', { name: /^Change / }).first(),
  };
  for (const [what, place] of Object.entries(places)) {
    expect(await reachPx(place), what).toBeGreaterThanOrEqual(44);
  }
  await page.locator('.margin-line').click();
  for (const name of [/^True wind:/, /^Heel:/, /^Wind law:/]) {
    expect(await reachPx(page.getByRole('button', { name })), String(name)).toBeGreaterThanOrEqual(44);
  }
});
