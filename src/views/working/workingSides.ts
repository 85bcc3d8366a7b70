import type { SailingState } from '../../physics/condition/sailingState';
import type { FittingTrace } from '../../physics/fitting/evaluateFitting';
import type { FittingInput } from '../../physics/fitting/fittingInput';
import type { MemberTrace } from '../../physics/fitting/memberTrace';
import type { RowResult } from '../../physics/ledger/ledgerSums';
import { asSailed } from '../../project/core/fittingState';
import { deckLineOf, fittingToPhysics } from '../../project/core/fittingToPhysics';
import type { Project, ProjectFitting } from '../../project/file/schema';
import { solveProjectCondition } from '../../project/ledger/conditionSummary';
import type { LedgerRow } from '../../project/ledger/ledgerTypes';
import type { Shown } from '../../state/appStore';

/** One state of the selected fitting in one condition, with what its lines need. */
export interface WorkingSide {
  readonly name: 'before' | 'after';
  readonly result: RowResult;
  /** Null when a plan has removed the fitting. */
  readonly fitting: ProjectFitting | null;
  readonly input: FittingInput | null;
  readonly trace: FittingTrace | null;
  /** The member whose chain is shown, the one with the largest force along the track; null when nothing is dry. */
  readonly lead: MemberTrace | null;
  /** Its place among the dry members, from 1. */
  readonly leadNumber: number;
}

/** The sides to show: one when the plan leaves the fitting alone or the reader asked for one. */
export function sidesOf(project: Project, row: LedgerRow, conditionId: string, shown: Shown): WorkingSide[] {
  const before = sideOf(project, 'before', row.fittingBefore, row.before, conditionId, null);
  const after = sideOf(project, 'after', row.fittingAfter, row.after, conditionId, before.leadNumber);
  if (shown === 'before' || !row.isChanged) return [before];
  return shown === 'after' ? [after] : [before, after];
}

function sideOf(
  project: Project,
  name: WorkingSide['name'],
  fitting: ProjectFitting | null,
  result: RowResult,
  conditionId: string,
  preferredNumber: number | null,
): WorkingSide {
  const trace = result.parts.find((part) => part.conditionId === conditionId)?.trace ?? null;
  const members = trace?.members ?? [];
  const leadNumber =
    preferredNumber !== null && members[preferredNumber - 1] !== undefined
      ? preferredNumber
      : numberOfLargest(members);
  return {
    name,
    result,
    fitting,
    input: fitting === null ? null : fittingToPhysics(asSailed(fitting), deckLineOf(project.boat)),
    trace,
    lead: members[leadNumber - 1] ?? null,
    leadNumber,
  };
}

function numberOfLargest(members: readonly MemberTrace[]): number {
  const sizes = members.map(({ forceTrackXN }) => Math.abs(forceTrackXN));
  return sizes.indexOf(Math.max(...sizes)) + 1;
}

/** The air and the boat in the condition that is worked through; null when the project has no such condition. */
export function stateOf(project: Project, conditionId: string): SailingState | null {
  const condition = project.conditions.find(({ id }) => id === conditionId);
  return condition === undefined ? null : solveProjectCondition(project, condition).states.best;
}
