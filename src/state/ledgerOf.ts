import type { Project } from '../project/file/schema';
import type { LedgerQuestion, ProjectLedger } from '../project/ledger/ledgerTypes';
import { projectLedger } from '../project/ledger/projectLedger';

let last: {
  readonly project: Project;
  readonly question: LedgerQuestion;
  readonly ledger: ProjectLedger | null;
} | null = null;

/**
 * The ledger for a question; the last answer is remembered. Null when the question cannot be answered, which the store
 * rules out: it holds only conditions and plans that the project has.
 */
export function ledgerOf(project: Project, question: LedgerQuestion): ProjectLedger | null {
  if (last?.project === project && last.question === question) return last.ledger;
  const answer = projectLedger(project, question);
  last = { project, question, ledger: answer.ok ? answer.ledger : null };
  return last.ledger;
}
