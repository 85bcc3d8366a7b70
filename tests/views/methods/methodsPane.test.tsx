import { act, cleanup, fireEvent, render, screen, within } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { projectLedger } from '../../../src/project/ledger/projectLedger';
import { defaultMethods } from '../../../src/project/file/blankParts';
import { useAppStore } from '../../../src/state/appStore';
import { formatValue } from '../../../src/units/print';
import { methodEffects } from '../../../src/views/methods/methodEffects';
import { MethodsPane } from '../../../src/views/methods/MethodsPane';
import { demo, openInStore } from '../ledger/openProjects';

vi.setConfig({ testTimeout: 20_000 });

beforeEach(() => {
  openInStore(demo());
});
afterEach(cleanup);

function store() {
  return useAppStore.getState();
}

function rowOf(method: RegExp): string {
  return screen.getByRole('rowheader', { name: method }).parentElement?.textContent ?? '';
}

describe('the methods', () => {
  it('are default, with their sources and what the others would make of the total', () => {
    render(<MethodsPane />);
    expect(screen.getAllByText('default', { selector: 'span' }).length).toBe(4);
    expect(screen.queryByRole('button', { name: /Back to default/ })).toBeNull();
    expect(rowOf(/^Log law, Charnock 0.011, in use/)).toMatch(/Charnock 1955.*default$/);
    expect(screen.getAllByRole('columnheader', { name: 'moves it by, W' })).toHaveLength(4);
    expect(rowOf(/^The same at every height/)).toMatch(/[+−]\d+$/);
    expect(rowOf(/^EN 1991-1-4/)).toMatch(/EN 1991-1-4:2005.*[+−]\d+$/);
  });

  it('move the total by what two ledgers differ', () => {
    const { project, question } = store();
    if (project === null) throw new Error('no project');
    const totalWith = (methods: Partial<typeof project.methods>): number => {
      const answer = projectLedger({ ...project, methods: { ...project.methods, ...methods } }, question);
      if (!answer.ok) throw new Error('no ledger');
      return answer.ledger.forces.before.outcome.trackPowerW;
    };
    const effects = methodEffects(project, question);
    const uniform = effects?.windLaw.find(({ methods }) => methods.windLaw?.kind === 'uniform');
    expect(uniform?.changeW).toBeCloseTo(totalWith({ windLaw: { kind: 'uniform' } }) - totalWith({}), 9);
    expect(uniform?.changeW).toBeGreaterThan(1);
    const dnv = effects?.inclined.find(({ id }) => id === 'dnv-wind');
    expect(dnv?.changeW).toBeCloseTo(totalWith({ inclined: 'dnv-wind' }) - totalWith({}), 9);
    expect(dnv?.changeW).toBeGreaterThan(1);
    const en = effects?.ends.find(({ id }) => id === 'en');
    expect(en?.changeW).toBeCloseTo(totalWith({ ends: 'en' }) - totalWith({}), 9);
    expect(methodEffects(project, question)).toBe(effects);
  });

  it('are changed, marked as changed, and set back', async () => {
    render(<MethodsPane />);
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'Wind law' }), 'power law');
    expect(store().project?.methods.windLaw).toEqual({ kind: 'power', exponent: 0.11 });
    expect(screen.getByText('changed')).toBeTruthy();
    fireEvent.change(screen.getByRole('textbox', { name: 'Exponent' }), { target: { value: '0,2' } });
    expect(store().project?.methods.windLaw).toEqual({ kind: 'power', exponent: 0.2 });
    expect(rowOf(/^Power law, exponent 0.2, in use/)).toContain('Your own number');
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'End effect' }), 'EN 1991-1-4');
    expect(store().project?.methods.ends).toBe('en');
    await userEvent.click(screen.getByRole('button', { name: 'Back to default: Wind over the sea' }));
    expect(store().project?.methods).toEqual({ ...defaultMethods, ends: 'en' });
    act(() => {
      store().undo();
    });
    expect(store().project?.methods.windLaw).toEqual({ kind: 'power', exponent: 0.2 });
  });

  it('answer for the course as well', () => {
    store().chooseBasis({ kind: 'profile' });
    render(<MethodsPane />);
    const table = screen.getByRole('table', { name: /Wind laws/ });
    expect(within(table).getAllByRole('row').length).toBe(5);
    const { project, question } = store();
    const answer = project === null ? null : projectLedger(project, question);
    if (answer?.ok !== true) throw new Error('no ledger');
    const totalW = answer.ledger.forces.before.outcome.trackPowerW;
    const inUse = within(table).getByRole('rowheader', { name: /in use/ }).nextElementSibling;
    expect(inUse?.textContent).toBe(formatValue(totalW, 'W', { decimals: 0 }));
  });

  it('refuse a number out of range beside its field', () => {
    render(<MethodsPane />);
    const charnock = screen.getByRole('textbox', { name: "Charnock's constant" });
    fireEvent.change(charnock, { target: { value: '0.5' } });
    fireEvent.blur(charnock);
    expect(screen.getByText(/from 0.005 to 0.03 is accepted; 0.011 stays in force/)).toBeTruthy();
  });
});
