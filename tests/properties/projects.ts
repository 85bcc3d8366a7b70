import { readFileSync } from 'node:fs';
import { openProject } from '../../src/project/file/openProject';
import type { Project } from '../../src/project/file/schema';
import { projectLedger } from '../../src/project/ledger/projectLedger';
import type { LedgerBasis, ProjectLedger } from '../../src/project/ledger/ledgerTypes';

const root = new URL('../../', import.meta.url);

/** A project of this repository, by its path from the top. */
export function projectAt(path: string): Project {
  const opened = openProject(readFileSync(new URL(path, root), 'utf8'));
  if (!opened.ok) throw new Error(JSON.stringify(opened.errors));
  return opened.project;
}

export const demoPath = 'demo-data/quillamoor.windtoll.json';
export const everyKindPath = 'tests/data/projects/every-kind.json';

/** Every condition of a project, and its course profile where it has one. */
export function basesOf(project: Project): LedgerBasis[] {
  const conditions = project.conditions.map(({ id }): LedgerBasis => ({
    kind: 'condition',
    conditionId: id,
  }));
  return project.profile === null ? conditions : [...conditions, { kind: 'profile' }];
}

export function basisName(basis: LedgerBasis): string {
  return basis.kind === 'profile' ? 'the profile' : basis.conditionId;
}

export function ledgerOf(
  project: Project,
  basis: LedgerBasis,
  planId: string | null = null,
  againstPlanId: string | null = null,
): ProjectLedger {
  const answer = projectLedger(project, { basis, planId, againstPlanId });
  if (!answer.ok) throw new Error(JSON.stringify(answer.errors));
  return answer.ledger;
}
