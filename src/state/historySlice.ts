import { refusal, type EditAnswer } from '../project/edit/answer';
import { neighbourId } from '../project/edit/lists';
import type { Project } from '../project/file/schema';
import type { SliceCreator } from './appState';
import { redoLabelOf, timesOf, undoLabelOf } from './historyView';

/** The edit that led to the project as it is. */
export interface Step {
  /** What was done, such as "Change the diameter of Bow rail"; '' for a project just opened. */
  readonly label: string;
  /** True when it goes on with the edit before: the two are one step on the way back. */
  readonly continues: boolean;
  /** The plan that was chosen before it. */
  readonly planIdBefore: string | null;
}

export const noStep: Step = { label: '', continues: false, planIdBefore: null };

/** One use of undo or redo; each makes another of these. */
export interface Turn {
  readonly kind: 'undo' | 'redo';
  /** The step that was taken back or done again; null where there was none. */
  readonly label: string | null;
}

/** Edits of one group that follow each other faster than this, ms, are one step. */
export const groupPauseMs = 1000;

export interface EditOptions {
  /** Names what is being typed in or dragged, such as "f3.shape.diameter.m"; without one an edit is a step of its own. */
  readonly group?: string;
  /** A hand holds what is edited: the group goes on however long it rests, until `endGroup`. */
  readonly isHeld?: boolean;
}

export interface HistorySlice {
  readonly step: Step;
  /** The last undo or redo; null before the first. */
  readonly turn: Turn | null;
  /**
   * Runs an edit on the open project. A refusal changes nothing and is handed back for the field to show, as are the
   * edit's message and new ids.
   */
  edit(label: string, change: (project: Project) => EditAnswer, options?: EditOptions): EditAnswer;
  /** Closes the running group, as when a field loses the focus or a drag ends: what follows is a new step. */
  endGroup(): void;
  undo(): void;
  redo(): void;
}

interface OpenGroup {
  readonly name: string;
  readonly lastEditMs: number;
}

export const historySlice: SliceCreator<HistorySlice> = (set, get, store) => {
  let openGroup: OpenGroup | null = null;

  function goesOn(group: string | undefined, isHeld: boolean, nowMs: number): boolean {
    if (openGroup === null || openGroup.name !== group) return false;
    return isHeld || nowMs - openGroup.lastEditMs <= groupPauseMs;
  }

  return {
    step: noStep,
    turn: null,

    edit: (label, change, { group, isHeld = false } = {}) => {
      const { project: before, question } = get();
      if (before === null) return refusal('', 'no project is open');
      const answer = change(before);
      if ('refused' in answer || answer.project === before) return answer;
      const nowMs = performance.now();
      const continues = goesOn(group, isHeld, nowMs);
      openGroup = group === undefined ? null : { name: group, lastEditMs: nowMs };
      set({ project: answer.project, step: { label, continues, planIdBefore: question.planId } });
      return answer;
    },
    endGroup: () => {
      openGroup = null;
    },
    undo: () => {
      openGroup = null;
      const { project, step, question } = get();
      const label = undoLabelOf(get(), timesOf(store));
      timesOf(store).undo();
      const { project: after } = get();
      const isMoved = !isOneOf(after, question.planId) || planBack(project, after) !== null;
      if (isMoved && isOneOf(after, step.planIdBefore)) get().choosePlan(step.planIdBefore);
      set({ turn: { kind: 'undo', label } });
    },
    redo: () => {
      openGroup = null;
      const { project, question } = get();
      const label = redoLabelOf(timesOf(store));
      timesOf(store).redo();
      const { project: after } = get();
      const made = planBack(project, after);
      if (made !== null) get().choosePlan(made);
      else if (!isOneOf(after, question.planId)) get().choosePlan(planBeside(project, question.planId));
      set({ turn: { kind: 'redo', label } });
    },
  };
};

function planIdsOf(project: Project | null): readonly string[] {
  return (project?.plans ?? []).map(({ id }) => id);
}

/** Whether a plan may be chosen in the project; null, the boat as sailed, always may. */
function isOneOf(project: Project | null, planId: string | null): boolean {
  return planId === null || planIdsOf(project).includes(planId);
}

/** The plan that takes the place of one that goes; null, the boat as sailed, where it is the only one. */
function planBeside(project: Project | null, planId: string | null): string | null {
  return planId === null ? null : neighbourId(project?.plans ?? [], planId);
}

/** The plan that came, or came back, in between; null for none. */
function planBack(before: Project | null, after: Project | null): string | null {
  return planIdsOf(after).find((id) => !isOneOf(before, id)) ?? null;
}
