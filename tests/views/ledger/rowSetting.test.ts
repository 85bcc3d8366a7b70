import { afterEach, expect, it } from 'vitest';
import { ledgerOf } from '../../../src/state/ledgerOf';
import { useAppStore } from '../../../src/state/appStore';
import { usePreferences } from '../../../src/state/preferences';
import { usualUnits } from '../../../src/units/displayUnits';
import { showIn } from '../../../src/units/shownUnits';
import { rowSetting } from '../../../src/views/ledger/rowSetting';
import { demo, openInStore } from './openProjects';

afterEach(() => {
  showIn(usualUnits);
});

function marks(power: 'hp' | 'PS') {
  const { project, question } = useAppStore.getState();
  const ledger = project === null ? null : ledgerOf(project, question);
  if (project === null || ledger === null) throw new Error('nothing open');
  showIn({ ...usualUnits, power });
  const preferences = usePreferences.getState();
  const plain = { shown: 'both', preferences, isPhone: false, isNarrow: false, barWidthPx: 110 } as const;
  return rowSetting({ boat: project.boat, ledger, ...plain }).scale.ticks;
}

it('moves the marks of the scale from one horsepower to the other', () => {
  openInStore(demo());
  const [mechanical, metric] = [marks('hp'), marks('PS')];
  expect(mechanical[1]?.label).toBe('0.5');
  expect(metric[1]?.label).toBe('0.5');
  expect(mechanical[1]?.powerW).toBeCloseTo(0.5 * 745.6999, 3);
  expect(metric[1]?.powerW).toBeCloseTo(0.5 * 735.49875, 3);
});
