/** The page's ids of what may take the focus when a button has made or taken away something. */
export const planTitleId = 'plan-title';
export const planNameId = 'plan-name';

/** The button that opens an item; one plan is shown at a time. */
export function itemButtonId(itemId: string): string {
  return `plan-item-${itemId}`;
}

/** The button that counts a reason, or the one that takes it back. */
export function reasonButtonId(itemId: string): string {
  return `plan-item-${itemId}-reason`;
}
