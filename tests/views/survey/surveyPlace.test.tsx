import { cleanup, fireEvent, render, screen, within } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { readFileSync } from 'node:fs';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Project } from '../../../src/project/file/schema';
import { useAppStore } from '../../../src/state/appStore';
import { bringIn, putAway, usePutAway } from '../../../src/state/surveyTable';
import { useTypedTexts } from '../../../src/state/typedTexts';
import { noDraft } from '../../../src/project/tables/surveyDraft';
import { SurveyPlace } from '../../../src/views/survey/SurveyPlace';
import { textOfFile } from '../../../src/views/survey/tableFile';
import { fiveThousandRows } from '../../data/tables/fiveThousandRows';
import { demo, openInStore } from '../ledger/openProjects';

vi.setConfig({ testTimeout: 60_000 });

beforeEach(() => {
  usePutAway.setState({ table: null });
  openInStore(demo());
});
afterEach(() => {
  cleanup();
  vi.restoreAllMocks();
});

function project(): Project {
  const { project: open } = useAppStore.getState();
  if (open === null) throw new Error('nothing open');
  return open;
}

function data(name: string): string {
  return readFileSync(`tests/data/tables/${name}`, 'utf8');
}

async function paste(text: string): Promise<void> {
  fireEvent.change(screen.getByRole('textbox', { name: /paste them here/ }), { target: { value: text } });
  await userEvent.click(screen.getByRole('button', { name: 'Read the table' }));
}

function rowOf(number: number): HTMLElement {
  return screen.getByRole('rowheader', { name: String(number) }).closest('tr') as HTMLElement;
}

