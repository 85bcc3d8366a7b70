import { cleanup, fireEvent, render, screen, waitFor } from '@testing-library/react';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Keeper } from '../../../src/app/keep/keeper';
import { KeepLines } from '../../../src/app/keep/KeepLines';
import { useKeeping } from '../../../src/app/keep/keeping';
import { useOffline } from '../../../src/app/offline/offline';
import { callWaiting } from '../../../src/app/offline/reloadInto';
import { startWorker } from '../../../src/app/offline/worker';
import type { SaveStatus } from '../../../src/state/storage/saveStatus';

/** A browser's worker registration, whose waiting worker writes down what it is asked. */
class FakeRegistration extends EventTarget {
  readonly asked: unknown[] = [];
  active: object | null = { postMessage: (message: unknown) => this.asked.push(message) };
  waiting: object | null = null;
  installing: EventTarget | null = null;

  letWait(): void {
    this.waiting = { postMessage: (message: unknown) => this.asked.push(message) };
  }
}

let registration: FakeRegistration;
let container: EventTarget;
let saved: SaveStatus;
/** What the worker had been asked by the time that each save was done. */
let askedAtSaves: (readonly unknown[])[];

beforeEach(() => {
  registration = new FakeRegistration();
  container = Object.assign(new EventTarget(), {
    register: () => Promise.resolve(registration),
    ready: Promise.resolve(registration),
  });
  vi.stubGlobal(
    'navigator',
    Object.assign(Object.create(navigator) as Navigator, { serviceWorker: container }),
  );
  saved = { kind: 'saved', savedAt: '2026-05-01T10:00:00Z' };
  askedAtSaves = [];
  const flush = async (): Promise<void> => {
    await new Promise((resolve) => setTimeout(resolve));
    useKeeping.setState({ status: saved });
    askedAtSaves.push([...registration.asked]);
  };
  const keeper = { autosaver: { flush, status: () => saved } } as unknown as Keeper;
  useKeeping.setState({ keeper, status: { kind: 'saving' }, findings: [] });
  useOffline.setState({ isReady: false, registration: null });
});

afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

async function offered(): Promise<void> {
  registration.letWait();
  await startWorker();
  render(<KeepLines />);
}

function press(words: string): void {
  fireEvent.click(screen.getByRole('button', { name: words }));
}

describe('a new version', () => {
  it('is not spoken of while none waits, and the page says that it needs no network', async () => {
    await startWorker();
    render(<KeepLines />);
    expect(screen.queryByText(/new version/)).toBeNull();
    expect(useOffline.getState().isReady).toBe(true);
  });

  it('is offered when it has been fetched, and nothing is asked of it by itself', async () => {
    await startWorker();
    render(<KeepLines />);
    const installing = new EventTarget();
    registration.installing = installing;
    registration.dispatchEvent(new Event('updatefound'));
    registration.letWait();
    installing.dispatchEvent(new Event('statechange'));
    expect(await screen.findByText(/Your work is saved in this browser; reload to use it/)).toBeTruthy();
    expect(registration.asked).toEqual([{ kind: 'tidy' }]);
  });

  it('comes after what was pending is saved', async () => {
    await offered();
    press('Reload into it');
    await waitFor(() => {
      expect(registration.asked).toContainEqual({ kind: 'takeOver' });
    });
    expect(askedAtSaves).toHaveLength(1);
    expect(askedAtSaves[0]).not.toContainEqual({ kind: 'takeOver' });
  });

  it('stays away when the last save is refused, and the line says to save to a file', async () => {
    await offered();
    saved = { kind: 'failed', why: 'this browser’s storage is full' };
    press('Reload into it');
    expect(await screen.findByText(/save it to a file before you reload/)).toBeTruthy();
    expect(registration.asked).not.toContainEqual({ kind: 'takeOver' });
    press('Reload anyway');
    expect(registration.asked).toContainEqual({ kind: 'takeOver' });
  });

  it('is put off with Later', async () => {
    await offered();
    press('Later');
    expect(screen.queryByText(/new version/)).toBeNull();
    expect(registration.asked).not.toContainEqual({ kind: 'takeOver' });
  });

  it('reloads only the tab that asked, once, when the new worker is in force', () => {
    registration.letWait();
    const reload = vi.fn();
    callWaiting(registration as unknown as ServiceWorkerRegistration, reload);
    expect(reload).not.toHaveBeenCalled();
    container.dispatchEvent(new Event('controllerchange'));
    container.dispatchEvent(new Event('controllerchange'));
    expect(reload).toHaveBeenCalledTimes(1);
  });

  it('that another tab has called already is loaded at once', () => {
    const reload = vi.fn();
    callWaiting(registration as unknown as ServiceWorkerRegistration, reload);
    expect(reload).toHaveBeenCalledTimes(1);
    expect(registration.asked).toEqual([]);
  });

  it('is nobody’s worry where the browser refuses the worker', async () => {
    Object.assign(container, { register: () => Promise.reject(new DOMException('', 'SecurityError')) });
    await startWorker();
    expect(useOffline.getState()).toEqual({ isReady: false, registration: null });
    expect(useKeeping.getState().findings).toEqual([]);
  });
});
