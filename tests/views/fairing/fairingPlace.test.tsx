import { act, cleanup, fireEvent, render, screen, within } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { useState } from 'react';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { useAppStore } from '../../../src/state/appStore';
import { useBench } from '../../../src/state/bench';
import { usePreferences } from '../../../src/state/preferences';
import { usualUnits } from '../../../src/units/displayUnits';
import { showIn } from '../../../src/units/shownUnits';
import { FairingPlace } from '../../../src/views/fairing/FairingPlace';
import { demo, openInStore } from '../ledger/openProjects';

vi.setConfig({ testTimeout: 30_000 });

const onShowItem = vi.fn<(planId: string, itemId: string) => void>();
let address = '';

/** Stands in for the page: keeps what the place says about its address. */
function Page({ words: first }: { readonly words: string }) {
  const [words, setWords] = useState(first);
  return (
    <FairingPlace
      words={words}
      onWords={(next) => {
        address = next;
        setWords(next);
      }}
      onShowItem={onShowItem}
    />
  );
}

/** A round bar of the demo that is no row of its own kind. */
function poleId(): string {
  const pole = useAppStore
    .getState()
    .project?.fittings.find(({ shape, flags }) => shape.kind === 'roundBar' && !flags.safetyRequired);
  if (pole === undefined) throw new Error('the demo has no bar');
  return pole.id;
}

function open(words = `member=${poleId()}`): void {
  render(<Page words={words} />);
}

function rows(): readonly HTMLElement[] {
  const table = within(screen.getByRole('region', { name: 'Candidates' })).getByRole('table');
  return within(table).getAllByRole('row').slice(1);
}

function rowAt(index: number): HTMLElement {
  const found = rows().at(index);
  if (found === undefined) throw new Error(`no row ${index}`);
  return found;
}

function valueOf(label: string): string {
  return screen.getByLabelText<HTMLInputElement | HTMLSelectElement>(label).value;
}

function row(name: string): HTMLElement {
  const found = rows().find((each) => within(each).queryByText(name) !== null);
  if (found === undefined) throw new Error(`no candidate ${name}`);
  return found;
}

function names(): readonly string[] {
  return rows().map((each) => within(each).getByRole('rowheader').textContent);
}

beforeEach(() => {
  openInStore(demo());
  useBench.setState(useBench.getInitialState(), true);
  onShowItem.mockClear();
  address = '';
});
afterEach(cleanup);

