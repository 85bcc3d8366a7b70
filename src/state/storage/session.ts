import { saveProject } from '../../project/file/saveProject';
import type { Project } from '../../project/file/schema';
import { timeText, type Clock } from './clock';
import type { Draft, Failed, Header, Reading, StoredProject } from './records';
import type { SaveStatus } from './saveStatus';
import type { Shelf, ShelfLoadResult, ShelfSaveResult } from './shelfTypes';
import { noTyped, typedChanges, type TypedChange, type TypedTexts } from './typedRecords';

/** What is on the screen: the project, where the user is in it, and what is typed and not in it yet. */
export interface Work {
  readonly project: Project;
  readonly reading: Reading;
  readonly typed: TypedTexts;
}

/**
 * Where the opened project comes from: the shelf; a file, which goes onto the shelf at once; or the demo, which goes
 * there at its first change.
 */
export type Origin = StoredProject | 'file' | 'demo';

export interface SessionParts {
  readonly shelf: Shelf;
  readonly clock: Clock;
  /** Quiet time before a write. */
  readonly delayMs: number;
  /** Longest time that steady typing may put a write off. */
  readonly longestDelayMs: number;
  /**
   * Longest time that a change is in this page alone. A draft is a tenth of the work of a write, so that it may come more
   * often while somebody types.
   */
  readonly draftDelayMs: number;
  readonly onStatus: (status: SaveStatus) => void;
}

/** So long, ms, a write waits for a page that is always busy; what is unsaved meanwhile is kept as a draft. */
const longestIdleWaitMs = 500;

/** One project from its opening until another is opened. */
export class Session {
  private header: Header;
  private latest: Work | null = null;
  /** What of `latest` is written. */
  private written: Work | null = null;
  private writtenText: string | null = null;
  /** What the shelf has of what is typed and no value yet. */
  private writtenTyped: TypedTexts;
  private writing: Promise<void> | null = null;
  /** What another tab said it saved last. */
  private announced: Header | null = null;
  private cancelQuiet: (() => void) | null = null;
  private cancelLongest: (() => void) | null = null;
  private cancelDraft: (() => void) | null = null;
  private cancelIdle: (() => void) | null = null;
  /** A draft younger than the last write is on the shelf. */
  private isDraftLeft = false;
  private statusNow: SaveStatus = { kind: 'untouched' };

  constructor(
    private readonly parts: SessionParts,
    private readonly origin: Origin,
  ) {
    const isStored = typeof origin !== 'string';
    this.header = isStored ? origin.header : parts.shelf.newHeader('');
    this.writtenTyped = isStored ? origin.typed : noTyped;
    if (!isStored || !origin.isSaved) return;
    this.writtenText = origin.text;
    this.statusNow = this.restingStatus();
  }

  get status(): SaveStatus {
    return this.statusNow;
  }

  /** Null while nothing of the project is on the shelf. */
  get storedId(): string | null {
    return this.header.revision === 0 ? null : this.header.id;
  }

  /** The first work that the page shows; it is written only where the shelf does not have it. */
  begin(work: Work | null): void {
    this.latest = work;
    const isOnShelf = typeof this.origin !== 'string' && this.origin.isSaved;
    if (isOnShelf || this.origin === 'demo') this.written = work;
    void this.parts.shelf.rememberOpen(this.origin === 'demo' ? null : this.header.id);
    this.parts.onStatus(this.statusNow);
    if (this.isPending()) void this.write();
  }

  changed(work: Work): void {
    if (this.latest !== null && isSameWork(this.latest, work)) return;
    this.latest = work;
    if (!this.isPending()) {
      this.dropLeftDraft();
      this.rest();
      return;
    }
    if (this.isTextPending() && this.isResting()) this.show({ kind: 'saving' });
    const { clock, delayMs, longestDelayMs, draftDelayMs } = this.parts;
    const write = () => {
      this.writeWhenIdle();
    };
    this.cancelQuiet?.();
    this.cancelQuiet = clock.after(delayMs, write);
    this.cancelLongest ??= clock.after(longestDelayMs, write);
    this.cancelDraft ??= clock.after(draftDelayMs, () => {
      this.cancelDraft = null;
      this.keepQuickDraft();
    });
  }

