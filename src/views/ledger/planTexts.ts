import type { ItemAccount } from '../../project/ledger/ledgerTypes';
import { classRuleText } from '../../project/wording/itemText';

/** What became of an item, in words. */
export function statusText({ status, item, contradiction }: ItemAccount): string {
  switch (status) {
    case 'counted':
      return item.safetyReason === null
        ? 'counted'
        : `counted; ${item.safetyReason.person}: ${item.safetyReason.reason}`;
    case 'withheld':
      return 'not counted: safety-required, waits for a named person’s reason';
    case 'off':
      return 'not counted: switched off';
    case 'contradiction':
      return `not counted: ${contradiction?.message ?? ''}`;
  }
}

/** What an item brings along that a meeting must see: rulings, structure, moving parts. */
export function itemCautions({ item: { flags } }: ItemAccount): string {
  return [
    flags.classRule === null ? '' : classRuleText(flags.classRule),
    flags.structural ? "Structural: needs a licensed engineer and the class's word." : '',
    flags.movingPart ? 'Moving part: it can jam.' : '',
  ]
    .filter((text) => text !== '')
    .join(' ');
}

/** Where the plan's table begins, for the link from the foot. */
export function planHeadingId(planId: string): string {
  return `items-of-${planId}`;
}
