import { cleanup, render, screen } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { afterEach, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import { blankProject } from '../../../src/project/file/blankParts';
import type { Project } from '../../../src/project/file/schema';
import { useAppStore } from '../../../src/state/appStore';
import { AddFitting } from '../../../src/views/rowEditor/AddFitting';
import { demo, openInStore } from '../ledger/openProjects';

vi.setConfig({ testTimeout: 20_000 });

// The tests' document knows dialogs but not how to open them.
beforeAll(() => {
  HTMLDialogElement.prototype.showModal = function showModal() {
    this.open = true;
  };
  HTMLDialogElement.prototype.close = function close() {
    this.open = false;
    this.dispatchEvent(new Event('close'));
  };
});
afterEach(cleanup);
beforeEach(() => {
  openInStore(demo());
});

function project(): Project {
  const { project: open } = useAppStore.getState();
  if (open === null) throw new Error('nothing open');
  return open;
}

function show() {
  const onClose = vi.fn();
  render(<AddFitting onClose={onClose} />);
  return onClose;
}

describe('the list of fittings', () => {
  it('searches by the start of a word and adds the best match on Enter', async () => {
    const before = project();
    const onClose = show();
    const search = screen.getByRole('searchbox', { name: 'Search' });
    await userEvent.type(search, 'stanch');
    const found = screen.getAllByRole('listitem').map(({ textContent }) => textContent);
    expect(found.some((text) => text.startsWith('Stanchions'))).toBe(true);
    expect(found.some((text) => text.startsWith('Boom'))).toBe(false);
    await userEvent.keyboard('{Enter}');
    const added = project().fittings.filter(({ id }) => !before.fittings.some((old) => old.id === id));
    expect(added.map(({ name }) => name)).toEqual(['Stanchions']);
    expect(onClose).toHaveBeenCalledTimes(1);
    const { selectedFittingId, sidePane, isFirstFieldWanted } = useAppStore.getState();
    expect([selectedFittingId, sidePane, isFirstFieldWanted]).toEqual([added[0]?.id, 'edit', true]);
    useAppStore.getState().undo();
    expect(project()).toEqual(before);
  });

  it('is walked through with the arrow keys', async () => {
    show();
    const choices = [...document.querySelectorAll('.add-choice')];
    screen.getByRole('searchbox').focus();
    await userEvent.keyboard('{ArrowDown}{ArrowDown}');
    expect(document.activeElement).toBe(choices[1]);
    await userEvent.keyboard('{ArrowUp}{ArrowUp}');
    expect(document.activeElement).toBe(screen.getByRole('searchbox'));
  });

  it('offers a blank bar, body and area, and puts it into the zone of the selected row', async () => {
    for (const [name, kind] of [
      ['A bar', 'roundBar'],
      ['A body', 'bluffBody'],
      ['A measured area', 'measuredArea'],
    ] as const) {
      useAppStore.getState().select('boom');
      show();
      await userEvent.click(screen.getByRole('button', { name }));
      const { selectedFittingId } = useAppStore.getState();
      const added = project().fittings.find(({ id }) => id === selectedFittingId);
      const boom = project().fittings.find(({ id }) => id === 'boom');
      expect([added?.shape.kind, added?.zoneId]).toEqual([kind, boom?.zoneId]);
      cleanup();
    }
  });

  it('says that nothing was found and still offers the blank ones', async () => {
    show();
    await userEvent.type(screen.getByRole('searchbox'), 'qqq');
    expect(screen.getByText('Nothing is called "qqq"; take a blank one and name it.')).toBeTruthy();
    expect(screen.getByRole('button', { name: 'A body' })).toBeTruthy();
  });

  it('makes a zone first where a project has none', async () => {
    openInStore(blankProject({ zones: [] }));
    show();
    await userEvent.type(screen.getByRole('searchbox'), 'boom{Enter}');
    expect(project().zones.map(({ name }) => name)).toEqual(['Deck']);
    expect(project().fittings).toHaveLength(1);
  });

  it('closes without adding', async () => {
    const before = project();
    const onClose = show();
    await userEvent.click(screen.getByRole('button', { name: 'Close without adding' }));
    expect(onClose).toHaveBeenCalledTimes(1);
    expect(project()).toBe(before);
  });
});
