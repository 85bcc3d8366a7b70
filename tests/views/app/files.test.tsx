import { readFileSync } from 'node:fs';
import { cleanup, render, screen, waitFor, within } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { App } from '../../../src/app/App';
import { ErrorBoundary } from '../../../src/app/ErrorBoundary';
import { openFile } from '../../../src/app/openFile';
import { mostBytes } from '../../../src/project/file/guard';
import { useAppStore } from '../../../src/state/appStore';
import { everyKind } from '../ledger/openProjects';

const olderText = readFileSync('tests/data/projects/every-kind-1.json', 'utf8');

// The DOM of the view tests has no modal dialogs.
HTMLDialogElement.prototype.showModal = function () {
  this.open = true;
};
HTMLDialogElement.prototype.close = function () {
  this.open = false;
};

beforeEach(() => {
  window.history.replaceState(null, '', '/');
  useAppStore.setState(useAppStore.getInitialState(), true);
});

// The whole page under a loaded machine takes longer than the runner's five seconds.
vi.setConfig({ testTimeout: 20_000 });

afterEach(cleanup);

async function openPage(): Promise<void> {
  render(<App />);
  await screen.findByRole('heading', { name: 'Quillamoor' }, { timeout: 10_000 });
}

async function choose(file: File): Promise<void> {
  await userEvent.upload(screen.getByLabelText('Open a file'), file);
}

describe('opening', () => {
  it('opens on the demo, with the boat in the title', async () => {
    await openPage();
    expect(document.title).toBe('Quillamoor – drag ledger – Windtoll');
    expect(screen.getAllByRole('heading', { level: 1 })).toHaveLength(1);
  });

  it('opens a file from disk, and the demo again', async () => {
    await openPage();
    await choose(new File([JSON.stringify(everyKind())], 'hull.json', { type: 'application/json' }));
    await screen.findByRole('heading', { name: 'Test hull' });
    expect(screen.getByTitle(everyKind().name)).toBeTruthy();
    await userEvent.click(screen.getByRole('button', { name: 'Projects' }));
    await userEvent.click(await screen.findByRole('button', { name: 'Open the demo' }));
    await screen.findByRole('heading', { name: 'Quillamoor' });
    expect(screen.getByText('the demo, an invented boat')).toBeTruthy();
  });

  it('says of a file of an older version of the format that it is one, until another is opened', async () => {
    await openPage();
    await choose(new File([olderText], 'hull of last year.json', { type: 'application/json' }));
    await screen.findByRole('heading', { name: 'Test hull' });
    const said = await screen.findByText(/opened\. It was written in version 1 of the file format/);
    expect(said.textContent).toContain('“hull of last year.json”');
    expect(said.textContent).toContain('brought to version 2');
    await choose(new File([JSON.stringify(everyKind())], 'hull.json', { type: 'application/json' }));
    await waitFor(() => {
      expect(screen.queryByText(/of the file format/)).toBeNull();
    });
  });

  it('says each error of a bad file with its path, and keeps what was open', async () => {
    await openPage();
    const bad = { ...everyKind(), name: 3, currency: null };
    await choose(new File([JSON.stringify(bad)], 'bad.json', { type: 'application/json' }));
    const alert = await screen.findByText(/did not open: 2 errors/);
    expect(alert.textContent).toContain('bad.json');
    const list = within(screen.getByRole('alert')).getAllByRole('listitem');
    expect(list.map(({ textContent }) => textContent.split(':')[0]).sort()).toEqual(['currency', 'name']);
    expect(screen.getByRole('heading', { name: 'Quillamoor' })).toBeTruthy();
    await userEvent.click(screen.getByRole('button', { name: 'Dismiss' }));
    expect(screen.queryByText(/did not open/)).toBeNull();
  });

  it('refuses a file over the limit without reading it', async () => {
    await openPage();
    const file = new File(['{}'], 'huge.json', { type: 'application/json' });
    Object.defineProperty(file, 'size', { value: mostBytes + 1 });
    const read = vi.spyOn(file, 'arrayBuffer');
    await choose(file);
    await waitFor(() => {
      expect(screen.getByText(/the file is larger than 8 MB/)).toBeTruthy();
    });
    expect(read).not.toHaveBeenCalled();
  });

  it('says which encoding a file must have, and takes a byte order mark', async () => {
    await openPage();
    const text = JSON.stringify({ ...everyKind(), name: 'Bläser' }, null, 2);
    await choose(new File([Uint8Array.from(text, (each) => each.charCodeAt(0))], 'latin1.json'));
    expect(
      await screen.findByText(/not UTF-8 text: line \d+ holds .* such as Latin-1; save it again/),
    ).toBeTruthy();
    const wide = Uint8Array.from(Array.from(text, (each) => [each.charCodeAt(0), 0]).flat());
    await choose(new File([wide], 'utf16.json'));
    expect(await screen.findByText(/the file is UTF-16 text, not UTF-8/)).toBeTruthy();
    expect(screen.getByRole('heading', { name: 'Quillamoor' })).toBeTruthy();
    await choose(new File(['\uFEFF', text], 'marked.json'));
    expect(await screen.findByTitle('Bläser')).toBeTruthy();
  });

  it('isolates the direction of a file name from the words around it', async () => {
    await openPage();
    await choose(new File(['['], '\u202Enosj.json'));
    expect((await screen.findByText('\u202Enosj.json')).tagName).toBe('BDI');
  });

  it('says that a file cannot be read, and leaves errors of its own to be seen', async () => {
    const file = new File(['{}'], 'gone.json');
    vi.spyOn(file, 'arrayBuffer').mockRejectedValue(new DOMException('gone', 'NotFoundError'));
    await openFile(file);
    expect(useAppStore.getState().openFailure?.errors[0]?.message).toMatch(/could not read the file/);
    const own = new Error('an error of our own');
    useAppStore.setState({
      openText: () => {
        throw own;
      },
    });
    await expect(openFile(new File(['{}'], 'good.json'))).rejects.toBe(own);
  });

  it('shows a hostile file name as text', async () => {
    await openPage();
    await choose(new File(['['], '<script>alert(1)<slash script>.json', { type: 'application/json' }));
    expect(await screen.findByText('<script>alert(1)<slash script>.json')).toBeTruthy();
    expect(document.querySelector('script')).toBeNull();
  });
});

describe('a crash', () => {
  it('ends in a sentence and a way on', () => {
    const quiet = vi.spyOn(console, 'error').mockImplementation(() => undefined);
    const Broken = (): never => {
      throw new Error('a broken part');
    };
    render(
      <ErrorBoundary>
        <Broken />
      </ErrorBoundary>,
    );
    expect(screen.getByRole('heading', { name: /stopped drawing/ })).toBeTruthy();
    expect(screen.getByText(/a broken part/)).toBeTruthy();
    expect(screen.getByRole('button', { name: 'Reload the page' })).toBeTruthy();
    quiet.mockRestore();
  });
});