describe('a table that is brought in', () => {
  it('shows each error at its cell, is mended there, and goes in as one step of undo', async () => {
    const before = project();
    render(<SurveyPlace />);
    await paste(data('pasted-tabs.txt'));
    expect(screen.getByText('3 rows can go in, 1 row to be mended.')).toBeTruthy();
    const width = screen.getByRole('textbox', { name: 'Width or diameter, row 6' });
    expect(width.getAttribute('aria-invalid')).toBe('true');
    expect(within(rowOf(6)).getByText(/"about 300" does not start with a number/)).toBeTruthy();
    await userEvent.clear(width);
    await userEvent.type(width, '300');
    expect(within(rowOf(6)).getByText('A box needs its height, as thickness.')).toBeTruthy();
    await userEvent.type(screen.getByRole('textbox', { name: 'Thickness, row 6' }), '25 cm');
    await userEvent.click(screen.getByRole('button', { name: 'Import 4 rows' }));
    const added = project().fittings.filter(({ id }) => !before.fittings.some((old) => old.id === id));
    expect(new Set(added.map(({ name }) => name))).toEqual(
      new Set(['Jackstaff, old', 'Backstay', 'Antenna "A"', 'Bag']),
    );
    expect(useAppStore.getState().step.label).toBe('Import 4 rows');
    useAppStore.getState().undo();
    expect(project()).toEqual(before);
  });

  it('keeps its bad rows when the good ones go in, when the place is left, and says that they wait', async () => {
    const { unmount } = render(<SurveyPlace />);
    await paste(data('pasted-tabs.txt'));
    await userEvent.type(screen.getByRole('textbox', { name: 'Note, row 6' }), 'by eye');
    await userEvent.click(screen.getByRole('button', { name: 'Import 3 rows' }));
    unmount();
    expect(useTypedTexts.getState().elsewhere).toContain('survey/table');
    render(<SurveyPlace />);
    expect(useTypedTexts.getState().elsewhere).toEqual([]);
    expect(screen.getByText('1 row to be mended.')).toBeTruthy();
    expect(screen.getByRole<HTMLInputElement>('textbox', { name: 'Note, row 6' }).value).toBe('by eye');
    await userEvent.click(screen.getByRole('button', { name: 'Drop row 6' }));
    expect(screen.getByText('No row is left.')).toBeTruthy();
    await userEvent.click(screen.getByRole('button', { name: 'Bring back 4 rows imported or dropped' }));
    expect(rowOf(6)).toBeTruthy();
  });

  it('keeps pasted text that was not read yet', () => {
    const { unmount } = render(<SurveyPlace />);
    fireEvent.change(screen.getByRole('textbox'), { target: { value: 'Item\tDia' } });
    unmount();
    render(<SurveyPlace />);
    expect(screen.getByRole<HTMLTextAreaElement>('textbox').value).toBe('Item\tDia');
  });

  it('gives the focus to what comes next, where a button goes with what it did', async () => {
    render(<SurveyPlace />);
    await paste(data('pasted-tabs.txt'));
    expect(document.activeElement).toBe(screen.getByRole('heading', { name: 'Bring in a table' }));
    await userEvent.click(screen.getByRole('button', { name: 'Change row 4' }));
    expect(document.activeElement).toBe(screen.getByRole('textbox', { name: 'Item, row 4' }));
    await userEvent.click(screen.getByRole('button', { name: 'Drop row 4' }));
    expect(document.activeElement).toBe(screen.getByRole('button', { name: 'Drop row 5' }));
    await userEvent.click(screen.getByRole('button', { name: 'Put the table away' }));
    expect(document.activeElement).toBe(screen.getByRole('heading', { name: 'Bring in a table' }));
  });

  it('is put away and can be brought back', async () => {
    render(<SurveyPlace />);
    await paste(data('no-units.csv'));
    await userEvent.click(screen.getByRole('button', { name: 'Put the table away' }));
    expect(screen.queryByRole('table', { name: /Rows of the table/ })).toBeNull();
    await userEvent.click(screen.getByRole('button', { name: 'Bring the last table back' }));
    expect(screen.getByRole('table', { name: /Rows of the table/ })).toBeTruthy();
  });

  it('asks for units that the heads do not say, and takes the answer', async () => {
    render(<SurveyPlace />);
    await paste(data('no-units.csv'));
    expect(screen.getAllByText('Which unit is it? Nothing in the table says.')).toHaveLength(2);
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'Unit of Diameter' }), 'mm');
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'Unit of Length' }), 'm');
    expect(screen.queryByText('Which unit is it? Nothing in the table says.')).toBeNull();
    expect(screen.getByRole('button', { name: 'Import 2 rows' })).toBeTruthy();
  });

  it('asks for the decimal mark where numbers can be read in two ways', async () => {
    render(<SurveyPlace />);
    await paste(data('numbers-two-ways.txt'));
    expect(screen.getByText(/Some numbers can be read in two ways/)).toBeTruthy();
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'Decimal mark' }), 'point: 1.5');
    await userEvent.click(screen.getByRole('button', { name: 'Import 2 rows' }));
    const vang = project().fittings.find(({ name }) => name === 'Vang');
    expect(vang?.placement).toMatchObject({ lengthM: 2.345 });
  });

  it('moves a meaning to another column, and takes rows for heads or not', async () => {
    render(<SurveyPlace />);
    await paste('One,Two,Three\nPole,round bar,30 mm\n');
    expect(screen.getByText('Choose the column that names the items.')).toBeTruthy();
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'What Column 1 is' }), 'Item');
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'What Column 2 is' }), 'Shape');
    await userEvent.selectOptions(
      screen.getByRole('combobox', { name: 'What Column 3 is' }),
      'Width or diameter',
    );
    await userEvent.selectOptions(
      screen.getByRole('combobox', { name: 'Rows taken for heads' }),
      'the first',
    );
    expect(screen.getByRole('button', { name: 'Import 1 row' })).toBeTruthy();
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'What Column 3 is' }), 'Item');
    expect(screen.getByRole<HTMLSelectElement>('combobox', { name: 'What Column 1 is' }).value).toBe('');
  });

  it('gives rows without a shape the one that is chosen for them', async () => {
    render(<SurveyPlace />);
    await paste('Item,Diameter (mm)\nPole,30\nPost,20\n');
    expect(screen.getByText('2 rows to be mended.')).toBeTruthy();
    await userEvent.selectOptions(
      screen.getByRole('combobox', { name: 'Rows that say no shape are' }),
      'round bar',
    );
    expect(screen.getByRole('button', { name: 'Import 2 rows' })).toBeTruthy();
  });

  it('replaces nothing without an answer, row by row or for all', async () => {
    const [first, second] = project().fittings;
    if (first === undefined || second === undefined) throw new Error('the demo is empty');
    const count = project().fittings.length;
    render(<SurveyPlace />);
    await paste(`Item\tDiameter (mm)\tShape\n${first.name}\t77\tround bar\n${second.name}\t78\tround bar\n`);
    expect(screen.getByText('2 rows with a name that the ledger has.')).toBeTruthy();
    expect(screen.queryByRole('button', { name: /^Import/ })).toBeNull();
    await userEvent.selectOptions(
      screen.getByRole('combobox', { name: '2 rows with a name that the ledger has are' }),
      'skipped',
    );
    await userEvent.selectOptions(
      screen.getByRole('combobox', { name: `What to do with row 2, ${first.name}` }),
      'replace it',
    );
    expect(screen.getByText('1 row can go in, 1 row skipped.')).toBeTruthy();
    await userEvent.click(screen.getByRole('button', { name: 'Import 1 row' }));
    expect(project().fittings).toHaveLength(count);
    expect(project().fittings[0]?.shape).toMatchObject({ diameter: { m: 0.077 } });
    expect(project().fittings[1]).toBe(second);
  });

  it('shows hostile text as text', async () => {
    render(<SurveyPlace />);
    await paste(data('hostile.csv'));
    expect(screen.getByText('<b>bold</b>')).toBeTruthy();
    expect(document.querySelector('b')).toBeNull();
    await userEvent.click(screen.getByRole('button', { name: 'Import 5 rows' }));
    expect(project().fittings.some(({ name }) => name === '=HYPERLINK("http://x.invalid","y")')).toBe(true);
  });

  it('of 5000 rows draws a hundred at a time, finds the bad ones, and says why it does not fit', async () => {
    bringIn({ text: fiveThousandRows(), draft: noDraft });
    render(<SurveyPlace />);
    const rows = (): number => screen.getAllByRole('rowheader').length;
    expect(rows()).toBe(100);
    expect(screen.getByText('1 to 100 of 5000 rows')).toBeTruthy();
    await userEvent.click(screen.getByRole('button', { name: 'Rows after' }));
    expect(screen.getByText('101 to 200 of 5000 rows')).toBeTruthy();
    await userEvent.click(screen.getByRole('checkbox', { name: 'Show only rows that need a hand' }));
    expect(rows()).toBe(100);
    fireEvent.change(screen.getByRole('textbox', { name: 'Width or diameter, row 51' }), {
      target: { value: '9' },
    });
    expect(within(rowOf(51)).getByText(/^goes in/)).toBeTruthy();
    await userEvent.click(screen.getByRole('button', { name: /^Import/ }));
    expect(screen.getByText(/Not imported: a project holds at most 2000 fittings/)).toBeTruthy();
  });

  it('that is no text or holds nothing is refused in words, and what was pasted stays', async () => {
    render(<SurveyPlace />);
    await userEvent.click(screen.getByRole('button', { name: 'Read the table' }));
    expect(screen.getByText('Paste a table first: there is no text yet.')).toBeTruthy();
    await paste('PK\u0003\u0004zip');
    expect(screen.getByText(/This is no text: a spreadsheet has to be saved as CSV first/)).toBeTruthy();
    await userEvent.click(screen.getByRole('button', { name: 'Put the table away' }));
    expect(screen.getByRole('button', { name: 'Read the table' })).toBeTruthy();
  });

  it('that was kept and damaged stands as it came', () => {
    bringIn({ text: data('pasted-tabs.txt'), draft: noDraft });
    useTypedTexts.setState(({ texts }) => ({
      texts: new Map(texts).set('survey/draft', { text: '{"mapping":3', label: '', refusal: null }),
    }));
    render(<SurveyPlace />);
    expect(screen.getByText('3 rows can go in, 1 row to be mended.')).toBeTruthy();
    putAway({ text: '', draft: noDraft });
  });
});

