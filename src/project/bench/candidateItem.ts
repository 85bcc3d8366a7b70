import { addPlan, changePlan } from '../edit/planEdits';
import { nothingSuch, refusal, type EditAnswer } from '../edit/answer';
import { freshId } from '../edit/lists';
import { nameWithEnding } from '../edit/names';
import { blankItem } from '../file/blankParts';
import { limits } from '../file/limits';
import type { Project, RefitItem } from '../file/schema';
import { candidateChange, memberMiddle } from './benchMember';
import type { UseCandidate } from './benchTypes';
import { candidateMass } from './candidateMass';
import { isTurning, replacesTube } from './candidateNotices';
import { candidateProblems } from './candidates';
import { candidateNote } from './candidateNote';

/**
 * Makes a candidate a refit item, the last of a plan or the first of a new one, with its mass, cost, flags and the reasoning in
 * its note. New ids: the plan's where it is new, then the item's. Refused for the member as it stands, for a typed
 * member, which no plan can change, and for a candidate with a problem.
 */
export function addCandidateItem(project: Project, use: UseCandidate): EditAnswer {
  const { member, candidate, planId } = use;
  if (member.isTyped) return refusal('', 'This member is not in the ledger: add it there first.');
  if (!project.fittings.includes(member.fitting)) return nothingSuch('fitting', member.fitting.id);
  const [problem] = candidateProblems(candidate, member);
  if (problem !== undefined) return refusal('', problem.message);
  if (planId !== null) return withItem(project, planId, use, []);
  const withPlan = addPlan(project);
  if ('refused' in withPlan) return withPlan;
  const newPlanId = withPlan.newIds?.[0] ?? '';
  return withItem(withPlan.project, newPlanId, use, [newPlanId]);
}

function withItem(
  project: Project,
  planId: string,
  use: UseCandidate,
  newIds: readonly string[],
): EditAnswer {
  const plan = project.plans.find(({ id }) => id === planId);
  if (plan === undefined) return nothingSuch('plan', planId);
  if (plan.items.length >= limits.items) {
    return refusal('', `${plan.name} is full: it has ${limits.items} items.`);
  }
  const item = itemOf(project, use, freshId(plan.items, 'i'));
  if (item === null) return refusal('', 'The member as it stands is no change.');
  return changePlan(project, planId, (old) => ({ ...old, items: [...old.items, item] }), {
    newIds: [...newIds, item.id],
  });
}

function itemOf(project: Project, use: UseCandidate, id: string): RefitItem | null {
  const { member, candidate } = use;
  const change = candidateChange(member, candidate);
  if (change === null) return null;
  const changeKg = candidateMass(project, member, candidate).changeKg;
  return blankItem({
    id,
    name: nameWithEnding(member.fitting.name, `: ${shortName(candidate.name)}`),
    fittingId: member.fitting.id,
    change,
    note: candidateNote(project, use),
    massChangeKg: changeKg ?? 0,
    massPlace: changeKg === null ? null : memberMiddle(project, member),
    cost: candidate.cost,
    flags: { structural: replacesTube(candidate), movingPart: isTurning(candidate), classRule: null },
  });
}

const longestInName = 80;

/** Never cut through the middle of a character. */
function shortName(name: string): string {
  return name.slice(0, longestInName).replace(/[\uD800-\uDBFF]$/, '');
}
