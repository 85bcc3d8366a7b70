import type { Project } from '../file/schema';
import { refusal, type EditAnswer } from './answer';
import { withoutHours } from './conditionEdits';
import { judged } from './judge';

/** Sets a condition's hours in the course profile; makes the entry, and the profile, when there is none. */
export function setHours(project: Project, conditionId: string, hours: number): EditAnswer {
  const profile = project.profile ?? { name: 'Course', entries: [] };
  const isListed = profile.entries.some((entry) => entry.conditionId === conditionId);
  const entries = isListed
    ? profile.entries.map((entry) => (entry.conditionId === conditionId ? { ...entry, hours } : entry))
    : [...profile.entries, { conditionId, hours }];
  return judged(project, { profile: { ...profile, entries } });
}

/** Takes a condition out of the course profile; with its last hours the profile goes. */
export function removeFromProfile(project: Project, conditionId: string): EditAnswer {
  const profile = withoutHours(project.profile, conditionId);
  const isGone = project.profile !== null && profile === null;
  return judged(
    project,
    { profile },
    isGone ? { message: 'The course profile went with its last hours.' } : {},
  );
}

export function renameProfile(project: Project, name: string): EditAnswer {
  if (project.profile === null) return refusal('profile', 'there is no course profile');
  return judged(project, { profile: { ...project.profile, name } });
}

export function deleteProfile(project: Project): EditAnswer {
  return judged(project, { profile: null });
}
