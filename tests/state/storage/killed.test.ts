import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { KeyValue } from '../../../src/state/storage/keyValue';
import { gate, openTab, projectNamed, settled, testClock, testDisk, textOf, textsOn } from './support';

/** A way to the disk that is cut after so many transactions; what comes later is never answered. */
function cutAfter(disk: KeyValue, transactions: number): KeyValue {
  let left = transactions;
  return {
    ...disk,
    transact: (keys, change) => {
      left -= 1;
      return left < 0 ? new Promise(() => undefined) : disk.transact(keys, change);
    },
  };
}

describe('a page killed between any two steps', () => {
  it('leaves the last save that it reported, or a later one', async () => {
    const act = fc.constantFrom('type', 'wait', 'leave', 'move the eye', 'answers arrive');
    await fc.assert(
      fc.asyncProperty(fc.array(act, { maxLength: 15 }), fc.nat(14), async (acts, transactions) => {
        const disk = testDisk();
        const clock = testClock();
        const tab = openTab(cutAfter(disk, transactions), clock);
        const typed = [projectNamed('Tern', 'x')];
        let reported = -1;
        tab.openFile(projectNamed('Tern', 'x'));
        await settled();
        for (const kind of acts) {
          if (kind === 'type') {
            typed.push(projectNamed('Tern', 'x'.repeat(typed.length + 1)));
            tab.type(typed.at(-1) ?? projectNamed('Tern'));
          } else if (kind === 'wait') await clock.pass(1000);
          else if (kind === 'leave') tab.autosaver.leave();
          else if (kind === 'move the eye')
            tab.type(tab.screen, {
              question: { basis: { kind: 'profile' }, planId: null, againstPlanId: null },
              selectedFittingId: null,
            });
          if (kind === 'answers arrive') await settled();
          if (kind === 'wait' && tab.autosaver.status().kind === 'saved') reported = typed.length - 1;
        }
        const { stored, broken } = await openTab(disk).shelf.openLast();
        expect(broken).toEqual([]);
        const found = stored === null ? -1 : typed.map(textOf).indexOf(stored.text);
        expect(found).toBeGreaterThanOrEqual(reported);
        expect((await textsOn(disk)).size).toBeLessThanOrEqual(1);
      }),
      { numRuns: 300 },
    );
  });

  it('keeps the last word when the page goes before the quiet time is over', async () => {
    const disk = testDisk();
    // The pointer, the first save, the pointer again, then the draft and nothing more.
    const tab = openTab(cutAfter(disk, 4));
    tab.openFile(projectNamed('Tern'));
    await settled();
    tab.type(projectNamed('Tern', 'last word'));
    tab.autosaver.leave();
    await settled();
    expect(disk.entries.get([...disk.entries.keys()].find((key) => key.startsWith('text/')) ?? '')).toBe(
      textOf(projectNamed('Tern')),
    );
    const { stored, recovered } = await openTab(disk).shelf.openLast();
    expect(stored?.text).toBe(textOf(projectNamed('Tern', 'last word')));
    expect(recovered).toEqual([]);
    expect([...disk.entries.keys()].filter((key) => key.startsWith('draft/'))).toEqual([]);
  });

  it('puts unsaved work into its project where only its own earlier write came between', async () => {
    const disk = testDisk();
    const way = gate(disk);
    const tab = openTab(way.store);
    tab.openFile(projectNamed('Tern'));
    await settled();
    await way.letAllThrough();
    tab.type(projectNamed('Tern', 'first'));
    void tab.autosaver.flush();
    await settled();
    tab.type(projectNamed('Tern', 'first and last'));
    tab.autosaver.leave();
    // The write of the first, then the draft of the last; the write of the last never leaves.
    await way.letOneThrough();
    await way.letOneThrough();
    const { stored, recovered } = await openTab(disk).shelf.openLast();
    expect(stored?.project.notes).toBe('first and last');
    expect(recovered).toEqual([]);
  });

  it('puts unsaved work beside a project that another tab has saved since', async () => {
    const disk = testDisk();
    const first = openTab(cutAfter(disk, 4));
    first.openFile(projectNamed('Tern'));
    await settled();
    const second = openTab(disk);
    const start = (await second.shelf.openLast()).stored;
    if (start === null) throw new Error('Nothing was stored.');
    first.type(projectNamed('Tern', 'from the first'));
    first.autosaver.leave();
    second.openStored(start);
    second.type(projectNamed('Tern', 'from the second'));
    await second.autosaver.flush();
    const { stored, recovered } = await openTab(disk).shelf.openLast();
    expect(stored?.project.notes).toBe('from the second');
    expect(recovered).toMatchObject([
      { name: expect.stringMatching(/^Tern \(unsaved work of 2026-03-01 \d\d:\d\d\)$/) as string },
    ]);
    expect((await textsOn(disk)).get(recovered[0]?.id ?? '')).toContain('from the first');
  });

  it('loses less than half a second of steady typing, though a write waits for a whole one', async () => {
    const disk = testDisk();
    const clock = testClock();
    const tab = openTab(disk, clock);
    tab.openFile(projectNamed('Tern'));
    await settled();
    let typed = '';
    for (let passedMs = 0; passedMs < 900; passedMs += 100) {
      typed += 'x';
      tab.type(projectNamed('Tern', typed));
      await clock.pass(100);
      const { stored } = await openTab(testDisk(new Map(disk.entries))).shelf.openLast();
      expect(typed.length - (stored?.project.notes.length ?? -1)).toBeLessThan(5);
    }
    expect(tab.statuses.filter((kind) => kind === 'saved')).toHaveLength(1);
  });

  it('leaves no draft of what was typed and taken back', async () => {
    const disk = testDisk();
    const clock = testClock();
    const tab = openTab(disk, clock);
    const before = projectNamed('Tern');
    tab.openFile(before);
    await settled();
    tab.type(projectNamed('Tern', 'x'));
    await clock.pass(200);
    tab.type(projectNamed('Tern', 'xx'));
    await clock.pass(200);
    expect([...disk.entries.keys()].filter((key) => key.startsWith('draft/'))).toHaveLength(1);
    tab.type(before);
    await clock.pass(1000);
    expect([...disk.entries.keys()].filter((key) => key.startsWith('draft/'))).toEqual([]);
    expect((await openTab(disk).shelf.openLast()).stored?.project.notes).toBe('');
  });

  it('is no other tab to itself when a page that opens takes its draft over', async () => {
    const disk = testDisk();
    const clock = testClock();
    const tab = openTab(disk, clock);
    tab.openFile(projectNamed('Tern'));
    await settled();
    tab.type(projectNamed('Tern', 'x'));
    await clock.pass(200);
    tab.type(projectNamed('Tern', 'xx'));
    await clock.pass(200);
    expect((await openTab(disk).shelf.openLast()).stored?.project.notes).toBe('xx');
    tab.type(projectNamed('Tern', 'xxx'));
    await clock.pass(1000);
    expect(tab.autosaver.status().kind).toBe('saved');
    expect((await openTab(disk).shelf.openLast()).stored?.project.notes).toBe('xxx');
  });
});
