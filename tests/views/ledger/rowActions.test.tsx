import { act, cleanup, fireEvent, render, screen, within } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { halfTyped } from '../../setup/halfTyped';
import type { Project, ProjectFitting } from '../../../src/project/file/schema';
import { useAppStore } from '../../../src/state/appStore';
import { dropTyped, keepTyped } from '../../../src/state/typedTexts';
import { LedgerPane } from '../../../src/views/ledger/LedgerPane';
import { RowInPlace, type RowInPlaceProps } from '../../../src/views/ledger/RowInPlace';
import { demo, openInStore } from './openProjects';

vi.setConfig({ testTimeout: 20_000 });

afterEach(cleanup);
beforeEach(() => {
  openInStore(demo());
  render(<LedgerPane onPick={() => undefined} renderInPlace={renderInPlace} />);
});

function renderInPlace(props: RowInPlaceProps) {
  return <RowInPlace {...props} />;
}

function project(): Project {
  const { project: open } = useAppStore.getState();
  if (open === null) throw new Error('nothing open');
  return open;
}

function fitting(id: string): ProjectFitting {
  const found = project().fittings.find((each) => each.id === id);
  if (found === undefined) throw new Error(`no fitting ${id}`);
  return found;
}

function rowButton(name: string): HTMLElement {
  return screen.getByRole('button', { name });
}

function words(): HTMLElement {
  return screen.getByRole('group', { name: 'Rows' });
}

function fail(): never {
  throw new Error('no such cell');
}

function said(): string {
  return document.querySelector('.row-said')?.textContent ?? '';
}

function focusedName(): string {
  return document.activeElement?.textContent ?? '';
}

/** Picks a row as a reader does, and leaves the focus there. */
async function pick(name: string): Promise<void> {
  await userEvent.click(rowButton(name));
  expect(focusedName()).toBe(name);
}

/** Names of the rows in the order in which they stand. */
function shownNames(): string[] {
  return [...document.querySelectorAll('.row-pick')].map(({ textContent }) => textContent);
}

describe('the words above the ledger', () => {
  it('are disabled while no row is picked, and say why', async () => {
    useAppStore.getState().select(null);
    const duplicate = await within(words()).findByRole('button', { name: 'Duplicate' });
    expect((duplicate as HTMLButtonElement).disabled).toBe(true);
    expect(within(words()).getByText('Pick a row first.')).toBeTruthy();
    const add = within(words()).getByRole('button', { name: 'Add a fitting' });
    expect((add as HTMLButtonElement).disabled).toBe(false);
  });

  it('open the list to add from, as does the empty line at the foot', async () => {
    await userEvent.click(within(words()).getByRole('button', { name: 'Add a fitting' }));
    expect(useAppStore.getState().isAdding).toBe(true);
    useAppStore.getState().setAdding(false);
    await userEvent.click(screen.getByRole('button', { name: 'Add a fitting, from the catalogue or blank' }));
    expect(useAppStore.getState().isAdding).toBe(true);
  });

  it('duplicate, exclude with a reason to be typed, include again, and delete', async () => {
    const before = project();
    await pick('Boom');
    await userEvent.click(within(words()).getByRole('button', { name: 'Duplicate' }));
    expect(said()).toBe('Duplicated Boom.');
    expect(rowButton('Boom, copy').getAttribute('aria-current')).toBe('true');
    await userEvent.click(within(words()).getByRole('button', { name: 'Exclude' }));
    expect(screen.getByText('left out of the sum: no reason given yet')).toBeTruthy();
    await userEvent.click(within(words()).getByRole('button', { name: 'Include' }));
    expect(screen.queryByText('left out of the sum: no reason given yet')).toBeNull();
    await userEvent.click(within(words()).getByRole('button', { name: 'Delete' }));
    expect(screen.queryByRole('button', { name: 'Boom, copy' })).toBeNull();
    for (let i = 0; i < 4; i += 1) useAppStore.getState().undo();
    expect(project()).toEqual(before);
  });
});

describe('the word that excludes', () => {
  it('keeps the focus as it turns into the one that includes', async () => {
    await pick('Boom');
    within(words()).getByRole('button', { name: 'Exclude' }).focus();
    await userEvent.keyboard('{Enter}');
    expect(document.activeElement).toBe(within(words()).getByRole('button', { name: 'Include' }));
    await userEvent.keyboard('{Enter}');
    expect(document.activeElement).toBe(within(words()).getByRole('button', { name: 'Exclude' }));
  });
});

