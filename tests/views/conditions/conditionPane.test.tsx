import { act, cleanup, fireEvent, render, screen, within } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { ProjectCondition } from '../../../src/project/file/schema';
import { currentHistory, useAppStore } from '../../../src/state/appStore';
import { toSi } from '../../../src/units/convert';
import { ConditionPane } from '../../../src/views/conditions/ConditionPane';
import { demo, openInStore } from '../ledger/openProjects';

vi.setConfig({ testTimeout: 20_000 });

beforeEach(() => {
  openInStore(demo());
});
afterEach(cleanup);

function store() {
  return useAppStore.getState();
}

function condition(id = 'upwind'): ProjectCondition {
  const found = store().project?.conditions.find((each) => each.id === id);
  if (found === undefined) throw new Error(`no condition ${id}`);
  return found;
}

function field(name: string | RegExp): HTMLInputElement {
  return screen.getByRole<HTMLInputElement>('textbox', { name });
}

function type(name: string | RegExp, text: string): void {
  fireEvent.change(field(name), { target: { value: text } });
  fireEvent.blur(field(name));
}

describe('the fields of a condition', () => {
  it('set what the file keeps, in its units', () => {
    render(<ConditionPane />);
    type('True wind speed', '22 kn');
    type('Angle from the course', '50');
    type('Boat speed', '9,5 kn');
    type('Heel', '-3');
    type('Leeway', '4');
    type('Rise', '0.2');
    type('Temperature', '20');
    type('Pressure', '1010');
    expect(condition()).toMatchObject({
      wind: { kind: 'true', speedMs: toSi(22, 'kn'), heightM: 10, angleFromCourseDeg: 50 },
      boatSpeedMs: toSi(9.5, 'kn'),
      heelDeg: -3,
      leewayDeg: 4,
      riseM: 0.2,
      air: { temperatureC: 20, pressurePa: 101_000, relativeHumidity: 0.82 },
    });
  });

  it('set the doubts, and prices that may be unknown', async () => {
    render(<ConditionPane />);
    type('Wind speed, to either side', '8');
    type('Wind angle, to either side', '5');
    type('Air density, to either side', '2 %');
    type('Price of side force', '');
    type('Total resistance', '4100');
    await userEvent.click(screen.getByRole('checkbox', { name: 'At the heel limit' }));
    expect(condition()).toMatchObject({
      windSpeedDoubtFraction: 0.08,
      windAngleDoubtDeg: 5,
      densityDoubtFraction: 0.02,
      prices: { hullDragPerSideForce: null, driveLostPerHeelingMomentPerM: 0.012, atHeelLimit: false },
      totalResistanceN: 4100,
    });
  });

  it('stand beside their complaint and keep what was typed', () => {
    render(<ConditionPane />);
    const before = condition();
    type('Heel', '75');
    expect(
      screen.getByText(/"75" lies outside: an angle from −60 to 60° is accepted; 19° stays/),
    ).toBeTruthy();
    expect(field('Heel').value).toBe('75');
    type('True wind speed', '0.005 m/s');
    expect(screen.getByText(/this must be 0 or at least 0.01.*stays in force/)).toBeTruthy();
    expect(condition()).toBe(before);
  });

  it('are one step to undo for what is typed in one go, named after the condition', async () => {
    render(<ConditionPane />);
    const before = condition();
    const user = userEvent.setup();
    await user.clear(field('Boat speed'));
    await user.type(field('Boat speed'), '11{Enter}');
    expect(currentHistory().undoLabel).toBe('Change the boat speed of Upwind, one reef');
    act(() => {
      store().undo();
    });
    expect(condition()).toEqual(before);
    expect(currentHistory().canUndo).toBe(false);
  });
});

