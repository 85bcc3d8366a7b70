import type { Project } from '../project/file/schema';
import type { LedgerBasis, LedgerQuestion } from '../project/ledger/ledgerTypes';
import type { Shown } from '../state/appStore';

/** What the address after `#` holds: enough to come back to what was read. */
export interface Reading {
  readonly question: LedgerQuestion;
  readonly shown: Shown;
  readonly selectedFittingId: string | null;
}

const courseWord = 'course';
const shownWords: readonly Shown[] = ['before', 'both', 'after'];

/** `#over=condition:upwind&plan=slim&row=pole`; ids need no escaping. */
export function addressOf({ question, shown, selectedFittingId }: Reading): string {
  const { basis, planId, againstPlanId } = question;
  const words = [
    `over=${basis.kind === 'profile' ? courseWord : `condition:${basis.conditionId}`}`,
    planId === null ? 'plan=' : `plan=${planId}`,
    ...(againstPlanId === null ? [] : [`against=${againstPlanId}`]),
    ...(shown === 'both' ? [] : [`show=${shown}`]),
    ...(selectedFittingId === null ? [] : [`row=${selectedFittingId}`]),
  ];
  return `#${words.join('&')}`;
}

/** The reading that an address asks for. What it does not say, or names and the project has not, stays as it is. */
export function readingFrom(hash: string, project: Project, current: Reading): Reading {
  const words = new URLSearchParams(hash.replace(/^#/, ''));
  const planId = planFrom(words.get('plan'), project, current.question.planId);
  const against = planFrom(words.get('against'), project, null);
  return {
    question: {
      basis: basisFrom(words.get('over'), project, current.question.basis),
      planId,
      againstPlanId: planId === null || against === planId ? null : against,
    },
    shown: shownWords.find((word) => word === (words.get('show') ?? 'both')) ?? current.shown,
    selectedFittingId:
      project.fittings.find(({ id }) => id === words.get('row'))?.id ?? current.selectedFittingId,
  };
}

function basisFrom(word: string | null, project: Project, current: LedgerBasis): LedgerBasis {
  if (word === courseWord && project.profile !== null) return { kind: 'profile' };
  const condition = project.conditions.find(({ id }) => `condition:${id}` === word);
  return condition === undefined ? current : { kind: 'condition', conditionId: condition.id };
}

function planFrom(word: string | null, project: Project, current: string | null): string | null {
  if (word === null) return current;
  if (word === '') return null;
  return project.plans.find(({ id }) => id === word)?.id ?? current;
}
