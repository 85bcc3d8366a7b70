import { openProject } from '../project/file/openProject';
import type { Project } from '../project/file/schema';
import type { FieldError } from '../project/file/wording';
import type { SliceCreator } from './appState';
import { firstReading } from './firstReading';
import { noStep } from './historySlice';
import { timesOf } from './historyView';

/** Why a file did not open: one line per wrong field. The project that was open stays. */
export interface OpenFailure {
  readonly fileName: string;
  readonly errors: readonly FieldError[];
}

export interface ProjectSlice {
  /** Null until the demo or a file has opened. */
  readonly project: Project | null;
  readonly fileName: string;
  readonly openFailure: OpenFailure | null;
  /**
   * Opens a project file and begins a new history; on failure the open project stays and the errors are kept for the
   * page.
   */
  openText(fileName: string, text: string): void;
  /** A file that was not even read: too large, unreadable, more than one. */
  refuseFile(fileName: string, message: string): void;
  dismissFailure(): void;
}

export const projectSlice: SliceCreator<ProjectSlice> = (set, get, store) => ({
  project: null,
  fileName: '',
  openFailure: null,

  openText: (fileName, text) => {
    const opened = openProject(text);
    if (!opened.ok) {
      set({ openFailure: { fileName, errors: opened.errors } });
      return;
    }
    const { project } = opened;
    set({ ...firstReading(project), project, fileName, openFailure: null, step: noStep });
    timesOf(store).clear();
    get().endGroup();
  },
  refuseFile: (fileName, message) => {
    set({ openFailure: { fileName, errors: [{ path: '', message }] } });
  },
  dismissFailure: () => {
    set({ openFailure: null });
  },
});
