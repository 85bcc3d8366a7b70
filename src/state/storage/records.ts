import type { Project } from '../../project/file/schema';
import type { LedgerBasis, LedgerQuestion } from '../../project/ledger/ledgerTypes';
import type { TypedTexts } from './typedRecords';

/** Where the user was in a project. */
export interface Reading {
  readonly question: LedgerQuestion;
  readonly selectedFittingId: string | null;
}

/** What a list of projects shows; the text lies under a key of its own, so that listing loads none. */
export interface Header {
  readonly id: string;
  /** The project's own name when it was saved. */
  readonly name: string;
  /** ISO 8601. */
  readonly savedAt: string;
  /** 1 at the first save, one more at each save. */
  readonly revision: number;
  /** The tab that saved it last. */
  readonly tab: string;
}

/** A text that is not in its project yet. Its revision is the one it was made from; 0 for a new project. */
export interface Draft extends Header {
  readonly text: string;
  readonly reading: Reading;
}

/** A project that was read and opens. */
export interface StoredProject {
  readonly header: Header;
  readonly text: string;
  readonly project: Project;
  /** Null when it names what the project does not have. */
  readonly reading: Reading | null;
  /** What was typed and is not a value yet. */
  readonly typed: TypedTexts;
  /** False for a text that could not be written and stands only in this page. */
  readonly isSaved: boolean;
}

/** A record that did not open, set aside. */
export interface Broken {
  readonly key: string;
  readonly name: string;
  readonly why: string;
  /** ISO 8601. */
  readonly setAsideAt: string;
  /** As found: the project's text where there was one, else what stood in its place. */
  readonly content: string;
}

/** The database refused: forbidden, full, broken. */
export interface Failed {
  readonly kind: 'failed';
  readonly why: string;
}

export const prefixes = {
  header: 'header/',
  text: 'text/',
  reading: 'reading/',
  typed: 'typed/',
  typedBy: 'typedBy/',
  draft: 'draft/',
  broken: 'broken/',
} as const;

/** Holds the id of the project that was open last. */
export const openKey = 'open';

/** The three places of one project, in the order in which they are read. */
export function recordKeys(id: string): readonly [header: string, text: string, reading: string] {
  return [prefixes.header + id, prefixes.text + id, prefixes.reading + id];
}

/** One draft for each project and tab. */
export function draftKey(id: string, tab: string): string {
  return `${prefixes.draft}${id}/${tab}`;
}

type Fields = Readonly<Record<string, unknown>>;

export function fieldsOf(value: unknown): Fields {
  return typeof value === 'object' && value !== null ? (value as Fields) : {};
}

/** The header, or null when what was stored is none. */
export function headerIn(value: unknown): Header | null {
  const { id, name, savedAt, revision, tab } = fieldsOf(value);
  const isHeader = isText(id) && isText(name) && isDate(savedAt) && isRevision(revision) && isText(tab);
  return isHeader ? { id, name, savedAt, revision, tab } : null;
}

/** The draft, or null when what was stored is none. Its reading is checked when its project has opened. */
export function draftIn(value: unknown): Omit<Draft, 'reading'> | null {
  const { text } = fieldsOf(value);
  const header = headerIn(value);
  return header !== null && isText(text) ? { ...header, text } : null;
}

/** The reading, or null when it asks what the project cannot answer. A selection that is gone is dropped. */
export function readingIn(project: Project, value: unknown): Reading | null {
  const { question, selectedFittingId } = fieldsOf(value);
  const { basis, planId, againstPlanId } = fieldsOf(question);
  const checkedBasis = basisIn(project, basis);
  if (checkedBasis === null || !isPlan(project, planId) || !isPlan(project, againstPlanId)) return null;
  const isThere = project.fittings.some(({ id }) => id === selectedFittingId);
  return {
    question: { basis: checkedBasis, planId, againstPlanId },
    selectedFittingId: isThere ? (selectedFittingId as string) : null,
  };
}

function basisIn(project: Project, value: unknown): LedgerBasis | null {
  const { kind, conditionId } = fieldsOf(value);
  if (kind === 'profile') return project.profile === null ? null : { kind };
  if (kind !== 'condition' || !isText(conditionId)) return null;
  return project.conditions.some(({ id }) => id === conditionId) ? { kind, conditionId } : null;
}

function isPlan(project: Project, value: unknown): value is string | null {
  return value === null || project.plans.some(({ id }) => id === value);
}

function isText(value: unknown): value is string {
  return typeof value === 'string';
}

function isDate(value: unknown): value is string {
  return isText(value) && !Number.isNaN(Date.parse(value));
}

function isRevision(value: unknown): value is number {
  return typeof value === 'number' && Number.isSafeInteger(value) && value >= 0;
}