describe('the fairing bench', () => {
  it("puts the ledger's selected row on the bench where the address names none", () => {
    useAppStore.getState().select(poleId());
    open('');
    expect(valueOf('member')).toBe(poleId());
  });

  it('says which fitting cannot have a fairing, and what stands there instead', () => {
    const body = useAppStore.getState().project?.fittings.find(({ shape }) => shape.kind === 'bluffBody');
    open(`member=${body?.id ?? ''}`);
    expect(screen.getByText(new RegExp(`is no bar, wire or section`))).not.toBeNull();
  });

  it('takes six candidates and no seventh', async () => {
    open();
    const add = screen.getByRole('button', { name: 'Put on the bench' });
    while (rows().length < 6) await userEvent.click(add);
    expect(add.hasAttribute('disabled')).toBe(true);
    expect(screen.getByRole('button', { name: 'Duplicate it' }).hasAttribute('disabled')).toBe(true);
    await userEvent.click(screen.getByRole('button', { name: 'Take it off' }));
    expect(rows()).toHaveLength(5);
    expect(add.hasAttribute('disabled')).toBe(false);
  });

  it('duplicates the chosen candidate under another name, and chooses the copy', async () => {
    open();
    const before = names();
    await userEvent.click(screen.getByRole('button', { name: 'Duplicate it' }));
    expect(names()).toHaveLength(before.length + 1);
    expect(new Set(names()).size).toBe(before.length + 1);
    expect(within(rowAt(-1)).getByRole('radio', { checked: true })).not.toBeNull();
  });

  it('moves the numbers of the candidate whose slider moves, and no other', async () => {
    open();
    const [, chosen, other] = rows().map((each) => each.textContent);
    fireEvent.change(screen.getByRole('slider', { name: 'Thickness over chord, slider' }), {
      target: { value: '4' },
    });
    await screen.findByLabelText('Thickness over chord');
    expect(valueOf('Thickness over chord')).toBe('0.12');
    expect(rows()[1]?.textContent).not.toBe(chosen);
    expect(rows()[2]?.textContent).toBe(other);
  });

  it('keeps text it cannot read in its field, and the last good value in force', async () => {
    open();
    const before = rows()[1]?.textContent;
    const field = screen.getByLabelText('Thickness over chord');
    await userEvent.clear(field);
    await userEvent.type(field, 'thin');
    await userEvent.tab();
    expect(valueOf('Thickness over chord')).toBe('thin');
    expect(screen.getByText(/does not start with a number.*0.25 stays in force/)).not.toBeNull();
    expect(rows()[1]?.textContent).toBe(before);
  });

  it('compares the others while one cannot be worked out, and says why beside its field', async () => {
    open();
    await userEvent.selectOptions(screen.getByLabelText('Add'), 'round, but thinner');
    await userEvent.click(screen.getByRole('button', { name: 'Put on the bench' }));
    const field = screen.getByLabelText('Diameter');
    await userEvent.clear(field);
    await userEvent.type(field, '1 m');
    expect(rowAt(-1).textContent).toContain('Not compared');
    expect(field.getAttribute('aria-invalid')).toBe('true');
    expect(rowAt(1).textContent).toMatch(/saves|costs/);
  });

  it('says in words that a difference may turn round, exactly where its range has both signs', () => {
    open();
    const said = [...document.querySelectorAll('.bench-comparison .bench-difference > .fine')].map(
      (range) => range.textContent,
    );
    const turning = said.filter((range) => /^−.* to [^−0]/.test(range));
    expect(turning.length).toBeGreaterThan(0);
    for (const range of said) expect(/, may (save|cost)$/.test(range)).toBe(turning.includes(range));
  });

  it('colours a difference only where it surely saves, and says it in words', async () => {
    open();
    await userEvent.click(screen.getByRole('button', { name: 'Put on the bench' }));
    for (const cell of document.querySelectorAll('.bench-comparison .bench-saves')) {
      expect(cell.textContent).toMatch(/^saves /);
      expect(cell.parentElement?.textContent).not.toContain('may');
    }
    expect(document.querySelectorAll('.bench-comparison .bench-saves').length).toBeGreaterThan(0);
  });

  it('says that the mass of a fairing comes on top of the member, and what a section in its place changes', async () => {
    open();
    const massOf = (cells: HTMLElement) => within(cells).getAllByRole('cell').at(-1)?.textContent;
    expect(massOf(row('Fairing, turning'))).toMatch(/^fairing [\d.]+comes on top$/);
    expect(massOf(row('As it stands'))).toMatch(/^[\d.]+$/);
    await userEvent.click(screen.getByRole('button', { name: 'Put on the bench' }));
    expect(massOf(rowAt(-1))).toMatch(/^(?:[\d.]+(?:adds|takes off) [\d.]+.kg|.*change not known)$/);
  });

  it('names the crossings of the chosen candidate in every currency, and the cautions', () => {
    open();
    const words = screen.getByRole('region', { name: 'Crossings with the member as it stands' });
    for (const currency of ['drag along the wind', 'track power', 'side force', 'full price']) {
      expect(within(words).getAllByText(new RegExp(`^${currency}: `)).length).toBeGreaterThan(0);
    }
    expect(screen.getAllByText(/Moving parts can jam/).length).toBeGreaterThan(0);
    expect(screen.getAllByText(/licensed engineer/).length).toBeGreaterThan(0);
  });

  it('speaks of the course, and of a narrow table, in the currency that is drawn', async () => {
    open();
    for (const [choice, unit] of [
      ['drag along the wind', 'N'],
      ['track power', 'W'],
      ['side force', 'N'],
      ['full price', 'W'],
    ] as const) {
      await userEvent.click(screen.getByRole('radio', { name: choice }));
      const course = within(screen.getByRole('region', { name: 'Over the course' }));
      expect(course.getByText(new RegExp(`^Saving in ${choice}, ${unit}`))).toBeTruthy();
      const lines = course.getAllByRole('listitem').map(({ textContent }) => textContent);
      expect(lines.length).toBeGreaterThan(0);
      for (const line of lines) expect(line).toMatch(new RegExp(`\\s${unit} of ${choice} \\(`));
      expect(screen.getByText(/^There is room for one comparison here/).textContent).toContain(
        `the ${choice}:`,
      );
    }
  });

  it('draws a chart with its title, unit, table and files for each question', () => {
    open();
    const figures = screen.getAllByRole('figure');
    expect(figures.length).toBeGreaterThanOrEqual(5);
    for (const figure of figures) {
      expect(within(figure).getByRole('img')).not.toBeNull();
      expect(within(figure).getByRole('table', { hidden: true })).not.toBeNull();
      expect(within(figure).getByRole('button', { name: 'Save as SVG', hidden: true })).not.toBeNull();
    }
  });

  it("follows the reader's units in the charts and sentences that it has drawn already", () => {
    open();
    const bench = document.querySelector('.bench');
    expect(bench?.textContent).toMatch(/Apparent wind [\d.]+.kn at/);
    const units = { ...usualUnits, speed: 'km/h', force: 'lbf', power: 'PS' } as const;
    try {
      act(() => {
        showIn(units);
        usePreferences.setState({ units });
      });
      const charts = document.querySelector('.bench-charts')?.textContent ?? '';
      expect(charts).toMatch(/Apparent wind [\d.]+.km\/h at .*boat speed, km\/h/);
      expect(charts).toMatch(/against apparent wind angle.lbf/);
      expect(charts).not.toMatch(/\d.kn\b|, kn\b|\d.N\b/);
      expect(document.querySelector('.bench-aside')?.textContent).toMatch(/wind, [\d.]+.km\/h square to/);
    } finally {
      showIn(usualUnits);
      usePreferences.setState({ units: usualUnits });
    }
  });

  it('makes the chosen candidate an item of a plan, and asks for that item to be shown', async () => {
    open();
    const { project, question } = useAppStore.getState();
    const count = project?.plans.find(({ id }) => id === question.planId)?.items.length ?? 0;
    await userEvent.click(screen.getByRole('button', { name: 'Use this' }));
    const plan = useAppStore.getState().project?.plans.find(({ id }) => id === question.planId);
    expect(plan?.items).toHaveLength(count + 1);
    expect(plan?.items.at(-1)?.fittingId).toBe(poleId());
    expect(onShowItem).toHaveBeenCalledWith(question.planId, plan?.items.at(-1)?.id);
  });

  it('does not use the member as it stands, and says so', async () => {
    open();
    await userEvent.click(within(rowAt(0)).getByRole('radio'));
    await userEvent.click(screen.getByRole('button', { name: 'Use this' }));
    expect(onShowItem).not.toHaveBeenCalled();
    expect(screen.getByText('The member as it stands is no change.')).not.toBeNull();
  });

  it('compares candidates for a member that no ledger holds', async () => {
    open();
    await userEvent.selectOptions(screen.getByLabelText('member'), 'another one, typed here');
    expect(valueOf('Diameter')).toBe('80 mm');
    expect(rows().length).toBeGreaterThan(1);
    expect(rows()[1]?.textContent).toMatch(/saves|costs/);
  });

  it('writes a moved slider to the address, and reads it back from there', async () => {
    open();
    fireEvent.change(screen.getByRole('slider', { name: 'Thickness over chord, slider' }), {
      target: { value: '4' },
    });
    cleanup();
    useBench.setState(useBench.getInitialState(), true);
    expect(address).toContain(`member=${poleId()}`);
    open(address);
    await screen.findByLabelText('Thickness over chord');
    expect(valueOf('Thickness over chord')).toBe('0.12');
  });

  it('finds the candidates of a member again when a link brings it back alone', async () => {
    open();
    await userEvent.click(screen.getByRole('button', { name: 'Put on the bench' }));
    const before = names();
    cleanup();
    open(`member=${poleId()}`);
    expect(names()).toEqual(before);
  });

  it('shows a name full of markup as the text it is', async () => {
    open();
    const field = screen.getByLabelText('Name');
    await userEvent.clear(field);
    await userEvent.type(field, '<img src=x>');
    expect(row('<img src=x>')).not.toBeNull();
    expect(document.querySelector('img')).toBeNull();
  });
});
