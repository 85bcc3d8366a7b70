import { cleanup, fireEvent, render, screen, waitFor, within } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { ProjectFitting } from '../../../src/project/file/schema';
import { useAppStore } from '../../../src/state/appStore';
import { RowEditor } from '../../../src/views/rowEditor/RowEditor';
import { demo, everyKind, openInStore } from '../ledger/openProjects';

vi.setConfig({ testTimeout: 20_000 });

afterEach(cleanup);
beforeEach(() => {
  openInStore(demo());
});

function open(id: string): void {
  useAppStore.getState().select(id);
  render(<RowEditor />);
}

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

function type(name: string, text: string): void {
  fireEvent.change(field(name), { target: { value: text } });
  fireEvent.blur(field(name));
}

function steps(): number {
  return useAppStore.temporal.getState().pastStates.length;
}

describe('the editor of a row', () => {
  it('says what to do while no row is picked', () => {
    useAppStore.getState().select(null);
    render(<RowEditor />);
    expect(screen.getByText(/Pick a row of the ledger, or add a fitting/)).toBeTruthy();
  });

  it('shows every fitting of every kind without a complaint', () => {
    openInStore(everyKind());
    for (const { id, name } of everyKind().fittings) {
      open(id);
      expect(screen.getByRole('heading', { level: 2 }).textContent).toContain(name);
      expect(document.querySelectorAll('[aria-invalid]')).toHaveLength(0);
      cleanup();
    }
  });

  it('puts the focus into its first field when it was asked to, and Escape gives it back to the row', async () => {
    useAppStore.getState().select('boom');
    useAppStore.getState().openEdit();
    render(
      <>
        <button type="button" className="row-pick" data-fitting-id="boom">
          Boom
        </button>
        <RowEditor />
      </>,
    );
    expect(document.activeElement).toBe(field('Name'));
    expect(useAppStore.getState().isFirstFieldWanted).toBe(false);
    await userEvent.keyboard('{Escape}');
    expect(document.activeElement?.textContent).toBe('Boom');
  });

  it('Escape in a changed field brings its value back first and stays there', async () => {
    open('boom');
    await userEvent.type(field('Name'), '!');
    expect(fitting('boom').name).toBe('Boom!');
    await userEvent.keyboard('{Escape}');
    expect(fitting('boom').name).toBe('Boom');
    expect(document.activeElement).toBe(field('Name'));
  });

  it('does not carry half-typed text to another row', () => {
    open('boom');
    fireEvent.change(field('Diameter'), { target: { value: 'wide' } });
    cleanup();
    open('stanchions');
    expect(field('Diameter').value).not.toBe('wide');
  });
});

describe('name and zone', () => {
  it('one field typed in at one go is one step, named after field and fitting', async () => {
    open('boom');
    const before = steps();
    await userEvent.type(field('Name'), ', long');
    expect(fitting('boom').name).toBe('Boom, long');
    expect(steps()).toBe(before + 1);
    expect(useAppStore.getState().step.label).toContain('Change the name of');
  });

  it('moves to another zone, and to a new one, whose name waits to be typed over', async () => {
    open('boom');
    const { zones } = demo();
    const other = zones.find(({ id }) => id !== fitting('boom').zoneId);
    choose('Zone', other?.name ?? '');
    expect(fitting('boom').zoneId).toBe(other?.id);
    choose('Zone', 'a new zone');
    const made = useAppStore.getState().project?.zones.find(({ id }) => id === fitting('boom').zoneId);
    expect(made?.name).toBe('New zone');
    await waitFor(() => {
      expect(document.activeElement).toHaveProperty('value', 'New zone');
    });
    await userEvent.keyboard('Spars');
    expect(useAppStore.getState().project?.zones.map((zone) => zone.name)).toContain('Spars');
  });
});