  /** The checks of a long project take as long as a frame or two: they wait until no key is being answered. */
  private writeWhenIdle(): void {
    this.cancelIdle ??= this.parts.clock.whenIdle(longestIdleWaitMs, () => void this.write());
  }

  /** Writes what is pending and waits for it. */
  write(): Promise<void> {
    this.cancelTimers();
    this.writing ??= this.writePending();
    return this.writing;
  }

  /** The page is going: drafts leave at once, and the ordered write follows if there is time. */
  leave(): void {
    if (!this.isPending()) return;
    this.keepDrafts();
    void this.write();
  }

  /** Another project is opened. What cannot be written stays in a copy, or in this page. */
  async close(): Promise<void> {
    await this.write();
    const { id } = this.header;
    const draft = this.unsavedDraft();
    const isConflict = this.statusNow.kind === 'conflict';
    if (draft !== null && isConflict && (await this.copyMine()).kind === 'opened') return;
    if (draft !== null) this.parts.shelf.hold(draft);
    if (this.latest !== null && this.unsavedTyped(this.latest).length > 0) {
      this.parts.shelf.holdTyped(id, this.latest.typed);
    }
  }

  savedElsewhere(theirs: Header): void {
    if (theirs.id !== this.header.id) return;
    this.announced = theirs;
    // A write that is under way finds out by itself, and may find the same text.
    if (this.writing === null) this.heed();
  }

  /** Mine goes onto the shelf as a copy that says so; theirs stays. */
  async copyMine(): Promise<ShelfLoadResult> {
    const mine = this.latest;
    if (mine === null) return { kind: 'missing' };
    const addition = `changed in two tabs, mine of ${timeText(this.parts.clock.now())}`;
    const copied = await this.parts.shelf.addCopy(mine.project, mine.reading, mine.typed, addition);
    if (copied.kind === 'opened') await this.settle(mine);
    return copied;
  }

  /** Gives mine up for theirs. */
  async loadTheirs(): Promise<ShelfLoadResult> {
    const mine = this.latest;
    const loaded = await this.parts.shelf.load(this.header.id);
    if (loaded.kind === 'opened' && mine !== null) await this.settle(mine);
    return loaded;
  }

  private async settle(work: Work): Promise<void> {
    this.cancelTimers();
    this.written = work;
    await this.parts.shelf.dropDraft(this.header.id);
  }

  private isPending(): boolean {
    if (this.latest === null || this.latest === this.written) return false;
    // A demo that is only looked at is not a project of the user's.
    return this.header.revision > 0 || this.isTextPending() || this.latest.typed.size > 0;
  }

  private isTextPending(): boolean {
    return this.latest?.project !== this.written?.project;
  }

  private async writePending(): Promise<void> {
    // So that `writing` is set before it is cleared.
    await Promise.resolve();
    while (await this.writeLatest());
    this.writing = null;
    this.heed();
  }

  /** True when something was written and more may have come meanwhile. */
  private async writeLatest(): Promise<boolean> {
    const work = this.latest;
    if (work === null || !this.isPending()) return false;
    if (this.statusNow.kind === 'conflict') {
      this.keepDrafts();
      return false;
    }
    const isWritten = await this.writeWork(work);
    if (isWritten) this.written = work;
    return isWritten;
  }

  private heed(): void {
    const { announced } = this;
    if (announced !== null && announced.revision > this.header.revision) {
      this.show({ kind: 'conflict', theirs: announced });
    }
  }

  private async writeWork(work: Work): Promise<boolean> {
    const isStored = this.header.revision > 0;
    if (isStored && work.project === this.written?.project) return this.writeReading(work);
    const draft = this.draftOf(work);
    if (draft.kind === 'failed') return this.fail(draft);
    if (draft.text === this.writtenText) return this.writeReading(work);
    if (this.statusNow.kind !== 'saving') this.show({ kind: 'saving' });
    const isFirst = draft.revision === 0;
    const result = await this.parts.shelf.save(draft, this.unsavedTyped(work));
    if (isFirst && result.kind === 'saved') void this.parts.shelf.rememberOpen(draft.id);
    return this.answer(result, draft.text, work);
  }

