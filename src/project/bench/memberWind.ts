import type { MemberTrace } from '../../physics/fitting/memberTrace';
import { asSailed } from '../core/fittingState';
import type { Project } from '../file/schema';
import { solveProjectCondition } from '../ledger/conditionSummary';
import { chooseConditions } from '../ledger/chooseConditions';
import type { LedgerBasis } from '../ledger/ledgerTypes';
import { rowEvaluator } from '../ledger/rowEvaluator';
import type { BenchMember } from './benchTypes';

/** The air that a member meets, and the air's own numbers. */
export interface MemberWind {
  /** Least, mean and largest wind square to the axis over the bars and conditions, m/s, exposure counted in. */
  readonly crossFromMs: number;
  readonly crossMeanMs: number;
  readonly crossToMs: number;
  readonly densityKgM3: number;
  readonly kinematicViscosityM2S: number;
}

/** Over a basis, from the ledger's own working of the bare member; a sentence where no air reaches it. */
export function memberWind(project: Project, member: BenchMember, basis: LedgerBasis): MemberWind | string {
  const chosen = chooseConditions(project, basis);
  if (!chosen.ok) return chosen.errors.map(({ message }) => message).join(' ');
  const row = rowEvaluator(project, chosen.conditions)(asSailed(member.fitting));
  const traces: readonly MemberTrace[] = row.parts.flatMap(({ trace }) => trace.members);
  const speeds = traces.flatMap(({ crossSpeedMs }) => (crossSpeedMs === null ? [] : [crossSpeedMs]));
  const [first] = chosen.parts;
  if (speeds.length === 0 || first === undefined) return 'No air reaches the member here.';
  const { best } = solveProjectCondition(project, first.summary.condition).states;
  return {
    crossFromMs: Math.min(...speeds),
    crossMeanMs: speeds.reduce((sum, speed) => sum + speed, 0) / speeds.length,
    crossToMs: Math.max(...speeds),
    densityKgM3: best.air.densityKgM3,
    kinematicViscosityM2S: best.air.kinematicViscosityM2S,
  };
}
