import { cleanup, fireEvent, render, screen } from '@testing-library/react';
import { afterEach, describe, expect, it } from 'vitest';
import { NewProjectDialog } from '../../../src/app/dialogs/NewProjectDialog';
import { useAppStore } from '../../../src/state/appStore';

// The DOM of the view tests has no modal dialogs.
HTMLDialogElement.prototype.showModal = function () {
  this.open = true;
};
HTMLDialogElement.prototype.close = function () {
  this.open = false;
};

afterEach(cleanup);

function field(name: string): HTMLInputElement {
  return screen.getByRole('textbox', { name });
}

function put(name: string, text: string): void {
  fireEvent.change(field(name), { target: { value: text } });
}

describe('the dialog for a new project', () => {
  it('begins in its first field, whose text is selected to be typed over', () => {
    render(<NewProjectDialog />);
    const name = field('Name');
    expect(document.activeElement).toBe(name);
    expect([name.selectionStart, name.selectionEnd]).toEqual([0, name.value.length]);
  });

  it('has what was typed, and half-typed, when it is opened again, until the project is made', () => {
    const { unmount } = render(<NewProjectDialog />);
    put('Name', 'Marlow trial');
    put('Length of the hull', '11,4');
    put('Largest beam', '3600 q');
    unmount();
    const again = render(<NewProjectDialog />);
    expect(field('Name').value).toBe('Marlow trial');
    expect(field('Length of the hull').value).toBe('11.4 m');
    expect(field('Largest beam').value).toBe('3600 q');
    fireEvent.click(screen.getByRole('button', { name: 'Make the project' }));
    expect(document.activeElement).toBe(field('Largest beam'));
    put('Largest beam', '3600 mm');
    fireEvent.click(screen.getByRole('button', { name: 'Make the project' }));
    expect(useAppStore.getState().project?.boat).toMatchObject({ name: 'Marlow trial', beamM: 3.6 });
    again.unmount();
    render(<NewProjectDialog />);
    expect(field('Name').value).toBe('My boat');
    expect(field('Largest beam').value).not.toContain('3600');
  });
});
