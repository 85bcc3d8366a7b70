import { cleanup, render, screen } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { useAppStore } from '../../../src/state/appStore';
import { usualUnits } from '../../../src/units/displayUnits';
import { showIn } from '../../../src/units/shownUnits';
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

  it('sets the apparent wind tighter where a minus leaves no room in the margin', () => {
    const project = demo();
    const conditions = project.conditions.map((condition) => ({
      ...condition,
      wind: { kind: 'true' as const, speedMs: 11, heightM: 10, angleFromCourseDeg: 0 },
    }));
    openInStore({ ...project, conditions });
    render(<MarginPane />);
    const wind = screen.getByRole('table', { name: /^Apparent wind/ });
    expect(wind.textContent).toMatch(/kn\u2212[\d.]+°/);
    expect(wind.className).toContain('apparent-wind-tight');
  });

  it("gives the winds in the reader's unit, the triangle and its handles with them; 10 m keeps its name", () => {
    showIn({ ...usualUnits, speed: 'm/s', length: 'ft' });
    try {
      openInStore(demo());
      render(<MarginPane />);
      const table = screen.getByRole('table', { name: /^Apparent wind/ });
      expect(table.textContent).toMatch(/deck[\d.]+.ft[\d.]+.m\/s.*masthead[\d.]+.ft[\d.]+.m\/s/);
      const handle = screen.getByRole('slider', { name: 'True wind' });
      const speed = /^([\d.]+).m\/s at 10 m/.exec(handle.getAttribute('aria-valuetext') ?? '')?.[1];
      expect(Number(handle.getAttribute('aria-valuenow'))).toBeCloseTo(Number(speed), 1);
      expect(handle.getAttribute('aria-valuemax')).toBe('60');
      const triangle = screen.getByRole('group', { name: /^Wind triangle at 10.m/ });
      expect(triangle.getAttribute('aria-label')).toMatch(/true wind [\d.]+.m\/s/);
      expect(document.body.textContent).not.toMatch(/\d.kn/);
    } finally {
      showIn(usualUnits);
    }
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
