/**
 * Names of doubts. A shared doubt has one cause for every row it touches, so its changes add with their signs; an own
 * doubt belongs to one fitting. The name alone says which: rows share a doubt exactly where they share its name.
 */
export type DoubtScope = 'shared' | 'own';
/** Doubts of the items (coefficients, ends, sizes, exposure) and of the air (wind speed, angle and law, density). */
export type DoubtGroup = 'item' | 'air';

export const airDoubtIds = ['wind-speed', 'wind-angle', 'wind-law', 'density'] as const;
export type AirDoubtId = (typeof airDoubtIds)[number];
export const endsDoubtId = 'ends';
export const endTableDoubtId = 'end-table';
export const crossFlowDoubtId = 'cross-flow';
export const frictionDoubtId = 'friction';

export function doubtScope(id: string): DoubtScope {
  return id.startsWith('own:') ? 'own' : 'shared';
}

export function doubtGroup(id: string): DoubtGroup {
  return (airDoubtIds as readonly string[]).includes(id) ? 'air' : 'item';
}