describe('the keys of a row', () => {
  it('Enter asks for the editor and its first field', async () => {
    await pick('Boom');
    await userEvent.keyboard('{Enter}');
    const { sidePane, isFirstFieldWanted, selectedFittingId } = useAppStore.getState();
    expect([sidePane, isFirstFieldWanted, selectedFittingId]).toEqual(['edit', true, 'boom']);
  });

  it('n and Insert open the list to add from', async () => {
    await pick('Boom');
    for (const key of ['n', '{Insert}']) {
      await userEvent.keyboard(key);
      expect(useAppStore.getState().isAdding).toBe(true);
      useAppStore.getState().setAdding(false);
    }
  });

  it('d puts a copy below and takes the focus there', async () => {
    await pick('Boom');
    await userEvent.keyboard('d');
    expect(focusedName()).toBe('Boom, copy');
    expect(said()).toBe('Duplicated Boom.');
  });

  it('Delete takes the row away without a question, focuses its neighbour, and undo brings it back', async () => {
    const before = project();
    const names = shownNames();
    const next = names[names.indexOf('Boom') + 1] ?? '';
    await pick('Boom');
    await userEvent.keyboard('{Delete}');
    expect(shownNames()).not.toContain('Boom');
    expect(focusedName()).toBe(next);
    expect(said()).toMatch(/^Deleted Boom; undo brings it back\./);
    useAppStore.getState().undo();
    expect(project()).toEqual(before);
  });

  it('says what was deleted along with a row', async () => {
    const planned = project().plans[0]?.items[0]?.fittingId ?? '';
    await pick(fitting(planned).name);
    await userEvent.keyboard('{Delete}');
    expect(said()).toMatch(/Deleted with it: \d+ refit item/);
  });

  it('x leaves a row out and takes it in again, and the focus stays with it', async () => {
    await pick('Boom');
    await userEvent.keyboard('x');
    expect(fitting('boom').excluded).toEqual({ reason: '' });
    expect(focusedName()).toBe('Boom');
    await userEvent.keyboard('x');
    expect(fitting('boom').excluded).toBeNull();
    expect(focusedName()).toBe('Boom');
  });

  it('Alt with an arrow moves a row in the order of the file and says where it is now', async () => {
    const order = (): string[] => project().fittings.map(({ id }) => id);
    const before = order();
    const index = before.indexOf('stanchions');
    await pick('Stanchions');
    await userEvent.keyboard('{Alt>}{ArrowDown}{/Alt}');
    expect(order().indexOf('stanchions')).toBe(index + 1);
    expect(said()).toMatch(new RegExp(`^Stanchions now at number ${index + 2}, in `));
    expect(focusedName()).toBe('Stanchions');
    await userEvent.keyboard('{Alt>}{ArrowUp}{/Alt}');
    expect(order()).toEqual(before);
  });

  it('does not move what stands first', async () => {
    const [first] = project().fittings;
    await pick(first?.name ?? '');
    await userEvent.keyboard('{Alt>}{ArrowUp}{/Alt}');
    expect(said()).toBe(`${first?.name ?? ''} cannot go further up.`);
  });

  it('leaves keys with Ctrl to the page', async () => {
    const before = project();
    await pick('Boom');
    await userEvent.keyboard('{Control>}d{/Control}{Control>}x{/Control}');
    expect(project()).toBe(before);
  });
});

