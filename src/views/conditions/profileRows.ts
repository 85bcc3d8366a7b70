import type { Project } from '../../project/file/schema';

export interface ProfileRow {
  readonly conditionId: string;
  readonly name: string;
  /** Null for a condition that is no part of the course. */
  readonly hours: number | null;
  /** Of the course's hours; null outside the course and while it has no hours. */
  readonly share: number | null;
}

/** Every condition of the project with its hours in the course profile, in the project's order. */
export function profileRows({ conditions, profile }: Project): ProfileRow[] {
  const entries = profile?.entries ?? [];
  const allHours = entries.reduce((sum, { hours }) => sum + hours, 0);
  return conditions.map(({ id, name }) => {
    const hours = entries.find(({ conditionId }) => conditionId === id)?.hours ?? null;
    const share = hours === null || allHours === 0 ? null : hours / allHours;
    return { conditionId: id, name, hours, share };
  });
}
