import { cleanup, fireEvent, render, screen } from '@testing-library/react';
import { afterEach, describe, expect, it } from 'vitest';
import { halfTyped } from '../../setup/halfTyped';
import type { ProjectFitting } from '../../../src/project/file/schema';
import { useAppStore } from '../../../src/state/appStore';
import { RowInPlace } from '../../../src/views/ledger/RowInPlace';
import { RowEditor } from '../../../src/views/rowEditor/RowEditor';
import { demo, openInStore } from './openProjects';

afterEach(cleanup);

function fitting(id: string): ProjectFitting {
  const found = useAppStore.getState().project?.fittings.find((each) => each.id === id);
  if (found === undefined) throw new Error(`no ${id}`);
  return found;
}

function diameter(): HTMLInputElement {
  return screen.getByRole('textbox', { name: 'Diameter' });
}

function editInPlace(id: string): () => void {
  return render(<RowInPlace fitting={fitting(id)} onClose={() => undefined} />).unmount;
}

describe('half-typed text in the row itself', () => {
  it('is there again when the row is edited in place once more, and in no other row', () => {
    openInStore(demo());
    const close = editInPlace('boom');
    fireEvent.change(diameter(), { target: { value: '12 qu' } });
    close();
    const closeOther = editInPlace('spreaders');
    expect(diameter().value).not.toBe('12 qu');
    closeOther();
    editInPlace('boom');
    expect(diameter().value).toBe('12 qu');
    expect(diameter().getAttribute('aria-invalid')).toBe('true');
  });

  it('is the text of the same field in the editor, whose head says that it waits', () => {
    openInStore(demo());
    const close = editInPlace('boom');
    fireEvent.change(diameter(), { target: { value: '12 qu' } });
    close();
    useAppStore.getState().select('boom');
    render(<RowEditor />);
    expect(diameter().value).toBe('12 qu');
    expect(screen.getByText(halfTyped('Diameter'))).toBeTruthy();
  });

  it('stays when the value underneath is taken back, and the error names the value in force', () => {
    openInStore(demo());
    const close = editInPlace('boom');
    const before = diameter().value;
    fireEvent.change(diameter(), { target: { value: '133' } });
    fireEvent.change(diameter(), { target: { value: '133 qu' } });
    close();
    useAppStore.getState().undo();
    editInPlace('boom');
    expect(diameter().value).toBe('133 qu');
    expect(screen.getByText(new RegExp(`; ${before} stays in force`))).toBeTruthy();
  });
});
