import { useMemo } from 'react';
import {
  mappingQuestions,
  suggestMapping,
  type Mapping,
  type MappingQuestion,
} from '../../project/tables/mapColumns';
import { surveyReader, type SurveyEdits, type SurveyRow } from '../../project/tables/readSurvey';
import { readTable, type Table } from '../../project/tables/readTable';
import type { Project } from '../../project/file/schema';
import { setDraft, type SurveyTable } from '../../state/surveyTable';

/** A table that is being read, and what may be done to it. */
export interface Survey {
  readonly table: Table;
  readonly mapping: Mapping;
  readonly questions: readonly MappingQuestion[];
  readonly edits: SurveyEdits;
  readonly rows: readonly SurveyRow[];
  readonly setMapping: (mapping: Mapping) => void;
  readonly setEdits: (edits: SurveyEdits) => void;
}

export type SurveyReading =
  { readonly ok: true; readonly survey: Survey } | { readonly ok: false; readonly message: string };

/** Reads the table for the open project: again as a whole when project or mapping change, else the rows that were touched. */
export function useSurvey(project: Project, { text, draft }: SurveyTable): SurveyReading {
  const read = useMemo(() => readTable(text), [text]);
  const suggested = useMemo(() => (read.ok ? suggestMapping(read.table) : null), [read]);
  const mapping = draft.mapping ?? suggested;
  const mappingText = JSON.stringify(mapping);
  const reader = useMemo(
    () => (read.ok ? surveyReader(project, read.table, JSON.parse(mappingText) as Mapping) : null),
    [project, read, mappingText],
  );
  const rows = useMemo(() => reader?.(draft.edits) ?? [], [reader, draft.edits]);
  if (!read.ok) return read;
  if (mapping === null) return { ok: false, message: 'The table has no columns.' };
  const survey: Survey = {
    table: read.table,
    mapping,
    questions: mappingQuestions(read.table, mapping),
    edits: draft.edits,
    rows,
    setMapping: (next) => {
      setDraft({ ...draft, mapping: next });
    },
    setEdits: (edits) => {
      setDraft({ ...draft, edits });
    },
  };
  return { ok: true, survey };
}
