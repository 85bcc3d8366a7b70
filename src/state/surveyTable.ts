import { useEffect, useMemo } from 'react';
import { create } from 'zustand';
import { draftFrom, draftText, noDraft, type SurveyDraft } from '../project/tables/surveyDraft';
import { dropTyped, keepTyped, showField, useTypedTexts } from './typedTexts';

/** A table that was brought in, as text, and what was done to it since. It belongs to the open project and is kept with it. */
export interface SurveyTable {
  readonly text: string;
  readonly draft: SurveyDraft;
}

/** What the texts are kept by; `ownerOf` knows them as the survey's. */
const tablePath = 'survey/table';
const draftPath = 'survey/draft';
const pastePath = 'survey/paste';

/** The table put away last: it can be brought back until the page is closed. */
export const usePutAway = create<{ readonly table: SurveyTable | null }>()(() => ({ table: null }));

/** The table in the works; null while there is none. A component that shows it takes it out of what waits elsewhere. */
export function useSurveyTable(): SurveyTable | null {
  const text = useTypedTexts(({ texts }) => texts.get(tablePath)?.text);
  const stored = useTypedTexts(({ texts }) => texts.get(draftPath)?.text);
  useEffect(() => {
    const leave = [tablePath, draftPath, pastePath].map(showField);
    return () => {
      for (const each of leave) each();
    };
  }, []);
  return useMemo(
    () => (text === undefined ? null : { text, draft: stored === undefined ? noDraft : draftFrom(stored) }),
    [text, stored],
  );
}

/** What was pasted and is not read yet; it waits like every half-typed text. */
export function usePastedText(): string {
  return useTypedTexts(({ texts }) => texts.get(pastePath)?.text ?? '');
}

export function setPastedText(text: string): void {
  if (text === '') dropTyped(pastePath);
  else keepTyped(pastePath, { text, label: 'Table to be read', refusal: null });
}

/** Takes a table in, in the place of the one before. */
export function bringIn({ text, draft }: SurveyTable): void {
  dropTyped(pastePath);
  keepTyped(tablePath, { text, label: 'Table of the survey', refusal: null });
  setDraft(draft);
}

export function setDraft(draft: SurveyDraft): void {
  if (draft === noDraft) dropTyped(draftPath);
  else keepTyped(draftPath, { text: draftText(draft), label: 'Changes to the table', refusal: null });
}

/** Clears the place; what stood there can be brought back. */
export function putAway(table: SurveyTable): void {
  usePutAway.setState({ table });
  dropTyped(tablePath);
  dropTyped(draftPath);
}
