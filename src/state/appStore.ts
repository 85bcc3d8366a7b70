import { create } from 'zustand';
import { openProject } from '../project/file/openProject';
import type { Project } from '../project/file/schema';
import type { LedgerBasis, LedgerQuestion, ProjectLedger } from '../project/ledger/ledgerTypes';
import { ledgerOf } from './ledgerOf';

/** Which state of the boat the ledger shows. */
export type Shown = 'before' | 'both' | 'after';

/** Why a file did not open: one line per wrong field. The project that was open stays. */
export interface OpenFailure {
  readonly fileName: string;
  readonly errors: readonly { readonly path: string; readonly message: string }[];
}

interface ProjectSlice {
  /** Null until the demo or a file has opened. */
  readonly project: Project | null;
  readonly fileName: string;
  readonly openFailure: OpenFailure | null;
  /** Opens a project file; on failure the open project stays and the errors are kept for the page. */
  openText(fileName: string, text: string): void;
  /** A file that was not even read: too large, unreadable, more than one. */
  refuseFile(fileName: string, message: string): void;
  dismissFailure(): void;
}

interface QuestionSlice {
  readonly question: LedgerQuestion;
  chooseBasis(basis: LedgerBasis): void;
  choosePlan(planId: string | null): void;
  chooseAgainst(planId: string | null): void;
}

interface ReadingSlice {
  readonly shown: Shown;
  readonly selectedFittingId: string | null;
  show(shown: Shown): void;
  select(fittingId: string | null): void;
}

export type AppState = ProjectSlice & QuestionSlice & ReadingSlice;

const noQuestion: LedgerQuestion = {
  basis: { kind: 'condition', conditionId: '' },
  planId: null,
  againstPlanId: null,
};

export const useAppStore = create<AppState>()((set) => ({
  project: null,
  fileName: '',
  openFailure: null,
  question: noQuestion,
  shown: 'both',
  selectedFittingId: null,

  openText: (fileName, text) => {
    const opened = openProject(text);
    set(
      opened.ok
        ? { ...firstReading(opened.project), project: opened.project, fileName, openFailure: null }
        : { openFailure: { fileName, errors: opened.errors } },
    );
  },
  refuseFile: (fileName, message) => {
    set({ openFailure: { fileName, errors: [{ path: '', message }] } });
  },
  dismissFailure: () => {
    set({ openFailure: null });
  },

  chooseBasis: (basis) => {
    set((state) => ({ question: { ...state.question, basis } }));
  },
  choosePlan: (planId) => {
    set(({ question }) => ({
      question: {
        ...question,
        planId,
        againstPlanId: question.againstPlanId === planId ? null : question.againstPlanId,
      },
    }));
  },
  chooseAgainst: (againstPlanId) => {
    set((state) => ({ question: { ...state.question, againstPlanId } }));
  },

  show: (shown) => {
    set({ shown });
  },
  select: (selectedFittingId) => {
    set({ selectedFittingId });
  },
}));

/** What a freshly opened project shows: its first condition, its first plan, the row that costs most. */
function firstReading(project: Project): Pick<AppState, 'question' | 'selectedFittingId' | 'shown'> {
  const conditionId = project.conditions[0]?.id ?? '';
  const question: LedgerQuestion = {
    basis: { kind: 'condition', conditionId },
    planId: project.plans[0]?.id ?? null,
    againstPlanId: null,
  };
  return { question, shown: 'both', selectedFittingId: costliest(ledgerOf(project, question)) };
}

function costliest(ledger: ProjectLedger | null): string | null {
  return ledger?.rows.find(({ rank }) => rank === 1)?.fittingId ?? null;
}

/** The ledger of the open project for the question asked; null while nothing is open. */
export function useLedger(): ProjectLedger | null {
  return useAppStore(({ project, question }) => (project === null ? null : ledgerOf(project, question)));
}
