import type { ProjectDirection } from './schema';

/** Where a section points until somebody says otherwise. */
export const noseForward: ProjectDirection = { kind: 'fixed', angleDeg: 0 };

/** A section that turns with the wind: five degrees left over, in one piece (common practice, no source). */
export const followingTheWind: ProjectDirection = { kind: 'turning', residualDeg: 5, pieces: 1 };
