// @vitest-environment jsdom
import { beforeEach, describe, expect, it, vi } from 'vitest';

const place = 'windtoll-preferences';

/** The store as a page finds it at its start. */
async function started() {
  vi.resetModules();
  return import('../../src/state/preferences');
}

describe('what a reader prefers', () => {
  beforeEach(() => {
    window.localStorage.clear();
  });

  it('is the usual where nothing was kept', async () => {
    const { usePreferences } = await started();
    expect(usePreferences.getState().units).toMatchObject({ speed: 'kn', power: 'W' });
  });

  it('is there again after a reload', async () => {
    const before = await started();
    before.prefer({ isCompact: true, columns: ['sideForce'] });
    before.prefer({ units: { ...before.usePreferences.getState().units, power: 'PS' } });
    const { usePreferences } = await started();
    expect(usePreferences.getState()).toMatchObject({
      isCompact: true,
      columns: ['sideForce'],
      units: { power: 'PS', speed: 'kn' },
    });
  });

  it('loses only the part that cannot be read', async () => {
    window.localStorage.setItem(
      place,
      JSON.stringify({ units: { speed: 'furlongs', power: 'hp' }, columns: ['colour'], isCompact: true }),
    );
    const { usePreferences } = await started();
    expect(usePreferences.getState()).toMatchObject({
      units: { speed: 'kn', power: 'hp' },
      columns: ['coefficient', 'price'],
      isCompact: true,
    });
  });

  it.each(['', '{', 'null', '[]', '7'])('is the usual where %j was kept', async (text) => {
    window.localStorage.setItem(place, text);
    const { usePreferences } = await started();
    expect(usePreferences.getState().isCompact).toBe(false);
  });

  it('holds without being kept where the browser refuses', async () => {
    const { prefer, usePreferences } = await started();
    const refusal = vi.spyOn(Storage.prototype, 'setItem').mockImplementation(() => {
      throw new DOMException('full', 'QuotaExceededError');
    });
    prefer({ isCompact: true });
    refusal.mockRestore();
    expect(usePreferences.getState().isCompact).toBe(true);
  });
});
