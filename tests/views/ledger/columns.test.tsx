import { act, cleanup, render, screen, within } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { patchFitting } from '../../../src/project/edit/fittingEdits';
import type { Project } from '../../../src/project/file/schema';
import { extraColumns, prefer, usePreferences } from '../../../src/state/preferences';
import { ledgerOf } from '../../../src/state/ledgerOf';
import { useAppStore } from '../../../src/state/appStore';
import { formatValue, formatValueRange } from '../../../src/units/print';
import { LedgerPane } from '../../../src/views/ledger/LedgerPane';
import { demo, openInStore } from './openProjects';

vi.setConfig({ testTimeout: 60_000 });

/** How many bars were drawn: every row and every sum has one. */
const drawn = vi.hoisted(() => ({ bars: 0 }));
vi.mock('../../../src/charts/LedgerBar', () => ({
  LedgerBar: () => {
    drawn.bars += 1;
    return null;
  },
}));

beforeEach(() => {
  window.localStorage.clear();
  prefer({ columns: ['coefficient', 'price'], isCompact: false });
  openInStore(demo());
});
afterEach(cleanup);

function show() {
  return render(<LedgerPane onPick={() => undefined} renderInPlace={() => null} />);
}

function ledger() {
  const { project, question } = useAppStore.getState();
  const answer = project === null ? null : ledgerOf(project, question);
  if (answer === null) throw new Error('nothing open');
  return answer;
}

function rowOf(name: string): HTMLElement {
  const row = screen.getByRole('button', { name }).closest('tr');
  if (row === null) throw new Error(`no row ${name}`);
  return row;
}

function cell(row: Element | null, column: string): string {
  return row?.querySelector(`.column-${column}`)?.textContent ?? '';
}

/** The heads in words; the marks of the bars' scale are drawn. */
function heads(): string[] {
  const table = screen.getByRole('table', { name: /What each fitting costs/ });
  return within(table)
    .getAllByRole('columnheader')
    .map((head) =>
      [...head.childNodes]
        .filter(({ nodeName }) => nodeName !== 'svg')
        .map(({ textContent }) => textContent ?? '')
        .join('')
        .replace(/\s+/g, ' ')
        .trim(),
    );
}

describe('the columns that are always there', () => {
  it('are drag, before and after with the spread of the state shown, bars and saving', () => {
    prefer({ columns: [] });
    show();
    expect(heads()).toEqual([
      'number',
      'fitting and size',
      'flags',
      'drag N before',
      'before W',
      'after W',
      'spread of the track power W after',
      'track power',
      'saving W',
    ]);
    const row = ledger().rows.find(({ fitting }) => fitting.name === 'Code sail, rolled');
    const { low, high } = row?.after.ranges.item.trackPowerW ?? { low: 0, high: 0 };
    expect(cell(rowOf('Code sail, rolled'), 'spread')).toBe(
      formatValueRange(low, high, 'W', { decimals: 0 }),
    );
  });

  it('say no state where only one is in sight, and leave the other one empty', () => {
    useAppStore.getState().show('before');
    show();
    expect(heads()).toContain('drag N');
    const row = rowOf('Code sail, rolled');
    expect([cell(row, 'after'), cell(row, 'saving')]).toEqual(['', '']);
    const before = ledger().rows.find(({ fitting }) => fitting.name === 'Code sail, rolled')?.before;
    const { low, high } = before?.ranges.item.trackPowerW ?? { low: 0, high: 0 };
    expect(cell(row, 'spread')).toBe(formatValueRange(low, high, 'W', { decimals: 0 }));
  });

  it('give the sum and every zone their spread', () => {
    show();
    const { after } = ledger().forces;
    const { low, high } = after.ranges.item.trackPowerW;
    expect(cell(document.querySelector('.total-row'), 'spread')).toBe(
      formatValueRange(low, high, 'W', { decimals: 0 }),
    );
    const zones = [...document.querySelectorAll('.group-head')].map((head) => cell(head, 'spread'));
    expect(zones.filter((text) => /\d/.test(text)).length).toBeGreaterThan(3);
  });

  it('print the coefficients of members that differ from the smallest to the largest', () => {
    show();
    const legs = ledger().rows.find(({ fitting }) => fitting.name === 'Pulpit legs');
    const bests = legs?.before.parts.flatMap(({ trace }) =>
      trace.members.map(({ coefficientBest }) => coefficientBest ?? NaN),
    );
    const text = formatValueRange(Math.min(...(bests ?? [])), Math.max(...(bests ?? [])), '1', {
      decimals: 2,
    });
    expect(text).toMatch(/^\d\.\d\d–\d\.\d\d$/);
    expect(cell(rowOf('Pulpit legs'), 'coefficient')).toBe(text);
  });
});

