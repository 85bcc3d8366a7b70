import { act, cleanup, render, screen } from '@testing-library/react';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { Announcer } from '../../../src/app/Announcer';
import { useSaid } from '../../../src/app/announce';
import { patchProject } from '../../../src/project/edit/projectEdits';
import { useAppStore } from '../../../src/state/appStore';
import { everyKind } from '../ledger/openProjects';

const app = useAppStore.getState;

function said(): string {
  return screen.getByRole('status', { name: 'What was done' }).textContent;
}

function rename(name: string): void {
  app().edit(`Name it ${name}`, (project) => patchProject(project, { name }));
}

function undo(): void {
  act(() => {
    app().undo();
  });
}

function redo(): void {
  act(() => {
    app().redo();
  });
}

beforeEach(() => {
  useAppStore.setState(useAppStore.getInitialState(), true);
  useSaid.setState(useSaid.getInitialState(), true);
  app().openText('hull.json', JSON.stringify(everyKind()));
  render(<Announcer />);
});
afterEach(cleanup);

describe('undo and redo are told', () => {
  it('with the label of their step, and an edit is not', () => {
    act(() => {
      rename('one');
      rename('two');
    });
    expect(said()).toBe('');
    undo();
    expect(said()).toBe('Undone: Name it two');
    undo();
    expect(said()).toBe('Undone: Name it one');
    redo();
    expect(said()).toBe('Redone: Name it one');
  });

  it('where there is nothing to go to', () => {
    undo();
    expect(said()).toBe('Nothing to undo.');
    redo();
    expect(said()).toBe('Nothing to redo.');
  });

  it('anew when the same words come twice', () => {
    act(() => {
      rename('same');
    });
    undo();
    const [first] = screen.getByRole('status').children;
    redo();
    undo();
    expect(said()).toBe('Undone: Name it same');
    expect(screen.getByRole('status').children[0]).not.toBe(first);
  });

  it('and telling leaves what can be undone and redone as it is', () => {
    act(() => {
      rename('one');
    });
    undo();
    redo();
    undo();
    expect(useAppStore.temporal.getState().pastStates).toHaveLength(0);
    expect(useAppStore.temporal.getState().futureStates).toHaveLength(1);
  });
});
