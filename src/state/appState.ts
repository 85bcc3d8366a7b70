import type { StateCreator } from 'zustand';
import type { HistorySlice } from './historySlice';
import type { ProjectSlice } from './projectSlice';
import type { QuestionSlice } from './questionSlice';
import type { ReadingSlice } from './readingSlice';

/** Everything the page knows: the open project, the question asked of it, the reading, and the way back. */
export type AppState = ProjectSlice & QuestionSlice & ReadingSlice & HistorySlice;

/** Makes one slice of the store that keeps a history. */
export type SliceCreator<Slice> = StateCreator<AppState, [['temporal', unknown]], [], Slice>;
