import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { KeyValue } from '../../../src/state/storage/keyValue';
import type { TypedText, TypedTexts } from '../../../src/state/storage/typedRecords';
import { newerThan } from '../../../src/state/storage/secondLook';
import {
  noReading,
  openTab,
  projectNamed,
  settled,
  silence,
  storedIn,
  testChannel,
  testClock,
  testDisk,
  testTabs,
  type TestDisk,
} from './support';

const tern = projectNamed('Tern');

function typed(text: string, refusal: string | null = null): TypedText {
  return { text, label: 'Diameter', refusal };
}

function texts(...entries: readonly (readonly [string, TypedText])[]): TypedTexts {
  return new Map(entries);
}

const half = texts(['fitting/f1.shape.diameter', typed('12 qu')]);

async function openedAgain(disk: KeyValue): Promise<TypedTexts | undefined> {
  return (await openTab(disk).shelf.openLast()).stored?.typed;
}

async function openedTern(disk: KeyValue, clock = testClock(), channel = testChannel()()) {
  const tab = openTab(disk, clock, channel);
  tab.openFile(tern);
  await settled();
  return tab;
}

function typedKeysOn({ entries }: TestDisk): readonly string[] {
  return [...entries.keys()].filter((key) => /^typed(By)?\//.test(key));
}

describe('text that is not a value yet', () => {
  it('is there after a reload, and gone once it is a value', async () => {
    const disk = testDisk();
    const clock = testClock();
    const tab = await openedTern(disk, clock);
    tab.type(tern, noReading, half);
    await clock.pass(300);
    expect(await openedAgain(disk)).toEqual(half);
    tab.type(projectNamed('Tern', 'a value'), noReading, new Map());
    await clock.pass(300);
    expect(await openedAgain(disk)).toEqual(new Map());
    expect(typedKeysOn(disk)).toEqual([]);
  });

  it('leaves with a page that goes before the quiet time is over', async () => {
    const disk = testDisk();
    const tab = await openedTern(disk);
    tab.type(tern, noReading, half);
    tab.autosaver.leave();
    await settled();
    expect(await openedAgain(disk)).toEqual(half);
  });

  it('is kept of steady typing that never rests', async () => {
    const disk = testDisk();
    const clock = testClock();
    const tab = await openedTern(disk, clock);
    for (const text of ['1', '12', '12 ', '12 q', '12 qu']) {
      tab.type(tern, noReading, texts(['fitting/f1.shape.diameter', typed(text)]));
      await clock.pass(100);
    }
    const found = await openedAgain(disk);
    expect(found?.get('fitting/f1.shape.diameter')?.text).toMatch(/^12/);
  });

  it('makes a project of an untouched demo', async () => {
    const disk = testDisk();
    const clock = testClock();
    const tab = openTab(disk, clock);
    tab.openDemo(tern);
    tab.type(tern, noReading, half);
    await clock.pass(300);
    expect(await openedAgain(disk)).toEqual(half);
  });

  it('is there again after another project was open, even where nothing can be written', async () => {
    const disk = testDisk();
    const state = { isFull: false };
    const store: KeyValue = {
      ...disk,
      transact: (keys, change) =>
        disk.transact(keys, (values) => {
          const changed = change(values);
          if (state.isFull && changed.writes.length > 0) throw new DOMException('', 'QuotaExceededError');
          return changed;
        }),
    };
    const tab = await openedTern(store);
    const id = tab.autosaver.openId() ?? '';
    state.isFull = true;
    tab.type(tern, noReading, half);
    tab.openDemo(projectNamed('Demo'));
    await tab.autosaver.flush();
    expect(storedIn(await tab.shelf.load(id)).typed).toEqual(half);
    state.isFull = false;
    expect(storedIn(await tab.shelf.load(id)).typed).toEqual(half);
    expect(storedIn(await openTab(disk).shelf.load(id)).typed).toEqual(half);
  });

  it('of one tab stays when another tab keeps its own', async () => {
    const disk = testDisk();
    const clock = testClock();
    const channel = testChannel();
    const first = await openedTern(disk, clock, channel());
    const second = openTab(disk, clock, channel());
    const { stored } = await second.shelf.openLast();
    if (stored === null) throw new Error('Nothing was stored.');
    second.openStored(stored);
    first.type(tern, noReading, half);
    await clock.pass(300);
    second.type(stored.project, noReading, texts(['fitting/f2.name', typed('')]));
    await clock.pass(300);
    expect(await openedAgain(disk)).toEqual(new Map([...half, ['fitting/f2.name', typed('')]]));
  });

  it('goes along when mine is kept as a copy', async () => {
    const disk = testDisk();
    const clock = testClock();
    const tab = await openedTern(disk, clock);
    tab.type(projectNamed('Tern', 'mine'), noReading, half);
    expect(storedIn(await tab.autosaver.keepMine()).typed).toEqual(half);
  });

  it('is removed with its project', async () => {
    const disk = testDisk();
    const clock = testClock();
    const tab = await openedTern(disk, clock);
    tab.type(tern, noReading, half);
    await clock.pass(300);
    expect(typedKeysOn(disk)).toHaveLength(1);
    await tab.shelf.remove(tab.autosaver.openId() ?? '');
    expect(typedKeysOn(disk)).toEqual([]);
  });

  it('is left out where something else stands in its place, and the project opens', async () => {
    const disk = testDisk();
    const clock = testClock();
    const tab = await openedTern(disk, clock);
    tab.type(tern, noReading, half);
    await clock.pass(300);
    const [key = ''] = typedKeysOn(disk);
    await fc.assert(
      fc.asyncProperty(fc.oneof(fc.anything(), fc.record({ text: fc.anything() })), async (value) => {
        disk.entries.set(key, value);
        expect(await openedAgain(disk)).toEqual(new Map());
      }),
      { numRuns: 100 },
    );
  });
});

/** A tab with half-typed text, and a second one that has opened the same project beside it. */
async function besideHalfTyped() {
  const disk = testDisk();
  const clock = testClock();
  const { liveTabs, closeFirst } = testTabs();
  const first = openTab(disk, clock, silence, liveTabs);
  first.openFile(tern);
  await settled();
  first.type(tern, noReading, half);
  await clock.pass(300);
  const second = openTab(disk, clock, silence, liveTabs);
  const { stored } = await second.shelf.openLast();
  if (stored === null) throw new Error('Nothing was stored.');
  second.openStored(stored);
  const typeInSecond = async (texts: TypedTexts) => {
    second.type(stored.project, noReading, texts);
    await clock.pass(300);
  };
  return { disk, second, stored, closeFirst, typeInSecond };
}

describe('text that is not a value yet in a tab that is open', () => {
  it('is not offered to another tab, which may type in the same field and let its own go', async () => {
    const { disk, second, stored, closeFirst, typeInSecond } = await besideHalfTyped();
    expect(stored.typed).toEqual(new Map());
    const own = texts(['fitting/f1.shape.diameter', typed('13 qu')]);
    await typeInSecond(own);
    expect((await second.shelf.openLast()).stored?.typed).toEqual(own);
    expect(await openedAgain(disk)).toEqual(own);
    await typeInSecond(new Map());
    expect((await second.shelf.openLast()).stored?.typed).toEqual(new Map());
    closeFirst();
    expect((await second.shelf.openLast()).stored?.typed).toEqual(half);
  });

  it('is found by a later look when that tab has gone, and then goes when it is let go', async () => {
    const { disk, second, stored, closeFirst, typeInSecond } = await besideHalfTyped();
    expect(newerThan(stored, await second.shelf.openLast())).toBeNull();
    closeFirst();
    const newer = newerThan(stored, await second.shelf.openLast());
    expect(newer?.typed).toEqual(half);
    if (newer !== null) second.openStored(newer);
    await typeInSecond(new Map());
    expect(typedKeysOn(disk)).toEqual([]);
  });

  it('is offered and goes as before where it was kept without its tab', async () => {
    const { disk, second, stored, typeInSecond } = await besideHalfTyped();
    const key = `typed/${stored.header.id}/fitting/f2.name`;
    disk.entries.set(key, typed('left'));
    const again = (await second.shelf.openLast()).stored;
    expect(again?.typed).toEqual(texts(['fitting/f2.name', typed('left')]));
    if (again !== null) second.openStored(again);
    await typeInSecond(new Map());
    expect(disk.entries.has(key)).toBe(false);
    expect(typedKeysOn(disk)).toHaveLength(1);
  });
});
