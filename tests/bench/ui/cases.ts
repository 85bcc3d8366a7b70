import type { Locator, Page } from 'playwright';
import { editedName } from './benchProject';

/** One thing a user does over and over, each time once per turn. */
export interface Case {
  readonly name: string;
  /** Brings the page to where it is done; answers with what does it once. */
  readonly prepare: (page: Page) => Promise<(turn: number) => Promise<void>>;
  readonly finish: (page: Page) => Promise<void>;
}

const nothingToFinish = (): Promise<void> => Promise.resolve();

async function showPane(page: Page, name: string): Promise<void> {
  await page.locator('.side-words').getByText(name, { exact: true }).click();
}

/** A long ledger draws only the rows in sight: turns the wheel until the row is among them. */
export async function pickRow(page: Page, name: string): Promise<void> {
  const row = page.getByRole('button', { name, exact: true });
  await page.locator('.ledger-scroll').hover();
  for (let turn = 0; turn < 40 && !(await row.isVisible()); turn += 1) {
    await page.mouse.wheel(0, 300);
    await page.waitForTimeout(50);
  }
  await row.click();
}

/**
 * Types into a field whose text reads "20.91 mm" with the caret behind the 9: takes the 9 away and types it again, so
 * that each key press is an edit of its own and a small one.
 */
async function typing(field: Locator, page: Page, text: string): Promise<(turn: number) => Promise<void>> {
  await field.fill(text);
  const afterNine = text.indexOf('9') + 1;
  await field.evaluate((input: HTMLInputElement, place) => {
    input.setSelectionRange(place, place);
  }, afterNine);
  return (turn) => page.keyboard.press(turn % 2 === 0 ? 'Backspace' : '9');
}

const diameter: Case = {
  name: 'diameter of a row, a key',
  prepare: async (page) => {
    await pickRow(page, editedName);
    await showPane(page, 'Edit');
    const pane = page.getByRole('region', { name: 'Edit', exact: true });
    return typing(pane.getByLabel('Diameter', { exact: true }), page, '20.91 mm');
  },
  finish: nothingToFinish,
};

const windSpeed: Case = {
  name: 'wind speed, a key',
  prepare: async (page) => {
    await showPane(page, 'Condition');
    const pane = page.getByRole('region', { name: 'Condition', exact: true });
    return typing(pane.getByLabel('True wind speed', { exact: true }), page, '16.91 kn');
  },
  finish: nothingToFinish,
};

/** Where the hand goes, px from where it took hold; never twice the same in succession. */
const handPlaces = [
  { x: 4, y: 1 },
  { x: 1, y: 5 },
  { x: -4, y: 2 },
  { x: 2, y: -4 },
] as const;

const windTriangle: Case = {
  name: 'wind triangle, a move',
  prepare: async (page) => {
    await showPane(page, 'Working');
    const box = await page.getByRole('slider', { name: 'True wind' }).locator('circle').first().boundingBox();
    if (box === null) throw new Error('the wind triangle is not in sight');
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    await page.mouse.move(x, y);
    await page.mouse.down();
    return async (turn) => {
      const place = handPlaces[turn % handPlaces.length] ?? handPlaces[0];
      await page.mouse.move(x + place.x, y + place.y);
    };
  },
  finish: (page) => page.mouse.up(),
};

export const cases: readonly Case[] = [diameter, windSpeed, windTriangle];
