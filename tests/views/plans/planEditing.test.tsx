import { cleanup, render, screen } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { currentHistory, useAppStore } from '../../../src/state/appStore';
import { PlanPane } from '../../../src/views/plans/PlanPane';
import { demo } from '../ledger/openProjects';
import { ledger, plan, press, put, show } from './openedPlan';

// The whole pane under a loaded machine takes longer than the runner's five seconds.
vi.setConfig({ testTimeout: 30_000 });

afterEach(cleanup);

/** Opens the first item of the plan as another kind of change. */
async function openAs(kind: string): Promise<void> {
  await press(plan().items[0]?.name ?? '');
  await choose('Change', kind);
}

async function choose(name: string, label: string): Promise<void> {
  await userEvent.selectOptions(screen.getByRole('combobox', { name }), label);
}

function planIds(): readonly string[] {
  return (useAppStore.getState().project?.plans ?? []).map(({ id }) => id);
}

function focusedName(): string | null {
  const focused = document.activeElement;
  return focused instanceof HTMLInputElement ? focused.value : (focused?.textContent ?? null);
}

describe('the plans in their order', () => {
  it('move up and down, and the button keeps the focus, also at the end where it does nothing', async () => {
    show(demo(), 'slim');
    const ids = planIds();
    const index = ids.indexOf('slim');
    const down = screen.getByRole('button', { name: 'Move this plan down' });
    const up = screen.getByRole('button', { name: 'Move this plan up' });
    for (let step = index; step > 0; step -= 1) await userEvent.click(up);
    expect(planIds()[0]).toBe('slim');
    expect(up.getAttribute('aria-disabled')).toBe('true');
    expect(document.activeElement).toBe(up);
    await userEvent.keyboard('{Enter}');
    expect(planIds()[0]).toBe('slim');
    await userEvent.click(down);
    expect(planIds()[1]).toBe('slim');
    expect(currentHistory().undoLabel).toBe(`Move the plan ${plan('slim').name} down`);
  });

  it('give way to the next one when one is deleted, and the focus to the head of the pane', async () => {
    show(demo(), 'slim');
    const ids = planIds();
    const index = ids.indexOf('slim');
    await press('Delete this plan');
    expect(useAppStore.getState().question.planId).toBe(ids[index + 1] ?? ids[index - 1]);
    expect(document.activeElement).toBe(screen.getByRole('heading', { level: 2 }));
  });

  it('wait for a name when one is made or copied', async () => {
    show(demo(), 'slim');
    await press('New plan');
    expect(focusedName()).toBe('Plan');
    await press('Copy this plan');
    expect(focusedName()).toBe('Plan, copy');
    await userEvent.keyboard('Winter');
    expect(plan().name).toBe('Winter');
  });
});

describe('the focus after a button', () => {
  it('goes to the new item, and after a deletion to the next one', async () => {
    show(demo(), 'slim');
    const [first, second] = plan().items.map(({ name }) => name);
    useAppStore.getState().select('boom');
    cleanup();
    render(<PlanPane />);
    await press('Add the item');
    const added = plan().items.at(-1)?.name ?? '';
    expect(focusedName()).toBe(added);
    await press('Delete');
    expect(plan().items.map(({ name }) => name)).not.toContain(added);
    expect(focusedName()).toBe(plan().items.at(-1)?.name);
    await press(first ?? '');
    await press('Delete');
    expect(focusedName()).toBe(second);
  });

  it('stays on an item that is moved by Alt with an arrow', async () => {
    show(demo(), 'slim');
    const [first = '', second = ''] = plan().items.map(({ name }) => name);
    screen.getByRole('button', { name: first }).focus();
    await userEvent.keyboard('{Alt>}{ArrowDown}{/Alt}');
    expect(
      plan()
        .items.slice(0, 2)
        .map(({ name }) => name),
    ).toEqual([second, first]);
    expect(focusedName()).toBe(first);
  });
});

describe('what an item holds', () => {
  it('moves a fitting into a row, in either way of giving a place, with how the place was obtained', async () => {
    show(demo(), 'slim');
    await openAs('moved');
    put('How many in a row', '1');
    await choose('About', 'Boom');
    put('How many in a row', '3');
    expect(screen.getByText(/say where its last one stands\./)).toBeTruthy();
    await choose('Place given', 'by its end points');
    expect(screen.getByRole('group', { name: 'Last one, start' })).toBeTruthy();
    await choose('Place given', 'as taped on deck');
    put('Last one, aft of the stem', '7,5 m');
    await choose('Place obtained', 'from a drawing');
    expect(plan().items[0]?.change).toMatchObject({
      kind: 'moved',
      placement: { kind: 'taped', basis: 'drawing', row: { count: 3, lastAftOfStemM: 7.5 } },
    });
    put('How many in a row', '1');
    expect(plan().items[0]?.change).toMatchObject({ placement: { row: null } });
  });

  it('types in a bar with its surface, ends, friction and how its diameter was obtained', async () => {
    show(demo(), 'slim');
    await openAs('a shape typed in');
    await choose('Surface', 'polished metal');
    await choose('First end', 'joined to a bar');
    await choose('Other end', 'free in the air');
    await choose('Skin friction along it', 'left out');
    put('Diameter', '18 mm');
    await choose('Diameter: how obtained', 'from a drawing');
    expect(plan().items[0]?.change).toMatchObject({
      shape: {
        kind: 'roundBar',
        diameter: { m: 0.018, basis: 'drawing' },
        surface: { kind: 'finish', finish: 'polishedMetal' },
        ends: ['joined', 'free'],
        friction: 'zero',
      },
    });
    await choose('Shape after', 'measured area');
    await choose('Obtained by', 'wind tunnel');
    put('Source', 'Own tunnel, sheet 4');
    expect(plan().items[0]?.change).toMatchObject({
      shape: { provenance: { kind: 'tunnel', source: 'Own tunnel, sheet 4' } },
    });
  });

  it('says beside the field what the rules refuse, whichever field is at fault', async () => {
    show(demo(), 'slim');
    await openAs('moved');
    await choose('Place given', 'as taped on deck');
    const before = plan().items[0];
    put('Length, foot to head', '0');
    const length = screen.getByRole('textbox', { name: 'Length, foot to head' });
    expect(length.getAttribute('aria-invalid')).toBe('true');
    expect(screen.getByText(/Not taken: this must be at least/)).toBeTruthy();
    expect(plan().items[0]).toBe(before);
  });

  it('is about another fitting on request: the change starts anew, and a reason given is taken back', async () => {
    show(demo(), 'stow');
    const withheld = ledger().plan?.items.find(({ status }) => status === 'withheld')?.item;
    await press(withheld?.name ?? '');
    put('Person', 'Ilse Brandt');
    put('Reason', 'The tube is reached as fast.');
    await press('Count it for this reason');
    await choose('About', 'Boom');
    const changed = plan().items.find(({ id }) => id === withheld?.id);
    expect(changed).toMatchObject({ fittingId: 'boom', safetyReason: null });
    expect(screen.getByText(/starts anew from Boom; .*is taken back\./)).toBeTruthy();
  });
});
