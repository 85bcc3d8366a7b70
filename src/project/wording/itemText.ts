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

/** What an item can start as: a kind of change, or a shape typed in with a remedy's numbers in it. */
export type ItemStart = ItemChange['kind'] | 'fairedTurning' | 'fairedFixed' | 'otherSection' | 'rounded';

export const startLabels: Readonly<Record<ItemStart, string>> = {
  slimmer: 'slimmer',
  fairedTurning: 'faired, turning',
  fairedFixed: 'faired, fixed',
  otherSection: 'another section',
  rounded: 'edges rounded',
  shapeOf: "another fitting's shape",
  retracted: 'retracted',
  stowed: 'stowed',
  removed: 'removed',
  moved: 'moved',
  sheltered: 'sheltered',
  typed: 'typed',
};

/** What a refit item does to its fitting. */
export function itemChangeLabel(change: ItemChange): string {
  return startLabels[startOf(change)];
}

/** What a change would have been started as. */
export function startOf(change: ItemChange): ItemStart {
  if (change.kind !== 'typed') return change.kind;
  const { shape } = change;
  if (shape.kind === 'fairing') return shape.direction.kind === 'turning' ? 'fairedTurning' : 'fairedFixed';
  return shape.kind === 'ellipticalBar' ? 'otherSection' : 'typed';
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