  private async writeReading(work: Work): Promise<boolean> {
    const result = await this.parts.shelf.saveReading(this.header.id, work.reading, this.unsavedTyped(work));
    if (result.kind === 'failed') return this.fail(result);
    this.writtenTyped = work.typed;
    this.dropLeftDraft();
    this.rest();
    return true;
  }

  private answer(result: ShelfSaveResult, text: string, work: Work): boolean {
    if (result.kind === 'failed') return this.fail(result);
    if (result.kind === 'conflict') {
      this.show(result);
      this.keepDrafts();
      return false;
    }
    this.header = result.header;
    this.writtenText = text;
    this.writtenTyped = work.typed;
    this.isDraftLeft = false;
    this.show(this.restingStatus());
    return true;
  }

  private fail({ why }: Failed): false {
    this.show({ kind: 'failed', why });
    return false;
  }

  private keepDrafts(): void {
    const draft = this.unsavedDraft();
    if (draft !== null) void this.parts.shelf.keepDraft(draft);
    this.keepTyped();
  }

  /** Unchecked, because the checks are most of a write's work: what comes of it is checked when it is recovered. */
  private keepQuickDraft(): void {
    this.keepTyped();
    if (this.latest === null || !this.isTextPending()) return;
    const { project, reading } = this.latest;
    const stamped = this.parts.shelf.stamped(this.header, project.name);
    this.isDraftLeft = true;
    void this.parts.shelf.keepDraft({ ...stamped, text: JSON.stringify(project), reading });
  }

  private dropLeftDraft(): void {
    if (!this.isDraftLeft) return;
    this.isDraftLeft = false;
    void this.parts.shelf.dropDraft(this.header.id);
  }

  private keepTyped(): void {
    const work = this.latest;
    const typed = work === null ? [] : this.unsavedTyped(work);
    if (work === null || typed.length === 0) return;
    void this.parts.shelf.keepTyped(this.header.id, typed).then((kept) => {
      if (kept.kind === 'done') this.writtenTyped = work.typed;
    });
  }

  private unsavedTyped({ typed }: Work): readonly TypedChange[] {
    return typedChanges(this.writtenTyped, typed);
  }

  /** Null when the text on the screen is the written one, or cannot be written at all. */
  private unsavedDraft(): Draft | null {
    if (this.latest === null || !this.isPending()) return null;
    const draft = this.draftOf(this.latest);
    return draft.kind === 'failed' || draft.text === this.writtenText ? null : draft;
  }

  private draftOf({ project, reading }: Work): (Draft & { readonly kind?: never }) | Failed {
    const saved = saveProject(project);
    if (saved.ok)
      return { ...this.parts.shelf.stamped(this.header, project.name), text: saved.text, reading };
    const [error] = saved.errors;
    return { kind: 'failed', why: `${error?.path ?? ''} ${error?.message ?? ''}`.trim() };
  }

  private restingStatus(): SaveStatus {
    if (this.header.revision === 0) return { kind: 'untouched' };
    return this.parts.shelf.isKept ? { kind: 'saved', savedAt: this.header.savedAt } : { kind: 'unkept' };
  }

  private isResting(): boolean {
    return this.statusNow.kind === this.restingStatus().kind;
  }

  /** Nothing is pending any more. */
  private rest(): void {
    if (!this.isResting() && this.statusNow.kind !== 'conflict') this.show(this.restingStatus());
  }

  private show(status: SaveStatus): void {
    this.statusNow = status;
    this.parts.onStatus(status);
  }

  private cancelTimers(): void {
    this.cancelQuiet?.();
    this.cancelLongest?.();
    this.cancelDraft?.();
    this.cancelIdle?.();
    this.cancelQuiet = null;
    this.cancelLongest = null;
    this.cancelDraft = null;
    this.cancelIdle = null;
  }
}

function isSameWork(one: Work, other: Work): boolean {
  return one.project === other.project && one.reading === other.reading && one.typed === other.typed;
}
