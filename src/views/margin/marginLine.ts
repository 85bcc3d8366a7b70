import type { Project } from '../../project/file/schema';
import type { ProjectLedger } from '../../project/ledger/ledgerTypes';
import { formatQuantity } from '../../units/print';

/** The condition in one line, with the apparent wind at the deck: "Upwind, fresh: 22.9 kn from 31.2° at deck". */
export function basisLine(project: Project, ledger: ProjectLedger | null): string {
  if (ledger === null) return 'No sailing condition';
  if (ledger.question.basis.kind === 'profile') return `Course profile: ${project.profile?.name ?? ''}`;
  const summary = ledger.parts[0]?.summary;
  if (summary === undefined) return 'No sailing condition';
  const { speedMs, angleFromBowRad } = summary.deck;
  return `${summary.condition.name}: ${formatQuantity(speedMs, 'kn')} from ${formatQuantity(angleFromBowRad, 'deg')} at deck`;
}

/** The plan and what it is held against. */
export function planLine(project: Project, ledger: ProjectLedger | null): string {
  const nameOf = (planId: string | null | undefined): string | null =>
    project.plans.find(({ id }) => id === planId)?.name ?? null;
  const plan = nameOf(ledger?.question.planId);
  const against = nameOf(ledger?.question.againstPlanId);
  if (plan === null) return 'as sailed';
  return `${plan} against ${against ?? 'as sailed'}`;
}
