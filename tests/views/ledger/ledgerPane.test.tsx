import { cleanup, render, screen, within } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { afterEach, describe, expect, it, vi } from 'vitest';
import type { Project } from '../../../src/project/file/schema';
import { ledgerOf } from '../../../src/state/ledgerOf';
import { useAppStore } from '../../../src/state/appStore';
import { formatValue } from '../../../src/units/print';
import { LedgerPane } from '../../../src/views/ledger/LedgerPane';
import { RowInPlace, type RowInPlaceProps } from '../../../src/views/ledger/RowInPlace';
import { demo, everyKind, openInStore } from './openProjects';

// The whole page under a loaded machine takes longer than the runner's five seconds.
vi.setConfig({ testTimeout: 20_000 });

afterEach(cleanup);

function renderInPlace(props: RowInPlaceProps) {
  return <RowInPlace {...props} />;
}

function show(project: Project, onPick: () => void = () => undefined) {
  openInStore(project);
  return render(<LedgerPane onPick={onPick} renderInPlace={renderInPlace} />);
}

function ledgerTable(): HTMLElement {
  return screen.getByRole('table', { name: /What each fitting costs/ });
}

/** The ledger's groups: name of the head, and the names of the rows under it. */
function groups(): { name: string; rows: string[] }[] {
  return [...ledgerTable().querySelectorAll('tbody')].map((body) => ({
    name: body.querySelector('.group-name')?.textContent ?? '',
    rows: [...body.querySelectorAll('.row-pick')].map((button) => button.textContent),
  }));
}

function rowOf(name: string): HTMLElement {
  const row = screen.getByRole('button', { name }).closest('tr');
  if (row === null) throw new Error(`no row ${name}`);
  return row;
}

function cell(row: HTMLElement, column: string): string {
  return row.querySelector(`.column-${column}`)?.textContent ?? '';
}

function currentLedger() {
  const { project, question } = useAppStore.getState();
  const ledger = project === null ? null : ledgerOf(project, question);
  if (ledger === null) throw new Error('nothing open');
  return ledger;
}

describe('the order of the rows', () => {
  it('stands zone by zone in the order of the file, the costliest first', () => {
    show(demo());
    const ledger = currentLedger();
    const powers = new Map(ledger.rows.map((row) => [row.fitting.name, row.before.outcome.trackPowerW]));
    const zones = groups().filter(({ name }) => name !== 'Rows that push the boat along');
    expect(zones.map(({ name }) => name)).toEqual(ledger.zones.map(({ zone }) => zone.name));
    for (const { rows } of zones) {
      const order = rows.map((name) => powers.get(name) ?? NaN);
      expect(order).toEqual([...order].sort((a, b) => b - a));
      expect(Math.min(...order, 0)).toBe(0);
    }
  });

  it('puts rows that push the boat along in a group of their own at the end, with their sum', () => {
    show(demo());
    useAppStore.getState().chooseBasis({ kind: 'condition', conditionId: 'run' });
    cleanup();
    render(<LedgerPane onPick={() => undefined} renderInPlace={renderInPlace} />);
    const pushing = currentLedger().rows.filter(
      ({ before, excludedReason }) => excludedReason === null && before.outcome.trackPowerW < 0,
    );
    expect(pushing.length).toBeGreaterThan(3);
    const last = groups().at(-1);
    expect(last?.name).toBe('Rows that push the boat along');
    expect([...(last?.rows ?? [])].sort()).toEqual(pushing.map(({ fitting }) => fitting.name).sort());
    const sum = pushing.reduce((total, { before }) => total + before.outcome.trackPowerW, 0);
    const head = ledgerTable().querySelector<HTMLElement>('tbody:last-of-type .group-head');
    expect(head === null ? '' : cell(head, 'before')).toBe(formatValue(sum, 'W', { decimals: 0 }));
  });

  it('strikes what is left out of the sums and gives the reason in the row', () => {
    show(demo());
    const struck = screen.getByText('Harbour awning');
    expect(struck.tagName).toBe('S');
    expect(screen.getByText(/left out of the sum: In harbour only; it never goes to sea\./)).toBeTruthy();
    expect(struck.closest('button')).toBe(screen.getByRole('button', { name: 'Harbour awning' }));
  });
});