describe('the columns on demand', () => {
  it('are chosen by check boxes and kept; Escape closes and the focus goes back', async () => {
    show();
    const opener = screen.getByText('Columns', { selector: 'summary' });
    await userEvent.click(opener);
    const choice = screen.getByRole('group', { name: 'Beside drag, track power and saving' });
    expect(within(choice).getAllByRole('checkbox')).toHaveLength(extraColumns.length + 1);
    await userEvent.click(within(choice).getByRole('checkbox', { name: 'air power' }));
    await userEvent.click(within(choice).getByRole('checkbox', { name: 'coefficient and its spread' }));
    expect(usePreferences.getState().columns).toEqual(['air', 'price']);
    expect(heads()).toContain('air W before');
    expect(heads().some((head) => head.startsWith('coefficient'))).toBe(false);
    await userEvent.keyboard('{Escape}');
    expect(opener.closest('details')?.open).toBe(false);
    expect(document.activeElement).toBe(opener);
  });

  it('put the rows closer together, never below the size of a target', async () => {
    show();
    await userEvent.click(screen.getByText('Columns', { selector: 'summary' }));
    const pane = document.querySelector<HTMLElement>('.ledger');
    expect(pane?.style.getPropertyValue('--row')).toBe('28px');
    await userEvent.click(screen.getByRole('checkbox', { name: 'rows closer together' }));
    expect(pane?.style.getPropertyValue('--row')).toBe('24px');
  });

  it('print the values of the row’s own result', () => {
    prefer({ columns: [...extraColumns] });
    show();
    const row = ledger().rows.find(({ fitting }) => fitting.name === 'Staysail, rolled');
    if (row === undefined) throw new Error('no row');
    const { outcome } = row.before;
    const shown = rowOf('Staysail, rolled');
    expect(cell(shown, 'air')).toBe(formatValue(outcome.airPowerW, 'W', { decimals: 0 }));
    expect(cell(shown, 'sideForce')).toBe(formatValue(outcome.sideForceN, 'N', { decimals: 0 }));
    expect(cell(shown, 'heelingMoment')).toBe(formatValue(outcome.heelingMomentNm, 'N m', { decimals: 0 }));
    expect(cell(shown, 'price')).toBe(formatValue(outcome.fullPriceW, 'W', { decimals: 0 }));
    expect(cell(shown, 'regime')).toBe('crisis');
    expect(cell(shown, 'reynolds').replace(/\u2009/g, '')).toMatch(/^\d\d\d00$/);
    expect(cell(shown, 'doubts')).toMatch(/^coefficient, round bar, crisis \+\d+\/−\d+; exposure ±\d+/);
    const total = document.querySelector('.total-row');
    expect(cell(total, 'sideForce')).toBe(
      formatValue(ledger().forces.before.outcome.sideForceN, 'N', { decimals: 0 }),
    );
    expect([cell(total, 'reynolds'), cell(total, 'regime')]).toEqual(['', '']);
    expect(cell(total, 'doubts')).toMatch(/\d/);
    const sign = screen.getByRole('columnheader', { name: /side force to leeward/ });
    expect(sign.title).toMatch(/positive to leeward, across the track/);
  });

  it('show the spread of a saving only in rows that the plan touches', () => {
    prefer({ columns: ['savingSpread'] });
    show();
    expect(cell(rowOf('Code sail, rolled'), 'savingSpread')).toMatch(/^\d+–\d+$/);
    expect(cell(rowOf('Staysail, rolled'), 'savingSpread')).toBe('');
  });
});

