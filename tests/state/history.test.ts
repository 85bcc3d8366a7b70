import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { deleteFittings } from '../../src/project/edit/deleteFittings';
import { addFitting, patchFitting } from '../../src/project/edit/fittingEdits';
import { deleteCondition } from '../../src/project/edit/conditionEdits';
import { addPlan, deletePlan } from '../../src/project/edit/planEdits';
import { deleteProfile } from '../../src/project/edit/profileEdits';
import { patchProject } from '../../src/project/edit/projectEdits';
import { saveProject } from '../../src/project/file/saveProject';
import type { Project } from '../../src/project/file/schema';
import { currentHistory, mostSteps, useAppStore } from '../../src/state/appStore';
import { groupPauseMs } from '../../src/state/historySlice';
import { anyEdit, opened, run } from '../project/edit/anyEdit';
import { boat } from '../project/edit/support';
import { pole } from '../project/refit/support';

const app = useAppStore.getState;

function textOf(project: Project | null): string {
  const saved = project === null ? null : saveProject(project);
  if (saved?.ok !== true) throw new Error('does not save');
  return saved.text;
}

function open(project: Project): void {
  app().openText('test.json', textOf(project));
}

function openNow(): Project {
  const { project } = app();
  if (project === null) throw new Error('nothing is open');
  return project;
}

function rename(name: string, group?: string): void {
  app().edit(
    `Name ${name}`,
    (project) => patchProject(project, { name }),
    group === undefined ? {} : { group },
  );
}

beforeEach(() => {
  vi.useFakeTimers({ toFake: ['performance'] });
  open(boat());
});
afterEach(() => {
  vi.useRealTimers();
});

/** Time for a machine with other work, ms. */
const patience = 60_000;

