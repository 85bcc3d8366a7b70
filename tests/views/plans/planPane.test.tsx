import { cleanup, render, screen, within } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { useAppStore } from '../../../src/state/appStore';
import { formatQuantity } from '../../../src/units/print';
import { PlanPane } from '../../../src/views/plans/PlanPane';
import { demo, everyKind } from '../ledger/openProjects';
import { ledger, plan, press, put, show } from './openedPlan';

// The whole pane under a loaded machine takes longer than the runner's five seconds.
vi.setConfig({ testTimeout: 30_000 });

afterEach(cleanup);

describe('without a plan', () => {
  it('offers the three biggest costs, and trying one makes a plan in one step', async () => {
    show(demo(), null);
    const costs = ledger()
      .rows.filter(({ excludedReason }) => excludedReason === null)
      .sort((a, b) => b.after.outcome.trackPowerW - a.after.outcome.trackPowerW)
      .slice(0, 3);
    const list = screen.getByRole('list');
    const offers = within(list)
      .getAllByRole('button')
      .map((each) => each.textContent.split(':')[0]);
    expect(offers).toEqual(
      costs.map(({ fitting, after }) => `${fitting.name} ${formatQuantity(after.outcome.trackPowerW, 'W')}`),
    );
    const before = useAppStore.getState().project;
    await userEvent.click(within(list).getAllByRole('button')[0] ?? list);
    expect(plan().items.map(({ fittingId }) => fittingId)).toEqual([costs[0]?.fittingId]);
    expect(screen.getByRole('textbox', { name: 'Name' })).toBeTruthy();
    useAppStore.getState().undo();
    expect(useAppStore.getState().project).toBe(before);
  });
});

describe('a plan as a whole', () => {
  it('is renamed, noted, copied, deleted', async () => {
    show(demo(), 'slim');
    put('Name of the plan', 'Thin tubes');
    put('Note', 'Ask the yard.');
    expect(plan('slim')).toMatchObject({ name: 'Thin tubes', note: 'Ask the yard.' });
    await press('Copy this plan');
    expect(plan().name).toBe('Thin tubes, copy');
    expect(screen.getByRole<HTMLInputElement>('textbox', { name: 'Name of the plan' }).value).toBe(
      'Thin tubes, copy',
    );
    const copyId = plan().id;
    await press('Delete this plan');
    expect(useAppStore.getState().project?.plans.map(({ id }) => id)).not.toContain(copyId);
  });
});

describe('the items', () => {
  it('are switched off and on, moved, copied and deleted', async () => {
    show(demo(), 'slim');
    const names = plan().items.map(({ name }) => name);
    const [first = '', second = ''] = names;
    await userEvent.click(screen.getByRole('checkbox', { name: `${first}: on` }));
    expect(plan().items[0]?.on).toBe(false);
    expect(ledger().plan?.items[0]?.status).toBe('off');
    await userEvent.click(screen.getByRole('checkbox', { name: `${first}: on` }));
    await press(first);
    expect(screen.getByRole('button', { name: 'Move up' }).getAttribute('aria-disabled')).toBe('true');
    await press('Move down');
    expect(
      plan()
        .items.slice(0, 2)
        .map(({ name }) => name),
    ).toEqual([second, first]);
    await press('Move up');
    expect(plan().items.map(({ name }) => name)).toEqual(names);
    await press('Copy');
    expect(plan().items[1]).toMatchObject({ name: `${first}, copy`, on: false });
    await press('Delete');
    expect(plan().items[0]?.name).toBe(`${first}, copy`);
  });

  it('are added about the selected row, with the kind chosen in words', async () => {
    show(demo(), 'slim');
    useAppStore.getState().select('boom');
    cleanup();
    render(<PlanPane />);
    const count = plan().items.length;
    await userEvent.selectOptions(
      screen.getByRole('combobox', { name: 'New item about Boom' }),
      'stowed for good',
    );
    await press('Add the item');
    const added = plan().items[count];
    expect([added?.fittingId, added?.change.kind]).toEqual(['boom', 'stowed']);
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'Change' }), 'removed');
    expect(plan().items[count]?.change.kind).toBe('removed');
  });

  it('say beside the choice why a kind cannot be', async () => {
    const project = demo();
    const body = project.fittings.find(
      ({ shape, excluded }) => shape.kind !== 'roundBar' && excluded === null,
    );
    show(project, 'slim');
    useAppStore.getState().select(body?.id ?? '');
    cleanup();
    render(<PlanPane />);
    const field = screen.getByRole('combobox', { name: /^New item about/ });
    await userEvent.selectOptions(field, 'slimmer');
    await press('Add the item');
    expect(field.getAttribute('aria-invalid')).toBe('true');
    expect(screen.getByText(/Not taken: .* is no round bar or wire and has no diameter\./)).toBeTruthy();
  });

  it('take a diameter, a mass with its place, a cost and flags', async () => {
    show(demo(), 'slim');
    await press(plan().items[0]?.name ?? '');
    put('New diameter', '20mm');
    put('Change of mass', '-3,5 kg');
    put('Cost, EUR', '1200');
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'Class rule' }), 'needs a ruling');
    put('Number of the rule', 'C.7.2');
    expect(plan().items[0]).toMatchObject({
      change: { kind: 'slimmer', diameter: { m: 0.02 } },
      massChangeKg: -3.5,
      cost: 1200,
      flags: { classRule: { ruling: 'needs-ruling', rule: 'C.7.2' } },
    });
    put('New diameter', '20 kg');
    expect(plan().items[0]).toMatchObject({ change: { diameter: { m: 0.02 } } });
    expect(screen.getByRole('textbox', { name: 'New diameter' }).getAttribute('aria-invalid')).toBe('true');
  });

  it('say their contradiction beside themselves', () => {
    const project = demo();
    const slim = project.plans.find(({ id }) => id === 'slim');
    const last = slim?.items.find(({ change }) => change.kind === 'removed');
    if (slim === undefined || last === undefined) throw new Error('demo');
    const items = slim.items.map((item) => ({ ...item, on: true }));
    const twice = { ...slim, items: [...items, { ...last, id: 'twice', name: 'Once more', on: true }] };
    show({ ...project, plans: [twice] }, 'slim');
    const item = screen.getByRole('button', { name: 'Once more' }).closest('li');
    expect(item?.textContent).toContain('contradiction');
    expect(item?.textContent).toContain(ledger().plan?.items.at(-1)?.contradiction?.message ?? 'none');
  });
});