/** The demo with a plan of one item that trades drag for side force: a pedestal that is slippery along the boat only. */
function withBoughtSideForce(): Project {
  const project = demo();
  const [plan] = project.plans;
  const [item] = plan?.items ?? [];
  const target = project.fittings.find(({ name }) => name === 'Grinder pedestal');
  if (plan === undefined || item === undefined || target?.shape.kind !== 'bluffBody')
    throw new Error('no plan');
  const { x, y } = target.shape.coefficients;
  if (x === null || y === null) throw new Error('no typed coefficients');
  const shape = {
    ...target.shape,
    coefficients: {
      ...target.shape.coefficients,
      x: { ...x, best: 0.05, low: 0.04, high: 0.06 },
      y: { ...y, best: 1.6, low: 1.4, high: 1.8 },
    },
  };
  const change = {
    kind: 'typed' as const,
    shape,
    source: item.change.kind === 'typed' ? item.change.source : x.source,
  };
  const turned = { ...item, id: 'turned', name: 'Turned pedestal', fittingId: target.id, change };
  return { ...project, plans: [{ ...plan, items: [turned] }] };
}

describe('side force that a saving costs', () => {
  it('stands beside the saving where full price or side force is shown', () => {
    openInStore(withBoughtSideForce());
    show();
    expect(heads()).toContain('side force bought N');
    const row = ledger().rows.find(({ fitting }) => fitting.name === 'Grinder pedestal');
    const { sideForceN, trackPowerW } = row?.saving.change ?? { sideForceN: 0, trackPowerW: 0 };
    expect(sideForceN).toBeLessThan(-1);
    expect(trackPowerW).toBeGreaterThan(1);
    expect(cell(rowOf('Grinder pedestal'), 'bought')).toBe(formatValue(-sideForceN, 'N', { decimals: 0 }));
    expect(cell(rowOf('Staysail, rolled'), 'bought')).toBe('');
    act(() => {
      prefer({ columns: ['coefficient'] });
    });
    expect(heads().some((head) => head.startsWith('side force bought'))).toBe(false);
  });

  it('is not spoken of where no saving costs any', () => {
    show();
    expect(heads().some((head) => head.startsWith('side force bought'))).toBe(false);
  });
});

describe('what the ledger says beside its numbers', () => {
  it('marks the few ranks that are safe, with a line in the key', () => {
    show();
    const safe = ledger().rows.filter(({ isRankSafe }) => isRankSafe === true);
    const marked = [...document.querySelectorAll('.rank-safe')].map(({ textContent }) => textContent);
    expect(marked.sort()).toEqual(safe.map(({ number }) => String(number)).sort());
    expect(document.querySelector('.flag-key')?.textContent).toContain('number rank safe');
  });

  it('says that full price does not order the rows, only where it is shown', () => {
    show();
    expect(document.querySelector('.flag-key')?.textContent).toContain('Order and rank: by track power.');
    act(() => {
      prefer({ columns: [] });
    });
    expect(document.querySelector('.flag-key')?.textContent).not.toContain('Order and rank');
  });

  it('leads from the foot to the plan below the rows', async () => {
    show();
    await userEvent.click(screen.getByRole('button', { name: 'plan: 8 items, below' }));
    expect(document.activeElement?.textContent).toMatch(/^Stow and strike/);
  });

  it('names the conditions of a course that a notice comes from, and the hours in all', () => {
    useAppStore.getState().chooseBasis({ kind: 'profile' });
    show();
    expect(document.querySelector('.ledger-title')?.textContent).toContain('82.0\u00a0h in all');
    const notes = document.querySelector('.footnotes')?.textContent ?? '';
    expect(notes).toMatch(/48 Canoe body, when lifted: In “Upwind, one reef”: All of it is under water/);
    expect(notes).toMatch(/Also in “Fast reach, port tack”, “Run in a big sea”\./);
    expect(notes).toMatch(/Over the whole course: Deck height lies among the waves/);
  });

  it('names no condition where there is only one', () => {
    show();
    expect(document.querySelector('.footnotes')?.textContent).not.toContain('In “');
  });
});

describe('an edit of one fitting', () => {
  it('draws one row anew, the head of its group and the total; what small rows come to stays where it is the same', () => {
    useAppStore.getState().choosePlan(null);
    show();
    expect(document.querySelectorAll('.tail-line').length).toBeGreaterThan(0);
    drawn.bars = 0;
    act(() => {
      useAppStore
        .getState()
        .edit('note', (project) => patchFitting(project, 'stanchions', { note: 'counted twice' }));
    });
    expect(drawn.bars).toBe(1 + 1 + 1);
  });
});
