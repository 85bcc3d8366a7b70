import { readFileSync } from 'node:fs';
import { newProject } from '../../../src/project/catalogue/newProject';
import { openProject } from '../../../src/project/file/openProject';
import type { Project } from '../../../src/project/file/schema';
import { suggestMapping, type Mapping } from '../../../src/project/tables/mapColumns';
import {
  noEdits,
  surveyReader,
  type SurveyEdits,
  type SurveyRow,
} from '../../../src/project/tables/readSurvey';
import { readTable, type Table } from '../../../src/project/tables/readTable';

export function tableText(name: string): string {
  return readFileSync(`tests/data/tables/${name}`, 'utf8');
}

export function tableIn(text: string): Table {
  const read = readTable(text);
  if (!read.ok) throw new Error(read.message);
  return read.table;
}

export function tableOf(name: string): Table {
  return tableIn(tableText(name));
}

/** A boat of 12 m with the usual zones and nothing on her. */
export function emptyBoat(): Project {
  return newProject({ name: 'Test', lengthM: 12, beamM: 4, draughtM: 2.4, mastTopM: 18 });
}

/** Rows of a text as the suggested mapping reads them, or one that the caller has changed. */
export function rowsOf(
  text: string,
  project: Project = emptyBoat(),
  edits: Partial<SurveyEdits> = {},
  mapped: (mapping: Mapping) => Mapping = (mapping) => mapping,
): readonly SurveyRow[] {
  const table = tableIn(text);
  return surveyReader(project, table, mapped(suggestMapping(table)))({ ...noEdits, ...edits });
}

export function demo(): Project {
  const opened = openProject(readFileSync('demo-data/quillamoor.windtoll.json', 'utf8'));
  if (!opened.ok) throw new Error(JSON.stringify(opened.errors));
  return opened.project;
}