describe('the sums', () => {
  it('shows the totals of the ledger, with the spread of the fittings and, apart, of wind and density', () => {
    const { container } = show(demo());
    const { forces } = currentLedger();
    const totals = container.querySelector('.ledger-totals');
    const text = totals?.textContent ?? '';
    expect(text).toContain(formatValue(forces.before.outcome.trackPowerW, 'W', { decimals: 0 }));
    expect(text).toContain(formatValue(forces.after.outcome.trackPowerW, 'W', { decimals: 0 }));
    expect(text).toContain(formatValue(forces.saving.change.trackPowerW, 'W', { decimals: 0 }));
    expect(text.match(/W by the fittings/g)).toHaveLength(3);
    expect(text.match(/W by wind and density/g)).toHaveLength(3);
  });

  it('keeps the saving of a safety-required fitting out until a reason is given, and says so', () => {
    const { container } = show(demo());
    const [withheld] = currentLedger().plan?.items.filter(({ status }) => status === 'withheld') ?? [];
    expect(withheld?.fitting?.name).toBe('Danbuoy and horseshoe');
    expect(cell(rowOf('Danbuoy and horseshoe'), 'saving')).toBe('waits');
    const notes = container.querySelector('.footnotes')?.textContent ?? '';
    expect(notes).toMatch(/22 Danbuoy and horseshoe: safety-required.*wait for a named person’s reason/);
    const plan = screen.getByRole('region', { name: 'Refit plan Stow and strike' });
    expect(
      within(plan).getByText(/not counted: safety-required, waits for a named person’s reason/),
    ).toBeTruthy();
  });

  it('says once what waits for a reason in the plan and in the one it is held against', () => {
    const project = demo();
    const [plan] = project.plans;
    if (plan === undefined) throw new Error('no plan');
    show({ ...project, plans: [plan, { ...plan, id: 'copied', name: 'Copied' }] });
    cleanup();
    useAppStore.getState().choosePlan('copied');
    useAppStore.getState().chooseAgainst(plan.id);
    const { container } = render(<LedgerPane onPick={() => undefined} renderInPlace={renderInPlace} />);
    expect(currentLedger().against?.items.some(({ status }) => status === 'withheld')).toBe(true);
    const notes = container.querySelector('.footnotes')?.textContent ?? '';
    expect(notes.match(/Danbuoy and horseshoe: safety-required/g)).toHaveLength(1);
  });

  it('names the person and the reason beside a safety-required saving that counts', () => {
    show(demo());
    cleanup();
    useAppStore.getState().choosePlan('slim');
    const { container } = render(<LedgerPane onPick={() => undefined} renderInPlace={renderInPlace} />);
    expect(container.querySelector('.footnotes')?.textContent).toMatch(
      /8 Stanchions: safety-required.*for the reason that Maren Oldekop, safety officer gives: Same bending/,
    );
  });

  it('shows the full price only where a condition gives one', () => {
    show(demo());
    expect(screen.getByRole('columnheader', { name: /full/ })).toBeTruthy();
    cleanup();
    useAppStore.getState().chooseBasis({ kind: 'condition', conditionId: 'reach' });
    render(<LedgerPane onPick={() => undefined} renderInPlace={renderInPlace} />);
    expect(screen.queryByRole('columnheader', { name: /full/ })).toBeNull();
  });
});

describe('selecting a row', () => {
  it('selects by a click anywhere in the row, and says that it was picked', async () => {
    const onPick = vi.fn();
    show(demo(), onPick);
    const drag = rowOf('Pulpit legs').querySelector('.column-drag');
    if (drag === null) throw new Error('no cell');
    await userEvent.click(drag);
    expect(useAppStore.getState().selectedFittingId).toBe('pulpit-legs');
    expect(screen.getByRole('button', { name: 'Pulpit legs' }).getAttribute('aria-current')).toBe('true');
    expect(onPick).toHaveBeenCalledTimes(1);
  });

  it('moves with the arrow keys across groups, and the tabulator key meets one row only', async () => {
    const onPick = vi.fn();
    show(demo(), onPick);
    const names = groups().flatMap(({ rows }) => rows);
    const buttons = names.map((name) => screen.getByRole('button', { name }));
    expect(buttons.filter(({ tabIndex }) => tabIndex === 0)).toHaveLength(1);
    buttons[0]?.focus();
    for (const name of names.slice(1, 12)) {
      await userEvent.keyboard('{ArrowDown}');
      expect(document.activeElement?.textContent).toBe(name);
    }
    await userEvent.keyboard('{End}');
    expect(document.activeElement?.textContent).toBe(names.at(-1));
    await userEvent.keyboard('{ArrowDown}{Home}');
    expect(document.activeElement?.textContent).toBe(names[0]);
    expect(onPick).not.toHaveBeenCalled();
    await userEvent.keyboard('{Enter}');
    expect(onPick).toHaveBeenCalledTimes(1);
  });
});

describe('projects at the edge', () => {
  it('says what is missing when there is no condition, and when there is no fitting', () => {
    show({ ...everyKind(), conditions: [], profile: null, fittings: [], plans: [] });
    expect(screen.getByText(/no sailing condition/)).toBeTruthy();
    cleanup();
    show({ ...everyKind(), fittings: [], plans: [] });
    expect(screen.getByText(/no fittings yet/)).toBeTruthy();
  });

  it('shows a hostile name as text', () => {
    const project = everyKind();
    const [first, ...rest] = project.fittings;
    if (first === undefined) throw new Error('no fitting');
    const name = '<img src=x onerror=alert(1)>';
    show({ ...project, fittings: [{ ...first, name }, ...rest] });
    expect(screen.getByRole('button', { name })).toBeTruthy();
    expect(document.querySelector('img')).toBeNull();
  });
});