describe('a safety-required fitting', () => {
  it('counts only once a named person has given a reason, which can be taken back', async () => {
    show(demo(), 'stow');
    const withheld = ledger().plan?.items.find(({ status }) => status === 'withheld');
    const name = withheld?.item.name ?? '';
    const savedW = ledger().forces.saving.change.trackPowerW;
    await press(name);
    expect(
      screen.getByText(/stays out of every total until a named person has given a reason; /),
    ).toBeTruthy();
    const count = screen.getByRole<HTMLButtonElement>('button', { name: 'Count it for this reason' });
    put('Person', 'Ilse Brandt');
    expect(count.getAttribute('aria-disabled')).toBe('true');
    put('Reason', 'The tube is reached as fast.');
    await userEvent.click(count);
    expect(ledger().plan?.items.find(({ item }) => item.name === name)?.status).toBe('counted');
    expect(ledger().forces.saving.change.trackPowerW).toBeGreaterThan(savedW);
    expect(screen.getByText(/reason by Ilse Brandt: The tube is reached as fast\./)).toBeTruthy();
    await press('Take the reason back');
    expect(ledger().forces.saving.change.trackPowerW).toBe(savedW);
  });
});

describe('what the plan brings', () => {
  it('shows a waterfall with its table, and withheld items apart', () => {
    show(demo(), 'stow');
    const chart = screen.getByRole('img', { name: /^Track power from before to after/ });
    const text = chart.getAttribute('aria-label') ?? '';
    for (const { item, status } of ledger().plan?.items ?? []) {
      expect(text).toContain(`${item.name}: ${status === 'withheld' ? 'would save' : ''}`);
    }
    expect(chart.querySelectorAll('.waterfall-withheld')).toHaveLength(1);
    const table = screen.getByRole('table', { name: /Track power before, saving of each item/ });
    expect(within(table).getAllByRole('row')).toHaveLength((ledger().plan?.items.length ?? 0) + 3);
  });

  it('says mass, moments and cost, and where an item saves both', () => {
    show(demo(), 'slim');
    const sums = screen.getByRole('region', { name: 'Sums of the plan' });
    expect(sums.textContent).toMatch(/kg (?:less|more) mass/);
    expect(sums.textContent).toMatch(/kg m forward/);
    const first = screen.getByRole('button', { name: plan().items[0]?.name ?? '' }).closest('li');
    expect(first?.textContent).toContain('Saves both: power and 3.10\u00a0kg of mass.');
  });

  it('says the difference to the plan compared with', () => {
    show(demo(), 'slim');
    useAppStore.getState().chooseAgainst('stow');
    cleanup();
    render(<PlanPane />);
    const { saving } = ledger().forces;
    const words = `saves ${formatQuantity(Math.abs(saving.change.trackPowerW), 'W')} ${saving.change.trackPowerW < 0 ? 'less' : 'more'}`;
    expect(screen.getByText('Against Stow and strike:').parentElement?.textContent).toContain(words);
  });
});

it('opens every kind of change of the project that has them all', async () => {
  const project = everyKind();
  for (const { id, items } of project.plans) {
    show(project, id);
    for (const { name } of items) {
      const button = screen.getByRole('button', { name });
      await userEvent.click(button);
      expect(button.getAttribute('aria-expanded')).toBe('true');
      expect(screen.getByRole('combobox', { name: 'Change' })).toBeTruthy();
    }
    cleanup();
  }
});