describe('the wind', () => {
  it('stays the same when it is given the other way, and both views stand there', async () => {
    render(<ConditionPane />);
    const before = condition().wind;
    const views = screen.getByText('True wind at 10 m').parentElement?.textContent;
    expect(views).toMatch(/21.5\skn at 46.0°$/);
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'Given as' }), 'instruments');
    expect(condition().wind.kind).toBe('instrument');
    expect(screen.getByText('True wind at 10 m').parentElement?.textContent).toBe(views);
    expect(field('Apparent wind read')).toBeTruthy();
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'Given as' }), 'true wind');
    const after = condition().wind;
    if (before.kind !== 'true' || after.kind !== 'true') throw new Error('not true');
    expect(after.speedMs).toBeCloseTo(before.speedMs, 5);
    expect(after.angleFromCourseDeg).toBeCloseTo(before.angleFromCourseDeg, 4);
  });

  it('of a reading that means the other side is refused beside the field that brought it about', () => {
    store().chooseBasis({ kind: 'condition', conditionId: 'reach' });
    render(<ConditionPane />);
    type('Angle from the bow', '1');
    const before = condition('reach');
    type('Leeway', '-5');
    expect(screen.getByText(/true wind from the other side than the tack.*stays in force/)).toBeTruthy();
    expect(field('Leeway').value).toBe('-5');
    expect(condition('reach')).toBe(before);
  });
});

describe('conditions', () => {
  it('are added, chosen at once, and their name waits to be typed over', async () => {
    render(<ConditionPane />);
    await userEvent.click(screen.getByRole('button', { name: 'Add a condition' }));
    expect(field('Name').value).toBe('Condition');
    expect(document.activeElement).toBe(field('Name'));
    await userEvent.keyboard('Light air');
    expect(screen.getByRole('heading', { name: 'Light air' })).toBeTruthy();
    const { basis } = store().question;
    expect(basis).toEqual({ kind: 'condition', conditionId: store().project?.conditions[1]?.id });
  });

  it('are duplicated and deleted, and what went with them is said', async () => {
    render(<ConditionPane />);
    await userEvent.click(screen.getByRole('button', { name: 'Duplicate' }));
    expect(screen.getByRole('heading', { name: 'Upwind, one reef, copy' })).toBeTruthy();
    act(() => {
      store().chooseBasis({ kind: 'condition', conditionId: 'upwind' });
    });
    await userEvent.click(screen.getByRole('button', { name: 'Delete' }));
    expect(screen.getByRole('status').textContent).toMatch(
      /^Deleted with it: its hours in the course profile/,
    );
    expect(store().project?.conditions.some(({ id }) => id === 'upwind')).toBe(false);
  });

  it('change their order by buttons and by Alt with an arrow, and keep their hours in the course', async () => {
    render(<ConditionPane />);
    const ids = () => (store().project?.conditions ?? []).map(({ id }) => id);
    const profile = store().project?.profile;
    const [first = '', second = '', third = ''] = ids();
    const down = screen.getByRole('button', { name: 'Move down' });
    await userEvent.click(down);
    expect(ids().slice(0, 3)).toEqual([second, first, third]);
    expect(document.activeElement).toBe(down);
    expect(currentHistory().undoLabel).toBe('Move Upwind, one reef down');
    field('Heel').focus();
    await userEvent.keyboard('{Alt>}{ArrowDown}{/Alt}');
    expect(ids().slice(0, 3)).toEqual([second, third, first]);
    expect(document.activeElement).toBe(field('Heel'));
    expect(condition().heelDeg).toBe(demo().conditions.find(({ id }) => id === 'upwind')?.heelDeg);
    await userEvent.keyboard('{Alt>}{ArrowUp}{ArrowUp}{ArrowUp}{/Alt}');
    expect(ids().slice(0, 3)).toEqual([first, second, third]);
    expect(screen.getByRole('button', { name: 'Move up' }).getAttribute('aria-disabled')).toBe('true');
    expect(store().project?.profile).toBe(profile);
  });

  it('give way to the next one when one is deleted, and the focus to its name', async () => {
    store().chooseBasis({ kind: 'condition', conditionId: 'reach' });
    render(<ConditionPane />);
    const ids = (store().project?.conditions ?? []).map(({ id }) => id);
    await userEvent.click(screen.getByRole('button', { name: 'Delete' }));
    const conditionId = ids[ids.indexOf('reach') + 1];
    expect(store().question.basis).toEqual({ kind: 'condition', conditionId });
    expect(document.activeElement).toBe(
      screen.getByRole('heading', { level: 2, name: condition(conditionId).name }),
    );
  });

  it('are never all deleted', async () => {
    const project = demo();
    openInStore({
      ...project,
      conditions: project.conditions.slice(0, 1),
      profile: null,
      fittings: project.fittings.map((fitting) => ({
        ...fitting,
        dutyFraction: { ...fitting.dutyFraction, byCondition: [] },
      })),
      plans: [],
    });
    render(<ConditionPane />);
    await userEvent.click(screen.getByRole('button', { name: 'Delete' }));
    expect(screen.getByRole('status').textContent).toMatch(/is the only condition/i);
  });

  it('give the focus to the field that a line elsewhere asks for, also to a folded one', () => {
    render(<ConditionPane />);
    act(() => {
      store().openConditionAt('heelDeg');
    });
    expect(document.activeElement).toBe(field('Heel'));
    expect(store().openField).toBeNull();
    act(() => {
      store().openConditionAt('air.relativeHumidity');
    });
    expect(document.activeElement?.closest('details')?.open).toBe(true);
  });
});

