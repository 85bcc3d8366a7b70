import { act, cleanup, render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, it } from 'vitest';
import { useAppStore } from '../../../src/state/appStore';
import { usualUnits } from '../../../src/units/displayUnits';
import { showIn } from '../../../src/units/shownUnits';
import { WorkingPane } from '../../../src/views/working/WorkingPane';
import { openAt } from './workingProject';

afterEach(() => {
  cleanup();
  showIn(usualUnits);
});

function show(fittingId: string): void {
  openAt(fittingId);
  render(<WorkingPane />);
}

/** The text of a line, spaces of every width made plain. */
function lineText(label: string | RegExp): string {
  const name = typeof label === 'string' ? new RegExp(`^${label}`) : label;
  const heading = screen.getAllByRole('rowheader', { name }).find((cell) => cell.closest('.working-lines'));
  return plain(heading?.closest('tr')?.textContent ?? '');
}

function plain(text: string): string {
  return text.replace(/[\u2009\u00a0]/g, ' ');
}

describe('the working of a round bar that a plan makes thinner', () => {
  it('names the fitting by number and size, before and after', () => {
    show('pole');
    expect(plain(screen.getByRole('heading', { level: 2 }).textContent)).toBe(
      '1 Upright pole Ø 100 mm × 3.00 m, after Ø 60.0 mm × 3.00 m',
    );
    expect(screen.getByText(/Thinner pole/).closest('li')?.textContent).toMatch(/slimmer, saves .*counted/);
  });

  it('puts the numbers into the formulas: sqrt(10² + 5²) = 11.2 m/s, q = rho u² / 2', () => {
    show('pole');
    expect(lineText('apparent wind speed')).toMatch(/11\.2=.*m\/s$/);
    expect(lineText('wind speed at the fitting')).toContain('e u = 1.00 × 11.2');
    expect(lineText('dynamic pressure')).toMatch(/q = ρ \(e u\)2 \/ 2 = 1\.2\d × \(1\.00 × 11\.2\)2 \/ 2/);
    expect(lineText('apparent wind angle from the course')).toMatch(/63\.4/);
  });

  it('gives both sides their own numbers where they differ, and an equals sign where they do not', () => {
    show('pole');
    const reynolds = lineText('Reynolds number Re|Reynolds number');
    expect(reynolds).toMatch(
      /before = 11\.2 × 0\.100 \/ 1\.4\d × 10−5after = 11\.2 × 0\.0600 \/ 1\.4\d × 10−5/,
    );
    expect(lineText('area the coefficient is based on')).toMatch(/0\.3000?\.180m²$/);
    expect(lineText('height above the water')).toMatch(/=3\.50, the samem$/);
  });

  it('names regime, area base, end effect and the confidence of each source', () => {
    show('pole');
    const coefficient = lineText('drag coefficient');
    expect(coefficient).toContain('plateau; on diameter × length');
    expect(coefficient).toContain('second-hand');
    expect(coefficient).toMatch(/0\.\d\d–1\.3\d/);
    expect(lineText('factor of finite length')).toContain('both ends free; DNV’s table');
    expect(lineText('exposure')).toContain('free wind');
    const sources = screen.getByRole('region', { name: 'Validity and sources' });
    expect(sources.textContent).toMatch(/NACA TN 84.*\(second-hand\)/);
    expect(sources.textContent).toMatch(/Reynolds number 1 to/);
  });

  it('ties air power and track power by the power of the true wind', () => {
    show('pole');
    const number = (label: string, column: 0 | 1): number => {
      const row = screen.getByRole('rowheader', { name: new RegExp(`^${label}`) }).closest('tr');
      return Number(row?.querySelectorAll('td').item(column).textContent);
    };
    for (const column of [0, 1] as const) {
      const air = number('air power', column);
      const track = number('track power', column);
      expect(number('power of the true wind', column)).toBe(air - track);
      expect(air).toBeGreaterThan(track);
    }
    expect(lineText('power of the true wind')).toMatch(/Pa − Ptbefore = \d+ − \d+/);
  });

  it('lists the doubts by size, wind and density last, and the saving with its range', () => {
    show('pole');
    const table = screen.getByRole('table', { name: /change of track power by each doubt, after/ });
    const heads = within(table)
      .getAllByRole('rowheader')
      .map((cell) => cell.textContent);
    expect(heads[0]).toBe('coefficient, round bar, plateau');
    expect(heads).toContain('the item, together');
    expect(heads.indexOf('wind speed')).toBeGreaterThan(heads.indexOf('the item, together'));
    expect(within(table).getAllByText('shared').length).toBeGreaterThan(1);
    expect(plain(screen.getByText(/^Saving/).textContent)).toMatch(/^Saving [\d.]+ W [\d.]+–[\d.]+ W/);
  });

  it('has the chart in words and as a table', () => {
    show('pole');
    const chart = screen.getByRole('img', {
      name: /Drag coefficient against Reynolds number.*round bar/,
    });
    expect(chart.getAttribute('aria-label')).toMatch(
      /before, round bar, 1\.\d\d at .*after, round bar, 1\.\d\d at/,
    );
    expect(screen.getByText('as a table')).toBeTruthy();
  });

  it('shows one side when the reader asks for one', () => {
    show('pole');
    act(() => {
      useAppStore.getState().show('after');
    });
    const [lines] = screen.getAllByRole('table', { name: 'From the wind to the force' });
    const heads = within(lines as HTMLElement)
      .getAllByRole('columnheader')
      .map((cell) => cell.textContent);
    expect(heads).toEqual(['quantity', 'after', 'unit']);
  });

  it('has force and moment in both frames', () => {
    show('pole');
    const frames = screen.getByRole('table', { name: 'Force and moment', hidden: true });
    expect(within(frames).getAllByRole('rowheader', { hidden: true }).length).toBe(3 + 12);
    expect(frames.textContent).toContain('force in B, the boat’s frame');
  });
});