describe('shape and size', () => {
  it('takes a diameter in any unit, and how it was obtained', () => {
    open('stanchions');
    type('Diameter', '1 in');
    choose('Diameter: how obtained', 'from a drawing');
    const { shape } = fitting('stanchions');
    expect(shape.kind === 'roundBar' ? shape.diameter : null).toEqual({ m: 0.0254, basis: 'drawing' });
  });

  it('asks whether the unit is right where a bar is wider than any on a yacht, and takes the value all the same', () => {
    open('stanchions');
    expect(screen.queryByText(/is the unit right/)).toBeNull();
    type('Diameter', '2.7 m');
    expect(field('Diameter').value).toBe('2700 mm');
    expect(field('Diameter').getAttribute('aria-invalid')).toBeNull();
    const note = screen.getByText('2.70 m is very wide for this: is the unit right?');
    expect(field('Diameter').getAttribute('aria-describedby')).toBe(note.id);
    type('Diameter', '27');
    expect(screen.queryByText(/is the unit right/)).toBeNull();
  });

  it('sets surface, ends, friction and a typed coefficient', () => {
    open('stanchions');
    choose('Surface', 'typed roughness');
    type('Roughness', '0.3');
    choose('First end', 'free in the air');
    choose('Skin friction along it', 'left out');
    fireEvent.click(screen.getByRole('checkbox', { name: 'Type the drag coefficient' }));
    const coefficient = screen.getByRole('group', { name: 'Drag coefficient' });
    fireEvent.change(within(coefficient).getByRole('textbox', { name: 'best' }), {
      target: { value: '1.15' },
    });
    type('Source', 'own pull test');
    expect(fitting('stanchions').shape).toMatchObject({
      surface: { kind: 'roughness', roughnessM: 0.0003 },
      ends: ['free', 'free'],
      friction: 'zero',
      coefficient: { best: 1.15, low: 1.1, high: 1.3, source: 'own pull test' },
    });
  });

  it('says beside the field what the file’s rules refuse, and nothing changes', () => {
    open('stanchions');
    choose('Surface', 'typed roughness');
    const before = fitting('stanchions');
    type('Roughness', '40');
    const problem = screen.getByText(/Not taken: a roughness of 0.04 m is more than half the diameter/);
    expect(field('Roughness').getAttribute('aria-describedby')).toContain(problem.id);
    expect(fitting('stanchions')).toBe(before);
    type('Roughness', '0.1');
    expect(screen.queryByText(/Not taken/)).toBeNull();
  });

  it('becomes another kind of shape, and says that the sizes are carried over', () => {
    open('stanchions');
    choose('Shape', 'body with edges');
    expect(fitting('stanchions').shape.kind).toBe('bluffBody');
    expect(screen.getByText('The sizes are carried over as estimates; look at them again.')).toBeTruthy();
    type('Length', '120 mm');
    expect(fitting('stanchions').shape).toMatchObject({ length: { m: 0.12 } });
    choose('Shape', 'measured area');
    choose('Obtained by', 'pull test');
    expect(fitting('stanchions').shape).toMatchObject({ provenance: { kind: 'pull-test' } });
  });
});