describe('the course', () => {
  function course() {
    return within(screen.getByRole('region', { name: 'Course profile' }));
  }

  it('comes first where the ledger is about it, and moves the shares', () => {
    store().chooseBasis({ kind: 'profile' });
    render(<ConditionPane />);
    expect(screen.getAllByRole('heading', { level: 3 })[0]?.textContent).toBe('Course profile');
    fireEvent.change(course().getByRole('textbox', { name: 'Upwind, one reef' }), {
      target: { value: '50' },
    });
    expect(store().project?.profile?.entries.find(({ conditionId }) => conditionId === 'upwind')?.hours).toBe(
      50,
    );
    const shares = [...document.querySelectorAll('.profile-share')].map(({ textContent }) =>
      parseFloat(textContent),
    );
    expect(shares.filter((share) => !Number.isNaN(share)).reduce((sum, share) => sum + share, 0)).toBeCloseTo(
      100,
      0,
    );
  });

  it('loses a condition and gets it back by undo', async () => {
    render(<ConditionPane />);
    const entries = store().project?.profile?.entries;
    await userEvent.click(course().getByRole('button', { name: 'Take Upwind, one reef out of the course' }));
    expect(store().project?.profile?.entries.some(({ conditionId }) => conditionId === 'upwind')).toBe(false);
    const hours = course().getByRole<HTMLInputElement>('textbox', { name: 'Upwind, one reef' });
    expect(hours.value).toBe('');
    // Its button went with the hours.
    expect(document.activeElement).toBe(hours);
    act(() => {
      store().undo();
    });
    expect(store().project?.profile?.entries).toEqual(entries);
  });

  it('is taught where there is none, and made by typing hours', async () => {
    openInStore({ ...demo(), profile: null });
    render(<ConditionPane />);
    expect(course().getByText(/made of conditions and the hours sailed in each/)).toBeTruthy();
    fireEvent.change(course().getByRole('textbox', { name: 'Upwind, one reef' }), {
      target: { value: '12 h' },
    });
    expect(store().project?.profile).toEqual({
      name: 'Course',
      entries: [{ conditionId: 'upwind', hours: 12 }],
    });
    await userEvent.click(course().getByRole('button', { name: 'Show the course in the ledger' }));
    expect(store().question.basis).toEqual({ kind: 'profile' });
    await userEvent.click(course().getByRole('button', { name: 'Delete the course' }));
    expect(store().project?.profile).toBeNull();
    expect(store().question.basis.kind).toBe('condition');
  });
});
