import { act, cleanup, fireEvent, render, screen, within } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { ProjectFitting, ProjectZone } from '../../../src/project/file/schema';
import { useAppStore } from '../../../src/state/appStore';
import { wantField } from '../../../src/state/typedTexts';
import { RowEditor } from '../../../src/views/rowEditor/RowEditor';
import { demo, openInStore } from '../ledger/openProjects';

vi.setConfig({ testTimeout: 20_000 });

afterEach(cleanup);
beforeEach(() => {
  openInStore(demo());
});

function fitting(id: string): ProjectFitting {
  const found = useAppStore.getState().project?.fittings.find((each) => each.id === id);
  if (found === undefined) throw new Error(`no fitting ${id}`);
  return found;
}

function field(name: string): HTMLInputElement {
  return screen.getByRole<HTMLInputElement>('textbox', { name });
}

function choose(name: string, label: string): void {
  const list = screen.getByRole<HTMLSelectElement>('combobox', { name });
  const option = within(list).getByRole<HTMLOptionElement>('option', { name: label });
  fireEvent.change(list, { target: { value: option.value } });
}

function zones(): readonly ProjectZone[] {
  return useAppStore.getState().project?.zones ?? [];
}

function zoneNames(): readonly string[] {
  return zones().map(({ name }) => name);
}

function zoneField(number: number): HTMLInputElement {
  return field(`Name of zone ${number}`);
}

async function press(name: string): Promise<void> {
  await userEvent.click(screen.getByRole('button', { name }));
}

describe('the zones', () => {
  function openZones(): void {
    useAppStore.getState().select(null);
    render(<RowEditor />);
  }

  it('stand there before any row is picked, with what they hold', () => {
    openZones();
    const lines = within(screen.getByRole('list', { name: 'Zones in the ledger’s order' })).getAllByRole(
      'listitem',
    );
    expect(lines.map((line) => within(line).getByText(/fittings?$/).textContent)).toEqual(
      zones().map(({ id }) => `${demo().fittings.filter(({ zoneId }) => zoneId === id).length} fittings`),
    );
  });

  it('are renamed as one step that undo takes back', async () => {
    openZones();
    const [first = ''] = zoneNames();
    await userEvent.type(zoneField(1), ' and pulpit');
    expect(zoneNames()[0]).toBe(`${first} and pulpit`);
    expect(useAppStore.getState().step.label).toContain('Rename the zone');
    act(() => {
      useAppStore.getState().undo();
    });
    expect(zoneNames()[0]).toBe(first);
    fireEvent.change(zoneField(1), { target: { value: '' } });
    fireEvent.blur(zoneField(1));
    expect(zoneField(1).getAttribute('aria-invalid')).toBe('true');
    expect(zoneNames()[0]).toBe(first);
  });

  it('change their order by buttons and by Alt with an arrow', async () => {
    openZones();
    const [first = '', second = '', third = ''] = zoneNames();
    await press(`Move ${first} down`);
    expect(zoneNames().slice(0, 3)).toEqual([second, first, third]);
    expect(document.activeElement).toBe(screen.getByRole('button', { name: `Move ${first} down` }));
    zoneField(2).focus();
    await userEvent.keyboard('{Alt>}{ArrowUp}{/Alt}');
    expect(zoneNames().slice(0, 3)).toEqual([first, second, third]);
    expect(document.activeElement).toHaveProperty('value', first);
    expect(screen.getByRole('button', { name: `Move ${first} up` }).getAttribute('aria-disabled')).toBe(
      'true',
    );
  });

  it('are added with a name to type over, and an empty one goes at once, the focus to the next', async () => {
    openZones();
    const before = zoneNames();
    await press('Add a zone');
    expect(document.activeElement).toHaveProperty('value', 'New zone');
    await press('Delete New zone');
    expect(zoneNames()).toEqual(before);
    expect(document.activeElement).toHaveProperty('value', before.at(-1));
  });

  it('that hold fittings ask where these go, keep them all, and can be kept after all', async () => {
    openZones();
    const [bow, , cockpit] = zones();
    if (bow === undefined || cockpit === undefined) throw new Error('no zones in the demo');
    const heldIds = demo()
      .fittings.filter(({ zoneId }) => zoneId === bow.id)
      .map(({ id }) => id);
    await press(`Delete ${bow.name}`);
    const choice = screen.getByRole('combobox', { name: `Move its ${heldIds.length} fittings to` });
    expect(document.activeElement).toBe(choice);
    expect(zones()).toContain(bow);
    await press('Keep the zone');
    expect(document.activeElement).toBe(screen.getByRole('button', { name: `Delete ${bow.name}` }));
    await press(`Delete ${bow.name}`);
    choose(`Move its ${heldIds.length} fittings to`, cockpit.name);
    const before = useAppStore.getState().project;
    await press('Move and delete');
    expect(zones()).not.toContain(bow);
    expect(heldIds.map((id) => fitting(id).zoneId)).toEqual(heldIds.map(() => cockpit.id));
    expect(screen.getByText(`Moved to ${cockpit.name}: ${heldIds.length} fittings.`)).toBeTruthy();
    expect(document.activeElement).toBe(zoneField(1));
    act(() => {
      useAppStore.getState().undo();
    });
    expect(useAppStore.getState().project).toBe(before);
  });

  it('never all go', async () => {
    const project = demo();
    const [zone] = project.zones;
    openInStore({
      ...project,
      zones: project.zones.slice(0, 1),
      fittings: project.fittings.map((each) => ({ ...each, zoneId: zone?.id ?? '' })),
    });
    openZones();
    await press(`Delete ${zone?.name ?? ''}`);
    expect(
      screen.getByText(/Not taken: this holds \d+ fittings; move or delete what it holds first/),
    ).toBeTruthy();
    expect(zones()).toHaveLength(1);
  });
});

describe('a half-typed name of a zone', () => {
  it('is led to from elsewhere: the zones unfold and its field takes the focus', () => {
    useAppStore.getState().select('boom');
    render(<RowEditor />);
    expect(screen.queryByRole('textbox', { name: 'Name of zone 1' })).toBeNull();
    act(() => {
      wantField(`zone/${zones()[0]?.id ?? ''}.name`);
    });
    expect(document.activeElement).toBe(zoneField(1));
  });
});