describe('the history', { timeout: patience }, () => {
  it('takes any sequence of edits back to the first project and forward to the last, value and bytes', () => {
    fc.assert(
      fc.property(
        opened,
        fc.array(fc.tuple(anyEdit, fc.constantFrom(undefined, 'typing', 'dragging'), fc.nat(1500)), {
          minLength: 1,
          maxLength: 15,
        }),
        (first, sequence) => {
          open(first);
          for (const [edit, group, pauseMs] of sequence) {
            vi.advanceTimersByTime(pauseMs);
            app().edit(edit.name, (project) => run(project, edit), group === undefined ? {} : { group });
          }
          const last = openNow();
          while (currentHistory().canUndo) app().undo();
          expect(openNow()).toEqual(first);
          expect(textOf(openNow())).toBe(textOf(first));
          while (currentHistory().canRedo) app().redo();
          expect(openNow()).toBe(last);
          expect(textOf(openNow())).toBe(textOf(last));
        },
      ),
      { numRuns: 150 },
    );
  });

  it('goes back and forward step by step, with the words of each step', () => {
    expect(currentHistory()).toEqual({ canUndo: false, canRedo: false, undoLabel: null, redoLabel: null });
    rename('A');
    rename('B');
    expect(currentHistory()).toMatchObject({ canUndo: true, undoLabel: 'Name B', redoLabel: null });
    app().undo();
    expect(openNow().name).toBe('A');
    expect(currentHistory()).toMatchObject({ undoLabel: 'Name A', redoLabel: 'Name B' });
    app().undo();
    expect(currentHistory()).toMatchObject({ canUndo: false, redoLabel: 'Name A' });
    app().redo();
    expect(openNow().name).toBe('A');
    expect(currentHistory()).toMatchObject({ undoLabel: 'Name A', redoLabel: 'Name B' });
  });

  it('forgets what was undone once something else is done', () => {
    rename('A');
    app().undo();
    rename('B');
    expect(currentHistory()).toMatchObject({ canRedo: false, undoLabel: 'Name B' });
  });

  it('takes the typing of one field as one step', () => {
    const before = openNow().name;
    for (const name of ['B', 'Bo', 'Bow']) rename(name, 'name');
    app().undo();
    expect(openNow().name).toBe(before);
    app().redo();
    expect(openNow().name).toBe('Bow');
  });

  it('parts the steps where the typing paused, the field changed, or the field was left', () => {
    rename('A', 'name');
    vi.advanceTimersByTime(groupPauseMs + 1);
    rename('B', 'name');
    rename('C', 'other field');
    app().endGroup();
    rename('D', 'other field');
    const names = [openNow().name];
    while (currentHistory().canUndo) {
      app().undo();
      names.push(openNow().name);
    }
    expect(names).toEqual(['D', 'C', 'B', 'A', 'New project']);
  });

  it('begins a new step after undo, though the field is the same, and forgets what was undone', () => {
    rename('A');
    rename('B', 'name');
    app().undo();
    rename('C', 'name');
    expect(currentHistory().canRedo).toBe(false);
    app().undo();
    expect(openNow().name).toBe('A');
    app().redo();
    rename('D', 'name');
    app().undo();
    expect(openNow().name).toBe('C');
  });

  it('makes no step of a refusal or of a change to the same', () => {
    const before = openNow();
    expect(app().edit('Blank the name', (project) => patchProject(project, { name: '' }))).toEqual({
      refused: { path: 'name', message: 'must not be empty' },
    });
    app().edit('Same name', (project) => patchProject(project, { name: project.name }));
    expect(openNow()).toBe(before);
    expect(currentHistory().canUndo).toBe(false);
  });

  it('makes no step of a question, a selection or what is shown', () => {
    app().choosePlan(null);
    app().select('box');
    app().show('after');
    expect(currentHistory().canUndo).toBe(false);
  });

  it('ends with another project', () => {
    rename('A');
    app().undo();
    open(boat());
    expect(currentHistory()).toMatchObject({ canUndo: false, canRedo: false });
    app().undo();
    expect(openNow()).toEqual(boat());
  });

  it('survives a file that does not open', () => {
    rename('A');
    app().openText('bad.json', '{');
    expect(app().openFailure?.fileName).toBe('bad.json');
    app().undo();
    expect(openNow().name).toBe('New project');
  });

  it(`keeps the last ${mostSteps} steps`, () => {
    for (let i = 0; i <= mostSteps; i += 1) rename(`Name ${i}`);
    for (let i = 0; i <= mostSteps; i += 1) app().undo();
    expect(openNow().name).toBe('Name 0');
  });

  it('hands over the message and the new ids of an edit', () => {
    const added = app().edit('Add a pole', (project) => addFitting(project, pole));
    expect(added).toHaveProperty('newIds.length', 1);
    const gone = app().edit('Delete the box', (project) => deleteFittings(project, ['box']));
    expect(gone).toHaveProperty('message', expect.stringContaining('1 refit item about what was deleted'));
  });
});

describe('the chosen plan', { timeout: patience }, () => {
  const chosen = (): string | null => app().question.planId;

  /** Makes a plan and chooses it, as the pane does. */
  function makePlan(): string {
    const answer = app().edit('Make a plan', (project) => addPlan(project));
    const id = 'refused' in answer ? undefined : answer.newIds?.[0];
    if (id === undefined) throw new Error('no plan');
    app().choosePlan(id);
    return id;
  }

  it('is the one made, again after redo, and the one before it after undo', () => {
    app().choosePlan(null);
    const first = makePlan();
    const second = makePlan();
    app().undo();
    expect(chosen()).toBe(first);
    app().redo();
    expect(chosen()).toBe(second);
    app().undo();
    app().undo();
    expect(chosen()).toBeNull();
    app().redo();
    expect(chosen()).toBe(first);
  });

  it('comes back with a plan that was deleted', () => {
    const id = makePlan();
    app().edit('Delete it', (project) => deletePlan(project, id));
    expect(chosen()).toBeNull();
    app().undo();
    expect(chosen()).toBe(id);
  });

  it('is the one beside it when a plan is deleted once more by redo, as at the first time', () => {
    const first = makePlan();
    const second = makePlan();
    for (const id of [second, first]) app().edit('Delete it', (project) => deletePlan(project, id));
    app().undo();
    app().undo();
    expect(chosen()).toBe(second);
    app().redo();
    expect(chosen()).toBe(first);
    app().redo();
    expect(chosen()).toBe('plan');
    app().undo();
    app().choosePlan(null);
    app().redo();
    expect(chosen()).toBeNull();
  });

  it('stays where the reader has gone since, when another comes or goes', () => {
    const first = makePlan();
    makePlan();
    app().choosePlan(first);
    app().undo();
    expect(chosen()).toBe(first);
    rename('Else');
    app().choosePlan(null);
    app().undo();
    expect(chosen()).toBeNull();
  });
});

