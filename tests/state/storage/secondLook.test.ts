import { describe, expect, it } from 'vitest';
import type { StoredProject } from '../../../src/state/storage/records';
import { newerThan } from '../../../src/state/storage/secondLook';
import type { Shelf } from '../../../src/state/storage/shelfTypes';
import {
  gate,
  noReading,
  openTab,
  projectNamed,
  settled,
  silence,
  testClock,
  testDisk,
  testTabs,
} from './support';

/** A page that is being closed, whose last words still wait, and the shelf of the page opened meanwhile. */
async function closing(): Promise<{ shelf: Shelf; first: StoredProject; arrive: () => Promise<void> }> {
  const disk = testDisk();
  const { store, letAllThrough } = gate(disk);
  const old = openTab(store, testClock());
  old.openFile(projectNamed('Tern'));
  await settled();
  await letAllThrough();
  old.type(projectNamed('Tern', 'last word'));
  old.autosaver.leave();
  const { shelf } = openTab(disk, testClock());
  const { stored } = await shelf.openLast();
  if (stored === null) throw new Error('nothing stored');
  return { shelf, first: stored, arrive: letAllThrough };
}

describe('a second look at the shelf', () => {
  it('finds the last words of a page that was still being closed at the first', async () => {
    const { shelf, first, arrive } = await closing();
    expect(first.project.notes).toBe('');
    await arrive();
    expect(newerThan(first, await shelf.openLast())?.project.notes).toBe('last word');
  });

  it('finds text that is no value yet, which came late', async () => {
    const { shelf, first } = await closing();
    const half = { text: '12 qu', label: 'Diameter', refusal: null };
    await shelf.keepTyped(first.header.id, [['boat.diameter', half]]);
    expect(newerThan(first, await shelf.openLast())?.typed.get('boat.diameter')).toEqual(half);
  });

  it('finds nothing where nothing came, or where another project is open last', async () => {
    const { shelf, first } = await closing();
    expect(newerThan(first, await shelf.openLast())).toBeNull();
    const other = await shelf.addCopy(projectNamed('Skua'), noReading, new Map(), 'other');
    if (other.kind !== 'opened') throw new Error('no copy');
    await shelf.rememberOpen(other.stored.header.id);
    expect(newerThan(first, await shelf.openLast())).toBeNull();
  });
});

/** A tab with typing that is on the disk as a draft alone, and a second one that has opened the same project. */
async function typingInTheFirst() {
  const disk = testDisk();
  const clock = testClock();
  const { liveTabs, closeFirst } = testTabs();
  const { store, letAllThrough } = gate(disk);
  const first = openTab(store, clock, silence, liveTabs);
  first.openFile(projectNamed('Tern'));
  await settled();
  await letAllThrough();
  const second = openTab(disk, clock, silence, liveTabs);
  const { stored } = await second.shelf.openLast();
  if (stored === null) throw new Error('nothing stored');
  const { id, revision } = stored.header;
  const typed = projectNamed('Tern', 'still typing');
  const draft = {
    ...first.shelf.newHeader('Tern'),
    id,
    revision,
    text: JSON.stringify(typed),
    reading: noReading,
  };
  void first.shelf.keepDraft(draft);
  await letAllThrough();
  return { disk, second, stored, closeFirst };
}

describe('typing in a tab that is open', () => {
  it('is not taken over by another tab, at its start or later', async () => {
    const { second, stored } = await typingInTheFirst();
    expect((await second.shelf.openLast()).stored?.text).toBe(stored.text);
    expect(await second.shelf.recoverLate(null)).toEqual([]);
    expect(await second.shelf.recoverLate(stored.header.id)).toEqual([]);
  });

  it('is found as soon as that tab has gone', async () => {
    const { second, stored, closeFirst } = await typingInTheFirst();
    let looks = 0;
    await second.shelf.whenOthersGo(() => (looks += 1));
    expect(looks).toBe(0);
    closeFirst();
    expect(looks).toBe(1);
    expect(newerThan(stored, await second.shelf.openLast())?.project.notes).toBe('still typing');
  });

  it('goes beside what was changed in the other tab meanwhile, and is offered', async () => {
    const { second, stored, closeFirst } = await typingInTheFirst();
    closeFirst();
    second.openStored(stored);
    second.type(projectNamed('Tern', 'typed in the second'));
    const [offered, ...others] = await second.shelf.recoverLate(stored.header.id);
    expect(others).toEqual([]);
    expect(offered?.name).toMatch(/^Tern \(unsaved work of /);
    await second.autosaver.flush();
    expect(second.autosaver.status().kind).toBe('saved');
    expect((await second.shelf.load(offered?.id ?? '')).kind).toBe('opened');
    expect((await second.shelf.openLast()).stored?.project.notes).toBe('typed in the second');
  });

  it('is left where it is when the browser does not tell which tabs are open', async () => {
    const { disk, stored } = await typingInTheFirst();
    expect(await openTab(disk).shelf.recoverLate(stored.header.id)).toEqual([]);
  });
});
