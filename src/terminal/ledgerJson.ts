import type { ConditionPart, Result, RowResult, Saving } from '../physics/ledger/ledgerSums';
import type { DoubtChange } from '../physics/doubt/doubtChange';
import type { Range, Ranges } from '../physics/doubt/doubts';
import { doubtGroup, doubtScope } from '../physics/doubt/doubtSource';
import type { Notice } from '../physics/fitting/notice';
import { memberQuantities } from '../physics/fitting/memberTrace';
import { doubtedKeys, type DoubtedKey } from '../physics/fitting/change';
import { outcomeQuantities } from '../physics/fitting/outcome';
import { lateralResistanceOf } from '../project/core/conditionToPhysics';
import type { Project, ProjectFitting } from '../project/file/schema';
import type {
  BasisPart,
  ItemAccount,
  LedgerRow,
  PlanAccount,
  ProjectLedger,
  ZoneSum,
} from '../project/ledger/ledgerTypes';
import { cautions } from '../project/wording/cautions';
import { doubtLabel } from '../project/wording/doubtLabel';
import { itemReasons } from '../project/wording/itemText';
import { noticeText } from '../project/wording/noticeText';
import { toSi } from '../units/convert';

/**
 * The whole ledger as one plain object: SI at full precision, units at the end of the keys (none for pure numbers).
 * Keys are part of the command: they are added to, not renamed.
 */
export function ledgerJson(project: Project, ledger: ProjectLedger) {
  const { fittings } = project;
  return {
    format: 'windtoll-ledger',
    version: 1,
    project: { name: project.name, boatName: project.boat.name, currency: project.currency },
    question: questionOf(project, ledger),
    methods: project.methods,
    centreOfLateralResistance: lateralResistance(project),
    conditions: ledger.parts.map(conditionOf),
    notices: ledger.notices.map(noticeOf),
    rows: ledger.rows.map((row) => rowOf(project, row)),
    zones: ledger.zones.map((zone) => zoneOf(zone, fittings)),
    totals: {
      before: resultOf(ledger.forces.before, fittings),
      after: resultOf(ledger.forces.after, fittings),
      saving: savingOf(ledger.forces.saving, fittings),
    },
    losses: {
      losses: ledger.losses.losses.map(({ result, ...loss }) => ({ ...loss, ...resultOf(result, fittings) })),
      total: resultOf(ledger.losses.total, fittings),
    },
    plan: planOf(project, ledger.plan),
    against: planOf(project, ledger.against),
    hasFullPrice: ledger.hasFullPrice,
    totalPaidW: ledger.totalPaidW,
    cautions,
    quantities: { outcome: outcomeQuantities, member: memberQuantities },
  };
}

function questionOf(project: Project, { question }: ProjectLedger) {
  const planName = (id: string | null) => project.plans.find((plan) => plan.id === id)?.name ?? null;
  return {
    basis: question.basis,
    planId: question.planId,
    planName: planName(question.planId),
    againstPlanId: question.againstPlanId,
    againstPlanName: planName(question.againstPlanId),
  };
}

function lateralResistance({ boat }: Project) {
  const [xM, yM, zM] = lateralResistanceOf(boat);
  return { xM, yM, zM, isDefault: boat.centreOfLateralResistanceM === null };
}

function conditionOf({ summary, hours, weight }: BasisPart) {
  const { condition, deck, masthead, mastheadReading } = summary;
  return {
    conditionId: condition.id,
    name: condition.name,
    hours,
    timeShare: weight,
    windGivenAs: condition.wind.kind,
    trueWindAt10Ms: summary.trueWindAt10Ms,
    trueWindAngleFromCourseRad: summary.trueWindAngleRad,
    tack: condition.tack,
    boatSpeedMs: condition.boatSpeedMs,
    heelRad: toSi(condition.heelDeg, 'deg'),
    leewayRad: toSi(condition.leewayDeg, 'deg'),
    riseM: condition.riseM,
    deckApparentWind: deck,
    mastheadApparentWind: masthead,
    mastheadInstrumentReading: mastheadReading,
    airDensityKgM3: summary.densityKgM3,
    kinematicViscosityM2S: summary.kinematicViscosityM2S,
    roughnessLengthM: summary.roughnessLengthM,
    windSpeedDoubtFraction: condition.windSpeedDoubtFraction,
    windAngleDoubtDeg: condition.windAngleDoubtDeg,
    densityDoubtFraction: condition.densityDoubtFraction,
    hullDragPerSideForce: condition.prices.hullDragPerSideForce,
    driveLostPerHeelingMomentPerM: condition.prices.driveLostPerHeelingMomentPerM,
    atHeelLimit: condition.prices.atHeelLimit,
    totalResistanceN: condition.totalResistanceN,
  };
}

function noticeOf(notice: Notice) {
  return { code: notice.code, text: noticeText(notice), values: notice.values };
}