describe('count and place', () => {
  it('says the place as taped and by end points without moving it', () => {
    open('boom');
    choose('Place given', 'as taped on deck');
    expect(fitting('boom').placement.kind).toBe('taped');
    choose('Place given', 'by its end points');
    const { placement } = fitting('boom');
    const original = demo().fittings.find(({ id }) => id === 'boom')?.placement;
    if (placement.kind !== 'endPoints' || original?.kind !== 'endPoints') throw new Error('another kind');
    for (const key of ['xM', 'yM', 'zM'] as const) {
      expect(placement.start[key]).toBeCloseTo(original.start[key], 6);
      expect(placement.end[key]).toBeCloseTo(original.end[key], 6);
    }
  });

  it('lays a taped member upright, fore and aft or athwart', () => {
    open('boom');
    choose('Place given', 'as taped on deck');
    choose('Orientation', 'athwart');
    expect(fitting('boom').placement).toMatchObject({ leanAftDeg: 0, leanOutDeg: 90 });
    choose('Orientation', 'upright');
    expect(fitting('boom').placement).toMatchObject({ leanAftDeg: 0, leanOutDeg: 0 });
    type('Lean aft', '12');
    expect(fitting('boom').placement).toMatchObject({ leanAftDeg: 12 });
    expect(screen.getByRole<HTMLSelectElement>('combobox', { name: 'Orientation' }).value).toBe('leaning');
  });

  it('makes a row of one, and shows where its last one stands', () => {
    open('boom');
    type('How many in a row', '3');
    expect(fitting('boom').placement.row?.count).toBe(3);
    expect(screen.getByText(/The row runs aft, 1.00\sm apart/)).toBeTruthy();
    expect(screen.getByRole('group', { name: 'Last one, start' })).toBeTruthy();
  });

  it('keeps where the last one stands while 14 is typed over to 12', () => {
    openInStore(demo());
    const [many] = demo().fittings.filter(({ placement }) => placement.row !== null);
    if (many === undefined) throw new Error('no row in the demo');
    open(many.id);
    fireEvent.change(field('How many in a row'), { target: { value: '1' } });
    expect(fitting(many.id).placement.row).toBeNull();
    fireEvent.change(field('How many in a row'), { target: { value: '12' } });
    expect(fitting(many.id).placement.row).toEqual({ ...many.placement.row, count: 12 });
  });

  it('refuses a pair on the centreline beside the box', () => {
    open('boom');
    fireEvent.click(screen.getByRole('checkbox', { name: 'The same on the other side' }));
    expect(screen.getByText(/a pair on the centreline would count the same place twice/)).toBeTruthy();
    expect(fitting('boom').placement.pair).toBe(false);
  });
});

describe('wind, use and flags', () => {
  it('shows the force factor, the square of the exposure, beside it', () => {
    open('boom');
    const exposure = screen.getByRole('group', { name: 'Exposure e, wind speed over the free wind’s' });
    fireEvent.change(within(exposure).getByRole('textbox', { name: 'low' }), { target: { value: '0.5' } });
    fireEvent.change(within(exposure).getByRole('textbox', { name: 'best' }), { target: { value: '0.7' } });
    expect(fitting('boom').exposure).toMatchObject({ low: 0.5, best: 0.7 });
    expect(within(exposure).getByText(/Force factor e².*: 0.490, from 0.25–1.00/)).toBeTruthy();
  });

  it('sets another exposure to leeward, a turn in degrees and a shelter', () => {
    open('boom');
    fireEvent.click(screen.getByRole('checkbox', { name: 'To leeward it is another' }));
    expect(screen.getByRole('group', { name: 'Exposure e to leeward' })).toBeTruthy();
    type('Local turn of the wind', '28');
    expect(fitting('boom').localTurn.deg).toBe(28);
    choose('Sheltered by', 'Stanchions');
    expect(fitting('boom')).toMatchObject({ shelteredByFittingId: 'stanchions' });
  });

  it('sets the share of the time, of one condition too, and an emptied one goes back to the default', () => {
    open('boom');
    type('In use, share of the time', '80 %');
    type('In Run in a big sea', '25');
    expect(fitting('boom').dutyFraction).toEqual({
      default: 0.8,
      byCondition: [{ conditionId: 'run', fraction: 0.25 }],
    });
    type('In Run in a big sea', '');
    expect(fitting('boom').dutyFraction.byCondition).toEqual([]);
  });

  it('sets a stowed state and a mass', () => {
    open('boom');
    fireEvent.click(screen.getByRole('checkbox', { name: 'Stowed, something of it is left' }));
    expect(screen.getByRole('group', { name: 'Place when stowed' })).toBeTruthy();
    type('Mass', '12,5 kg');
    expect(fitting('boom')).toMatchObject({ massKg: 12.5, stowed: { source: '' } });
    type('Mass', '');
    expect(fitting('boom').massKg).toBeNull();
  });

  it('gives the safety caution with its flag before anybody touches it', () => {
    open('stanchions');
    const box = screen.getByRole<HTMLInputElement>('checkbox', { name: 'Safety-required' });
    expect(box.checked).toBe(true);
    const caution = screen.getByText(/no watt is worth a life/);
    expect(box.getAttribute('aria-describedby')).toContain(caution.id);
  });

  it('sets a class ruling with its number', () => {
    open('boom');
    choose('Class rule', 'needs a ruling');
    type('Number of the rule', 'C.7.2');
    expect(fitting('boom').flags.classRule).toEqual({ ruling: 'needs-ruling', rule: 'C.7.2' });
  });

  it('leaves the fitting out without a reason until one is typed, and takes it back', () => {
    open('boom');
    fireEvent.click(screen.getByRole('checkbox', { name: 'Left out of the sums' }));
    expect(fitting('boom').excluded).toEqual({ reason: '' });
    type('Reason for leaving it out', 'Carried ashore');
    expect(fitting('boom').excluded).toEqual({ reason: 'Carried ashore' });
    type('Reason for leaving it out', '');
    expect(fitting('boom').excluded).toEqual({ reason: '' });
  });
});