describe('the file of a table', () => {
  const file = (bytes: readonly number[]): File => new File([new Uint8Array(bytes)], 't.csv');

  it.each([
    ['UTF-8', [0xef, 0xbb, 0xbf, 0xc3, 0xa9], 'é', ''],
    ['UTF-16', [0xff, 0xfe, 0xe9, 0x00], 'é', 't.csv was read as UTF-16.'],
    ['Windows 1252', [0xe9], 'é', /was read as Windows 1252/],
  ] as const)('in %s is read', async (_, bytes, text, said) => {
    const read = await textOfFile(file(bytes));
    if (!read.ok) throw new Error(read.message);
    expect(read.text).toBe(text);
    if (typeof said === 'string') expect(read.said).toBe(said);
    else expect(read.said).toMatch(said);
  });

  it('that is too large is refused by its size', async () => {
    const large = { size: 5_000_000, name: 'large.csv' } as File;
    const read = await textOfFile(large);
    expect(read.ok ? 'read' : read.message).toBe('large.csv is larger than 4 MB; bring it in in parts.');
  });
});

describe('the sheet', () => {
  it('has the outline of the boat, every zone, its usual items with a tick box, and blank lines', async () => {
    render(<SurveyPlace />);
    await userEvent.click(screen.getByRole('button', { name: 'Show the sheet' }));
    const sheet = document.querySelector('.survey-sheet') as HTMLElement;
    expect(
      within(sheet).getByRole('img', { name: /from the side, bow to the left, and from above/ }),
    ).toBeTruthy();
    const captions = [...sheet.querySelectorAll('caption')].map(({ textContent }) => textContent);
    expect(captions).toEqual(project().zones.map(({ name }) => name));
    const lines = [...sheet.querySelectorAll('tbody tr')];
    expect(lines.every((line) => line.querySelector('.sheet-tick') !== null)).toBe(true);
    expect(within(sheet).getByText('Stanchions')).toBeTruthy();
  });

  it('is printed on the paper that was chosen', async () => {
    const print = vi.fn();
    vi.stubGlobal('print', print);
    render(<SurveyPlace />);
    expect(document.querySelector('.survey-a4')).toBeTruthy();
    await userEvent.click(screen.getByRole('radio', { name: 'Letter' }));
    expect(document.querySelector('.survey-letter')).toBeTruthy();
    await userEvent.click(screen.getByRole('button', { name: 'Print the sheet' }));
    expect(print).toHaveBeenCalledTimes(1);
    vi.unstubAllGlobals();
  });
});
