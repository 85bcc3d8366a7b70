import { projectLedger } from '../../project/ledger/projectLedger';
import type { LedgerQuestion } from '../../project/ledger/ledgerTypes';
import type { Project, ProjectMethods } from '../../project/file/schema';
import { choicesByPart, type MethodChoice, type MethodPart } from './methodChoices';

/** A method with the total that the project would have with it, all else as chosen. */
export interface MethodEffect extends MethodChoice {
  /** Track power of the boat before the plan, W. */
  readonly totalW: number;
  /** How far that is from the total with this part's default, W. */
  readonly changeW: number;
}

export type MethodEffects = Readonly<Record<MethodPart, readonly MethodEffect[]>>;

let last: {
  readonly project: Project;
  readonly question: LedgerQuestion;
  readonly effects: MethodEffects | null;
} | null = null;

/** What each method would make of the total for a question; the last answer is remembered. */
export function methodEffects(project: Project, question: LedgerQuestion): MethodEffects | null {
  if (last?.project === project && last.question === question) return last.effects;
  last = { project, question, effects: effectsAnew(project, question) };
  return last.effects;
}

function effectsAnew(project: Project, question: LedgerQuestion): MethodEffects | null {
  // What is in use in one part is in use in all: its ledger is asked for once.
  const inUseW = totalWith(project, question, {});
  const of = (part: MethodPart) =>
    withTotals(choicesByPart[part](project.methods), ({ methods, isChosen }) =>
      isChosen ? inUseW : totalWith(project, question, methods),
    );
  const [windLaw, ends, inclined, fairing] = [of('windLaw'), of('ends'), of('inclined'), of('fairing')];
  if (windLaw === null || ends === null || inclined === null || fairing === null) return null;
  return { windLaw, ends, inclined, fairing };
}

function withTotals(
  choices: readonly MethodChoice[],
  totalOf: (choice: MethodChoice) => number | null,
): MethodEffect[] | null {
  const totals = choices.map(totalOf);
  const defaultW = totals[choices.findIndex(({ isDefault }) => isDefault)] ?? null;
  const effects: MethodEffect[] = [];
  for (const [i, choice] of choices.entries()) {
    const totalW = totals[i] ?? null;
    if (totalW === null || defaultW === null) return null;
    effects.push({ ...choice, totalW, changeW: totalW - defaultW });
  }
  return effects;
}

/** The plan that is tried is left out: it does not move the total before it. */
function totalWith(
  project: Project,
  question: LedgerQuestion,
  methods: Partial<ProjectMethods>,
): number | null {
  const answer = projectLedger(
    { ...project, methods: { ...project.methods, ...methods } },
    { ...question, planId: null },
  );
  return answer.ok ? answer.ledger.forces.before.outcome.trackPowerW : null;
}
