import type { DeckLine } from '../../physics/placement/deckLine';
import { deckLineOf } from '../core/fittingToPhysics';
import { addFitting } from '../edit/fittingEdits';
import type { Project, ProjectFitting } from '../file/schema';
import { changedFitting } from './changedFitting';
import { bodyOf, type Mapping } from './mapColumns';
import type { Table, TableRecord } from './readTable';
import { noTexts, surveyColumns, surveyKeys, type SurveyKey, type SurveyTexts } from './surveyColumns';
import { textsOfFitting } from './surveyCsv';
import { newFitting, type BuiltFitting } from './surveyFitting';
import { valuesOf, type CellErrors, type NumberReading, type SurveyValues } from './surveyValues';
import { shapeFor, type SurveyShape } from './surveyWords';
import { unguarded } from './textGuard';

/** What to do with a row whose name the ledger has already. */
export type Decision = 'add' | 'replace' | 'skip';

/** What the reader of a table has done to it so far. */
export interface SurveyEdits {
  /** Cells typed over, by the record's number. */
  readonly texts: ReadonlyMap<number, Partial<SurveyTexts>>;
  readonly decisions: ReadonlyMap<number, Decision>;
  /** For every row with a known name that has no decision of its own. */
  readonly decisionForAll: Decision | null;
  /** Records given up. */
  readonly dropped: ReadonlySet<number>;
}

export const noEdits: SurveyEdits = {
  texts: new Map(),
  decisions: new Map(),
  decisionForAll: null,
  dropped: new Set(),
};

/**
 * - good: goes in on import; bad: has errors and stays; asks: its name is in the ledger and nobody said what to do;
 * - skipped: by that answer; unfilled: a line of the template on which nothing was measured.
 */
export type RowState = 'good' | 'bad' | 'asks' | 'skipped' | 'unfilled';

export interface SurveyRow {
  /** The record's number in the table, from 1. */
  readonly number: number;
  readonly texts: SurveyTexts;
  readonly state: RowState;
  readonly errors: CellErrors;
  /** The fitting of the same name that the row is about, if there is one. */
  readonly namesake: ProjectFitting | null;
  readonly decision: Decision | null;
  /** What goes in; null unless good. */
  readonly built: Extract<BuiltFitting, { ok: true }> | null;
}

/** Reads the rows of a table again after each edit; a row that was not touched is not read again. */
export type SurveyReader = (edits: SurveyEdits) => readonly SurveyRow[];

/** @returns the reader of one table for one project: make another when either changes. */
export function surveyReader(project: Project, table: Table, mapping: Mapping): SurveyReader {
  const reading = readingOf(mapping);
  const context = contextOf(project, mapping);
  const records = bodyOf(table, mapping);
  const original = new Map(records.map((record) => [record.number, textsOfRecord(record, mapping)]));
  const known = new Map<number, Known>();
  return ({ texts, decisions, decisionForAll, dropped }) => {
    const namesakes = namesakesOf(project.fittings);
    return records
      .filter(({ number }) => !dropped.has(number))
      .map(({ number }) => {
        const now = { ...(original.get(number) ?? noTexts), ...texts.get(number) };
        const namesake = namesakes(now.item);
        const decision = namesake === null ? null : (decisions.get(number) ?? decisionForAll);
        const before = known.get(number);
        if (before !== undefined && isSame(before.row, now, namesake, decision)) return before.row;
        const row = readRow(number, now, namesake, decision, reading, context);
        known.set(number, { row });
        return row;
      });
  };
}

interface Known {
  readonly row: SurveyRow;
}

function isSame(
  row: SurveyRow,
  texts: SurveyTexts,
  namesake: ProjectFitting | null,
  decision: Decision | null,
): boolean {
  return (
    row.namesake === namesake &&
    row.decision === decision &&
    surveyKeys.every((key) => row.texts[key] === texts[key])
  );
}

function readingOf({ columns, decimalMark }: Mapping): NumberReading {
  const units = Object.fromEntries(columns.flatMap(({ key, unit }) => (key === null ? [] : [[key, unit]])));
  return { units, decimalMark };
}

function textsOfRecord({ cells }: TableRecord, { columns }: Mapping): SurveyTexts {
  const texts: Record<SurveyKey, string> = { ...noTexts };
  for (const [i, { key }] of columns.entries()) if (key !== null) texts[key] = unguarded(cells[i] ?? '');
  return texts;
}

/** The second row of a name is about the second fitting of that name. */
function namesakesOf(fittings: readonly ProjectFitting[]): (item: string) => ProjectFitting | null {
  const byName = new Map<string, ProjectFitting[]>();
  for (const fitting of fittings) {
    const same = byName.get(folded(fitting.name));
    if (same === undefined) byName.set(folded(fitting.name), [fitting]);
    else same.push(fitting);
  }
  const met = new Map<string, number>();
  return (item) => {
    const name = folded(item);
    const place = met.get(name) ?? 0;
    met.set(name, place + 1);
    return byName.get(name)?.[place] ?? null;
  };
}

function folded(name: string): string {
  return name.normalize('NFC').trim().toLowerCase();
}

interface RowContext {
  readonly project: Project;
  /** The same boat with nothing on her, to judge one fitting alone. */
  readonly bare: Project;
  readonly line: DeckLine;
  readonly zoneNames: ReadonlyMap<string, string>;
  /** Of rows that say none. */
  readonly blankShape: SurveyShape | null;
}