function rowOf(project: Project, row: LedgerRow) {
  const { fitting } = row;
  return {
    number: row.number,
    fittingId: row.fittingId,
    name: fitting.name,
    zoneId: fitting.zoneId,
    zoneName: project.zones.find(({ id }) => id === fitting.zoneId)?.name ?? null,
    shapeKind: fitting.shape.kind,
    shapeKindAfter: row.fittingAfter?.shape.kind ?? null,
    massKg: fitting.massKg,
    flags: fitting.flags,
    excludedReason: row.excludedReason,
    rank: row.rank,
    isRankSafe: row.isRankSafe,
    isChanged: row.isChanged,
    isRemovedAfter: row.excludedReason === null && row.fittingAfter === null,
    withheldItemIds: row.withheldItemIds,
    notices: row.notices.map(noticeOf),
    before: rowResultOf(row.before, project.fittings),
    after: rowResultOf(row.after, project.fittings),
    saving: savingOf(row.saving, project.fittings),
  };
}

function rowResultOf(row: RowResult, fittings: readonly ProjectFitting[]) {
  return {
    ...resultOf(row, fittings),
    conditions: row.parts.map(partOf),
    notices: row.notices.map(noticeOf),
  };
}

/** One condition's part of a row: the working of each member, the mean, and what deployed and stowed do alone. */
function partOf({ conditionId, weight, trace }: ConditionPart) {
  return {
    conditionId,
    timeShare: weight,
    dutyFraction: trace.dutyFraction,
    mean: trace.mean,
    deployed: trace.deployed,
    stowed: trace.stowed,
    members: trace.members,
    notices: trace.notices.map(noticeOf),
  };
}

function resultOf(result: Result, fittings: readonly ProjectFitting[]) {
  return {
    ...result.outcome,
    ranges: rangesOf(result.ranges),
    doubts: result.doubts.map((doubt) => doubtOf(doubt, fittings)),
  };
}

/** A step of the plan: the total with its ranges; its doubts stand with the savings. */
function stepOf(total: Result | null) {
  return total === null ? null : { ...total.outcome, ranges: rangesOf(total.ranges) };
}

function savingOf(saving: Saving, fittings: readonly ProjectFitting[]) {
  return {
    ...saving.change,
    ranges: rangesOf(saving.ranges),
    doubts: saving.doubts.map((doubt) => doubtOf(doubt, fittings)),
  };
}

function rangesOf({ item, air, all }: Ranges) {
  return { item: groupOf(item), air: groupOf(air), all: groupOf(all) };
}

/** Range by range: they are worked out when they are read. */
function groupOf(ranges: Ranges['all']): Ranges['all'] {
  return Object.fromEntries(doubtedKeys.map((key) => [key, ranges[key]])) as Record<DoubtedKey, Range>;
}

function doubtOf({ id, up, down }: DoubtChange, fittings: readonly ProjectFitting[]) {
  return { id, label: doubtLabel(id, fittings), scope: doubtScope(id), group: doubtGroup(id), up, down };
}

function zoneOf(zone: ZoneSum, fittings: readonly ProjectFitting[]) {
  return {
    zoneId: zone.zone.id,
    name: zone.zone.name,
    fittingIds: zone.fittingIds,
    before: resultOf(zone.before, fittings),
    after: resultOf(zone.after, fittings),
    saving: savingOf(zone.saving, fittings),
  };
}

function planOf(project: Project, account: PlanAccount | null) {
  if (account === null) return null;
  return {
    planId: account.planId,
    name: project.plans.find(({ id }) => id === account.planId)?.name ?? null,
    items: account.items.map((item) => itemOf(item, project.fittings)),
    balance: account.balance,
    currency: project.currency,
    together: savingOf(account.together, project.fittings),
    isTogetherNamed: account.isTogetherNamed,
  };
}

function itemOf(account: ItemAccount, fittings: readonly ProjectFitting[]) {
  const { item, fitting, savingInOrder, savingAlone, totalBefore, totalAfter } = account;
  return {
    itemId: item.id,
    name: item.name,
    fittingId: item.fittingId,
    fittingName: fitting?.name ?? null,
    change: item.change,
    isOn: item.on,
    status: account.status,
    contradiction: account.contradiction,
    isSafetyRequired: fitting?.flags.safetyRequired ?? false,
    safetyReason: item.safetyReason,
    flags: item.flags,
    reasons: itemReasons(account),
    note: item.note,
    massChangeKg: item.massChangeKg,
    massPlace: item.massPlace,
    cost: item.cost,
    savingInOrder: savingInOrder === null ? null : savingOf(savingInOrder, fittings),
    savingAlone: savingAlone === null ? null : savingOf(savingAlone, fittings),
    totalBefore: stepOf(totalBefore),
    totalAfter: stepOf(totalAfter),
  };
}
