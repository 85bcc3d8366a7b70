import * as z from 'zod/mini';
import { isUnit, type Unit } from '../../units/unitTable';
import type { Mapping } from './mapColumns';
import { noEdits, type SurveyEdits } from './readSurvey';
import { surveyKeys, type SurveyKey, type SurveyTexts } from './surveyColumns';

/** What somebody has done to a table that was brought in; the table itself is kept beside it, as the text that it was. */
export interface SurveyDraft {
  /** Null for the one that is suggested. */
  readonly mapping: Mapping | null;
  readonly edits: SurveyEdits;
}

export const noDraft: SurveyDraft = { mapping: null, edits: noEdits };

const number = z.number();
const text = z.string();
const key = z.enum(surveyKeys);
const decision = z.enum(['add', 'replace', 'skip']);
const unit = z.nullable(z.custom<Unit>((value) => typeof value === 'string' && isUnit(value)));

const draftSchema = z.object({
  mapping: z.nullable(
    z.object({
      columns: z.array(z.object({ key: z.nullable(key), unit })),
      headNumbers: z.array(number),
      heads: z.array(text),
      decimalMark: z.nullable(z.enum(['point', 'comma'])),
      blankShape: z.nullable(text),
    }),
  ),
  texts: z.array(z.tuple([number, z.partialRecord(key, text)])),
  decisions: z.array(z.tuple([number, decision])),
  decisionForAll: z.nullable(decision),
  dropped: z.array(number),
});

/** As a text that the browser keeps. */
export function draftText({ mapping, edits }: SurveyDraft): string {
  return JSON.stringify({
    mapping,
    texts: [...edits.texts],
    decisions: [...edits.decisions],
    decisionForAll: edits.decisionForAll,
    dropped: [...edits.dropped],
  });
}

/** The inverse of {@link draftText}; what was damaged meanwhile is no draft, and the table stands as it came. */
export function draftFrom(stored: string): SurveyDraft {
  const read = draftSchema.safeParse(parsed(stored));
  if (!read.success) return noDraft;
  const { mapping, texts, decisions, decisionForAll, dropped } = read.data;
  return {
    mapping,
    edits: {
      texts: new Map(texts as readonly [number, Partial<SurveyTexts>][]),
      decisions: new Map(decisions),
      decisionForAll,
      dropped: new Set(dropped),
    },
  };
}

function parsed(stored: string): unknown {
  try {
    return JSON.parse(stored);
  } catch {
    return null;
  }
}

/** The edits with one cell typed over. */
export function withText(edits: SurveyEdits, row: number, cell: SurveyKey, typed: string): SurveyEdits {
  const texts = new Map(edits.texts).set(row, { ...edits.texts.get(row), [cell]: typed });
  return { ...edits, texts };
}

/** The edits with rows taken out of the preview. */
export function withDropped(edits: SurveyEdits, rows: readonly number[]): SurveyEdits {
  return { ...edits, dropped: new Set([...edits.dropped, ...rows]) };
}
