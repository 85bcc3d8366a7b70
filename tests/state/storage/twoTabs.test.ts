import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { statusText } from '../../../src/state/storage/saveStatus';
import {
  gate,
  namesOn,
  openTab,
  projectNamed,
  settled,
  silence,
  storedIn,
  testChannel,
  testClock,
  testDisk,
  textOf,
  textsOn,
  type Tab,
} from './support';

async function twoTabsOnOneProject(hasChannel: boolean) {
  const disk = testDisk();
  const clock = testClock();
  const join = hasChannel ? testChannel() : () => silence;
  const first = openTab(disk, clock, join());
  first.openFile(projectNamed('Tern', 'start'));
  await first.autosaver.flush();
  const second = openTab(disk, clock, join());
  const { stored } = await second.shelf.openLast();
  if (stored === null) throw new Error('Nothing was stored.');
  second.openStored(stored);
  await settled();
  return { disk, clock, first, second };
}

describe('two tabs on one project', () => {
  it('tell each other at once, and later without a channel; the stale one writes nothing', async () => {
    for (const hasChannel of [true, false]) {
      const { disk, first, second } = await twoTabsOnOneProject(hasChannel);
      first.type(projectNamed('Tern', 'from the first'));
      await first.autosaver.flush();
      expect(second.autosaver.status().kind).toBe(hasChannel ? 'conflict' : 'saved');
      second.type(projectNamed('Tern', 'from the second'));
      await second.autosaver.flush();
      expect(second.autosaver.status()).toMatchObject({ kind: 'conflict', theirs: { revision: 2 } });
      expect(statusText(second.autosaver.status())).toMatch(/^Another tab saved this project at \d\d:\d\d$/);
      expect([...(await textsOn(disk)).values()]).toContain(textOf(projectNamed('Tern', 'from the first')));
      expect(first.autosaver.status().kind).toBe('saved');
    }
  });

  it('keep mine as a copy that says so, and go on in it', async () => {
    const { disk, first, second } = await twoTabsOnOneProject(true);
    first.type(projectNamed('Tern', 'from the first'));
    second.type(projectNamed('Tern', 'from the second'));
    await first.autosaver.flush();
    await second.autosaver.flush();
    second.openStored(storedIn(await second.autosaver.keepMine()));
    expect(second.screen.name).toMatch(/^Tern \(changed in two tabs, mine of \d\d:\d\d\)$/);
    second.type({ ...second.screen, notes: 'from the second, and on' });
    await second.autosaver.flush();
    const notes = [...(await textsOn(disk)).values()].map(
      (text) => (JSON.parse(text) as { notes: string }).notes,
    );
    expect(notes.sort()).toEqual(['from the first', 'from the second, and on']);
    expect(second.autosaver.status().kind).toBe('saved');
  });

  it('take theirs, and go on saving there', async () => {
    const { disk, first, second } = await twoTabsOnOneProject(true);
    first.type(projectNamed('Tern', 'from the first'));
    second.type(projectNamed('Tern', 'from the second'));
    await first.autosaver.flush();
    await second.autosaver.flush();
    second.openStored(storedIn(await second.autosaver.takeTheirs()));
    expect(second.screen.notes).toBe('from the first');
    second.type(projectNamed('Tern', 'from the first, and on'));
    await second.autosaver.flush();
    await openTab(disk).shelf.openLast();
    expect([...(await textsOn(disk)).values()]).toEqual([
      textOf(projectNamed('Tern', 'from the first, and on')),
    ]);
  });

  it('do not quarrel about the same text, nor about a move of the eye', async () => {
    const { first, second } = await twoTabsOnOneProject(false);
    first.type(projectNamed('Tern', 'the same'));
    second.type(projectNamed('Tern', 'the same'));
    await first.autosaver.flush();
    await second.autosaver.flush();
    expect(second.autosaver.status().kind).toBe('saved');
    first.type(first.screen, {
      question: { basis: { kind: 'profile' }, planId: null, againstPlanId: null },
      selectedFittingId: null,
    });
    await first.autosaver.flush();
    second.type(projectNamed('Tern', 'the same, and on'));
    await second.autosaver.flush();
    expect(second.autosaver.status().kind).toBe('saved');
  });

  it('keep what is typed in one after the other removed the project', async () => {
    const { first, second } = await twoTabsOnOneProject(true);
    const { stored } = await first.shelf.openLast();
    await first.shelf.remove(stored?.header.id ?? '');
    second.type(projectNamed('Tern', 'typed after'));
    await second.autosaver.flush();
    expect(second.autosaver.status()).toEqual({ kind: 'conflict', theirs: null });
    second.openFile(projectNamed('Gannet'));
    await second.autosaver.flush();
    expect((await namesOn(second)).map((name) => name.slice(0, 6))).toEqual(['Gannet', 'Tern (']);
  });

  it('lose no typed word, however their steps fall between each other', async () => {
    const act = fc.record({
      tab: fc.constantFrom(0, 1),
      kind: fc.constantFrom(
        'type',
        'type',
        'let through',
        'let through',
        'wait',
        'leave',
        'keep mine',
        'open another',
      ),
    });
    await fc.assert(
      fc.asyncProperty(fc.array(act, { maxLength: 30 }), fc.boolean(), async (acts, hasChannel) => {
        const disk = testDisk();
        const clock = testClock();
        const join = hasChannel ? testChannel() : () => silence;
        const words: string[] = [];
        const sides: { tab: Tab; gate: ReturnType<typeof gate> }[] = [];
        const start = openTab(disk, clock);
        start.openFile(projectNamed('Tern'));
        await start.autosaver.flush();
        for (let i = 0; i < 2; i += 1) {
          const way = gate(disk);
          const tab = openTab(way.store, clock, join());
          const { stored } = await start.shelf.openLast();
          if (stored === null) throw new Error('Nothing was stored.');
          tab.openStored(stored);
          sides.push({ tab, gate: way });
        }
        for (const { tab: number, kind } of acts) {
          const side = sides[number];
          if (side === undefined) continue;
          const { tab } = side;
          if (kind === 'type') {
            const word = `<${words.length}>`;
            words.push(word);
            tab.type({ ...tab.screen, notes: tab.screen.notes + word });
          } else if (kind === 'let through') await side.gate.letOneThrough();
          else if (kind === 'wait') await clock.pass(400);
          else if (kind === 'leave') tab.autosaver.leave();
          else if (kind === 'open another') tab.openFile(projectNamed('Gannet'));
          else if (tab.autosaver.status().kind === 'conflict') {
            const kept = tab.autosaver.keepMine();
            await side.gate.letAllThrough();
            tab.openStored(storedIn(await kept));
          }
        }
        for (const { tab, gate: way } of sides) {
          tab.autosaver.leave();
          await way.letAllThrough();
        }
        await openTab(disk).shelf.openLast();
        const texts = [...(await textsOn(disk)).values()].join('\n');
        expect(words.filter((word) => !texts.includes(word))).toEqual([]);
      }),
      { numRuns: 300 },
    );
  });
});
