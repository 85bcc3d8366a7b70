import { act, cleanup, render, screen, within } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { ledgerGroups } from '../../../src/project/ledger/ledgerGroups';
import { ledgerOf } from '../../../src/state/ledgerOf';
import { useAppStore } from '../../../src/state/appStore';
import { usePreferences } from '../../../src/state/preferences';
import { usualUnits } from '../../../src/units/displayUnits';
import { formatQuantity } from '../../../src/units/print';
import { showIn } from '../../../src/units/shownUnits';
import { WindsEyePane } from '../../../src/views/windsEye/WindsEyePane';
import { demo, openInStore } from '../ledger/openProjects';

beforeEach(() => {
  openInStore(demo());
});
afterEach(cleanup);

function currentLedger() {
  const { project, question } = useAppStore.getState();
  const ledger = project === null ? null : ledgerOf(project, question);
  if (ledger === null) throw new Error('no ledger');
  return ledger;
}

function list(): HTMLElement {
  return screen.getByRole('listbox', { name: 'Fittings in the picture' });
}

function said(): string {
  return screen.getByRole('status', { name: 'In the picture' }).textContent;
}

describe('the picture', () => {
  it('is walked by the keys in the order of the ledger, and says what it is on', async () => {
    render(<WindsEyePane />);
    const ids = ledgerGroups(currentLedger()).flatMap(({ rows, excluded }) =>
      [...rows, ...excluded].map(({ fittingId }) => fittingId),
    );
    expect(within(list()).getAllByRole('option')).toHaveLength(ids.length);
    list().focus();
    await userEvent.keyboard('{Home}');
    const { selectedFittingId } = useAppStore.getState();
    expect(selectedFittingId).toBe(ids[0]);
    await userEvent.keyboard('{ArrowDown}');
    expect(useAppStore.getState().selectedFittingId).toBe(ids[1]);
    const row = currentLedger().rows.find(({ fittingId }) => fittingId === ids[1]);
    expect(said()).toContain(row?.fitting.name);
    expect(said()).toContain(formatQuantity(row?.after.outcome.trackPowerW ?? NaN, 'W'));
    await userEvent.keyboard('{End}');
    expect(useAppStore.getState().selectedFittingId).toBe(ids.at(-1));
  });

  it('shows the state that the ledger shows, and names the largest first', () => {
    useAppStore.setState({ shown: 'before' });
    render(<WindsEyePane />);
    const largest = [...currentLedger().rows].sort(
      (a, b) => b.before.outcome.trackPowerW - a.before.outcome.trackPowerW,
    )[0];
    const words = screen.getByText(/^Seen along the apparent wind at .* the largest first/, {
      selector: 'p',
    });
    expect(words.textContent).toContain(
      `the largest first: ${largest?.number} ${largest?.fitting.name} ${formatQuantity(largest?.before.outcome.trackPowerW ?? NaN, 'W')}`,
    );
  });

  it("follows the reader's units in what is drawn already, and keeps how it is looked at", async () => {
    render(<WindsEyePane />);
    await userEvent.selectOptions(
      screen.getByRole('combobox', { name: 'coloured by' }),
      'saving of the plan',
    );
    await userEvent.click(screen.getByText('From astern'));
    expect(list().textContent).toMatch(/\d.W\b/);
    const units = { ...usualUnits, power: 'PS', length: 'ft' } as const;
    try {
      act(() => {
        showIn(units);
        usePreferences.setState({ units });
      });
      expect(list().textContent).toMatch(/\d.hp.\(metric\)/);
      expect(list().textContent).not.toMatch(/\d.W\b/);
      expect(screen.getByText(/^saving of the plan, hp/)).toBeTruthy();
      expect(screen.getByRole<HTMLInputElement>('radio', { name: 'From astern' }).checked).toBe(true);
    } finally {
      showIn(usualUnits);
      usePreferences.setState({ units: usualUnits });
    }
  });

  it('colours by saving only where there is a plan', async () => {
    render(<WindsEyePane />);
    const measures = screen.getByRole('combobox', { name: 'coloured by' });
    await userEvent.selectOptions(measures, 'saving of the plan');
    expect(screen.getByText(/^saving of the plan, W$/)).toBeTruthy();
    cleanup();
    useAppStore.getState().choosePlan(null);
    render(<WindsEyePane />);
    expect(screen.queryByRole('option', { name: 'saving of the plan' })).toBeNull();
  });

  it('says what is not in the wind', async () => {
    const { project } = useAppStore.getState();
    const first = project?.fittings[0];
    if (first === undefined) throw new Error('no fitting');
    openInStore({
      ...demo(),
      fittings: demo().fittings.map((fitting) =>
        fitting.id === first.id ? { ...fitting, excluded: { reason: 'not aboard' } } : fitting,
      ),
    });
    render(<WindsEyePane />);
    expect(screen.getByText(/Dashed, not in the wind here:/, { selector: 'p' }).textContent).toContain(
      first.name,
    );
    await userEvent.click(screen.getByText('From above'));
    expect(screen.getByRole('figure', { name: /^Seen from above/ })).toBeTruthy();
  });
});
