import { describe, expect, it } from 'vitest';
import { openAnnouncements } from '../../../src/state/storage/announcements';
import { fileNameFor } from '../../../src/state/storage/fileNameFor';
import { indexedDbKeyValue } from '../../../src/state/storage/indexedDbKeyValue';
import type { KeyValue } from '../../../src/state/storage/keyValue';
import { openKeyValue } from '../../../src/state/storage/openKeyValue';
import { statusText } from '../../../src/state/storage/saveStatus';
import { openTab, projectNamed, settled, testClock, testDisk } from './support';

const forbidden: KeyValue = {
  isKept: true,
  keys: () => Promise.reject(new DOMException('', 'SecurityError')),
  transact: () => Promise.reject(new DOMException('', 'SecurityError')),
};

describe('refused storage', () => {
  it('gives way to memory where there is no database', async () => {
    // Node has none, as a browser may have none.
    expect(typeof indexedDB).toBe('undefined');
    expect((await openKeyValue(indexedDbKeyValue)).isKept).toBe(false);
  });

  it('gives way to memory where the database refuses, throws or never answers', async () => {
    expect((await openKeyValue(() => forbidden)).isKept).toBe(false);
    const throws = () => {
      throw new DOMException('', 'SecurityError');
    };
    expect((await openKeyValue(throws)).isKept).toBe(false);
    const clock = testClock();
    const silent = openKeyValue(
      () => ({ ...forbidden, transact: () => new Promise(() => undefined) }),
      clock,
    );
    await clock.pass(10_000);
    expect((await silent).isKept).toBe(false);
  });

  it('keeps a database that can be read', async () => {
    const disk = testDisk();
    expect(await openKeyValue(() => disk)).toBe(disk);
  });

  it('rejects nowhere when the database goes away later', async () => {
    const tab = openTab(forbidden);
    expect(await tab.shelf.openLast()).toEqual({ stored: null, recovered: [], broken: [] });
    const failed = { kind: 'failed', why: "this browser's storage refused (SecurityError)" };
    expect(await tab.shelf.list()).toEqual(failed);
    expect(await tab.shelf.load('x')).toEqual(failed);
    expect(await tab.shelf.remove('x')).toEqual(failed);
    tab.openFile(projectNamed('Tern'));
    tab.autosaver.leave();
    await tab.autosaver.flush();
    await settled();
    expect(statusText(tab.autosaver.status())).toBe(
      "Not saved: this browser's storage refused (SecurityError). Save to a file",
    );
  });

  it('announces nothing and breaks nothing where BroadcastChannel is missing', () => {
    const { BroadcastChannel } = globalThis;
    Reflect.deleteProperty(globalThis, 'BroadcastChannel');
    try {
      const announcements = openAnnouncements();
      announcements.subscribe(() => undefined);
      announcements.announce({ id: 'x', name: 'x', savedAt: '2026-03-01T09:05:00Z', revision: 1, tab: 't' });
    } finally {
      globalThis.BroadcastChannel = BroadcastChannel;
    }
  });
});

describe('the name of the downloaded file', () => {
  it.each([
    ['Tern, after the refit', 'Tern after the refit.windtoll.json'],
    ['../../etc/passwd', 'etc passwd.windtoll.json'],
    ['<b>"Möwe"</b> 12\u202Egnp', 'b Möwe b 12 gnp.windtoll.json'],
    ['CON', 'project CON.windtoll.json'],
    ['...', 'project.windtoll.json'],
    ['風の通行料', '風の通行料.windtoll.json'],
    ['x'.repeat(300), `${'x'.repeat(80)}.windtoll.json`],
  ])('of %j is %j', (name, expected) => {
    expect(fileNameFor({ name })).toBe(expected);
  });
});
