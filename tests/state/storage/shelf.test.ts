import { describe, expect, it } from 'vitest';
import { readFileSync } from 'node:fs';
import type { Reading } from '../../../src/state/storage/records';
import { noTyped } from '../../../src/state/storage/typedRecords';
import {
  namesOn,
  noReading,
  opened,
  openTab,
  projectNamed,
  settled,
  storedIn,
  testClock,
  testDisk,
  textOf,
} from './support';

const kinds = opened(readFileSync('tests/data/projects/every-kind.json', 'utf8'));
const reading: Reading = {
  question: {
    basis: { kind: 'condition', conditionId: kinds.conditions.at(-1)?.id ?? '' },
    planId: kinds.plans[0]?.id ?? null,
    againstPlanId: null,
  },
  selectedFittingId: kinds.fittings.at(-1)?.id ?? null,
};

describe('the shelf', () => {
  it('lists names and dates, newest first, without loading a text', async () => {
    const disk = testDisk();
    const clock = testClock();
    const tab = openTab(disk, clock);
    for (const name of ['Tern', 'Gannet']) {
      tab.openFile(projectNamed(name));
      await tab.autosaver.flush();
      await clock.pass(60_000);
    }
    const keysRead: string[] = [];
    const watched = openTab({
      ...disk,
      transact: (keys, change) => {
        keysRead.push(...keys);
        return disk.transact(keys, change);
      },
    });
    const listing = await watched.shelf.list();
    expect(listing).toMatchObject({
      kind: 'listed',
      projects: [
        { name: 'Gannet', savedAt: '2026-03-01T09:06:00.000Z', revision: 1 },
        { name: 'Tern', savedAt: '2026-03-01T09:05:00.000Z', revision: 1 },
      ],
      broken: [],
    });
    expect(keysRead.filter((key) => key.startsWith('text/'))).toEqual([]);
  });

  it('reopens the project that was open last, with the same bytes and where the user was', async () => {
    const disk = testDisk();
    const tab = openTab(disk);
    tab.openFile(kinds);
    tab.type(kinds, reading);
    await tab.autosaver.flush();
    const { stored } = await openTab(disk).shelf.openLast();
    expect(stored?.text).toBe(textOf(kinds));
    expect(stored?.reading).toEqual(reading);
  });

  it('drops a reading that the project cannot answer, and keeps one whose row alone is gone', async () => {
    const disk = testDisk();
    const tab = openTab(disk);
    tab.openFile(kinds);
    tab.type(kinds, { ...reading, selectedFittingId: 'gone' });
    await tab.autosaver.flush();
    const first = (await openTab(disk).shelf.openLast()).stored;
    expect(first?.reading).toEqual({ ...reading, selectedFittingId: null });
    tab.type(kinds, { ...reading, question: { ...reading.question, planId: 'gone' } });
    await tab.autosaver.flush();
    expect((await openTab(disk).shelf.openLast()).stored?.reading).toBeNull();
  });

  it('opens the demo when the demo was open last, and the newest project when nothing is known', async () => {
    const disk = testDisk();
    const tab = openTab(disk);
    tab.openFile(projectNamed('Tern'));
    await tab.autosaver.flush();
    tab.openDemo(projectNamed('Demo'));
    await settled();
    expect((await openTab(disk).shelf.openLast()).stored).toBeNull();
    disk.entries.delete('open');
    expect((await openTab(disk).shelf.openLast()).stored?.project.name).toBe('Tern');
  });

  it('duplicates under a name that says so, follows a new name, and removes', async () => {
    const disk = testDisk();
    const tab = openTab(disk);
    tab.openFile(projectNamed('Tern', 'as measured'));
    await tab.autosaver.flush();
    const { stored } = await tab.shelf.openLast();
    const copy = storedIn(await tab.shelf.duplicate(stored?.header.id ?? ''));
    expect(copy.text).toBe(textOf(projectNamed('Tern (copy)', 'as measured')));
    tab.type(projectNamed('Arctic tern', 'as measured'));
    await tab.autosaver.flush();
    expect(await namesOn(tab)).toEqual(['Arctic tern', 'Tern (copy)']);
    await tab.shelf.remove(copy.header.id);
    expect(await namesOn(openTab(disk))).toEqual(['Arctic tern']);
    expect([...disk.entries.keys()].filter((key) => key.includes(copy.header.id))).toEqual([]);
  });

  it('cuts a long name so that its copy still opens', async () => {
    const tab = openTab(testDisk());
    const name = '\u{1F6A9}'.repeat(100);
    const copy = storedIn(await tab.shelf.addCopy(projectNamed(name), noReading, noTyped, 'copy'));
    expect(opened(copy.text).name).toBe(`${'\u{1F6A9}'.repeat(96)} (copy)`);
  });
});
