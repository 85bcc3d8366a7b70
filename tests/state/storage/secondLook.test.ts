import { describe, expect, it } from 'vitest';
import type { StoredProject } from '../../../src/state/storage/records';
import { newerThan } from '../../../src/state/storage/secondLook';
import type { Shelf } from '../../../src/state/storage/shelfTypes';
import { gate, noReading, openTab, projectNamed, settled, testClock, testDisk } from './support';

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