describe('a section with a direction', () => {
  it('turns with the wind on request, in pieces and with what is left over', () => {
    openInStore(everyKind());
    open('box-post');
    choose('Shape', 'fairing');
    expect(fitting('box-post').shape).toMatchObject({ kind: 'fairing', thickness: { m: 0.04 } });
    choose('Direction', 'turns with the wind');
    type('Pieces that turn each for itself', '3');
    type('Error left, to either side', '4°');
    expect(fitting('box-post').shape).toMatchObject({
      direction: { kind: 'turning', pieces: 3, residualDeg: 4 },
    });
  });

  it('says beside the thickness that it exceeds the chord, and loses nothing', () => {
    openInStore(everyKind());
    open('oval-post');
    type('Thickness', '90 mm');
    expect(screen.getByText(/Not taken: this must not be above the chord \(0\.08\)/)).toBeTruthy();
    expect(field('Thickness').value).toBe('90 mm');
    expect(fitting('oval-post').shape).toMatchObject({ thickness: { m: 0.04 } });
  });
});

describe('a pull test', () => {
  it('gives the drag area from its readings, which are typed on one line with decimal commas', () => {
    openInStore(everyKind());
    open('pulled');
    type('Readings', '30,5; 31.5 31');
    type('Reading out of the wind', '1 N');
    type('Angle between pull and wind', '0°');
    type('Wind at the item’s own height', '10 m/s');
    type('Density of the air', '1.2 kg/m3');
    const { shape } = fitting('pulled');
    if (shape.kind !== 'measuredArea') throw new Error('no measured area');
    expect(shape.pullTest?.forcesN).toEqual([30.5, 31.5, 31]);
    // 30 N over 60 Pa
    expect(shape.dragAreaM2.best).toBeCloseTo(0.5, 12);
    expect(screen.getByText(/drag area 0\.500/)).toBeTruthy();
  });

  it('keeps readings that are none, with a sentence', () => {
    openInStore(everyKind());
    open('pulled');
    type('Readings', '30; gust');
    expect(field('Readings').getAttribute('aria-invalid')).toBe('true');
    expect(fitting('pulled').shape).toMatchObject({ pullTest: { forcesN: [31, 28.5, 30.2] } });
  });

  it('is started from the area as it is, and taken away again with the area kept', async () => {
    openInStore(everyKind());
    open('bag');
    await userEvent.click(screen.getByRole('checkbox', { name: 'Work it out from a pull test' }));
    const { shape } = fitting('bag');
    expect(shape).toMatchObject({ provenance: { kind: 'pull-test' }, pullTest: { windSpeedMs: 10 } });
    const best = shape.kind === 'measuredArea' ? shape.dragAreaM2.best : NaN;
    expect(best).toBeCloseTo(0.3, 5);
    await userEvent.click(screen.getByRole('checkbox', { name: 'Work it out from a pull test' }));
    expect(fitting('bag').shape).toMatchObject({ pullTest: null, dragAreaM2: { best } });
  });
});
