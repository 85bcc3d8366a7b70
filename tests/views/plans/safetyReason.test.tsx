import { act, cleanup, fireEvent, render, screen } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { halfTyped } from '../../setup/halfTyped';
import { isWithheld } from '../../../src/project/refit/applyPlan';
import { useAppStore } from '../../../src/state/appStore';
import { useTypedTexts, wantField } from '../../../src/state/typedTexts';
import { PlanPane } from '../../../src/views/plans/PlanPane';
import { demo, openInStore } from '../ledger/openProjects';

afterEach(cleanup);

/** The first item of the demo whose fitting keeps people safe and that nobody has answered for. */
function guarded() {
  const { plans, fittings } = demo();
  for (const plan of plans) {
    for (const item of plan.items) {
      const fitting = fittings.find(({ id }) => id === item.fittingId);
      if (isWithheld(item, fitting?.flags.safetyRequired === true)) return { plan, item };
    }
  }
  throw new Error('The demo has no such item.');
}

const { plan, item } = guarded();

beforeEach(() => {
  openInStore(demo());
  useAppStore.getState().choosePlan(plan.id);
});

async function openItem(): Promise<void> {
  await userEvent.click(screen.getByRole('button', { name: item.name }));
}

function field(name: string): HTMLInputElement {
  return screen.getByRole('textbox', { name });
}

function put(name: string, text: string): void {
  fireEvent.change(field(name), { target: { value: text } });
}

function reasonInForce() {
  const plans = useAppStore.getState().project?.plans ?? [];
  return plans.flatMap(({ items }) => items).find(({ id }) => id === item.id)?.safetyReason;
}

describe('a reason that does not count yet', () => {
  it('is there again after the item and the pane were closed', async () => {
    const { unmount } = render(<PlanPane />);
    await openItem();
    put('Person', 'Ilse Brandt');
    put('Reason', 'Half a rea');
    unmount();
    render(<PlanPane />);
    expect(screen.getByText(halfTyped('Person, Reason'))).toBeTruthy();
    await openItem();
    expect(field('Person').value).toBe('Ilse Brandt');
    expect(field('Reason').value).toBe('Half a rea');
    expect(reasonInForce()).toBeNull();
  });

  it('waits no longer once it counts', async () => {
    render(<PlanPane />);
    await openItem();
    put('Person', 'Ilse Brandt');
    put('Reason', 'The tube is reached as fast.');
    await userEvent.click(screen.getByRole('button', { name: 'Count it for this reason' }));
    expect(reasonInForce()).toEqual({ person: 'Ilse Brandt', reason: 'The tube is reached as fast.' });
    expect(useTypedTexts.getState().texts.size).toBe(0);
  });

  it('opens its item when a line elsewhere asks for it', () => {
    render(<PlanPane />);
    act(() => {
      wantField(`plan/${plan.id}/${item.id}.name`);
    });
    expect(document.activeElement).toBe(field('Name'));
  });
});

describe('the focus in the safety fields', () => {
  it('goes to the button that takes the place of the one that was pressed', async () => {
    render(<PlanPane />);
    await openItem();
    put('Person', 'Ilse Brandt');
    put('Reason', 'It leaves the tube as fast as the rail.');
    await userEvent.click(screen.getByRole('button', { name: 'Count it for this reason' }));
    const takeBack = screen.getByRole('button', { name: 'Take the reason back' });
    expect(document.activeElement).toBe(takeBack);
    await userEvent.click(takeBack);
    expect(document.activeElement).toBe(screen.getByRole('button', { name: 'Count it for this reason' }));
    await userEvent.keyboard('{Enter}');
    expect(reasonInForce()).toBeNull();
  });
});
