import { cleanup, render, screen } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { useAppStore } from '../../../src/state/appStore';
import { MarginPane } from '../../../src/views/margin/MarginPane';
import { demo, everyKind, openInStore } from '../ledger/openProjects';

// The whole page under a loaded machine takes longer than the runner's five seconds.
vi.setConfig({ testTimeout: 20_000 });

afterEach(cleanup);

describe('the margin', () => {
  it('chooses a condition, and the whole course', async () => {
    openInStore(demo());
    render(<MarginPane />);
    await userEvent.click(screen.getByRole('radio', { name: 'Fast reach, port tack' }));
    expect(useAppStore.getState().question.basis).toEqual({ kind: 'condition', conditionId: 'reach' });
    expect(screen.getByText(/up the mast/)).toBeTruthy();
    await userEvent.click(screen.getByRole('radio', { name: /Vennick Round/ }));
    expect(useAppStore.getState().question.basis).toEqual({ kind: 'profile' });
    expect(screen.getByText('31.0 h')).toBeTruthy();
  });

  it('holds a plan against another, and forgets the other where as sailed is shown', async () => {
    openInStore(demo());
    render(<MarginPane />);
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'against' }), 'Slimmer tubes');
    expect(useAppStore.getState().question).toMatchObject({ planId: 'stow', againstPlanId: 'slim' });
    await userEvent.click(screen.getByRole('radio', { name: 'As sailed' }));
    expect(useAppStore.getState().question).toMatchObject({ planId: null, againstPlanId: null });
    expect(screen.queryByRole('combobox', { name: 'against' })).toBeNull();
  });

  it('chooses which state is shown', async () => {
    openInStore(demo());
    render(<MarginPane />);
    await userEvent.click(screen.getByRole('radio', { name: 'after' }));
    expect(useAppStore.getState().shown).toBe('after');
  });

  it('gives the apparent wind at deck and masthead, and the caution', () => {
    openInStore(demo());
    render(<MarginPane />);
    const wind = screen.getByRole('table', { name: /^Apparent wind, air 1.23.kg\/m³$/ });
    expect(wind.textContent).toMatch(/deck.*kn.*°.*masthead.*kn.*°/);
    expect(screen.getByText(/A preliminary estimate/)).toBeTruthy();
  });

  it('says heel to windward in words', () => {
    openInStore(everyKind());
    useAppStore.getState().chooseBasis({ kind: 'condition', conditionId: 'run' });
    render(<MarginPane />);
    expect(screen.getByText('3.00° to windward')).toBeTruthy();
  });

  it('becomes one line that opens where a list would be too long', () => {
    const project = everyKind();
    const [condition] = project.conditions;
    if (condition === undefined) throw new Error('no condition');
    const many = Array.from({ length: 9 }, (_, i) => ({ ...condition, id: `c${i}`, name: `Condition ${i}` }));
    openInStore({ ...project, conditions: [...project.conditions, ...many] });
    render(<MarginPane />);
    expect(screen.getByRole('combobox', { name: 'Condition' })).toBeTruthy();
  });
});
