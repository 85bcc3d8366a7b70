import type { Notice } from '../../physics/fitting/notice';
import type { Result, RowResult, Saving } from '../../physics/ledger/ledgerSums';
import type { LossBlock } from '../../physics/ledger/losses';
import type { ProjectFitting, ProjectZone, RefitItem } from '../file/schema';
import type { ItemStatus } from '../refit/applyPlan';
import type { Contradiction } from '../refit/applyItem';
import type { ConditionSummary } from './conditionSummary';

/** Which conditions the ledger is about: one, or the course profile's, weighted with their hours. */
export type LedgerBasis =
  { readonly kind: 'condition'; readonly conditionId: string } | { readonly kind: 'profile' };

/** What a reader asks for. `againstPlanId` null compares with the boat as sailed; `planId` null shows her as sailed. */
export interface LedgerQuestion {
  readonly basis: LedgerBasis;
  readonly planId: string | null;
  readonly againstPlanId: string | null;
}

/** The chosen conditions with their shares of the time. */
export interface BasisPart {
  readonly summary: ConditionSummary;
  readonly hours: number | null;
  readonly weight: number;
}

/** One row: a fitting before and after. An excluded fitting has neither. */
export interface LedgerRow {
  /** Number of the fitting in the file, from 1: it ties row, working, picture and brief. */
  readonly number: number;
  readonly fittingId: string;
  /** The fitting as sailed. */
  readonly fitting: ProjectFitting;
  /** The fitting on the before side: as sailed, or after the plan compared against; null when that plan removes it. */
  readonly fittingBefore: ProjectFitting | null;
  /** The fitting after the plan; null when the plan removes it. */
  readonly fittingAfter: ProjectFitting | null;
  readonly excludedReason: string | null;
  readonly before: RowResult;
  readonly after: RowResult;
  readonly saving: Saving;
  /** True when a counted item of either plan touches this fitting. */
  readonly isChanged: boolean;
  /** Items of the plan about this fitting whose saving waits for a reason. */
  readonly withheldItemIds: readonly string[];
  readonly notices: readonly Notice[];
  /** Rank by track power before, from 1; null when excluded or without any force. */
  readonly rank: number | null;
  /** True when the next row in rank stays behind it over every doubt; null for the last and for rows without a rank. */
  readonly isRankSafe: boolean | null;
}

export interface LedgerSide {
  readonly before: Result;
  readonly after: Result;
  readonly saving: Saving;
}

export interface ZoneSum extends LedgerSide {
  readonly zone: ProjectZone;
  readonly fittingIds: readonly string[];
}

/** One item of the plan with what it saves in the plan's order and alone. */
export interface ItemAccount {
  readonly item: RefitItem;
  readonly fitting: ProjectFitting | null;
  readonly status: ItemStatus;
  readonly contradiction: Contradiction | null;
  readonly savingInOrder: Saving | null;
  readonly savingAlone: Saving | null;
  /** Total before this item and after it, in the plan's order: the steps of the waterfall. Counted items only. */
  readonly totalBefore: Result | null;
  readonly totalAfter: Result | null;
}

/** Mass, its moments about the boat's origin, and cost of the counted items. */
export interface PlanBalance {
  readonly massChangeKg: number;
  readonly momentXKgM: number;
  readonly momentYKgM: number;
  readonly momentZKgM: number;
  /** Mass whose place nobody gave: it is in the mass and not in the moments. */
  readonly massWithoutPlaceKg: number;
  readonly cost: number;
}

export interface PlanAccount {
  readonly planId: string;
  readonly items: readonly ItemAccount[];
  readonly balance: PlanBalance;
  /** Total saving less the sum of the savings alone: what the items do to each other. */
  readonly together: Saving;
  /** True when "together" is over 1 % of the total saving and so deserves a line of its own. */
  readonly isTogetherNamed: boolean;
}

export interface ProjectLedger {
  readonly question: LedgerQuestion;
  readonly parts: readonly BasisPart[];
  readonly rows: readonly LedgerRow[];
  readonly zones: readonly ZoneSum[];
  /** Block one: forces that act. */
  readonly forces: LedgerSide;
  /** Block two: losses against a named reference, never added to the first. */
  readonly losses: LossBlock;
  readonly plan: PlanAccount | null;
  readonly against: PlanAccount | null;
  readonly notices: readonly Notice[];
  /** True when a chosen condition gives a price for side force or heel: the full-price column appears. */
  readonly hasFullPrice: boolean;
  /** What the boat pays in all, W: total resistance x boat speed, weighted; null unless every condition gives one. */
  readonly totalPaidW: number | null;
}