describe('question and selection', { timeout: patience }, () => {
  it('never name what is not there, at any moment that anyone can see', () => {
    const lost: string[] = [];
    const stop = useAppStore.subscribe(({ project, question, selectedFittingId, selectedIds }) => {
      const has = (list: readonly { readonly id: string }[] | undefined, id: string) =>
        list?.some((each) => each.id === id) === true;
      const { basis, planId, againstPlanId } = question;
      if (basis.kind === 'condition' && !has(project?.conditions, basis.conditionId)) lost.push('condition');
      if (basis.kind === 'profile' && project?.profile === null) lost.push('profile');
      for (const id of [planId, againstPlanId])
        if (id !== null && !has(project?.plans, id)) lost.push('plan');
      if (selectedFittingId !== null && !has(project?.fittings, selectedFittingId)) lost.push('row');
      for (const id of selectedIds) if (!has(project?.fittings, id)) lost.push('picked row');
    });
    fc.assert(
      fc.property(
        opened,
        fc.array(fc.tuple(anyEdit, fc.nat(3), fc.nat(9)), { maxLength: 15 }),
        (first, sequence) => {
          open(first);
          for (const [edit, move, pick] of sequence) {
            const { fittings, plans, conditions } = openNow();
            app().choosePlan(plans[pick % Math.max(plans.length, 1)]?.id ?? null);
            const conditionId = conditions[pick % conditions.length]?.id ?? '';
            app().chooseBasis({ kind: 'condition', conditionId });
            const row = fittings[pick % Math.max(fittings.length, 1)];
            if (row !== undefined) app().toggleSelected(row.id);
            if (move === 0) app().undo();
            else if (move === 1) app().redo();
            else app().edit(edit.name, (project) => run(project, edit));
          }
        },
      ),
      { numRuns: 100 },
    );
    stop();
    expect(lost).toEqual([]);
  });

  it('fall to the first condition, the boat as sailed, and the row that took the place', () => {
    app().chooseBasis({ kind: 'condition', conditionId: 'beat' });
    app().select('box');
    app().edit('Delete the beat', (project) => deleteCondition(project, 'beat'));
    expect(app().question.basis).toEqual({ kind: 'condition', conditionId: 'reach' });
    app().edit('Delete the plan', (project) => deletePlan(project, 'plan'));
    expect(app().question.planId).toBeNull();
    app().edit('Delete the box', (project) => deleteFittings(project, ['box']));
    expect(app().selectedFittingId).toBe('stanchion');
    app().chooseBasis({ kind: 'profile' });
    app().edit('Delete the course', deleteProfile);
    expect(app().question.basis).toEqual({ kind: 'condition', conditionId: 'reach' });
  });

  it('stay the very same when nothing they name has gone', () => {
    const { question, selectedIds } = app();
    app().edit('Weigh the box', (project) => patchFitting(project, 'box', { massKg: 3 }));
    app().undo();
    expect(app().question).toBe(question);
    expect(app().selectedIds).toBe(selectedIds);
  });
});
