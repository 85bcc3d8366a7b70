import type { LedgerBasis, LedgerQuestion } from '../project/ledger/ledgerTypes';
import type { SliceCreator } from './appState';

export interface QuestionSlice {
  readonly question: LedgerQuestion;
  chooseBasis(basis: LedgerBasis): void;
  choosePlan(planId: string | null): void;
  chooseAgainst(planId: string | null): void;
}

const noQuestion: LedgerQuestion = {
  basis: { kind: 'condition', conditionId: '' },
  planId: null,
  againstPlanId: null,
};

export const questionSlice: SliceCreator<QuestionSlice> = (set) => ({
  question: noQuestion,

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
});