describe('picking several rows', () => {
  it('Shift with the arrows picks all on the way, and one command is one step', async () => {
    const before = project();
    const names = shownNames();
    await pick(names[0] ?? '');
    await userEvent.keyboard('{Shift>}{ArrowDown}{ArrowDown}{/Shift}');
    expect(within(words()).getByText('3 rows picked')).toBeTruthy();
    expect(screen.getAllByRole('button', { pressed: true }).map(({ textContent }) => textContent)).toEqual(
      names.slice(0, 3),
    );
    await userEvent.keyboard('{Delete}');
    expect(project().fittings).toHaveLength(before.fittings.length - 3);
    expect(said()).toMatch(/^Deleted 3 rows/);
    useAppStore.getState().undo();
    expect(project()).toEqual(before);
  });

  it('a click beside a name lets the arrows go on from there, and with Shift marks no text', async () => {
    const names = shownNames();
    const cellOf = (name = '') => rowButton(name).closest('tr')?.querySelector('.column-before') ?? fail();
    await userEvent.click(cellOf(names[1]));
    expect(focusedName()).toBe(names[1]);
    await userEvent.keyboard('{ArrowDown}');
    expect(focusedName()).toBe(names[2]);
    // False: the default, which marks the text up to here, is prevented.
    expect(fireEvent.mouseDown(cellOf(names[4]), { shiftKey: true })).toBe(false);
    expect(fireEvent.mouseDown(cellOf(names[4]))).toBe(true);
    fireEvent.click(cellOf(names[4]), { shiftKey: true });
    expect(focusedName()).toBe(names[4]);
    expect(within(words()).getByText('3 rows picked')).toBeTruthy();
  });

  it('the space bar picks single ones, Ctrl with the arrows passes others by, Escape lets go', async () => {
    const names = shownNames();
    await pick(names[0] ?? '');
    await userEvent.keyboard(' {Control>}{ArrowDown}{ArrowDown}{/Control} ');
    expect(screen.getAllByRole('button', { pressed: true }).map(({ textContent }) => textContent)).toEqual([
      names[0],
      names[2],
    ]);
    expect(useAppStore.getState().sidePane).toBe('working');
    await userEvent.keyboard('{Escape}');
    expect(useAppStore.getState().selectedIds).toEqual([]);
  });

  it('duplicates all that are picked and picks the copies', async () => {
    const names = shownNames();
    await pick(names[0] ?? '');
    await userEvent.keyboard('{Shift>}{ArrowDown}{/Shift}d');
    const copies = screen.getAllByRole('button', { pressed: true }).map(({ textContent }) => textContent);
    expect(copies.sort()).toEqual([`${names[0] ?? ''}, copy`, `${names[1] ?? ''}, copy`].sort());
  });
});

describe('name and size in the row', () => {
  it('F2 opens them, every readable text is in force at once, Enter goes back to the row', async () => {
    await pick('Boom');
    await userEvent.keyboard('{F2}');
    expect(document.activeElement).toBe(screen.getByRole('textbox', { name: 'Name of Boom' }));
    await userEvent.keyboard('Spar{Tab}');
    expect(fitting('boom').name).toBe('Spar');
    expect(document.activeElement).toBe(screen.getByRole('textbox', { name: 'Diameter' }));
    await userEvent.keyboard('{Control>}a{/Control}0.2 m');
    const { shape } = fitting('boom');
    expect(shape.kind === 'roundBar' ? shape.diameter.m : null).toBe(0.2);
    await userEvent.keyboard('{Enter}');
    expect(screen.queryByRole('textbox', { name: 'Diameter' })).toBeNull();
    expect(focusedName()).toBe('Spar');
  });

  it('a double click opens them, and the letters typed there are no keys of the row', async () => {
    const before = project().fittings.length;
    await userEvent.dblClick(rowButton('Boom'));
    await userEvent.keyboard('dnx');
    expect(fitting('boom').name).toBe('dnx');
    expect(project().fittings).toHaveLength(before);
    await userEvent.keyboard('{Escape}{Escape}');
    expect(fitting('boom').name).toBe('Boom');
    expect(focusedName()).toBe('Boom');
  });

  it('says beside the field what is refused, and the last good size stays', async () => {
    await pick('Boom');
    const { shape } = fitting('boom');
    await userEvent.keyboard('{F2}{Tab}{Control>}a{/Control}wide{Enter}');
    expect(
      screen.getByText(
        /"wide" does not start with a number: a length from .* is accepted; 215 mm stays in force/,
      ),
    ).toBeTruthy();
    expect(fitting('boom').shape).toEqual(shape);
  });
});

describe('the line that says what was done', () => {
  it('is silent once that was undone', async () => {
    await userEvent.click(rowButton('Boom'));
    await userEvent.click(within(words()).getByRole('button', { name: 'Delete' }));
    expect(said()).toContain('Deleted Boom');
    act(() => {
      useAppStore.getState().undo();
    });
    expect(said()).toBe('');
    await userEvent.click(within(words()).getByRole('button', { name: 'Duplicate' }));
    expect(said()).toContain('Duplicated');
  });
});

describe('a row whose fitting has half-typed text', () => {
  it('is marked, and no other row is', () => {
    act(() => {
      keepTyped('fitting/boom.shape.diameter', { text: '12 qu', label: 'Diameter', refusal: null });
    });
    expect(screen.getAllByText(halfTyped('Diameter')).map((mark) => mark.closest('tr'))).toEqual([
      rowButton('Boom').closest('tr'),
    ]);
    act(() => {
      dropTyped('fitting/boom.shape.diameter');
    });
    expect(screen.queryByText(halfTyped('Diameter'))).toBeNull();
  });
});
