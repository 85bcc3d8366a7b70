import { openProject } from '../project/file/openProject';
import type { Project } from '../project/file/schema';
import type { FieldError } from '../project/file/fieldErrors';
import type { SliceCreator } from './appState';
import { firstReading } from './firstReading';
import { noStep } from './historySlice';
import { timesOf } from './historyView';
import type { Reading, StoredProject } from './storage/records';
import type { Origin } from './storage/session';

/** Why a file did not open: one line per wrong field. The project that was open stays. */
export interface OpenFailure {
  readonly fileName: string;
  readonly errors: readonly FieldError[];
}

/** One opening of a project: whatever is opened, and be it the same again, makes another of these. */
export interface Opening {
  readonly origin: Origin;
  /** The project as it came. */
  readonly project: Project;
  /** The version of the format that its file was written in; null for the newest, and for what is no file. */
  readonly upgradedFrom: number | null;
}

export interface ProjectSlice {
  /** Null until the demo or a file has opened. */
  readonly project: Project | null;
  readonly opening: Opening | null;
  readonly openFailure: OpenFailure | null;
  /**
   * Opens a project file and begins a new history; on failure the open project stays and the errors are kept for the
   * page.
   */
  openText(fileName: string, text: string, origin?: 'file' | 'demo'): void;
  /** Opens a project of the shelf where it was left. */
  openStored(stored: StoredProject): void;
  /** Opens a project that was just made. */
  openNew(project: Project): void;
  /** A file that was not even read: too large, unreadable, more than one. */
  refuseFile(fileName: string, message: string): void;
  dismissFailure(): void;
}

/** What else is known of a project that opens. */
interface Came {
  readonly reading?: Reading | null;
  readonly upgradedFrom?: number | null;
}

export const projectSlice: SliceCreator<ProjectSlice> = (set, get, store) => {
  function open(project: Project, origin: Origin, { reading = null, upgradedFrom = null }: Came = {}): void {
    const first = firstReading(project);
    const left = reading === null ? {} : { ...reading, anchorId: reading.selectedFittingId };
    const opening: Opening = { origin, project, upgradedFrom };
    set({ ...first, ...left, project, opening, openFailure: null, step: noStep });
    timesOf(store).clear();
    get().endGroup();
  }

  return {
    project: null,
    opening: null,
    openFailure: null,

    openText: (fileName, text, origin = 'file') => {
      const opened = openProject(text);
      if (opened.ok) open(opened.project, origin, { upgradedFrom: opened.upgradedFrom });
      else set({ openFailure: { fileName, errors: opened.errors } });
    },
    openStored: (stored) => {
      open(stored.project, stored, { reading: stored.reading });
    },
    openNew: (project) => {
      open(project, 'file');
    },
    refuseFile: (fileName, message) => {
      set({ openFailure: { fileName, errors: [{ path: '', message }] } });
    },
    dismissFailure: () => {
      set({ openFailure: null });
    },
  };
};