function contextOf(project: Project, { blankShape }: Mapping): RowContext {
  const zones = [{ id: 'zone', name: 'Zone' }];
  return {
    project,
    bare: { ...project, zones, fittings: [], plans: [], conditions: [], profile: null },
    line: deckLineOf(project.boat),
    zoneNames: new Map(project.zones.map(({ id, name }) => [id, name])),
    blankShape: blankShape === null ? null : shapeFor(blankShape),
  };
}

function readRow(
  number: number,
  texts: SurveyTexts,
  namesake: ProjectFitting | null,
  decision: Decision | null,
  reading: NumberReading,
  context: RowContext,
): SurveyRow {
  const row = { number, texts, namesake, decision, errors: {}, built: null };
  if (isUnfilled(texts)) return { ...row, state: 'unfilled' };
  if (decision === 'skip') return { ...row, state: 'skipped' };
  const { values, errors } = valuesOf(texts, reading);
  if (Object.keys(errors).length > 0) {
    const missing = namesake === null ? missingIn(values, context) : {};
    return { ...row, state: 'bad', errors: { ...missing, ...errors } };
  }
  if (namesake !== null && decision === null) return { ...row, state: 'asks' };
  const built =
    namesake !== null && decision === 'replace'
      ? changedFitting(namesake, values, changedKeys(namesake, texts, values, context), context.project)
      : newWithShape(values, context);
  const judged = built.ok ? complaintsOf(built, context) : built.errors;
  if (!built.ok || Object.keys(judged).length > 0) return { ...row, state: 'bad', errors: judged };
  return { ...row, state: 'good', built };
}

/** What a new row lacks beside what cannot be read, so that all of it is mended in one go. */
function missingIn(values: SurveyValues, context: RowContext): CellErrors {
  const built = newWithShape(values, context);
  return built.ok ? {} : built.errors;
}

/** A row that names neither a shape nor an item of the catalogue takes the shape chosen for such rows. */
function newWithShape(values: SurveyValues, { project, blankShape }: RowContext): BuiltFitting {
  const built = newFitting(values, project);
  if (built.ok || built.errors.shape === undefined || blankShape === null) return built;
  return newFitting({ ...values, shape: blankShape }, project);
}

/** A line of the template is there to be filled: name, zone and shape alone measure nothing. */
function isUnfilled(texts: SurveyTexts): boolean {
  const printed: readonly SurveyKey[] = ['item', 'zone', 'shape'];
  return surveyKeys.every((key) => printed.includes(key) || texts[key].trim() === '');
}

/** The columns in which a row says something else than the fitting's own row would. */
function changedKeys(
  fitting: ProjectFitting,
  texts: SurveyTexts,
  values: SurveyValues,
  { line, zoneNames }: RowContext,
): ReadonlySet<SurveyKey> {
  const own = textsOfFitting(fitting, zoneNames.get(fitting.zoneId) ?? '', line);
  const ownUnits = Object.fromEntries(surveyKeys.map((key) => [key, surveyColumns[key].unit]));
  const before = valuesOf(own, { units: ownUnits, decimalMark: 'point' }).values;
  return new Set(
    surveyKeys.filter(
      (key) =>
        key !== 'item' &&
        values[key] !== null &&
        texts[key] !== own[key] &&
        !isSameValue(before[key], values[key]),
    ),
  );
}

/** Numbers within what a detour over another unit may lose. */
function isSameValue(before: unknown, now: unknown): boolean {
  if (typeof before === 'number' && typeof now === 'number') {
    return Math.abs(before - now) <= 1e-12 * Math.max(Math.abs(before), Math.abs(now));
  }
  return before === now;
}

/** What the project file would refuse of a fitting, each at the column that it is about. */
function complaintsOf(
  { fitting, newZoneName }: Extract<BuiltFitting, { ok: true }>,
  { bare }: RowContext,
): CellErrors {
  const zones = newZoneName === null ? bare.zones : [{ id: 'zone', name: newZoneName }];
  // References to the rest of the project are not the survey's: a fitting that has some was there before.
  const alone = {
    ...fitting,
    zoneId: 'zone',
    shelteredByFittingId: null,
    dutyFraction: { ...fitting.dutyFraction, byCondition: [] },
  };
  const named = addFitting({ ...bare, zones }, alone);
  if (!('refused' in named)) return newZoneName === null ? {} : zoneComplaint(newZoneName);
  const { path, message } = named.refused;
  const unit = /must (?:not )?be/.test(message) && /M$|\.m$/.test(path) ? ' (in m)' : '';
  return { [keyForPath(path, fitting.shape.kind)]: `This ${message}${unit}.` };
}

const longestZoneName = 200;

function zoneComplaint(name: string): CellErrors {
  if (name.length <= longestZoneName) return {};
  return { zone: `A zone's name has at most ${longestZoneName} characters.` };
}

/** By the last word of a path that stands for a column. */
function keyForPath(path: string, kind: ProjectFitting['shape']['kind']): SurveyKey {
  const words: readonly (readonly [RegExp, SurveyKey])[] = [
    [/\.note$/, 'note'],
    [/\.(?:diameter|chord|width)\b/, 'width'],
    [/\.(?:thickness|wireDiameter)\b/, 'thickness'],
    [/\.height\b/, kind === 'net' ? 'length' : 'thickness'],
    [/\.(?:lengthM$|length\b|end$|lastEnd$)/, 'length'],
    [/dragAreaM2/, 'dragArea'],
    [/lastAftOfStemM/, 'lastAftOfStem'],
    [/aftOfStemM/, 'aftOfStem'],
    [/aboveDeckM/, 'aboveDeck'],
    [/\.count$/, 'count'],
    [/\.(?:pair|side|athwart)/, 'side'],
  ];
  return words.find(([pattern]) => pattern.test(path))?.[1] ?? 'item';
}