describe('the working of other kinds', () => {
  it('folds a long row to its first and last members, and opens', async () => {
    show('posts');
    const table = screen.getByRole('table', { name: /^members, deployed/ });
    expect(
      within(table)
        .getAllByRole('rowheader')
        .map((cell) => cell.textContent),
    ).toEqual(['1', '2', '8', '9']);
    await userEvent.click(within(table).getByRole('button', { name: '5 more' }));
    expect(within(table).getAllByRole('rowheader').length).toBe(9);
  });

  it('says that a safety-required saving waits for a reason', () => {
    show('posts');
    const items = screen.getByRole('list', { name: 'Refit items about this fitting' });
    expect(items.textContent).toContain('waits for a reason');
    expect(items.textContent).toContain('outside every total until a named person has given a reason');
  });

  it('gives a body its three axes, each with area, coefficient and source', () => {
    show('box');
    const axes = screen.getByRole('table', { name: /three axes/ });
    const rows = within(axes)
      .getAllByRole('row')
      .map((row) => plain(row.textContent));
    expect(rows[1]).toBe('fore and afttyped; on width × height; towed in a car park0.3000.900.70–1.10');
    expect(rows[2]).toContain('handbook’s cube');
    expect(rows[2]).toMatch(/0\.6001\.050\.80–1\.30$/);
  });

  it('says duty, deployed, and that nothing is left when stowed; removed leaves a dash', () => {
    show('box');
    expect(lineText('duty')).toMatch(/0\.250–$/);
    expect(lineText('force against the track, stowed')).toContain('nothing left in the wind');
    const mean = lineText('force against the track, mean');
    expect(mean).toMatch(/0\.250 × [\d.]+ \+ \(1 − 0\.250\) × 0/);
    expect(screen.getByText('after: removed by the plan; nothing left in the wind.')).toBeTruthy();
    expect(screen.getByRole('table', { name: /each doubt, before/ })).toBeTruthy();
  });

  it('starts a measured drag area from what was measured, and names the exposure’s source', () => {
    show('aerial');
    const area = lineText('drag area');
    expect(area).toContain('from pull test; spring balance, six readings');
    expect(area).toMatch(/0\.03000\.0200–0\.0500m²$/);
    expect(lineText('exposure')).toContain('0.700–0.900, in the lee of the canopy');
    expect(screen.queryByRole('img', { name: /Drag coefficient/ })).toBeNull();
  });

  it('marks what lies outside its valid range', () => {
    show('wire');
    act(() => {
      useAppStore.getState().chooseBasis({ kind: 'condition', conditionId: 'beat' });
    });
    const notices = screen.getByRole('list', { name: 'Notices' });
    expect(within(notices).getAllByRole('img', { name: 'outside its valid range:' }).length).toBe(1);
    expect(notices.textContent).toContain('measured down to 45°');
  });

  it('says why a fitting is left out', () => {
    show('tent');
    expect(screen.getByText('Left out of the sums: ashore')).toBeTruthy();
  });

  it('says what to do when nothing is selected', () => {
    openAt('pole');
    useAppStore.getState().select(null);
    render(<WorkingPane />);
    expect(screen.getByText('Choose a row of the ledger to see its working.')).toBeTruthy();
  });
});

