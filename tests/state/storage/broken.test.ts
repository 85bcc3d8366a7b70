import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { openTab, projectNamed, settled, testDisk, textOf } from './support';

async function diskWith(...names: readonly string[]) {
  const disk = testDisk();
  const tab = openTab(disk);
  for (const name of names) {
    tab.openFile(projectNamed(name));
    await tab.autosaver.flush();
  }
  await settled();
  const pointer = disk.entries.get('open') as { readonly id: string };
  return { disk, openId: pointer.id };
}

const anything = fc
  .anything({ withDate: true, withMap: true, withTypedArray: true, withBigInt: true })
  .filter((value) => {
    try {
      structuredClone(value);
      return true;
    } catch {
      return false;
    }
  });

describe('a broken saved state', () => {
  it('is set aside with its text, and another project opens', async () => {
    const { disk, openId } = await diskWith('Tern', 'Gannet');
    const cut = textOf(projectNamed('Gannet')).slice(0, 100);
    disk.entries.set(`text/${openId}`, cut);
    const { stored, broken } = await openTab(disk).shelf.openLast();
    expect(stored?.project.name).toBe('Tern');
    expect(broken).toMatchObject([
      { name: 'Gannet', content: cut, why: expect.stringContaining('JSON') as string },
    ]);
    const tab = openTab(disk);
    const listing = await tab.shelf.list();
    expect(listing).toMatchObject({ projects: [{ name: 'Tern' }], broken });
    await tab.shelf.removeBroken(broken[0]?.key ?? '');
    expect(await tab.shelf.list()).toMatchObject({ broken: [] });
  });

  it.each(['header', 'text', 'draft'])('is set aside whatever stands in place of its %s', async (place) => {
    await fc.assert(
      fc.asyncProperty(anything, async (garbage) => {
        const { disk, openId } = await diskWith('Tern', 'Gannet');
        const goodText = textOf(projectNamed('Gannet'));
        const key = place === 'draft' ? `draft/${openId}/dead` : `${place}/${openId}`;
        disk.entries.set(key, garbage);
        const tab = openTab(disk);
        const { stored } = await tab.shelf.openLast();
        expect(stored?.project.name).toBe(place === 'draft' ? 'Gannet' : 'Tern');
        const listing = await tab.shelf.list();
        if (listing.kind !== 'listed') throw new Error(listing.why);
        const isSetAside = !(place === 'draft' && garbage === undefined);
        expect(listing.broken).toHaveLength(isSetAside ? 1 : 0);
        if (place === 'header') expect(listing.broken[0]?.content).toBe(goodText);
        expect(listing.broken.every(({ content }) => typeof content === 'string')).toBe(true);
      }),
      { numRuns: 100 },
    );
  });

  it.each(['reading', 'open'])('opens whatever stands in place of the %s', async (place) => {
    await fc.assert(
      fc.asyncProperty(anything, async (garbage) => {
        const { disk, openId } = await diskWith('Gannet');
        disk.entries.set(place === 'reading' ? `reading/${openId}` : 'open', garbage);
        const { stored, broken } = await openTab(disk).shelf.openLast();
        expect(stored?.project.name).toBe('Gannet');
        expect(broken).toEqual([]);
      }),
      { numRuns: 100 },
    );
  });

  it('shows damage even among what was set aside', async () => {
    await fc.assert(
      fc.asyncProperty(anything, async (garbage) => {
        const disk = testDisk();
        disk.entries.set('broken/x', garbage);
        const listing = await openTab(disk).shelf.list();
        expect(listing).toMatchObject({
          kind: 'listed',
          broken: [{ key: 'broken/x', content: expect.any(String) as string }],
        });
      }),
      { numRuns: 100 },
    );
  });
});
