import { describe, expect, it } from 'vitest';
import type { KeyValue } from '../../../src/state/storage/keyValue';
import { memoryKeyValue } from '../../../src/state/storage/memoryKeyValue';
import { prefixes } from '../../../src/state/storage/records';
import { statusText } from '../../../src/state/storage/saveStatus';
import {
  namesOn,
  openTab,
  projectNamed,
  settled,
  storedIn,
  testClock,
  testDisk,
  textOf,
  textsOn,
} from './support';

/** A disk that can be full: reading works, writing is refused. */
function fillableDisk() {
  const disk = testDisk();
  const state = { isFull: false };
  const transact: KeyValue['transact'] = (keys, change) =>
    disk.transact(keys, (values) => {
      const changed = change(values);
      if (state.isFull && changed.writes.length > 0) throw new DOMException('', 'QuotaExceededError');
      return changed;
    });
  return { ...disk, transact, state };
}

describe('autosave', () => {
  it('writes after a quiet time', async () => {
    const disk = testDisk();
    const clock = testClock();
    const tab = openTab(disk, clock);
    tab.openFile(projectNamed('Tern'));
    await settled();
    const next = projectNamed('Tern', 'typed');
    tab.type(next);
    await clock.pass(299);
    expect([...(await textsOn(disk)).values()]).toEqual([textOf(projectNamed('Tern'))]);
    await clock.pass(1);
    expect([...(await textsOn(disk)).values()]).toEqual([textOf(next)]);
    expect(statusText(tab.autosaver.status())).toMatch(/^Saved in this browser \d\d:\d\d$/);
  });

  it('writes within a second of steady typing', async () => {
    const disk = testDisk();
    const clock = testClock();
    const tab = openTab(disk, clock);
    tab.openFile(projectNamed('Tern'));
    await settled();
    for (let typed = 1; typed <= 10; typed += 1) {
      tab.type(projectNamed('Tern', 'x'.repeat(typed)));
      await clock.pass(100);
    }
    expect([...(await textsOn(disk)).values()]).toEqual([textOf(projectNamed('Tern', 'x'.repeat(10)))]);
    expect(tab.statuses.filter((kind) => kind === 'saved')).toHaveLength(2);
  });

  it('waits while the page draws, keeps a draft meanwhile, and writes after half a second all the same', async () => {
    const disk = testDisk();
    const clock = testClock();
    const tab = openTab(disk, clock);
    tab.openFile(projectNamed('Tern'));
    await settled();
    clock.isBusy = true;
    const next = projectNamed('Tern', 'typed');
    tab.type(next);
    await clock.pass(300);
    await clock.pass(499);
    expect([...(await textsOn(disk)).values()]).toEqual([textOf(projectNamed('Tern'))]);
    expect(await disk.keys(prefixes.draft)).toHaveLength(1);
    await clock.pass(1);
    expect([...(await textsOn(disk)).values()]).toEqual([textOf(next)]);
    expect(await disk.keys(prefixes.draft)).toEqual([]);
  });

  it('leaves the demo alone until its first change, and a change taken back at once', async () => {
    const disk = testDisk();
    const clock = testClock();
    const tab = openTab(disk, clock);
    const demo = projectNamed('Demo');
    tab.openDemo(demo);
    tab.type(projectNamed('Demo', 'x'));
    expect(tab.autosaver.status().kind).toBe('saving');
    tab.type(demo);
    await clock.pass(2000);
    expect(await namesOn(tab)).toEqual([]);
    expect(tab.autosaver.status().kind).toBe('untouched');
    tab.type(projectNamed('Demo', 'mine'));
    await clock.pass(2000);
    expect((await openTab(disk).shelf.openLast()).stored?.project.notes).toBe('mine');
  });

  it('counts no revision for a move of the eye, nor for the project as it was loaded', async () => {
    const disk = testDisk();
    const clock = testClock();
    const tab = openTab(disk, clock);
    tab.openFile(projectNamed('Tern'));
    await settled();
    const stored = (await tab.shelf.openLast()).stored;
    if (stored === null) throw new Error('Nothing was stored.');
    tab.autosaver.open(stored, () => {
      tab.type(projectNamed('Tern'));
    });
    tab.type(tab.screen, {
      ...stored,
      question: { basis: { kind: 'profile' }, planId: null, againstPlanId: null },
      selectedFittingId: null,
    });
    await clock.pass(2000);
    expect((await tab.shelf.openLast()).stored?.header.revision).toBe(1);
  });

  it('never writes one project into the record of another', async () => {
    const disk = testDisk();
    const tab = openTab(disk);
    tab.openFile(projectNamed('Tern'));
    tab.type(projectNamed('Tern', 'last words'));
    tab.openFile(projectNamed('Gannet'));
    tab.type(projectNamed('Gannet', 'first words'));
    await tab.autosaver.flush();
    expect([...(await textsOn(disk)).values()].sort()).toEqual(
      [projectNamed('Tern', 'last words'), projectNamed('Gannet', 'first words')].map(textOf).sort(),
    );
  });

  it('says that the storage is full, keeps the text, and writes it at the next change', async () => {
    const disk = fillableDisk();
    const clock = testClock();
    const tab = openTab(disk, clock);
    tab.openFile(projectNamed('Tern'));
    await settled();
    disk.state.isFull = true;
    tab.type(projectNamed('Tern', 'while full'));
    await clock.pass(1000);
    expect(statusText(tab.autosaver.status())).toBe(
      "Not saved: this browser's storage is full. Save to a file",
    );
    disk.state.isFull = false;
    tab.type(projectNamed('Tern', 'while full, and after'));
    await clock.pass(1000);
    expect(tab.autosaver.status().kind).toBe('saved');
    expect([...(await textsOn(disk)).values()]).toEqual([
      textOf(projectNamed('Tern', 'while full, and after')),
    ]);
  });

  it('keeps in the page what a full storage refused, through the opening of another project', async () => {
    const disk = fillableDisk();
    const clock = testClock();
    const tab = openTab(disk, clock);
    disk.state.isFull = true;
    tab.openFile(projectNamed('Tern', 'unwritten'));
    await settled();
    tab.openFile(projectNamed('Gannet'));
    await tab.autosaver.flush();
    await settled();
    const listing = await tab.shelf.list();
    const held = listing.kind === 'listed' ? listing.projects : [];
    expect(held.map(({ name }) => name)).toEqual(['Tern']);
    const stored = storedIn(await tab.shelf.load(held[0]?.id ?? ''));
    expect(stored.text).toBe(textOf(projectNamed('Tern', 'unwritten')));
    disk.state.isFull = false;
    tab.openStored(stored);
    await tab.autosaver.flush();
    await settled();
    // Gannet was pending too, and its closing wrote it.
    expect(await namesOn(openTab(disk))).toEqual(['Gannet', 'Tern']);
  });

  it('names the field of a project that does not save, and writes it once it is mended', async () => {
    const disk = testDisk();
    const clock = testClock();
    const tab = openTab(disk, clock);
    tab.openFile(projectNamed('Tern'));
    await settled();
    tab.type(projectNamed(''));
    await clock.pass(1000);
    expect(tab.autosaver.status()).toEqual({ kind: 'failed', why: 'name must not be empty' });
    tab.type(projectNamed('Tern'));
    await clock.pass(1000);
    expect(tab.autosaver.status().kind).toBe('saved');
  });

  it('says that nothing is kept where only memory is left, and still serves the page', async () => {
    const tab = openTab(memoryKeyValue());
    tab.openFile(projectNamed('Tern'));
    await tab.autosaver.flush();
    expect(statusText(tab.autosaver.status())).toBe('This browser keeps nothing: save to a file');
    expect(await namesOn(tab)).toEqual(['Tern']);
  });
});
