import type { Project } from '../../project/file/schema';
import type { TypedChange, TypedTexts } from './typedRecords';
import type { Broken, Draft, Failed, Header, Reading, StoredProject } from './records';

/** What another tab has saved since; null when it removed the project. */
export type Theirs = Pick<Header, 'savedAt' | 'revision'> | null;

export type ShelfSaveResult =
  | { readonly kind: 'saved'; readonly header: Header }
  | { readonly kind: 'conflict'; readonly theirs: Theirs }
  | Failed;

export type ShelfLoadResult =
  | { readonly kind: 'opened'; readonly stored: StoredProject }
  | { readonly kind: 'missing' }
  | { readonly kind: 'broken'; readonly broken: Broken }
  | Failed;

export type ShelfListing =
  | { readonly kind: 'listed'; readonly projects: readonly Header[]; readonly broken: readonly Broken[] }
  | Failed;

/** What the page opens on. */
export interface ShelfStart {
  /** Null: nothing is stored, nothing opens, or the demo was open last. */
  readonly stored: StoredProject | null;
  /** Copies made of what another page left unsaved while its project went on elsewhere. */
  readonly recovered: readonly Header[];
  /** Records that did not open. */
  readonly broken: readonly Broken[];
}

export interface Done {
  readonly kind: 'done';
}

/** The projects of this browser. No method rejects. */
export interface Shelf {
  readonly isKept: boolean;
  /** Recovers what was left unsaved and opens the project that was open last. */
  openLast(): Promise<ShelfStart>;
  /**
   * Recovers what other pages have left unsaved since the start, and answers with where it stands: in its project, or in a
   * copy where that project is the one that this page has changed. Nothing where the browser does not tell which are open.
   */
  recoverLate(changedId: string | null): Promise<readonly Header[]>;
  /** Runs each time when one of the tabs that are open now has gone. */
  whenOthersGo(run: () => void): Promise<void>;
  /** Names and dates, newest first; loads no text except of what was set aside. */
  list(): Promise<ShelfListing>;
  load(id: string): Promise<ShelfLoadResult>;
  /** Saves over the revision that the draft was made from, and over no other. */
  save(draft: Draft, typed: readonly TypedChange[]): Promise<ShelfSaveResult>;
  saveReading(id: string, reading: Reading, typed: readonly TypedChange[]): Promise<Done | Failed>;
  /** Writes what is not a value yet without looking, for a page that is being closed. */
  keepTyped(id: string, typed: readonly TypedChange[]): Promise<Done | Failed>;
  /** Adds a copy whose name ends with the addition in brackets. */
  addCopy(
    project: Project,
    reading: Reading | null,
    typed: TypedTexts,
    addition: string,
  ): Promise<ShelfLoadResult>;
  duplicate(id: string): Promise<ShelfLoadResult>;
  remove(id: string): Promise<Done | Failed>;
  removeBroken(key: string): Promise<Done | Failed>;
  /** Which project the page opens next time; null for the demo. */
  rememberOpen(id: string | null): Promise<Done | Failed>;
  /** Writes what is unsaved without looking, for a page that is being closed. */
  keepDraft(draft: Draft): Promise<Done | Failed>;
  dropDraft(id: string): Promise<Done | Failed>;
  /** Keeps what could not be written in this page, so that it is still there after opening another project. */
  hold(draft: Draft): void;
  /** The same for what is not a value yet. */
  holdTyped(id: string, typed: TypedTexts): void;
  /** A header for a project that is not stored yet. */
  newHeader(name: string): Header;
  /** The same header, saved now by this tab. */
  stamped(header: Header, name: string): Header;
  onSavedElsewhere(listener: (header: Header) => void): void;
}
