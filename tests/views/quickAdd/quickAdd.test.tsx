import { cleanup, render, screen, within } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Project } from '../../../src/project/file/schema';
import { useAppStore } from '../../../src/state/appStore';
import { chooseQuick, useQuickAdding } from '../../../src/state/quickAdd';
import { QuickAdd } from '../../../src/views/quickAdd/QuickAdd';
import { demo, openInStore } from '../ledger/openProjects';

vi.setConfig({ testTimeout: 20_000 });

afterEach(cleanup);
beforeEach(() => {
  openInStore(demo());
  chooseQuick({ shape: 'tube', zoneId: 'bow', side: 'centreline', lie: 'upright', basis: 'measured' });
  useQuickAdding.setState({ addedIds: [] });
  render(<QuickAdd />);
});

function project(): Project {
  const { project: open } = useAppStore.getState();
  if (open === null) throw new Error('nothing open');
  return open;
}

function field(name: string): HTMLInputElement {
  return screen.getByRole('textbox', { name });
}

function addedItems(): string[] {
  const list = screen.queryByRole('list', { name: 'Just added' });
  return list === null
    ? []
    : within(list)
        .getAllByRole('listitem')
        .map(({ textContent }) => textContent.replace(/\s/g, ' '));
}

async function enter(name: string, diameter: string, length: string): Promise<void> {
  await userEvent.clear(field('Name'));
  await userEvent.type(field('Name'), name);
  await userEvent.type(field('Diameter, mm'), diameter);
  await userEvent.type(field('Length, m'), length);
}

async function pressAdd(): Promise<void> {
  await userEvent.click(screen.getByRole('button', { name: 'Add' }));
}

describe('quick add', () => {
  it('adds one fitting as one step, says so, clears what was typed, keeps the choices and goes back to the name', async () => {
    const before = project();
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'Zone' }), 'Side decks');
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'On the' }), 'both edges');
    await enter('Turning block post', '30', '0,4');
    await userEvent.type(field('Count'), '3');
    await pressAdd();
    const [fitting] = project().fittings.filter(({ id }) => !before.fittings.some((old) => old.id === id));
    expect(fitting).toMatchObject({
      name: 'Turning block post',
      zoneId: 'decks',
      shape: { kind: 'roundBar', diameter: { m: 0.03, basis: 'measured' } },
      placement: { lengthM: 0.4, pair: true, row: { count: 3 } },
    });
    expect(screen.getByRole('status', { name: 'Quick add says' }).textContent.replace(/\s/g, ' ')).toBe(
      'Added: Turning block post, 6 × Ø 30.0 mm × 0.400 m, Side decks.',
    );
    for (const name of ['Name', 'Diameter, mm', 'Length, m', 'Count']) expect(field(name).value).toBe('');
    expect(screen.getByRole<HTMLSelectElement>('combobox', { name: 'Zone' }).value).toBe('decks');
    expect(document.activeElement).toBe(field('Name'));
    useAppStore.getState().undo();
    expect(project()).toEqual(before);
  });

  it('complains beside each field that is wrong, goes to the first, and adds nothing', async () => {
    const before = project();
    await userEvent.type(field('Diameter, mm'), '30 kn');
    await pressAdd();
    expect(project()).toBe(before);
    expect(document.activeElement).toBe(field('Name'));
    const problemOf = (name: string): string => {
      const id = field(name).getAttribute('aria-describedby')?.split(' ')[0] ?? '';
      return document.getElementById(id)?.textContent ?? '';
    };
    expect(problemOf('Name')).toBe('Type a name.');
    expect(problemOf('Diameter, mm')).toContain('"kn" makes this a speed');
    expect(problemOf('Length, m')).toContain('Type the length');
    expect(field('Diameter, mm').value).toBe('30 kn');
  });

  it('leaves an empty field in peace until Add is pressed, and a wrong one until it is left', async () => {
    await userEvent.click(field('Name'));
    await userEvent.click(field('Diameter, mm'));
    await userEvent.type(field('Diameter, mm'), 'thick');
    expect(document.querySelectorAll('[aria-invalid]')).toHaveLength(0);
    await userEvent.tab();
    expect([...document.querySelectorAll('[aria-invalid]')]).toEqual([field('Diameter, mm')]);
  });

  it('shows the complaint of the project’s own rules beside the field until that is changed', async () => {
    await enter('N', '30', '1');
    await userEvent.click(field('Name'));
    await userEvent.paste('a'.repeat(300));
    await pressAdd();
    expect(field('Name').getAttribute('aria-invalid')).toBe('true');
    expect(screen.getByText(/must have at most 200 characters/)).toBeTruthy();
    await userEvent.clear(field('Name'));
    await userEvent.type(field('Name'), 'Short');
    expect(field('Name').getAttribute('aria-invalid')).toBeNull();
  });

  it('keeps what was typed when the shape is changed and when the place is left', async () => {
    await enter('Jockey pole', '60', '2.5');
    const shape = screen.getByRole('combobox', { name: 'Shape' });
    await userEvent.selectOptions(shape, 'box or bag');
    expect(screen.queryByRole('textbox', { name: 'Diameter, mm' })).toBeNull();
    await userEvent.selectOptions(shape, 'round bar or tube');
    expect(field('Diameter, mm').value).toBe('60');
    cleanup();
    render(<QuickAdd />);
    expect([field('Name').value, field('Length, m').value]).toEqual(['Jockey pole', '2.5']);
  });

  it('Enter goes on to the next field that lacks something, and adds when none does', async () => {
    const before = project();
    await userEvent.type(field('Name'), 'Post{Enter}');
    expect(document.activeElement).toBe(field('Diameter, mm'));
    await userEvent.keyboard('30{Enter}');
    expect(document.activeElement).toBe(field('Length, m'));
    expect(document.querySelectorAll('[aria-invalid]')).toHaveLength(0);
    expect(project()).toBe(before);
    await userEvent.keyboard('1{Enter}');
    expect(project().fittings).toHaveLength(before.fittings.length + 1);
    expect(document.activeElement).toBe(field('Name'));
  });

  it('lists what was added, the latest first, and takes any of it back', async () => {
    const before = project();
    await enter('First post', '30', '1');
    await pressAdd();
    await enter('Second post', '40', '1');
    await pressAdd();
    expect(addedItems().map((text) => text.slice(0, 6))).toEqual(['Second', 'First ']);
    await userEvent.click(screen.getByRole('button', { name: 'Take back First post' }));
    expect(addedItems()).toHaveLength(1);
    expect(project().fittings).toHaveLength(before.fittings.length + 1);
    expect(screen.getByText('Taken back: First post.')).toBeTruthy();
    expect(document.activeElement).toBe(field('Name'));
  });

  it('tells that several will be spread along the zone', async () => {
    expect(screen.getByText(/^It is put .* aft of the stem, estimated/)).toBeTruthy();
    await userEvent.type(field('Count'), '4');
    expect(screen.getByText(/^They are spread equally .* aft of the stem, estimated/)).toBeTruthy();
  });

  it.each([
    ['round bar or tube', 'Of its foot.'],
    ['box or bag', 'Of its foot.'],
    ['ball', 'Of its middle.'],
  ])('says which point of a %s the height is of', async (shape, words) => {
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'Shape' }), shape);
    expect(screen.getByText((text) => text.startsWith(words))).toBeDefined();
  });
});