describe('the working under a course profile', () => {
  it('shows the heaviest condition first and lets the reader choose another', async () => {
    show('pole');
    act(() => {
      useAppStore.getState().chooseBasis({ kind: 'profile' });
    });
    const choice = screen.getByRole('combobox', { name: 'working in' });
    expect(
      within(choice)
        .getAllByRole('option')
        .map((option) => plain(option.textContent)),
    ).toEqual(['Beam reach (75.0 % of the time)', 'Close to the wind (25.0 % of the time)']);
    expect(lineText('apparent wind speed')).toContain('11.2');
    await userEvent.selectOptions(choice, 'beat');
    expect(lineText('apparent wind speed')).toContain('11.0');
    expect(screen.getByRole('table', { name: /over the course profile/ })).toBeTruthy();
  });

  it('shows the full price where a condition gives one, and says that it is zero where not', () => {
    show('pole');
    expect(screen.getByText(/Full price: the condition gives no price/)).toBeTruthy();
    act(() => {
      useAppStore.getState().chooseBasis({ kind: 'condition', conditionId: 'beat' });
    });
    expect(screen.queryByText(/gives no price/)).toBeNull();
    expect(lineText('full price')).toMatch(/Pf = Pt \+ V \(ks S \+ kh Mh\)/);
  });
});

describe("the working beside the reader's own units", () => {
  const everyOther = {
    speed: 'km/h',
    length: 'ft',
    size: 'in',
    force: 'kgf',
    power: 'PS',
    moment: 't.m',
  } as const;

  /** The formula with its numbers, and the values, without the notes. */
  function chainTexts(): string[] {
    const shown = document.querySelectorAll(
      '.working-lines .working-formula, .working-lines .working-value, .working-lines .working-unit',
    );
    return [...shown].map(({ textContent }) => textContent);
  }

  it('stays in SI, formulas and all, and says so', () => {
    show('pole');
    expect(screen.queryByText(/The working is in SI/)).toBeNull();
    const usual = chainTexts();
    expect(usual.length).toBeGreaterThan(50);
    cleanup();
    showIn(everyOther);
    show('pole');
    expect(chainTexts()).toEqual(usual);
    expect(screen.getByText(/The working is in SI; its answers stand in your units too\./)).toBeTruthy();
  });

  it('gives the answers in them as well', () => {
    showIn(everyOther);
    show('pole');
    expect(lineText('track power')).toMatch(/before: 0\.\d+ hp \(metric\)after: 0\.\d+ hp \(metric\)/);
    expect(lineText('air power')).toMatch(/hp \(metric\)/);
    const head = plain(screen.getByRole('heading', { level: 2 }).textContent);
    expect(head).toBe('1 Upright pole Ø 3.94 in × 9.84 ft, after Ø 2.36 in × 9.84 ft');
  });

  it('names the horsepower in the table of doubts and in the saving', () => {
    showIn(everyOther);
    show('pole');
    const table = screen.getByRole('table', { name: /change of track power by each doubt/ });
    expect(within(table).getByRole('columnheader', { name: /^high hp.\(metric\)$/ })).toBeTruthy();
    expect(plain(document.querySelector('.working-saving')?.textContent ?? '')).toMatch(
      /Saving 0\.\d+ hp \(metric\) 0\.\d+–0\.\d+ hp \(metric\)/,
    );
  });
});
