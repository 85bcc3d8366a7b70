/**
 * Stands in for the project's ledger in the bench's second build: the same rows and cells change at an edit, and nothing
 * is computed. Two ledgers are worked out when a project opens, one for its wind and one for a little more, and every
 * edit is answered from them in turn. What is changed takes its numbers from the other ledger; what is not stays.
 */
import type { Project } from '../../../src/project/file/schema';
import type { LedgerQuestion, LedgerRow, ProjectLedger } from '../../../src/project/ledger/ledgerTypes';
import {
  projectLedger as computedLedger,
  type LedgerAnswer,
} from '../../../src/project/ledger/projectLedger';

export type { LedgerAnswer } from '../../../src/project/ledger/projectLedger';

interface Prepared {
  readonly question: LedgerQuestion;
  readonly turns: readonly [ProjectLedger, ProjectLedger];
}

/** So much more wind changes the figures of nearly every cell and the order of nearly no row. */
const moreWind = 1.02;

let prepared: Prepared | null = null;
let last: { readonly project: Project; readonly rows: readonly LedgerRow[] } | null = null;
let isOther = false;

export function projectLedger(project: Project, question: LedgerQuestion): LedgerAnswer {
  const isOpen = prepared?.question === question && last?.project.boat === project.boat;
  if (!isOpen || prepared === null || last === null) return open(project, question);
  isOther = !isOther;
  const next = prepared.turns[isOther ? 1 : 0];
  const rows = changedRows(last, project, next.rows);
  last = { project, rows };
  return { ok: true, ledger: { ...next, parts: partsWith(project, next), rows } };
}

function open(project: Project, question: LedgerQuestion): LedgerAnswer {
  const first = computedLedger(project, question);
  const second = computedLedger(inMoreWind(project), question);
  if (!first.ok || !second.ok) return first;
  prepared = { question, turns: [first.ledger, second.ledger] };
  last = { project, rows: first.ledger.rows };
  isOther = false;
  return first;
}

function inMoreWind(project: Project): Project {
  const conditions = project.conditions.map((condition) => ({
    ...condition,
    wind: { ...condition.wind, speedMs: moreWind * condition.wind.speedMs },
  }));
  return { ...project, conditions };
}

/** As the real ledger, fresh row objects for all, and other results only where an edit can have changed them. */
function changedRows(
  before: { readonly project: Project; readonly rows: readonly LedgerRow[] },
  { conditions, fittings }: Project,
  next: readonly LedgerRow[],
): LedgerRow[] {
  const isWindOther = conditions !== before.project.conditions;
  return before.rows.map((row, i) => {
    const fitting = fittings[i] ?? row.fitting;
    const other = next[i];
    if (other === undefined || (!isWindOther && fitting === row.fitting)) return { ...row };
    return { ...other, fitting };
  });
}

function partsWith({ conditions }: Project, { parts }: ProjectLedger): ProjectLedger['parts'] {
  return parts.map((part) => {
    const { id } = part.summary.condition;
    const condition = conditions.find((each) => each.id === id) ?? part.summary.condition;
    return { ...part, summary: { ...part.summary, condition } };
  });
}
