import type { ItemAccount } from '../ledger/ledgerTypes';
import type { ItemChange, ProjectClassRule } from '../file/schema';
import type { ItemStatus } from '../refit/applyPlan';

const statusLabels: Readonly<Record<ItemStatus, string>> = {
  counted: 'counted',
  withheld: 'waits for a reason',
  off: 'off',
  contradiction: 'contradiction',
};

/** What became of a refit item, in a word or three. */
export function itemStatusLabel(status: ItemStatus): string {
  return statusLabels[status];
}

const changeLabels: Readonly<Record<ItemChange['kind'], string>> = {
  slimmer: 'slimmer',
  shapeOf: "another fitting's shape",
  retracted: 'retracted',
  stowed: 'stowed',
  removed: 'removed',
  moved: 'moved',
  sheltered: 'sheltered',
  typed: 'typed',
};

/** What a refit item does to its fitting. */
export function itemChangeLabel(kind: ItemChange['kind']): string {
  return changeLabels[kind];
}

const rulingTexts: Readonly<Record<ProjectClassRule['ruling'], string>> = {
  allowed: 'allowed',
  'needs-ruling': 'needs a ruling',
  'not-allowed': 'not allowed',
};

/** A class rule in one sentence. */
export function classRuleText({ ruling, rule }: ProjectClassRule): string {
  return `Class rule${rule === '' ? '' : ` ${rule}`}: ${rulingTexts[ruling]}.`;
}

/** Why an item counts or does not, and what it brings along, in sentences; most pressing first. */
export function itemReasons({ item, fitting, status, contradiction }: ItemAccount): string[] {
  const reasons: string[] = [];
  if (contradiction !== null) reasons.push(contradiction.message);
  if (status === 'withheld') {
    reasons.push('Safety-required: shown, but outside every total until a named person has given a reason.');
  }
  if (status === 'counted' && fitting?.flags.safetyRequired === true && item.safetyReason !== null) {
    reasons.push(`Safety-required; reason by ${item.safetyReason.person}: ${item.safetyReason.reason}`);
  }
  if (item.flags.classRule !== null) reasons.push(classRuleText(item.flags.classRule));
  if (item.flags.structural) reasons.push("Structural: needs a licensed engineer and the class's word.");
  if (item.flags.movingPart) reasons.push('Moving part: it can jam.');
  return reasons;
}
