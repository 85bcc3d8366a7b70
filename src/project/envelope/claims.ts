import { isAgreeing, type Route } from './route';
import type { WorkedEnvelope } from './workOut';
import type { Worked } from './worked';

/** The written numbers that others beside them can give, in the order in which they are worked. */
const claimIds = ['area', 'dragArea', 'force', 'power', 'horsepower'] as const;
export type ClaimId = (typeof claimIds)[number];

/** Claims that do not follow by any route. */
export function failedClaims(envelope: WorkedEnvelope): readonly ClaimId[] {
  return claimIds.filter((id) => envelope[id].agrees === false);
}

/** Whether a claim was made that the other numbers could check. */
export function hasChecked(envelope: WorkedEnvelope): boolean {
  return claimIds.some((id) => envelope[id].agrees !== null);
}

/** The route to show for a number: one that agrees, or the first. */
export function shownRoute({ routes, written }: Worked): Route | null {
  const agreeing = written === null ? undefined : routes.find((route) => isAgreeing(route, written));
  return agreeing ?? routes[0] ?? null;
}

export const claimNames: Readonly<Record<ClaimId, string>> = {
  area: 'the area',
  dragArea: 'the drag area',
  force: 'the force',
  power: 'the power',
  horsepower: 'the horsepower',
};

/** "the force, the power and the horsepower". */
export function listed(names: readonly string[]): string {
  const last = names.at(-1) ?? '';
  return names.length < 2 ? last : `${names.slice(0, -1).join(', ')} and ${last}`;
}
