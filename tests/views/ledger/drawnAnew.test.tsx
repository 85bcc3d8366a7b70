import { act, cleanup, render } from '@testing-library/react';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { patchCondition } from '../../../src/project/edit/conditionEdits';
import { excludeFittings, patchFitting } from '../../../src/project/edit/fittingEdits';
import type { Project } from '../../../src/project/file/schema';
import { useAppStore } from '../../../src/state/appStore';
import { extraColumns, prefer } from '../../../src/state/preferences';
import { keepTyped } from '../../../src/state/typedTexts';
import { LedgerPane } from '../../../src/views/ledger/LedgerPane';
import { demo, openInStore } from './openProjects';

vi.setConfig({ testTimeout: 120_000 });

beforeEach(() => {
  window.localStorage.clear();
  openInStore(demo());
});
afterEach(cleanup);

function show() {
  return render(<LedgerPane onPick={() => undefined} renderInPlace={() => null} />);
}

function tablesIn(container: HTMLElement): string {
  return [...container.querySelectorAll('.ledger-table')].map(({ outerHTML }) => outerHTML).join('\n');
}

function project(): Project {
  const open = useAppStore.getState().project;
  if (open === null) throw new Error('nothing open');
  return open;
}

function windTimes(factor: number): void {
  const [first] = project().conditions;
  if (first === undefined) throw new Error('no condition');
  const wind = { ...first.wind, speedMs: first.wind.speedMs * factor };
  useAppStore.getState().edit('Wind', (before) => patchCondition(before, first.id, { wind }));
}

function nth(i: number): Project['fittings'][number] {
  const fitting = project().fittings[i];
  if (fitting === undefined) throw new Error(`no fitting ${i}`);
  return fitting;
}

const store = () => useAppStore.getState();

/** Every step that a row, a bar or a sum may show; rows and cells are remembered from one to the next. */
const steps: readonly (readonly [string, () => void])[] = [
  [
    'a breath more wind',
    () => {
      windTimes(1.0005);
    },
  ],
  [
    'a little more wind',
    () => {
      windTimes(1.02);
    },
  ],
  [
    'twice the wind',
    () => {
      windTimes(2);
    },
  ],
  [
    'no wind to speak of',
    () => {
      windTimes(0.001);
    },
  ],
  [
    'the wind of before',
    () => {
      windTimes(500);
    },
  ],
  [
    'the state before',
    () => {
      store().show('before');
    },
  ],
  [
    'the state after',
    () => {
      store().show('after');
    },
  ],
  [
    'both states',
    () => {
      store().show('both');
    },
  ],
  [
    'no plan',
    () => {
      store().choosePlan(null);
    },
  ],
  [
    'the last plan',
    () => {
      store().choosePlan(project().plans.at(-1)?.id ?? null);
    },
  ],
  [
    'the last condition',
    () => {
      store().chooseBasis({ kind: 'condition', conditionId: project().conditions.at(-1)?.id ?? '' });
    },
  ],
  [
    'the course',
    () => {
      store().chooseBasis({ kind: 'profile' });
    },
  ],
  [
    'another row',
    () => {
      store().select(nth(8).id);
    },
  ],
  [
    'two rows picked',
    () => {
      store().toggleSelected(nth(5).id);
    },
  ],
  [
    'another name',
    () => store().edit('Name', (before) => patchFitting(before, nth(5).id, { name: 'Renamed' })),
  ],
  [
    'other flags',
    () =>
      store().edit('Flags', (before) =>
        patchFitting(before, nth(4).id, { flags: { ...nth(4).flags, structural: !nth(4).flags.structural } }),
      ),
  ],
  [
    'half-typed text',
    () => {
      keepTyped(`fitting/${nth(2).id}.name`, { label: 'name', text: '', refusal: 'A name.' });
    },
  ],
  ['one left out', () => store().edit('Out', (before) => excludeFittings(before, [nth(6).id], 'lent'))],
  [
    'taken back',
    () => {
      store().undo();
    },
  ],
  [
    'all columns',
    () => {
      prefer({ columns: extraColumns });
    },
  ],
  [
    'narrow rows',
    () => {
      prefer({ isCompact: true });
    },
  ],
];

it('what is drawn after each of many steps is what a page that was just opened draws', () => {
  const { container } = show();
  for (const [name, step] of steps) {
    const before = tablesIn(container);
    act(step);
    const fresh = show();
    expect(tablesIn(container), name).toBe(tablesIn(fresh.container));
    expect(tablesIn(container) === before, `${name} shows`).toBe(false);
    fresh.unmount();
  }
});
